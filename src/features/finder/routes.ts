/** What the finder does in the worker: the door of `src/engine`, and of the fault tree, which takes up the finder's kept rig. */

import { fetched, isInputError } from '../../../shared/error/index.ts';
import { loadProfiles, type RigSheet } from '../../../shared/sheet/index.ts';
import {
	complaintsOf,
	ELSE,
	type Finder,
	finderOn,
	meantWitness,
	openOutcomes,
	openPart,
	type RigOutcomes,
	type Witness,
} from '../../../sim/finder/index.ts';
import { complaintText } from '../../wording/index.ts';
import type { Asks, ComplaintView, LaidView, Stage, WalkView } from './view.ts';
import { viewWalk } from './viewWalk.ts';
import { type Allows, optionsOf, type RigChoice, readBundled, readQuick, type SetWalk, type WalkStep } from './walk.ts';

// what reads sheets, links and kept walks carries a schema library, and most visits bring none of them
const reading = () => fetched(import('./reading.ts'));

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface Work {
	open(asks: Asks['open']['asks']): Promise<Asks['open']['gives']>;
	read(asks: Asks['read']['asks']): Promise<Asks['read']['gives']>;
	lay(asks: Asks['lay']['asks']): Promise<LaidView>;
	complaints(asks: Asks['complaints']['asks'], tell: (stage: Stage) => void): Promise<readonly ComplaintView[]>;
	look(asks: Asks['look']['asks'], tell: (stage: Stage) => void): Promise<Asks['look']['gives']>;
	/** What can be worked out before it is asked for, piece by piece (see `aheadOf`); handed out once. */
	ahead(): readonly (() => void)[];
}

/** Keeps what was worked out last, since the next question is nearly always about the same rig and complaint. */
export function makeWork(): Work {
	const sheets = remember(sheetOf);
	const { meantOf, partOf, wholeOf, hasWhole } = lastTables();
	let ahead: readonly (() => void)[] = [];

	return {
		async open(asks) {
			if (asks.walk === null && asks.counts === null) return { kept: null, learnt: {}, damaged: [] };
			return (await reading()).readStored(asks);
		},
		async read({ text }) {
			return (await reading()).readText(text);
		},
		async lay({ rig }) {
			const { name, fixtures } = await sheets(rig);
			return {
				name,
				isQuick: rig.kind === 'quick',
				fixtures: fixtures.map((each) => ({ id: each.id, name: each.name })),
			};
		},
		async complaints({ rig, fixture }, tell) {
			tell('opening');
			const sheet = await sheets(rig);
			// asked of one fixture, so that a long line is not gone through whole
			const one = { ...sheet, fixtures: sheet.fixtures.filter(({ id }) => id === fixture) };
			return complaintsOf(meantOf(sheet), one).map((complaint) => ({
				kind: complaint.kind,
				...complaintText(sheet, complaint),
			}));
		},
		ahead() {
			const pieces = ahead;
			ahead = [];
			return pieces;
		},
		async look({ walk, allows, isPartEnough }, tell) {
			ahead = [];
			const sheet = await sheets(walk.rig);
			if (isPartEnough && walk.steps.length === 0 && !hasWhole(walk)) {
				tell('table');
				const stand = partOf(walk, sheet);
				const finder = stand?.at(walk, allows);
				if (stand && finder?.next()) return { ...viewWalk(stand.bench, finder, walk), isPart: true };
			}
			if (!hasWhole(walk)) tell('table');
			const stand = wholeOf(walk, sheet);
			tell('choosing');
			const view = viewWalk(stand.bench, stand.at(walk, allows), walk);
			ahead = aheadOf(stand, walk, allows, view);
			return view;
		},
	};
}

/** The tables worked out last: the whole of one, part of one, and how the rig is meant to be. */
interface LastTables {
	meantOf(sheet: RigSheet): Witness;
	/** On part of the table; null for a rig too small to need it. */
	partOf(walk: SetWalk, sheet: RigSheet): FinderStand | null;
	wholeOf(walk: SetWalk, sheet: RigSheet): FinderStand;
	/** Whether the whole table is there already. */
	hasWhole(walk: SetWalk): boolean;
}

function lastTables(): LastTables {
	let meant: { readonly sheet: RigSheet; readonly witness: Witness } | null = null;
	let table: { readonly key: string; readonly stand: FinderStand } | null = null;
	let part: { readonly key: string; readonly stand: FinderStand | null } | null = null;

	const meantOf = (sheet: RigSheet): Witness => {
		if (meant?.sheet !== sheet) meant = { sheet, witness: meantWitness(sheet) };
		return meant.witness;
	};
	const keyOf = ({ rig, fixture, complaint, learnt }: SetWalk): string =>
		JSON.stringify([rig, fixture, complaint, learnt]);
	const partOf = (walk: SetWalk, sheet: RigSheet): FinderStand | null => {
		const key = keyOf(walk);
		if (part?.key !== key) {
			const { fixture, complaint, learnt } = walk;
			const bench = openPart(sheet, { kind: complaint, fixture }, { learnt, standIn: isStandIn(walk) }, meantOf(sheet));
			part = { key, stand: bench && standOn(bench) };
		}
		return part.stand;
	};
	const wholeOf = (walk: SetWalk, sheet: RigSheet): FinderStand => {
		const key = keyOf(walk);
		if (table?.key !== key) {
			const { fixture, complaint, learnt } = walk;
			const bench = openOutcomes(
				sheet,
				{ kind: complaint, fixture },
				{ learnt, standIn: isStandIn(walk) },
				meantOf(sheet),
			);
			// so that a walk begins alike, whether the whole table was there or not
			const firstOf = (allows: Allows) => partOf(walk, sheet)?.at({ steps: [] }, allows).next()?.check.id;
			table = { key, stand: standOn(bench, firstOf) };
		}
		return table.stand;
	};
	return { meantOf, partOf, wholeOf, hasWhole: (walk) => table?.key === keyOf(walk) };
}

/** A rig told by a few answers is not the fixtures that were drawn for it. */
const isStandIn = ({ rig }: SetWalk): boolean => rig.kind === 'quick';

async function sheetOf(rig: RigChoice): Promise<RigSheet> {
	if (rig.kind === 'quick') return readQuick(rig);
	if (rig.kind === 'bundled') return readBundled(rig.id);
	await loadProfiles(rig.sheet);
	return rig.sheet;
}

/** The last answer, for as long as the same is asked; one that failed is asked for anew. */
function remember<Q, A>(answer: (question: Q) => Promise<A>): (question: Q) => Promise<A> {
	let last: { readonly key: string; readonly answer: A } | null = null;
	return async (question) => {
		const key = JSON.stringify(question);
		if (last?.key !== key) last = { key, answer: await answer(question) };
		return last.answer;
	};
}

/** The sheet of the finder's kept walk, from its text; null where it has none that can be read. */
export async function keptRig(text: string): Promise<RigSheet | null> {
	// fetched only here: most who come through that door bring no walk
	return (await import('./reading.ts')).readKeptRig(text);
}

/** A finder that stands where a walk stands. Moving it on by a step is far quicker than walking it there from the start. */
export interface FinderStand {
	readonly bench: RigOutcomes;
	/** @throws InputError `finder.check` or `finder.outcome` where a step does not fit the table */
	at(walk: Pick<SetWalk, 'steps'>, allows: Allows): Finder;
}

/** @param firstOf the check a walk begins with, where that is not the best of this bench; asked for walks with no steps alone */
export function standOn(
	bench: RigOutcomes,
	firstOf: (allows: Allows) => string | undefined = () => undefined,
): FinderStand {
	let key = '';
	let isBegun = false;
	let finder: Finder | null = null;
	let taken: WalkStep[] = [];
	return {
		bench,
		at({ steps }, allows) {
			const options = JSON.stringify(allows);
			const begins = steps.length === 0;
			if (!finder || key !== options || (begins && !isBegun)) {
				const first = begins ? firstOf(allows) : undefined;
				finder = finderOn(bench, { ...optionsOf(allows), ...(first === undefined ? {} : { first }) });
				key = options;
				isBegun = begins;
				taken = [];
			}
			while (taken.length > shared(taken, steps)) {
				finder.undo();
				taken.pop();
			}
			for (const step of steps.slice(taken.length)) {
				take(finder, step);
				taken.push(step);
			}
			return finder;
		},
	};
}

/** How many steps two walks begin with alike. */
function shared(one: readonly WalkStep[], two: readonly WalkStep[]): number {
	const apart = one.findIndex((step, i) => JSON.stringify(step) !== JSON.stringify(two[i]));
	return apart < 0 ? one.length : apart;
}

/** An answer that no suspect would show is taken for something else. */
function take(finder: Finder, step: WalkStep): void {
	if (step.did !== 'answer') {
		finder.cannot(step.check);
		return;
	}
	try {
		finder.answer(step.check, step.outcome);
	} catch (error) {
		if (!isInputError(error) || error.code !== 'finder.outcome') throw error;
		finder.answer(step.check, ELSE);
	}
}

/** What may be answered next, likeliest first: each answer to the check asked, or that the repair to try first did not help. */
function answersTo({ check, verdict }: WalkView): WalkStep[] {
	if (check)
		return check.answers
			.toSorted((a, b) => b.chance - a.chance)
			.map(({ id }) => ({ did: 'answer', check: check.id, outcome: id }));
	const repair = verdict?.because === 'mended' ? undefined : verdict?.repairs[0];
	return repair ? [{ did: 'answer', check: repair.check, outcome: 'still' }] : [];
}

/**
 * Works out what comes of each answer while the person is still at the check, one at a time: what a repair that did not help brings
 * in takes longest, and the repair itself takes minutes.
 */
export const aheadOf = (stand: FinderStand, walk: SetWalk, allows: Allows, view: WalkView): (() => void)[] =>
	answersTo(view).map((step) => () => void stand.at({ steps: [...walk.steps, step] }, allows).next());

const { ahead, ...routes } = makeWork();

export { ahead, routes };
