import type { PlacedFault } from '../event/index.ts';
import { faultOf } from '../fault/index.ts';
import { idOf, SURE } from './layout.ts';
import { repairSecondsFromFloor } from './route.ts';
import { type Candidate, type RigOutcomes, repairFor } from './table.ts';
import { isRepair, textTriedBy, triedBy } from './tried.ts';
import type { CommonGround, PlacedRepair, Suspect, Verdict } from './types.ts';

/** Share of the heaviest at which a suspect still belongs to the verdict. */
const STILL_IN = 0.05;

/** The same, of those that one repair has cleared: any of them may have been it. */
const FAINT = 0.0005;

/** Share of what is not known from which it is said that nothing known fits, once something speaks against all that is known. */
const LOST = 0.8;

/** Share of the places that unknown faults would sit in, from which one is named. */
const NEAR = 0.2;

/** How a walk stands, as far as its end hangs on it. */
export interface WalkStanding {
	readonly table: RigOutcomes;
	/** By candidate and what is not known last; they sum to one. */
	readonly weights: Float64Array;
	/** By candidate: how many answers speak against it, and whether its own repair was made and did not help. */
	readonly against: ArrayLike<number>;
	readonly isOut: readonly boolean[];
	/** The repair done last has cleared the complaint. */
	readonly isRepaired: boolean;
	/** By candidate, what the last check was to show. */
	readonly predicted: readonly (string | null)[];
	/** What was answered, in order. */
	readonly heard: readonly AnswerRecord[];
	/** Weights of unknown faults by the candidate they look like. */
	readonly unlike: Float64Array;
}

/** Whether a candidate is left that nothing seen speaks against. */
export const doesAnyFit = ({ against, isOut }: WalkStanding): boolean =>
	isOut.some((out, at) => !out && against[at] === 0);

/** Why a walk is at its end by the weights alone; null while it is not. */
export function endOf(standing: WalkStanding): Verdict['because'] | null {
	if (standing.isRepaired) return 'mended';
	if (!doesAnyFit(standing)) return (standing.weights.at(-1) ?? 0) >= LOST ? 'unknown' : null;
	return repairShares(standing).some(({ share, fits }) => fits && share >= SURE) ? 'sure' : null;
}

/** Whether one repair holds nearly all, whatever speaks against those it would clear. */
export const isSettled = (standing: WalkStanding): boolean => repairShares(standing).some(({ share }) => share >= SURE);

/** By repair its share of all that is known, and whether some candidate of it has nothing against it. */
function repairShares({ table: bench, weights, against, isOut }: WalkStanding): { share: number; fits: boolean }[] {
	const known = 1 - (weights.at(-1) ?? 0);
	const shares = new Map<string, { share: number; fits: boolean }>();
	for (const [at, { repair }] of bench.candidates.entries()) {
		const { share, fits } = shares.get(repair) ?? { share: 0, fits: false };
		shares.set(repair, {
			share: share + (weights[at] ?? 0) / known,
			fits: fits || (!isOut[at] && against[at] === 0),
		});
	}
	return [...shares.values()];
}

/**
 * The repair to try where no check tells more and something speaks against every suspect: an answer may have been wrong, and that of
 * the heaviest is the next best thing to a check.
 * @param isOpen whether a check can still be done
 * @returns the number of its check; -1 for none
 */
export function repairToTry(
	{ table: bench, weights, isOut }: WalkStanding,
	isOpen: (check: number) => boolean,
): number {
	const shares = new Map<string, number>();
	for (const [at, { faults, repair }] of bench.candidates.entries())
		if (!isOut[at] && faults.length === 1) shares.set(repair, (shares.get(repair) ?? 0) + (weights[at] ?? 0));
	let best = -1;
	let most = STILL_IN;
	for (const [at, check] of bench.checks.entries()) {
		const share = shares.get(textTriedBy(check.id) ?? '') ?? 0;
		if (share < most || !isOpen(at)) continue;
		best = at;
		most = share;
	}
	return best;
}

/** What is said at the end of a walk. @param all suspects, heaviest first */
export function verdictOf(standing: WalkStanding, because: Verdict['because'], all: readonly Suspect[]): Verdict {
	const confirmed = because === 'mended';
	if (because === 'unknown') {
		const unknown = all.filter(({ faults }) => faults.length === 0);
		const sure = unknown.reduce((sum, { weight }) => sum + weight, 0);
		return {
			suspects: unknown,
			repairs: [],
			sure,
			confirmed,
			because,
			near: nearOf(standing),
			common: commonIn(standing),
		};
	}
	const suspects = confirmed ? clearedOf(standing, all) : leftOf(standing, all);
	return {
		suspects,
		repairs: repairsInOrder(standing, suspects),
		sure: suspects.reduce((sum, { weight }) => sum + weight, 0),
		confirmed,
		because,
		near: [],
		common: null,
	};
}

const heaviestOf = (suspects: readonly Suspect[]): number => suspects[0]?.weight ?? 0;

/** Those that may be it: none that a repair has ruled out, and always some that nothing speaks against. */
function leftOf({ table: bench, isOut }: WalkStanding, all: readonly Suspect[]): Suspect[] {
	const out = new Set(bench.candidates.filter((_, at) => isOut[at]).map(idOf));
	const known = all.filter(({ id, faults }) => faults.length > 0 && !out.has(id));
	const fitting = known.filter(({ against }) => against.length === 0);
	return known.filter(
		({ weight, against }) =>
			weight >= STILL_IN * heaviestOf(known) || (against.length === 0 && weight >= STILL_IN * heaviestOf(fitting)),
	);
}

/** Those that the repair which helped would have cleared: the rest is out, whatever was answered before. */
function clearedOf({ table: bench, predicted }: WalkStanding, all: readonly Suspect[]): Suspect[] {
	const cleared = new Set(bench.candidates.filter((_, at) => predicted[at] === 'cleared').map(idOf));
	const suspects = cleared.size > 0 ? all.filter(({ id }) => cleared.has(id)) : all;
	return suspects.filter(({ weight }) => weight >= FAINT * heaviestOf(suspects));
}

/** Where unknown faults that look like what was seen would sit, likeliest first: places of those they look like. */
const nearOf = (standing: WalkStanding): Verdict['near'] =>
	likeliest(standing, ({ place }) => place).map(([place, share]) => ({ place, share }));

/** What unknown faults that look like what was seen have in common by one of their sides, each with its share, likeliest first. */
function likeliest<T>({ table, unlike }: WalkStanding, side: (placed: PlacedFault) => T): (readonly [T, number])[] {
	const all = unlike.reduce((sum, weight) => sum + weight, 0);
	const shares = new Map<T, number>();
	for (const [at, { faults }] of table.candidates.entries()) {
		const [placed] = faults;
		if (faults.length === 1 && placed && all > 0)
			shares.set(side(placed), (shares.get(side(placed)) ?? 0) + (unlike[at] ?? 0) / all);
	}
	return [...shares].filter(([, share]) => share >= NEAR).sort((a, b) => b[1] - a[1]);
}

/** Checks that ask after power: 'fine' there would be read as live, dead or looked after, and hands go by it. */
const ASK_AFTER_POWER: ReadonlySet<string> = new Set([
	'power-lamp',
	'power-switch',
	'power-cycle',
	'mains-plug',
	'charger',
	'socket-live',
	'hall-power',
	'breakers',
	'box-lamp',
]);

/** What the answers have in common, held to the rig as it is meant. */
function commonIn(standing: WalkStanding): CommonGround {
	const { table, heard } = standing;
	const byId = new Map(table.checks.map((check) => [check.id, check]));
	const odd: string[] = [];
	const fine: string[] = [];
	for (const { check: id, outcome } of heard) {
		const check = byId.get(id);
		if (!check || isRepair(check)) continue;
		if (check.read(table.meant) !== outcome) odd.push(id);
		else if (!ASK_AFTER_POWER.has(check.kind)) fine.push(id);
	}
	return { odd, fine, families: likeliest(standing, ({ fault }) => faultOf(fault).family).map(([family]) => family) };
}

/** A candidate's repairs, each with where it is done. */
const repairsOf = ({ sheet }: RigOutcomes, { faults }: Pick<Candidate, 'faults'>): PlacedRepair[] =>
	faults.map((fault) => {
		const repair = repairFor(sheet, fault);
		return { ...repair, seconds: repairSecondsFromFloor(sheet, repair) };
	});

/** Weight over seconds, heaviest ratio first: least expected seconds until one of them clears it. Repairs that were tried are out. */
function repairsInOrder({ heard, isRepaired }: WalkStanding, suspects: readonly Suspect[]): Verdict['repairs'] {
	const answered = new Set(heard.map(({ check }) => check));
	const repairs = new Map<string, PlacedRepair & { weight: number; check: string }>();
	for (const { repairs: list, weight } of suspects) {
		for (const repair of list) {
			const check = triedBy(repair);
			if (answered.has(check) && !isRepaired) continue;
			const known = repairs.get(check);
			if (known) known.weight += weight;
			else repairs.set(check, { ...repair, weight, check });
		}
	}
	return [...repairs.values()].sort((a, b) => b.weight / b.seconds - a.weight / a.seconds);
}

/** What was answered, and what each candidate had predicted. */
export interface AnswerRecord {
	readonly check: string;
	readonly outcome: string;
	readonly predicted: readonly (string | null)[];
}

/** How many answers speak against each candidate. */
export function countAgainst(candidates: number, heard: readonly AnswerRecord[]): Uint16Array {
	const against = new Uint16Array(candidates);
	for (const { outcome, predicted } of heard) {
		for (let at = 0; at < candidates; at++) {
			const said = predicted[at] ?? null;
			if (said !== null && said !== outcome) against[at] = (against[at] ?? 0) + 1;
		}
	}
	return against;
}

/**
 * Everything that may be wrong, heaviest first. A fault that came while the rig ran and the same one that was there when it was switched
 * on are one suspect, and it is held to the one of the two that fits better.
 * @param weights by candidate, and what is not known last
 */
export function suspectsOf(
	table: RigOutcomes,
	weights: Float64Array,
	against: ArrayLike<number>,
	heard: readonly AnswerRecord[],
): Suspect[] {
	const byId = new Map<string, { at: number; weight: number }>();
	for (const [at, candidate] of table.candidates.entries()) {
		const weight = weights[at] ?? 0;
		const id = idOf(candidate);
		const known = byId.get(id);
		if (!known) {
			byId.set(id, { at, weight });
			continue;
		}
		const fewer = (against[at] ?? 0) - (against[known.at] ?? 0);
		if (fewer < 0 || (fewer === 0 && weight > (weights[known.at] ?? 0))) known.at = at;
		known.weight += weight;
	}
	const suspects = [...byId].map(([id, { at, weight }]): Suspect => {
		const faults = table.candidates[at]?.faults ?? [];
		return {
			id,
			faults,
			weight,
			repairs: repairsOf(table, { faults }),
			against: heard.flatMap(({ check, outcome, predicted }) => {
				const said = predicted[at] ?? null;
				return said !== null && said !== outcome ? [{ check, seen: outcome, predicted: said }] : [];
			}),
		};
	});
	const unknown: Suspect = { id: 'unknown', faults: [], weight: weights.at(-1) ?? 0, repairs: [], against: [] };
	return [...suspects, unknown].sort((a, b) => b.weight - a.weight);
}
