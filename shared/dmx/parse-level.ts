import { InputError, shown } from '../error/index.ts';
import { formatLevel, levelOfPercent, percentOf, TOP_LEVEL } from './level.ts';

function refuse(code: string, sentence: string): never {
	throw new InputError(code, '', sentence);
}

function held(value: number, text: string): number {
	if (value > TOP_LEVEL) {
		refuse('level.range', `A level ends at ${TOP_LEVEL}, and ${shown(text)} is past it. For a percent, put % behind.`);
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
	if (typeof text !== 'string') refuse('level.text', `A level is read from text; found ${shown(text)}.`);
	const typed = text.trim().toLowerCase();

	if (typed === '') refuse('level.text', 'Nothing was typed. Type a value such as 128, or a percent such as 50 %.');
	if (typed === 'full') return TOP_LEVEL;
	if (typed === 'out') return 0;
	if (/^\d+$/.test(typed)) return held(Number(typed), typed);

	const percent = /^(\d+(?:[.,]\d+)?)\s*%$/.exec(typed)?.[1];
	if (percent !== undefined) {
		const value = Number(percent.replace(',', '.'));
		if (value > 100) refuse('level.range', `A percent ends at 100, and ${shown(typed)} is past it.`);
		return levelOfPercent(value);
	}

	const hex = /^(?:0?x|#)([0-9a-f]+)$/.exec(typed)?.[1];
	if (hex !== undefined) return held(Number.parseInt(hex, 16), typed);

	const both = /^(\d+) ?\((\d+) ?%\)$/.exec(typed);
	if (both !== null) {
		const value = held(Number(both[1]), typed);
		if (percentOf(value) !== Number(both[2])) {
			refuse('level.mismatch', `${value} and ${Number(both[2])} % do not agree: it should read ${formatLevel(value)}.`);
		}
		return value;
	}

	if (/^\d+[.,]\d+$/.test(typed)) {
		refuse('level.text', `A level is a whole number, and ${shown(typed)} is not. For a percent, put % behind.`);
	}
	if (/^[0-9a-f]+$/.test(typed)) {
		refuse('level.text', `${shown(typed)} looks hexadecimal: put an x in front, as in x80.`);
	}
	return refuse('level.text', `${shown(typed)} is no level. Type 0 to 255, a percent such as 50 %, full or out.`);
}
