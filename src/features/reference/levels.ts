import { levelWords as words } from '#words/reference/index.ts';
import { hexOf, levelOfPercent, levelsShownAs, percentOf, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

const SIDE = 16;
const EXAMPLE = 200;

/** A level over its percent, which never parts from its sign. */
const cell = (level: number): string => `${level} ${percentOf(level)}\u00a0%`;

/** Percents to levels. */
export function percentSection(): ReferenceSection {
	return {
		id: 'percent-to-level',
		heading: words.percents.heading,
		says: words.percents.says,
		tables: [
			{
				caption: words.percents.caption,
				head: words.percents.head,
				rows: Array.from({ length: 101 }, (_, percent) => {
					const level = levelOfPercent(percent);
					const shown = levelsShownAs(percent);
					const [from, to] = [shown[0], shown.at(-1)];
					return [
						`${percent} %`,
						`${level}`,
						hexOf(level),
						from === to ? `${from}` : fill(words.percents.to, { from, to }),
					];
				}),
				fold: 3,
				look: 'grid',
			},
		],
	};
}

/** Levels to percent and hex: sixteen by sixteen. */
export function levelSection(): ReferenceSection {
	const digits = Array.from({ length: SIDE }, (_, n) => n.toString(SIDE).toUpperCase());
	return {
		id: 'level-to-percent',
		heading: words.levels.heading,
		says: words.levels.says.map((text) => fill(text, { example: EXAMPLE, hex: hexOf(EXAMPLE) })),
		tables: [
			{
				caption: fill(words.levels.caption, { count: TOP_LEVEL + 1 }),
				head: [words.levels.corner, ...digits.map((digit) => `_${digit}`)],
				rows: digits.map((digit, row) => [`${digit}_`, ...digits.map((_, column) => cell(row * SIDE + column))]),
				look: 'grid',
			},
		],
	};
}
