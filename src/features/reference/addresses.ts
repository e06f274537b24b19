import { addressWords as words } from '#words/reference/index.ts';
import {
	addressOf,
	DIP_REACH,
	DIP_WEIGHTS,
	type DipWiring,
	highestStart,
	howManyFit,
	LAST_SLOT,
	nthAddress,
	switchesFor,
	upSwitches,
} from '../../../shared/dmx/index.ts';
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

/** Switches that make the rows of the tables; the rest make the columns. */
const LOW = 5;
const HIGH = DIP_WEIGHTS.length - LOW;
/** Addresses worked as examples: small, middling, the last two. */
const EXAMPLES = [1, 2, 10, 24, 100, 233, 511, 512];

const upText = (switches: readonly boolean[]): string => upSwitches(switches).join(' ') || words.none;

/** The switches of a count, from a number whose bits they are. */
const bitsOf = (value: number, count: number): boolean[] =>
	Array.from({ length: count }, (_, bit) => (value & (1 << bit)) !== 0);

function example(address: number): string[] {
	const up = (wiring: DipWiring): string =>
		address > DIP_REACH[wiring].highest ? words.cannot : upText(switchesFor(address, wiring));
	return [`${address}`, up('sum'), up('sum-plus-one')];
}

/** What nine switches add up to. */
export function weightSection(): ReferenceSection {
	const facts = { sumMissing: DIP_REACH.sum.highest + 1, plusUp: DIP_REACH['sum-plus-one'].highest };
	return {
		id: 'switch-weights',
		heading: words.weights.heading,
		says: words.weights.says.map((text) => fill(text, facts)),
		tables: [
			{
				caption: words.weights.caption,
				head: words.weights.head,
				rows: DIP_WEIGHTS.map((weight, i) => [`${i + 1}`, `${weight}`]),
				look: 'grid',
			},
			{ caption: words.weights.exampleCaption, head: words.weights.exampleHead, rows: EXAMPLES.map(example) },
		],
	};
}

/** Every address of one wiring: rows by switches 1 to 5, columns by 6 to 9. */
export function switchSection(wiring: DipWiring): ReferenceSection {
	const { heading, says, caption } = wiring === 'sum' ? words.sum : words.plus;
	const cell = (switches: readonly boolean[]): string =>
		// what a plain sum of nothing means is its maker's
		wiring === 'sum' && upSwitches(switches).length === 0 ? words.makers : String(addressOf(switches, wiring));
	return {
		id: wiring === 'sum' ? 'switches-plain-sum' : 'switches-from-zero',
		heading,
		says,
		tables: [
			{
				caption: fill(caption, { highest: DIP_REACH[wiring].highest }),
				head: [words.corner, ...Array.from({ length: 2 ** HIGH }, (_, high) => highText(high))],
				rows: Array.from({ length: 2 ** LOW }, (_, low) => [
					upText(bitsOf(low, LOW)),
					...Array.from({ length: 2 ** HIGH }, (_, high) => cell([...bitsOf(low, LOW), ...bitsOf(high, HIGH)])),
				]),
				look: 'grid',
			},
		],
	};
}

const highText = (high: number): string =>
	upSwitches(bitsOf(high, HIGH))
		.map((n) => n + LOW)
		.join(' ') || words.none;
