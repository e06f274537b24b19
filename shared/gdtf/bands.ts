import type { LeftOut } from './left.ts';
import type { ChannelFunction, ChannelSet, DmxChannel } from './tree.ts';
import { inBytes } from './values.ts';

/** A stretch of a channel's coarse slot, 0 to 255, with the function and the set that are there. */
export interface Stretch {
	readonly from: number;
	readonly to: number;
	/** Null where no function is. */
	readonly fn: ChannelFunction | null;
	readonly set: ChannelSet | null;
	/** The values of the whole function. */
	readonly fnFrom: number;
	readonly fnTo: number;
}

type Cut = Omit<Stretch, 'from' | 'to'> & { readonly at: number };

/** Tells what was left out, of which function. */
export type Leave = (code: FunctionCode, fn: ChannelFunction, more?: Readonly<Record<string, string | number>>) => void;
type FunctionCode = {
	[Code in LeftOut['code']]: Extract<LeftOut, { code: Code }>['facts'] extends {
		readonly attribute: string;
		readonly name: string;
	}
		? Code
		: never;
}[LeftOut['code']];

/** How many bytes a channel has; of a virtual one, one. */
export const bytesOf = ({ offsets }: DmxChannel): number => Math.max(1, offsets.length);

/**
 * Cuts a channel's values into stretches: each function from its first value to the next one's, and in it each set. Values of
 * several bytes are cut by their high byte; a cut within one is told.
 * @param functions those that hold, of one condition
 */
export function stretchesOf(channel: DmxChannel, functions: readonly ChannelFunction[], leave: Leave): Stretch[] {
	const bytes = bytesOf(channel);
	const unit = 256 ** (bytes - 1);
	const sorted = functions
		.map((fn) => ({ fn, from: inBytes(fn.from, bytes) }))
		.sort((one, other) => one.from - other.from);
	const cuts: Cut[] = [];
	let end = 256 * unit;
	// from the last on, so that each knows where the next begins
	for (const [i, { fn, from }] of [...sorted.entries()].reverse()) {
		if (sorted[i - 1]?.from === from) {
			leave('same-start', fn);
			continue;
		}
		const range = { fnFrom: Math.floor(from / unit), fnTo: Math.ceil(end / unit) - 1 };
		const mine: Cut[] = [{ at: from, fn, set: null, ...range }];
		for (const set of fn.sets) {
			const at = inBytes(set.from, bytes);
			if (at < from || at >= end) leave('set-outside', fn);
			else mine.push({ at, fn, set, ...range });
		}
		cuts.push(...mine.sort((one, other) => one.at - other.at).reverse());
		end = from;
	}
	if (end > 0) cuts.push({ at: 0, fn: null, set: null, fnFrom: 0, fnTo: Math.ceil(end / unit) - 1 });
	const coarse = cuts.reverse().map(({ at, ...cut }) => {
		if (at % unit !== 0 && cut.fn) leave('cut-off-byte', cut.fn, { value: at });
		return { from: Math.floor(at / unit), ...cut };
	});
	// of several cuts at one value the last holds: a set tells more than its function
	return coarse.flatMap((cut, i) => {
		const next = coarse[i + 1];
		if (next && next.from === cut.from) {
			if (cut.fn && (cut.set || next.fn !== cut.fn)) leave('too-narrow', cut.fn);
			return [];
		}
		return [{ ...cut, to: (next?.from ?? 256) - 1 }];
	});
}
