import { InputError } from '../../shared/error/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { MENDS } from '../fault/index.ts';
import { bestCheck, makeOutcomeTable, makeSeconds, type Plan, type Search, secondsFrom } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { COMPLAINTS, type Complaint } from './complaints.ts';
import { weighBy } from './learn.ts';
import { normalise, reweigh } from './posterior.ts';
import { type Bench, type Candidate, candidatesFor, mendFor, tableFor } from './table.ts';
import type { Finder, FinderOptions, NextCheck, PlacedMend, Step, Suspect, Verdict } from './types.ts';
import { groundOf } from './walk.ts';
import { meantWitness } from './witness.ts';

/** The share one mend must hold for the walk to end. */
const SURE = 0.95;

/** The weight of what the model does not know, against all it knows (common practice, no source). */
const UNKNOWN = 0.03;

/**
 * Opens a finder: from a complaint to the cause in the fewest expected seconds. Every outcome it reckons with is read off a rig
 * with that suspect's fault in it; answers may be wrong, so nothing is ever struck out for good.
 * @param complaint one that the sheet can have
 * @throws InputError `finder.complaint` where the sheet cannot have it there
 */
export function openFinder(sheet: RigSheet, complaint: Complaint, options: FinderOptions = {}): Finder {
	const meant = meantWitness(sheet);
	if (!meant.rig.gear.units.has(complaint.fixture) || !COMPLAINTS[complaint.kind].fits(meant, complaint.fixture)) {
		throw new InputError(
			'finder.complaint',
			'complaint',
			`By its sheet '${complaint.fixture}' is not meant to do what '${complaint.kind}' misses. Choose another complaint, or put the sheet right.`,
		);
	}
	const candidates = candidatesFor(sheet, meant, complaint, weighBy(options.learnt ?? {}));
	return finderOn(tableFor(sheet, complaint, meant, candidates), options);
}

/** A finder on a table made beforehand. */
export function finderOn(bench: Bench, options: FinderOptions = {}): Finder {
	const walk = new Walk(bench, options);
	const steps: Step[] = [];
	return {
		suspects: () => walk.suspects(),
		next: () => walk.next(),
		answer(check, outcome) {
			walk.require(check, outcome);
			steps.push({ did: 'answer', check, outcome });
			walk.replay(steps);
		},
		cannot(check) {
			walk.require(check);
			steps.push({ did: 'cannot', check });
			walk.replay(steps);
		},
		undo() {
			steps.pop();
			walk.replay(steps);
		},
		verdict: () => walk.verdict(),
		get steps() {
			return steps;
		},
		get spent() {
			return walk.spent;
		},
		check: (id) => walk.bench.checks[walk.indexOf(id)],
	};
}

const idOf = ({ faults }: Candidate): string =>
	faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+');

/** Where a walk stands: weights, what may still be asked, where the tech is. Made again from the steps, so that undo is exact. */
class Walk {
	readonly bench: Bench;
	spent = 0;
	private readonly options: FinderOptions;
	private readonly ground;
	/** Weights with `unknown` last. */
	private weights: Float64Array;
	private readonly prior: Float64Array;
	private readonly search: Omit<Search, 'weights'>;
	private readonly errors: Float64Array;
	private readonly byId: ReadonlyMap<string, number>;
	private asked: ReadonlySet<number> = new Set();
	private here: number;
	private steps: readonly Step[] = [];
	private mended = false;
	private planned: Plan | null | undefined;

	constructor(bench: Bench, options: FinderOptions) {
		this.bench = bench;
		this.options = options;
		this.ground = groundOf(bench.sheet);
		this.here = this.start();
		this.byId = new Map(bench.checks.map(({ id }, at) => [id, at]));
		const known = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
		this.prior = normalise(
			Float64Array.from([...bench.candidates.map(({ weight }) => weight), known > 0 ? known * UNKNOWN : 1]),
		);
		this.weights = this.prior;
		this.search = this.searchOf();
		this.errors = Float64Array.from(bench.checks, ({ error }) => error);
	}

	private start(): number {
		return this.ground.indexOf(this.options.here ?? this.bench.complaint.fixture);
	}

	private searchOf(): Omit<Search, 'weights'> {
		const { bench, ground } = this;
		const table = makeOutcomeTable(
			bench.outcomes.map((row) => [...row, null]),
			bench.candidates.length + 1,
			bench.checks.map(({ kind }) => (kind.startsWith('mend-') ? ['still', 'cleared'] : [])),
		);
		const mends = new Map<string, number>();
		const mendOf = (mend: string): number => {
			const at = mends.get(mend) ?? mends.size;
			mends.set(mend, at);
			return at;
		};
		const refundOutcome = bench.checks.map(({ kind }, at) =>
			kind.startsWith('mend-') ? (table.labels[at] ?? []).indexOf('cleared') : -1,
		);
		return {
			table,
			mends: Int32Array.from([...bench.candidates.map(({ mend }) => mendOf(mend)), mendOf('unknown')]),
			seconds: makeSeconds(
				bench.checks.map(({ seconds }) => seconds),
				{
					refund: Float64Array.from(bench.checks, ({ kind, seconds }) => (kind.startsWith('mend-') ? seconds : 0)),
					refundOutcome: Int32Array.from(refundOutcome),
					place: Int32Array.from(bench.checks, ({ at }) => ground.indexOf(at)),
					places: ground.places.length,
					walk: ground.walk,
				},
			),
			settled: SURE,
		};
	}

	indexOf(id: string): number {
		return this.byId.get(id) ?? -1;
	}

	require(id: string, outcome?: string): void {
		const at = this.indexOf(id);
		if (at < 0)
			throw new InputError(
				'finder.check',
				'check',
				`There is no check '${id}' in this walk. Answer the one that is asked.`,
			);
		if (outcome !== undefined && !this.answersOf(at).includes(outcome)) {
			throw new InputError(
				'finder.outcome',
				'outcome',
				`'${id}' cannot show '${outcome}'. It shows one of: ${this.answersOf(at).join(', ')}.`,
			);
		}
	}

	private answersOf(check: number): readonly string[] {
		return (this.search.table.labels[check] ?? []) as readonly string[];
	}

	private predictions(check: number): readonly (string | null)[] {
		return [...(this.bench.outcomes[check] ?? []), null];
	}

	/** Stands where these steps lead, from the start. */
	replay(steps: readonly Step[]): void {
		this.steps = [...steps];
		this.planned = undefined;
		this.weights = this.prior;
		this.spent = 0;
		this.here = this.start();
		this.mended = false;
		const asked = new Set<number>();
		for (const step of steps) {
			const at = this.indexOf(step.check);
			asked.add(at);
			if (step.did === 'cannot') continue;
			const check = this.bench.checks[at] as Check;
			this.spent += secondsFrom(this.search.seconds, this.here, at);
			if (check.at !== 'hand') this.here = this.ground.indexOf(check.at);
			this.weights = reweigh(this.weights, this.predictions(at), step.outcome, this.answersOf(at).length, check.error);
			this.mended = check.kind.startsWith('mend-') && step.outcome === 'cleared';
		}
		this.asked = asked;
	}

	/** Whether the gig allows a check. */
	private isAllowed(check: Check): boolean {
		const { without = [], showRunning = false, alone = false } = this.options;
		if (check.needs.some((need) => without.includes(need))) return false;
		if (showRunning && check.disturbs) return false;
		// raising a strip and watching a lamp elsewhere takes two, unless the lamp is in sight of the desk
		return !(alone && check.needs.includes('second-person'));
	}

	next(): NextCheck | null {
		if (this.verdict()) return null;
		const plan = this.plan();
		if (!plan) return null;
		const check = this.bench.checks[plan.check] as Check;
		const ranked = plan.ranked.find((item) => item.check === plan.check);
		const answers = this.answersOf(plan.check);
		const predicted = this.predictions(plan.check);
		const outcomes = answers.map((id) => ({
			id,
			chance: sum(this.weights, (at) => (predicted[at] === id ? 1 : predicted[at] === null ? 1 / answers.length : 0)),
			suspects: this.bench.candidates.flatMap((candidate, at) => (predicted[at] === id ? [idOf(candidate)] : [])),
		}));
		return {
			check,
			seconds: secondsFrom(this.search.seconds, this.here, plan.check),
			outcomes,
			bits: ranked?.gain ?? 0,
			expected: plan.expected,
			by: plan.by,
		};
	}

	/** Worked out once where the walk stands. */
	private plan(): Plan | null {
		if (this.planned === undefined) this.planned = this.planAfresh();
		return this.planned;
	}

	private planAfresh(): Plan | null {
		const excluded = [...this.bench.checks.keys()].filter(
			(at) => this.asked.has(at) || !this.isAllowed(this.bench.checks[at] as Check),
		);
		return bestCheck({ ...this.search, weights: this.weights }, { errors: this.errors, excluded, here: this.here });
	}

	suspects(): Suspect[] {
		const answers = this.steps.flatMap((step) => (step.did === 'answer' ? [step] : []));
		const all = this.bench.candidates.map(
			(candidate, at): Suspect => ({
				id: idOf(candidate),
				faults: candidate.faults,
				weight: this.weights[at] ?? 0,
				mends: this.mendsOf(candidate),
				against: answers.flatMap(({ check, outcome }) => {
					const predicted = this.predictions(this.indexOf(check))[at] ?? null;
					return predicted !== null && predicted !== outcome ? [{ check, seen: outcome, predicted }] : [];
				}),
			}),
		);
		const unknown: Suspect = { id: 'unknown', faults: [], weight: this.weights.at(-1) ?? 0, mends: [], against: [] };
		return [...all, unknown].sort((a, b) => b.weight - a.weight);
	}

	private mendsOf({ faults }: Candidate): PlacedMend[] {
		return faults.map((fault) => {
			const { id, place } = mendFor(this.bench.sheet, fault);
			return { id, place, seconds: MENDS[id].seconds };
		});
	}

	verdict(): Verdict | null {
		const because = this.isOver();
		if (!because) return null;
		const suspects = this.suspects();
		const heaviest = suspects[0]?.weight ?? 0;
		const left = suspects.filter(({ weight }) => weight >= 0.05 * heaviest);
		return {
			suspects: left,
			mends: this.mendsInOrder(left),
			sure: left.reduce((total, { weight }) => total + weight, 0),
			confirmed: this.mended,
			because,
		};
	}

	private isOver(): Verdict['because'] | null {
		if (this.mended) return 'mended';
		const byMend = new Map<number, number>();
		for (const [at, weight] of this.weights.entries()) {
			const mend = this.search.mends[at] ?? -1;
			byMend.set(mend, (byMend.get(mend) ?? 0) + weight);
		}
		const unknown = this.search.mends.at(-1) ?? -1;
		for (const [mend, weight] of byMend) if (weight >= SURE) return mend === unknown ? 'unknown' : 'sure';
		return this.plan() === null ? 'no-check-left' : null;
	}

	/** Weight over seconds, heaviest ratio first: least expected seconds until one of them clears it. */
	private mendsInOrder(suspects: readonly Suspect[]): Verdict['mends'] {
		const mends = new Map<string, PlacedMend & { weight: number; check: string }>();
		for (const { mends: list, weight } of suspects) {
			for (const mend of list) {
				const check = `mend-${mend.id}@${mend.place}`;
				const known = mends.get(check);
				if (known) known.weight += weight;
				else mends.set(check, { ...mend, weight, check });
			}
		}
		return [...mends.values()].sort((a, b) => b.weight / b.seconds - a.weight / a.seconds);
	}
}

function sum(weights: Float64Array, share: (at: number) => number): number {
	return weights.reduce((total, weight, at) => total + weight * share(at), 0);
}
