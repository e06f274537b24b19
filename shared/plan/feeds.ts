import { alongRoom, leaderOf } from './line.ts';
import type { Plan, PlanRow } from './types.ts';

/** What was said of who feeds whom, and no line can have. */
export type FeedProblem =
	/** The first feeds the second and the third: a data out takes one cable. The line as planned goes to the second. */
	| { readonly is: 'fed-twice'; readonly rows: readonly [string, string, string] }
	/** Fed, over others or at once, from itself. The first of its circle along the room. */
	| { readonly is: 'fed-in-circle'; readonly rows: readonly [string] }
	/** It leads, and is fed from a follower (the second). */
	| { readonly is: 'leader-fed'; readonly rows: readonly [string, string] };

/** Whom a row is to be fed from; null: by the room again. */
export interface Feed {
	readonly row: string;
	readonly from: string | null;
}

/** The row with nothing said of what feeds it, or with one row that does. */
export function fedBy(row: PlanRow, from: string | null): PlanRow {
	const { after: _, ...rest } = row;
	return from === null ? rest : { ...rest, after: from };
}

/** The plan with no row fed from one that its line doesn't reach: of another universe, where a desk sends, or gone. */
export function fedWithin(plan: Plan): Plan {
	const universes = new Map(plan.rows.map(({ id, universe }) => [id, universe]));
	const isOff = ({ after, universe }: PlanRow): boolean =>
		after !== undefined && (plan.source === 'leader' ? !universes.has(after) : universes.get(after) !== universe);
	if (!plan.rows.some(isOff)) return plan;
	return { ...plan, rows: plan.rows.map((row) => (isOff(row) ? fedBy(row, null) : row)) };
}

/** Rows of which somebody had said what feeds them, and no longer can: their line doesn't reach it after a change. What a person took back is not among them. */
export function letGo(was: Plan, next: Plan): string[] {
	const said = new Map(was.rows.flatMap(({ id, after }) => (after === undefined ? [] : [[id, after] as const])));
	if (said.size === 0) return [];
	const gone = next.rows.filter(({ id, after }) => after === undefined && said.has(id));
	const back = new Map(gone.map((row) => [row.id, fedBy(row, said.get(row.id) ?? null)]));
	const kept = fedWithin({ ...next, rows: next.rows.map((row) => back.get(row.id) ?? row) });
	return kept.rows.flatMap(({ id, after }) => (back.has(id) && after === undefined ? [id] : []));
}

/** From which row each is fed, as said, along the room: the order in which a line takes them at their word. */
const feedsOf = (plan: Plan): Map<string, string> =>
	new Map(alongRoom(fedWithin(plan).rows).flatMap(({ id, after }) => (after === undefined ? [] : [[id, after]])));

/** All that no line can have of what was said; each circle once. */
export function feedProblems(plan: Plan): FeedProblem[] {
	const feeds = feedsOf(plan);
	const leader = leaderOf(plan)?.id;
	const feeder = feeds.get(leader ?? '');
	if (leader !== undefined) feeds.delete(leader);
	const fed = new Map<string, string>();
	const twice = [...feeds].flatMap(([to, from]): FeedProblem[] => {
		const other = fed.get(from);
		if (other === undefined) fed.set(from, to);
		return other === undefined ? [] : [{ is: 'fed-twice', rows: [from, other, to] }];
	});
	const leads: FeedProblem[] =
		leader === undefined || feeder === undefined ? [] : [{ is: 'leader-fed', rows: [leader, feeder] }];
	return [...leads, ...twice, ...circlesOf(feeds).map((row): FeedProblem => ({ is: 'fed-in-circle', rows: [row] }))];
}

/** The first row along the room of each circle. */
function circlesOf(feeds: ReadonlyMap<string, string>): string[] {
	const along = [...feeds.keys()];
	const done = new Set<string>();
	return along.flatMap((id) => {
		const places = new Map<string, number>();
		let at: string | undefined = id;
		for (; at !== undefined && !done.has(at); at = feeds.get(at)) {
			done.add(at);
			places.set(at, places.size);
		}
		const start = places.get(at ?? '');
		if (start === undefined) return [];
		const circle = new Set([...places.keys()].slice(start));
		return along.filter((each) => circle.has(each)).slice(0, 1);
	});
}

/** What can be done of such a problem, the nearest to what was said first. */
export function feedRepairs(plan: Plan, problem: FeedProblem): Feed[] {
	if (problem.is === 'leader-fed') return [{ row: problem.rows[0], from: null }];
	if (problem.is === 'fed-in-circle') return [{ row: problem.rows[0], from: null }];
	const [, other, to] = problem.rows;
	const next = new Map<string, string>();
	for (const [row, from] of feedsOf(plan)) if (!next.has(from)) next.set(from, row);
	const seen = new Set<string>();
	let end = other;
	for (let at: string | undefined = other; at !== undefined && !seen.has(at); at = next.get(at)) {
		seen.add(at);
		end = at;
	}
	const alone: Feed = { row: to, from: null };
	return next.has(end) || seen.has(to) ? [alone] : [{ row: to, from: end }, alone];
}
