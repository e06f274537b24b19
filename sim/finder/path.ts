import { InputError, shown } from '../../shared/error/index.ts';
import { askNext, type NextStep, secondsFrom, type TableSearch } from '../sequence/index.ts';
import type { Check } from './checks/index.ts';
import { hingeOf } from './hinge.ts';
import { beginWith, ELSE, hear, idOf, layOut, sharesOf } from './layout.ts';
import { groundOf, type WalkTable } from './route.ts';
import { type RigOutcomes, repairText } from './table.ts';
import { isRepair, textTriedBy } from './tried.ts';
import type { FinderOptions, Hinge, NextCheck, Suspect, Verdict, WalkAnswer } from './types.ts';
import {
	type AnswerRecord,
	countAgainst,
	doesAnyFit,
	endOf,
	isSettled,
	repairToTry,
	suspectsOf,
	verdictOf,
	type WalkStanding,
} from './verdict.ts';
import { type Doubt, widen } from './widen.ts';

/** Share of weight at which a repair that did not help, or the unknown, says that one fault alone may not be all. */
const DOUBT = 0.4;

interface PathSearch {
	readonly standing: readonly number[];
	readonly search: Omit<TableSearch, 'weights'>;
}

/** Where a walk stands: weights, what may still be asked, where the tech is. Made again from the steps each time, so that undo is exact. */
export class Walk {
	spent = 0;
	private readonly narrow: RigOutcomes;
	private readonly options: FinderOptions;
	private readonly ground: WalkTable;
	private readonly wider = new Map<string, RigOutcomes>();
	private table: RigOutcomes;
	private byId: ReadonlyMap<string, number> = new Map();
	private search!: Omit<TableSearch, 'weights'>;
	/** What a bench was laid out as, by the repairs done: a walk is gone through again at each step. */
	private readonly laid = new Map<RigOutcomes, Map<string, PathSearch>>();
	/** Weights with `unknown` last. */
	private weights: Float64Array = new Float64Array();
	private standing: readonly number[] = [];
	private asked: ReadonlySet<number> = new Set();
	private heard: readonly AnswerRecord[] = [];
	private here = 0;
	/** As far as the end of the walk hangs on it. */
	private state!: WalkStanding;
	/** By the steps, what was planned after them: a walk comes by again when one steps back, or has looked ahead. */
	private readonly plans = new Map<string, NextStep | null>();
	private stood = '';

	constructor(table: RigOutcomes, options: FinderOptions) {
		this.narrow = table;
		this.table = table;
		this.options = options;
		this.ground = groundOf(table.sheet);
		this.replay([]);
	}

	checkOf(id: string): Check | undefined {
		return this.table.checks[this.byId.get(id) ?? -1];
	}

	require(step: WalkAnswer): void {
		const at = this.byId.get(step.check);
		if (at === undefined)
			throw new InputError('finder.check', 'check', { trouble: 'no-such-check', found: shown(step.check) });
		const isElse = step.did === 'answer' && step.outcome === ELSE && !isRepair(this.table.checks[at] as Check);
		if (step.did === 'answer' && !isElse && !this.answersOf(at).includes(step.outcome)) {
			throw new InputError('finder.outcome', 'outcome', {
				expected: 'one-of',
				check: step.check,
				known: this.answersOf(at),
				found: shown(step.outcome),
			});
		}
	}

	/**
	 * Stands where these steps lead, from the start: by single faults, or by pairs too from where one alone explains too little. Pairs
	 * are laid out again at each repair that fails from there on, since that repair's fault may have been one of the two.
	 */
	replay(steps: readonly WalkAnswer[]): void {
		this.stood = JSON.stringify(steps);
		const doubt = this.stand(this.narrow, steps);
		if (doubt === null) return;
		const prefix = steps.slice(0, doubt.after + 1);
		const key = JSON.stringify(prefix);
		let bench = this.wider.get(key);
		if (!bench) {
			bench = widen(this.narrow, doubt, new Set(prefix.map(({ check }) => check)));
			this.wider.set(key, bench);
		}
		this.stand(bench, steps);
	}

	/** @returns after which step pairs are to be laid out, with the weights of single faults then; null for never */
	private stand(bench: RigOutcomes, steps: readonly WalkAnswer[]): Doubt | null {
		if (this.table !== bench || this.byId.size === 0) {
			this.table = bench;
			this.byId = new Map(bench.checks.map(({ id }, at) => [id, at]));
		}
		const done = new Set<string>();
		this.standAs(done);
		let belief = beginWith(bench.candidates.map(({ weight }) => weight));
		let isOut = ruledOut(bench, done);
		this.weights = sharesOf(belief, isOut);
		this.spent = 0;
		this.here = this.ground.indexOf(this.options.here ?? bench.complaint.fixture);
		let isRepaired = false;
		const asked = new Set<number>();
		const heard: AnswerRecord[] = [];
		let doubt: Doubt | null = null;
		for (const [n, step] of steps.entries()) {
			const at = this.byId.get(step.check) ?? -1;
			// a check that parts pairs alone is none of the narrow bench
			if (at < 0) continue;
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
				isRepair: isRepair(check),
			});
			isRepaired = isRepair(check) && step.outcome === 'cleared';
			const failed = step.outcome === 'still' ? textTriedBy(check.id) : null;
			const wasLikely = failed !== null && this.weightOf(this.weights, failed) > DOUBT;
			if (failed !== null) isOut = ruledOut(bench, done.add(failed));
			this.weights = sharesOf(belief, isOut);
			const isInDoubt = wasLikely || (this.weights.at(-1) ?? 0) > DOUBT;
			if (doubt ? failed !== null : isInDoubt) doubt = { after: n, weights: this.weights, repaired: new Set(done) };
			if (done.size > 0) this.standAs(done);
		}
		this.asked = asked;
		this.heard = heard;
		this.state = {
			table: bench,
			weights: this.weights,
			against: countAgainst(bench.candidates.length, heard),
			isOut,
			isRepaired: isRepaired,
			predicted: heard.at(-1)?.predicted ?? [],
			heard,
			unlike: belief.unlike,
		};
		return doubt;
	}

	/** Takes repairs done into account: of two faults, one repaired, the other's look is left. */
	private standAs(done: ReadonlySet<string>): void {
		const laid = this.laid.get(this.table) ?? new Map<string, PathSearch>();
		this.laid.set(this.table, laid);
		const key = [...done].sort().join();
		let now = laid.get(key);
		if (!now) {
			const standing = this.standingAfter(done);
			const before = [...laid.values()].find((each) => each.standing.every((at, i) => at === standing[i]));
			now = before ?? { standing, search: layOut(this.table, this.ground, standing) };
			laid.set(key, now);
		}
		this.standing = now.standing;
		this.search = now.search;
	}

	/** For each candidate, the one whose look it has once those repairs are done; -1 for none. */
	private standingAfter(done: ReadonlySet<string>): readonly number[] {
		const { candidates, sheet } = this.table;
		if (done.size === 0) return candidates.map((_, at) => at);
		const alone = new Map(candidates.map(({ faults, came }, at) => [`${came} ${idOf({ faults })}`, at]));
		return candidates.map(({ faults, came }, at) => {
			const left = faults.filter((fault) => !done.has(repairText(sheet, fault)));
			if (faults.length === 1 || left.length === faults.length) return at;
			const id = idOf({ faults: left });
			return alone.get(`${came} ${id}`) ?? alone.get(`either ${id}`) ?? -1;
		});
	}

	private weightOf(weights: Float64Array, repair: string): number {
		return this.table.candidates.reduce(
			(sum, candidate, at) => sum + (candidate.repair === repair ? (weights[at] ?? 0) : 0),
			0,
		);
	}

	private answersOf(check: number): readonly string[] {
		return (this.search.table.labels[check] ?? []) as readonly string[];
	}

	private predictions(check: number): readonly (string | null)[] {
		const row = this.table.outcomes[check] ?? [];
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
	private plan(): NextStep | null {
		let planned = this.plans.get(this.stood);
		if (planned === undefined) {
			const errors = Float64Array.from(this.table.checks, ({ error }) => error);
			const excluded = [...this.table.checks.keys()].filter(
				(at) => this.asked.has(at) || !this.isAllowed(this.table.checks[at] as Check),
			);
			const { ask = askNext } = this.options;
			const plan = ask({ ...this.search, weights: this.knownAlone() }, { errors, excluded, here: this.here });
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
	private beginning(plan: NextStep, excluded: readonly number[]): NextStep {
		const first = this.byId.get(this.options.first ?? '');
		if (first === undefined || first === plan.check || this.asked.size > 0 || excluded.includes(first)) return plan;
		return { ...plan, check: first, expected: null, by: 'ranked' };
	}

	/**
	 * What to do next: the check that is planned; or, where no check tells more while something speaks against all that is likely, the
	 * repair of the likeliest.
	 */
	private chosen(): Pick<NextStep, 'check' | 'expected' | 'by' | 'ranked'> | null {
		const plan = this.plan();
		if (plan || (doesAnyFit(this.state) && !isSettled(this.state))) return plan;
		const check = repairToTry(
			this.state,
			(at) => !this.asked.has(at) && this.isAllowed(this.table.checks[at] as Check),
		);
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
			check: this.table.checks[plan.check] as Check,
			seconds: secondsFrom(this.search.seconds, this.here, plan.check),
			outcomes: answers.map((id) => ({
				id,
				chance: this.weights.reduce((sum, weight, at) => sum + weight * shareOf(id, at), 0),
				suspects: [
					...new Set(this.table.candidates.flatMap((candidate, at) => (predicted[at] === id ? [idOf(candidate)] : []))),
				],
			})),
			bits: plan.ranked.find((item) => item.check === plan.check)?.gain ?? 0,
			expected: plan.expected,
			by: plan.by,
		};
	}

	suspects(): Suspect[] {
		return suspectsOf(this.table, this.weights, this.state.against, this.heard);
	}

	verdict(): Verdict | null {
		const because = this.isOver();
		return because && verdictOf(this.state, because, this.suspects());
	}

	/** What the verdict hangs on; null where there is none, or a repair has confirmed it, or nothing known fits. */
	hinge(): Hinge | null {
		const verdict = this.verdict();
		if (!verdict || verdict.confirmed || verdict.because === 'unknown') return null;
		return hingeOf(
			{
				table: this.table,
				predictions: (check) => this.predictions(check),
				isOpen: (check) => !this.asked.has(check) && this.isAllowed(this.table.checks[check] as Check),
				secondsTo: (check) => secondsFrom(this.search.seconds, this.here, check),
			},
			verdict,
			this.suspects(),
		);
	}

	private isOver(): Verdict['because'] | null {
		const end = endOf(this.state);
		if (end || this.chosen()) return end;
		return doesAnyFit(this.state) ? 'no-check-left' : 'unknown';
	}
}

/** By candidate, whether all its repairs were made and did not help: then it is not the cause, whatever speaks for it. */
function ruledOut({ candidates, sheet }: RigOutcomes, done: ReadonlySet<string>): readonly boolean[] {
	if (done.size === 0) return candidates.map(() => false);
	return candidates.map(({ faults }) => faults.every((fault) => done.has(repairText(sheet, fault))));
}
