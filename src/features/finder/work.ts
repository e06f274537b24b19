import { fetched } from '../../../shared/error/index.ts';
import { loadProfile } from '../../../shared/profile/index.ts';
import { loadProfiles, quickSheet, type RigSheet } from '../../../shared/sheet/index.ts';
import { complaintsOf, meantWitness, openBench, openPart, type Witness } from '../../../sim/finder/index.ts';
import { complaintText } from '../../wording/index.ts';
import { aheadOf } from './ahead.ts';
import { readBundled } from './bundled.ts';
import type { Asks, Stage } from './protocol.ts';
import { type Stand, standOn } from './stand.ts';
import type { ComplaintView, LaidView } from './view.ts';
import { viewWalk } from './viewWalk.ts';
import type { Allows, RigChoice, SetWalk } from './walk.ts';

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
	let meant: { readonly sheet: RigSheet; readonly witness: Witness } | null = null;
	let table: { readonly key: string; readonly stand: Stand } | null = null;
	let part: { readonly key: string; readonly stand: Stand | null } | null = null;
	let ahead: readonly (() => void)[] = [];

	const meantOf = (sheet: RigSheet): Witness => {
		if (meant?.sheet !== sheet) meant = { sheet, witness: meantWitness(sheet) };
		return meant.witness;
	};
	const keyOf = ({ rig, fixture, complaint, learnt }: SetWalk): string =>
		JSON.stringify([rig, fixture, complaint, learnt]);
	/** On part of the table; null for a rig too small to need it. */
	const partOf = (walk: SetWalk, sheet: RigSheet): Stand | null => {
		const key = keyOf(walk);
		if (part?.key !== key) {
			const { fixture, complaint, learnt } = walk;
			const bench = openPart(sheet, { kind: complaint, fixture }, { learnt, standIn: isStandIn(walk) }, meantOf(sheet));
			part = { key, stand: bench && standOn(bench) };
		}
		return part.stand;
	};
	const wholeOf = (walk: SetWalk, sheet: RigSheet): Stand => {
		const key = keyOf(walk);
		if (table?.key !== key) {
			const { fixture, complaint, learnt } = walk;
			const bench = openBench(
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

	return {
		async open(asks) {
			if (asks.walk === null && asks.counts === null) return { kept: null, learnt: {}, damaged: [] };
			return (await reading()).readStored(asks);
		},
		async read({ text }) {
			return (await reading()).readRig(text);
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
			if (isPartEnough && walk.steps.length === 0 && table?.key !== keyOf(walk)) {
				tell('table');
				const stand = partOf(walk, sheet);
				const finder = stand?.at(walk, allows);
				if (stand && finder?.next()) return { ...viewWalk(stand.bench, finder, walk), isPart: true };
			}
			if (table?.key !== keyOf(walk)) tell('table');
			const stand = wholeOf(walk, sheet);
			tell('choosing');
			const view = viewWalk(stand.bench, stand.at(walk, allows), walk);
			ahead = aheadOf(stand, walk, allows, view);
			return view;
		},
	};
}

/** A rig told by a few answers is not the fixtures that were drawn for it. */
const isStandIn = ({ rig }: SetWalk): boolean => rig.kind === 'quick';

async function sheetOf(rig: RigChoice): Promise<RigSheet> {
	if (rig.kind === 'quick') {
		await loadProfile(rig.profile);
		return quickSheet(rig);
	}
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
