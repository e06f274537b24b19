import { addressWords as words } from '#words/reference/index.ts';
import { highestStart, howManyFit, LAST_SLOT, nthAddress } from '../../../shared/dmx/index.ts';
import { BUNDLED, footprintOf } from '../../../shared/profile/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

/** Footprints that many fixtures of the trade have, beside those of the bundled ones. Common practice, no source. */
const COMMON = [3, 4, 6, 8, 10, 16];
/** Fixtures a row of the first table goes on for, and footprints the second counts up to. */
const ROWS = 24;
const FOOTPRINTS = 40;
const EXAMPLE = { n: 8, footprint: 9 };

/** Every footprint that has a column, smallest first. */
const columns: readonly number[] = [
	...new Set([...COMMON, ...BUNDLED.flatMap(({ modes }) => modes.map(footprintOf))]),
].sort((a, b) => a - b);

const startsOf = (n: number): string[] =>
	columns.map((footprint) => (n <= howManyFit(footprint) ? `${nthAddress(1, footprint, n)}` : words.next.none));

/** The section of start addresses back to back. */
export function nextSection(): ReferenceSection {
	const { n, footprint } = EXAMPLE;
	const facts = { n, footprint, start: nthAddress(1, footprint, n), next: nthAddress(1, footprint, n + 1) };
	return {
		id: 'back-to-back',
		heading: words.next.heading,
		says: words.next.says.map((text) => fill(text, facts)),
		tables: [
			{
				caption: words.next.caption,
				head: [words.next.first, ...columns.map((each) => fill(words.next.column, { n: each }))],
				rows: Array.from({ length: ROWS }, (_, i) => [`${i + 1}`, ...startsOf(i + 1)]),
				look: 'grid',
			},
		],
	};
}

/** The section of how many fit. */
export function fitSection(): ReferenceSection {
	return {
		id: 'how-many-fit',
		heading: words.fit.heading,
		says: words.fit.says.map((text) => fill(text, { slots: LAST_SLOT })),
		tables: [
			{
				caption: words.fit.caption,
				head: words.fit.head,
				rows: Array.from({ length: FOOTPRINTS }, (_, i) => {
					const footprint = i + 1;
					const fit = howManyFit(footprint);
					return [
						footprint,
						fit,
						nthAddress(1, footprint, fit),
						LAST_SLOT - fit * footprint,
						highestStart(footprint),
					].map(String);
				}),
				fold: 2,
				look: 'grid',
			},
		],
	};
}
