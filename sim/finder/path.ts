import { InputError, shown } from '../../shared/error/index.ts';
import { askNext, type Plan, type Search, secondsFrom } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { ELSE, idOf, isMend, layOut, SURE } from './layout.ts';
import { normalise, reweigh } from './posterior.ts';
import { mendSecondsFromFloor } from './route.ts';
import { type Bench, type Candidate, mendFor, mendText } from './table.ts';
import type { FinderOptions, NextCheck, PlacedMend, Step, Suspect, Verdict } from './types.ts';
import { type Ground, groundOf } from './walk.ts';
import { widen } from './widen.ts';

/** The weight of what the model does not know, against all it knows (common practice, no source). */
const UNKNOWN = 0.03;

/** Share of weight at which a mend that did not help, or the unknown, says that one fault alone may not be all. */
const DOUBT = 0.4;

/** Share of the heaviest at which a suspect still belongs to the verdict. */
const STILL_IN = 0.05;

/** The same, of those that one mend has cleared: any of them may have been it. */
const FAINT = 0.0005;

/** What was answered, and what each suspect had predicted. */
interface Heard {
	readonly check: string;
	readonly outcome: string;
	readonly predicted: readonly (string | null)[];
}

interface Laid {
	readonly standing: readonly number[];
	readonly search: Omit<Search, 'weights'>;
}

/** Where a walk stands: weights, what may still be asked, where the tech is. Made again from the steps each time, so that undo is exact. */
export class Walk {
	spent = 0;
	private readonly narrow: Bench;
	private readonly options: FinderOptions;
	private readonly ground: Ground;
	private readonly wider = new Map<string, Bench>();
	private bench: Bench;
	private byId: ReadonlyMap<string, number> = new Map();
	private search!: Omit<Search, 'weights'>;
	/** What a bench was laid out as, by the mends done: a walk is gone through again at each step. */
	private readonly laid = new Map<Bench, Map<string, Laid>>();
	/** Weights with `unknown` last. */
	private weights: Float64Array;
	private standing: readonly number[] = [];
	private asked: ReadonlySet<number> = new Set();
	private heard: readonly Heard[] = [];
	private here = 0;
	private mended = false;
	/** By the steps, what was planned after them: a walk comes by again when one steps back, or has looked ahead. */
	private readonly plans = new Map<string, Plan | null>();
	private stood = '';

	constructor(bench: Bench, options: FinderOptions) {
		this.narrow = bench;
		this.bench = bench;
		this.options = options;
		this.ground = groundOf(bench.sheet);
		this.weights = new Float64Array();
		this.replay([]);
	}

	checkOf(id: string): Check | undefined {
		return this.bench.checks[this.byId.get(id) ?? -1];
	}

	require(step: Step): void {
		const at = this.byId.get(step.check);
		if (at === undefined)
			throw new InputError(
				'finder.check',
				'check',
				`There is no check ${shown(step.check)} in this walk. Answer the one that is asked.`,
			);
		const isElse = step.did === 'answer' && step.outcome === ELSE && !isMend(this.bench.checks[at] as Check);
		if (step.did === 'answer' && !isElse && !this.answersOf(at).includes(step.outcome)) {
			throw new InputError(
				'finder.outcome',
				'outcome',
				`'${step.check}' cannot show ${shown(step.outcome)}. It shows one of: ${this.answersOf(at).join(', ')}.`,
			);
		}
	}

	/** Stands where these steps lead, from the start: by single faults, or by pairs too from where one alone explains too little. */
	replay(steps: readonly Step[]): void {
		this.stood = JSON.stringify(steps);
		const doubt = this.stand(this.narrow, steps);
		if (doubt === null) return;
		const prefix = steps.slice(0, doubt.after + 1);
		const key = JSON.stringify(prefix);
		let bench = this.wider.get(key);
		if (!bench) {
			bench = widen(this.narrow, doubt.weights, doubt.mended, new Set(prefix.map(({ check }) => check)));
			this.wider.set(key, bench);
		}
		this.stand(bench, steps);
	}

	/** @returns after which step single faults alone were first in doubt, with the weights then; null for never */
	private stand(
		bench: Bench,
		steps: readonly Step[],
	): { after: number; weights: Float64Array; mended: ReadonlySet<string> } | null {
		if (this.bench !== bench || this.byId.size === 0) {
			this.bench = bench;
			this.byId = new Map(bench.checks.map(({ id }, at) => [id, at]));
		}
		this.standAs(new Set());
		this.weights = this.prior();
		this.spent = 0;
		this.here = this.ground.indexOf(this.options.here ?? bench.complaint.fixture);
		this.mended = false;
		const asked = new Set<number>();
		const heard: Heard[] = [];
		const done = new Set<string>();
		let doubt: { after: number; weights: Float64Array; mended: ReadonlySet<string> } | null = null;
		for (const [n, step] of steps.entries()) {
			const at = this.byId.get(step.check) ?? -1;
			asked.add(at);
			if (step.did === 'cannot') continue;
			const check = bench.checks[at] as Check;
			this.spent += secondsFrom(this.search.seconds, this.here, at);
			if (check.at !== 'hand') this.here = this.ground.indexOf(check.at);
			const predicted = this.predictions(at);
			heard.push({ check: check.id, outcome: step.outcome, predicted });
			const before = this.weights;
			this.weights = reweigh(before, predicted, step.outcome, this.answersOf(at).length, check.error);
			this.mended = isMend(check) && step.outcome === 'cleared';
			if (isMend(check) && step.outcome === 'still') done.add(check.id.slice('mend-'.length));
			const failed =
				isMend(check) && step.outcome === 'still' && this.weightOf(before, check.id.slice('mend-'.length)) > DOUBT;
			if (failed || (this.weights.at(-1) ?? 0) > DOUBT)
				doubt ??= { after: n, weights: this.weights, mended: new Set(done) };
			// what comes after is asked of the wider bench
			if (doubt && bench === this.narrow) break;
			if (done.size > 0) this.standAs(done);
		}
		this.asked = asked;
		this.heard = heard;
		return doubt;
	}

	/** Takes mends done into account: of two faults, one mended, the other's look is left. */
	private standAs(done: ReadonlySet<string>): void {
		const laid = this.laid.get(this.bench) ?? new Map<string, Laid>();
		this.laid.set(this.bench, laid);
		const key = [...done].sort().join();
		let now = laid.get(key);
		if (!now) {
			const standing = this.standingAfter(done);
			const before = [...laid.values()].find((each) => each.standing.every((at, i) => at === standing[i]));
			now = before ?? { standing, search: layOut(this.bench, this.ground, standing) };
			laid.set(key, now);
		}
		this.standing = now.standing;
		this.search = now.search;
	}

	/** For each candidate, the one whose look it has once those mends are done; -1 for none. */
	private standingAfter(done: ReadonlySet<string>): readonly number[] {
		const { candidates, sheet } = this.bench;
		if (done.size === 0) return candidates.map((_, at) => at);
		const alone = new Map(candidates.map((candidate, at) => [idOf(candidate), at]));
		return candidates.map(({ faults }, at) => {
			const left = faults.filter((fault) => !done.has(mendText(sheet, fault)));
			return faults.length === 1 || left.length === faults.length ? at : (alone.get(idOf({ faults: left })) ?? -1);
		});
	}

	private prior(): Float64Array {
		const weights = this.bench.candidates.map(({ weight }) => weight);
		const known = weights.reduce((sum, weight) => sum + weight, 0);
		return normalise(Float64Array.from([...weights, known > 0 ? known * UNKNOWN : 1]));
	}

	private weightOf(weights: Float64Array, mend: string): number {
		return this.bench.candidates.reduce(
			(sum, candidate, at) => sum + (candidate.mend === mend ? (weights[at] ?? 0) : 0),
			0,
		);
	}

	private answersOf(check: number): readonly string[] {
		return (this.search.table.labels[check] ?? []) as readonly string[];
	}

	private predictions(check: number): readonly (string | null)[] {
		const row = this.bench.outcomes[check] ?? [];
		return [...this.standing.map((at) => row[at] ?? null), null];
	}

	/** Whether the gig allows a check. */
	private isAllowed(check: Check): boolean {
		const { without = [], showRunning = false, alone = false } = this.options;
		if (check.needs.some((need) => without.includes(need))) return false;
		if (showRunning && check.disturbs) return false;
		return !(alone && check.needs.includes('second-person'));
	}

	/** Worked out once wherever the walk stands. */
	private plan(): Plan | null {
		let planned = this.plans.get(this.stood);
		if (planned === undefined) {
			const errors = Float64Array.from(this.bench.checks, ({ error }) => error);
			const excluded = [...this.bench.checks.keys()].filter(
				(at) => this.asked.has(at) || !this.isAllowed(this.bench.checks[at] as Check),
			);
			const plan = askNext({ ...this.search, weights: this.weights }, { errors, excluded, here: this.here });
			planned = plan && this.beginning(plan, excluded);
			this.plans.set(this.stood, planned);
		}
		return planned;
	}

	/** The plan with the check that this walk is to begin with in place of the best, while nothing else was asked. */
	private beginning(plan: Plan, excluded: readonly number[]): Plan {
		const first = this.byId.get(this.options.first ?? '');
		if (first === undefined || first === plan.check || this.asked.size > 0 || excluded.includes(first)) return plan;
		return { ...plan, check: first, expected: null, by: 'ranked' };
	}

	next(): NextCheck | null {
		if (this.verdict()) return null;
		const plan = this.plan();
		if (!plan) return null;
		const predicted = this.predictions(plan.check);
		const answers = this.answersOf(plan.check);
		const shareOf = (id: string, at: number): number =>
			predicted[at] === id ? 1 : predicted[at] === null ? 1 / answers.length : 0;
		return {
			check: this.bench.checks[plan.check] as Check,
			seconds: secondsFrom(this.search.seconds, this.here, plan.check),
			outcomes: answers.map((id) => ({
				id,
				chance: this.weights.reduce((sum, weight, at) => sum + weight * shareOf(id, at), 0),
				suspects: this.bench.candidates.flatMap((candidate, at) => (predicted[at] === id ? [idOf(candidate)] : [])),
			})),
			bits: plan.ranked.find((item) => item.check === plan.check)?.gain ?? 0,
			expected: plan.expected,
			by: plan.by,
		};
	}

	suspects(): Suspect[] {
		const all = this.bench.candidates.map(
			(candidate, at): Suspect => ({
				id: idOf(candidate),
				faults: candidate.faults,
				weight: this.weights[at] ?? 0,
				mends: this.mendsOf(candidate),
				against: this.heard.flatMap(({ check, outcome, predicted }) => {
					const said = predicted[at] ?? null;
					return said !== null && said !== outcome ? [{ check, seen: outcome, predicted: said }] : [];
				}),
			}),
		);
		const unknown: Suspect = { id: 'unknown', faults: [], weight: this.weights.at(-1) ?? 0, mends: [], against: [] };
		return [...all, unknown].sort((a, b) => b.weight - a.weight);
	}

	private mendsOf({ faults }: Candidate): PlacedMend[] {
		return faults.map((fault) => {
			const { id, place } = mendFor(this.bench.sheet, fault);
			return { id, place, seconds: mendSecondsFromFloor(this.bench.sheet, { id, place }) };
		});
	}

	verdict(): Verdict | null {
		const because = this.isOver();
		if (!because) return null;
		const all = this.suspects();
		// what the mend that helped would not have cleared is out, whatever was answered before
		const last = this.heard.at(-1);
		const cleared = new Set(
			this.bench.candidates.flatMap((candidate, at) => (last?.predicted[at] === 'cleared' ? [idOf(candidate)] : [])),
		);
		const suspects = this.mended && cleared.size > 0 ? all.filter(({ id }) => cleared.has(id)) : all;
		const heaviest = suspects[0]?.weight ?? 0;
		const left = suspects.filter(({ weight }) => weight >= (this.mended ? FAINT : STILL_IN) * heaviest);
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
		const shares = new Map<number, number>();
		for (const [at, weight] of this.weights.entries()) {
			const mend = this.search.mends[at] ?? -1;
			shares.set(mend, (shares.get(mend) ?? 0) + weight);
		}
		const unknown = this.search.mends.at(-1) ?? -1;
		for (const [mend, share] of shares) if (share >= SURE) return mend === unknown ? 'unknown' : 'sure';
		return this.plan() === null ? 'no-check-left' : null;
	}

	/** Weight over seconds, heaviest ratio first: least expected seconds until one of them clears it. Mends that were tried are out. */
	private mendsInOrder(suspects: readonly Suspect[]): Verdict['mends'] {
		const tried = new Set(this.heard.map(({ check }) => check));
		const mends = new Map<string, PlacedMend & { weight: number; check: string }>();
		for (const { mends: list, weight } of suspects) {
			for (const mend of list) {
				const check = `mend-${mend.id}@${mend.place}`;
				if (tried.has(check) && !this.mended) continue;
				const known = mends.get(check);
				if (known) known.weight += weight;
				else mends.set(check, { ...mend, weight, check });
			}
		}
		return [...mends.values()].sort((a, b) => b.weight / b.seconds - a.weight / a.seconds);
	}
}
