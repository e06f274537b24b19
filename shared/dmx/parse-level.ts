import { InputError, shown } from '../error/index.ts';
import { levelOfPercent, percentOf, TOP_LEVEL } from './level.ts';

function held(value: number, text: string): number {
	if (value > TOP_LEVEL) {
		throw new InputError('level.range', '', { trouble: 'level-past', hi: TOP_LEVEL, found: shown(text) });
	}
	return value;
}

/**
 * Reads a level as a person types it, upper or lower case, blanks around it allowed:
 * - `128`: the value, 0 to 255
 * - `50%`, `50 %`, `12.5 %`, `12,5 %`: a percent, 0 to 100, rounded half up to the nearest level
 * - `x80`, `0x80`, `#80`: hexadecimal, 0 to FF
 * - `full` and `out`: 255 and 0, as the trade says them
 * - `128 (50 %)`: as `formatLevel` writes it
 *
 * @throws InputError `level.text` when it is none of these, `level.range` when it is one but past its end,
 * `level.mismatch` when value and percent stand together and do not agree.
 */
export function parseLevel(text: string): number {
	if (typeof text !== 'string') throw noLevel('not-text', text);
	const typed = text.trim().toLowerCase();

	if (typed === '') throw new InputError('level.text', '', { trouble: 'nothing-typed' });
	if (typed === 'full') return TOP_LEVEL;
	if (typed === 'out') return 0;
	if (/^\d+$/.test(typed)) return held(Number(typed), typed);

	const percent = /^(\d+(?:[.,]\d+)?)\s*%$/.exec(typed)?.[1];
	if (percent !== undefined) {
		const value = Number(percent.replace(',', '.'));
		if (value > 100) throw new InputError('level.range', '', { trouble: 'percent-past', hi: 100, found: shown(typed) });
		return levelOfPercent(value);
	}

	const hex = /^(?:0?x|#)([0-9a-f]+)$/.exec(typed)?.[1];
	if (hex !== undefined) return held(Number.parseInt(hex, 16), typed);

	const both = /^(\d+) ?\((\d+) ?%\)$/.exec(typed);
	if (both !== null) {
		const value = held(Number(both[1]), typed);
		if (percentOf(value) !== Number(both[2])) {
			throw new InputError('level.mismatch', '', {
				trouble: 'value-and-percent-differ',
				level: value,
				percent: Number(both[2]),
				right: percentOf(value),
			});
		}
		return value;
	}

	if (/^\d+[.,]\d+$/.test(typed)) throw noLevel('not-whole', typed);
	throw noLevel(/^[0-9a-f]+$/.test(typed) ? 'looks-hexadecimal' : 'no-level', typed);
}

const noLevel = (
	trouble: 'not-text' | 'not-whole' | 'looks-hexadecimal' | 'no-level',
	found: unknown,
): InputError<'level.text'> => new InputError('level.text', '', { trouble, found: shown(found) });
