import type { DrillOf } from './view.ts';

/** What a fragment asks for. */
export type Asked =
	| { readonly is: 'drill'; readonly of: DrillOf }
	| { readonly is: 'nothing' }
	| { readonly is: 'bad' };

/** Seeds are whole numbers below this. */
export const SEEDS = 2 ** 32;

/** Reads a fragment, with or without its `#`. What is not exactly a known rig, a seed and a count is bad. @param rigs ids that are known */
export function readDrillLink(fragment: string, rigs: readonly string[]): Asked {
	const text = fragment.replace(/^#/, '');
	if (text === '') return { is: 'nothing' };
	const [, rig = '', digits = '', count] = /^rig=([a-z0-9-]{1,40})&seed=(\d{1,10})&count=([12])$/.exec(text) ?? [];
	const seed = Number(digits);
	if (!rigs.includes(rig) || seed >= SEEDS) return { is: 'bad' };
	return { is: 'drill', of: { rig, seed, count: count === '2' ? 2 : 1 } };
}

/** The fragment, with its `#`, that asks for a drill. */
export const drillLink = ({ rig, seed, count }: DrillOf): string => `#rig=${rig}&seed=${seed}&count=${count}`;

/** A seed by chance. */
export const anySeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
