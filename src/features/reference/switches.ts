import { addressWords as words } from '#words/reference/index.ts';
import {
	addressOf,
	DIP_REACH,
	DIP_WEIGHTS,
	type DipWiring,
	switchesFor,
	upSwitches,
} from '../../../shared/dmx/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

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
