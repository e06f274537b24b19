import { makeOutcomeTable, makeSeconds, type Search } from '../sequence/index.ts';
import type { Ground } from './route.ts';
import type { Bench, Candidate } from './table.ts';

/** The share one mend must hold for the walk to end. */
export const SURE = 0.95;

/**
 * An answer to any check but a mend: what was seen is nothing that any suspect would show. It speaks against all of them, and so
 * for what the model does not know.
 */
export const ELSE = 'something-else';

export const isMend = ({ kind }: { readonly kind: string }): boolean => kind.startsWith('mend-');

/** Text of a candidate's faults: permanent for a rig. */
export const idOf = ({ faults }: Pick<Candidate, 'faults'>): string =>
	faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+');

/**
 * The bench as the solver takes it, with one suspect more at the end: what the model does not know, which predicts nothing.
 * @param standing for each candidate, the one whose outcomes it shows by now (two faults with one mended show the other's alone); -1 for none
 */
export function layOut(bench: Bench, ground: Ground, standing: readonly number[]): Omit<Search, 'weights'> {
	const table = makeOutcomeTable(
		bench.outcomes.map((row) => [...standing.map((at) => row[at] ?? null), null]),
		standing.length + 1,
		bench.checks.map((check, at) => (isMend(check) ? ['still', 'cleared'] : [...new Set(bench.outcomes[at])])),
	);
	const mends = new Map<string, number>();
	const mendOf = (mend: string): number => {
		const at = mends.get(mend) ?? mends.size;
		mends.set(mend, at);
		return at;
	};
	return {
		table,
		mends: Int32Array.from([
			...standing.map((at, own) => mendOf((bench.candidates[at] ?? bench.candidates[own])?.mend ?? '')),
			mendOf('unknown'),
		]),
		seconds: makeSeconds(
			bench.checks.map(({ seconds }) => seconds),
			{
				// a mend that clears the complaint is done: its seconds were not spent on finding alone
				refund: Float64Array.from(bench.checks, (check) => (isMend(check) ? check.seconds : 0)),
				refundOutcome: Int32Array.from(bench.checks, (check, at) =>
					isMend(check) ? (table.labels[at] ?? []).indexOf('cleared') : -1,
				),
				place: Int32Array.from(bench.checks, ({ at }) => ground.indexOf(at)),
				places: ground.places.length,
				walk: ground.walk,
			},
		),
		settled: SURE,
	};
}
