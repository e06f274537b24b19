import { InputError, shown } from '../../shared/error/index.ts';
import { askNext, type Plan, type Search, secondsFrom } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { beginWith, ELSE, hear, idOf, isMend, layOut, sharesOf } from './layout.ts';
import { type Ground, groundOf } from './route.ts';
import { type Bench, mendText } from './table.ts';
import type { FinderOptions, NextCheck, Step, Suspect, Verdict } from './types.ts';
import {
	countAgainst,
	doesAnyFit,
	endOf,
	type Heard,
	isSettled,
	mendToTry,
	type Standing,
	suspectsOf,
	verdictOf,
} from './verdict.ts';
import { widen } from './widen.ts';

/** Share of weight at which a mend that did not help, or the unknown, says that one fault alone may not be all. */
const DOUBT = 0.4;

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
	private weights: Float64Array = new Float64Array();
	private standing: readonly number[] = [];
	private asked: ReadonlySet<number> = new Set();
	private heard: readonly Heard[] = [];
	private here = 0;
	/** As far as the end of the walk hangs on it. */
	private state!: Standing;
	/** By the steps, what was planned after them: a walk comes by again when one steps back, or has looked ahead. */
	private readonly plans = new Map<string, Plan | null>();
	private stood = '';

	constructor(bench: Bench, options: FinderOptions) {
		this.narrow = bench;
		this.bench = bench;
		this.options = options;
		this.ground = groundOf(bench.sheet);
		this.replay([]);
	}

	checkOf(id: string): Check | undefined {
		return this.bench.checks[this.byId.get(id) ?? -1];
	}

	require(step: Step): void {
		const at = this.byId.get(step.check);
		if (at === undefined)
			throw new InputError('finder.check', 'check', { trouble: 'no-such-check', found: shown(step.check) });
		const isElse = step.did === 'answer' && step.outcome === ELSE && !isMend(this.bench.checks[at] as Check);
		if (step.did === 'answer' && !isElse && !this.answersOf(at).includes(step.outcome)) {
			throw new InputError('finder.outcome', 'outcome', {
				expected: 'one-of',
				check: step.check,
				known: this.answersOf(at),
				found: shown(step.outcome),
			});
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
		const done = new Set<string>();
		this.standAs(done);
		let belief = beginWith(bench.candidates.map(({ weight }) => weight));
		let isOut = ruledOut(bench, done);
		this.weights = sharesOf(belief, isOut);
		this.spent = 0;
		this.here = this.ground.indexOf(this.options.here ?? bench.complaint.fixture);
		let isMended = false;
		const asked = new Set<number>();
		const heard: Heard[] = [];
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
			belief = hear(belief, {
				predicted,
				said: step.outcome,
				answers: this.answersOf(at).length,
				error: check.error,
				isMend: isMend(check),
			});
			isMended = isMend(check) && step.outcome === 'cleared';
			const failed = isMend(check) && step.outcome === 'still' ? check.id.slice('mend-'.length) : null;
			const wasLikely = failed !== null && this.weightOf(this.weights, failed) > DOUBT;
			if (failed !== null) isOut = ruledOut(bench, done.add(failed));
			this.weights = sharesOf(belief, isOut);
			if (wasLikely || (this.weights.at(-1) ?? 0) > DOUBT)
				doubt ??= { after: n, weights: this.weights, mended: new Set(done) };
			// what comes after is asked of the wider bench
			if (doubt && bench === this.narrow) break;
			if (done.size > 0) this.standAs(done);
		}
		this.asked = asked;
		this.heard = heard;
		this.state = {
			bench,
			weights: this.weights,
			against: countAgainst(bench.candidates.length, heard),
			isOut,
			isMended,
			predicted: heard.at(-1)?.predicted ?? [],
			answered: new Set(heard.map(({ check }) => check)),
			unlike: belief.unlike,
		};
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
		const alone = new Map(candidates.map(({ faults, came }, at) => [`${came} ${idOf({ faults })}`, at]));
		return candidates.map(({ faults, came }, at) => {
			const left = faults.filter((fault) => !done.has(mendText(sheet, fault)));
			if (faults.length === 1 || left.length === faults.length) return at;
			const id = idOf({ faults: left });
			return alone.get(`${came} ${id}`) ?? alone.get(`either ${id}`) ?? -1;
		});
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
			const plan = askNext({ ...this.search, weights: this.knownAlone() }, { errors, excluded, here: this.here });
			planned = plan && this.beginning(plan, excluded);
			this.plans.set(this.stood, planned);
		}
		return planned;
	}

	/** Weights to choose a check by: no check parts what is not known from the rest, so it is left out. */
	private knownAlone(): Float64Array {
		const weights = this.weights.slice();
		weights[weights.length - 1] = weights.length > 1 ? 0 : 1;
		return weights;
	}

	/** The plan with the check that this walk is to begin with in place of the best, while nothing else was asked. */
	private beginning(plan: Plan, excluded: readonly number[]): Plan {
		const first = this.byId.get(this.options.first ?? '');
		if (first === undefined || first === plan.check || this.asked.size > 0 || excluded.includes(first)) return plan;
		return { ...plan, check: first, expected: null, by: 'ranked' };
	}

	/**
	 * What to do next: the check that is planned; or, where no check tells more while something speaks against all that is likely, the
	 * repair of the likeliest.
	 */
	private chosen(): Pick<Plan, 'check' | 'expected' | 'by' | 'ranked'> | null {
		const plan = this.plan();
		if (plan || (doesAnyFit(this.state) && !isSettled(this.state))) return plan;
		const check = mendToTry(this.state, (at) => !this.asked.has(at) && this.isAllowed(this.bench.checks[at] as Check));
		return check < 0 ? null : { check, expected: null, by: 'ranked', ranked: [] };
	}

	next(): NextCheck | null {
		if (this.isOver()) return null;
		const plan = this.chosen();
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
				suspects: [
					...new Set(this.bench.candidates.flatMap((candidate, at) => (predicted[at] === id ? [idOf(candidate)] : []))),
				],
			})),
			bits: plan.ranked.find((item) => item.check === plan.check)?.gain ?? 0,
			expected: plan.expected,
			by: plan.by,
		};
	}

	suspects(): Suspect[] {
		return suspectsOf(this.bench, this.weights, this.state.against, this.heard);
	}

	verdict(): Verdict | null {
		const because = this.isOver();
		return because && verdictOf(this.state, because, this.suspects());
	}

	private isOver(): Verdict['because'] | null {
		const end = endOf(this.state);
		if (end || this.chosen()) return end;
		return doesAnyFit(this.state) ? 'no-check-left' : 'unknown';
	}
}

/** By candidate, whether all its repairs were made and did not help: then it is not the cause, whatever speaks for it. */
function ruledOut({ candidates, sheet }: Bench, done: ReadonlySet<string>): readonly boolean[] {
	if (done.size === 0) return candidates.map(() => false);
	return candidates.map(({ faults }) => faults.every((fault) => done.has(mendText(sheet, fault))));
}
