import { quickWords } from '../../content/finder/index.ts';
import { quickSheet, type RigSheet } from '../../shared/sheet/index.ts';
import { complaintsOf, meantWitness, openBench, type Witness } from '../../sim/finder/index.ts';
import { complaintText } from '../words/index.ts';
import type { Asks, Stage } from './protocol.ts';
import { type Stand, standOn } from './stand.ts';
import type { ComplaintView, LaidView } from './view.ts';
import { viewWalk } from './viewWalk.ts';
import type { RigChoice, SetWalk } from './walk.ts';

// what reads sheets, links and kept walks carries a schema library, and most visits bring none of them
const reading = () => import('./reading.ts');

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface Work {
	open(asks: Asks['open']['asks']): Promise<Asks['open']['gives']>;
	read(asks: Asks['read']['asks']): Promise<Asks['read']['gives']>;
	lay(asks: Asks['lay']['asks']): Promise<LaidView>;
	complaints(asks: Asks['complaints']['asks'], tell: (stage: Stage) => void): Promise<readonly ComplaintView[]>;
	look(asks: Asks['look']['asks'], tell: (stage: Stage) => void): Promise<Asks['look']['gives']>;
}

/** Keeps what was worked out last, since the next question is nearly always about the same rig and complaint. */
export function makeWork(): Work {
	const sheets = remember<RigChoice, RigSheet | Promise<RigSheet>>(sheetOf);
	let meant: { readonly sheet: RigSheet; readonly witness: Witness } | null = null;
	let table: { readonly key: string; readonly stand: Stand } | null = null;

	const meantOf = (sheet: RigSheet): Witness => {
		if (meant?.sheet !== sheet) meant = { sheet, witness: meantWitness(sheet) };
		return meant.witness;
	};
	const standOf = async (
		{ rig, fixture, complaint, learnt }: SetWalk,
		tell: (stage: Stage) => void,
	): Promise<Stand> => {
		const key = JSON.stringify([rig, fixture, complaint, learnt]);
		if (table?.key !== key) {
			tell('table');
			const bench = openBench(await sheets(rig), { kind: complaint, fixture }, { learnt });
			table = { key, stand: standOn(bench) };
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
			const isQuick = rig.kind === 'quick';
			return {
				name: isQuick ? quickWords.named(quickWords.countOne(rig.count), quickWords.links[rig.linked].name) : name,
				isQuick,
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
		async look({ walk, allows }, tell) {
			const stand = await standOf(walk, tell);
			tell('choosing');
			return viewWalk(stand.bench, stand.at(walk, allows), walk);
		},
	};
}

function sheetOf(rig: RigChoice): RigSheet | Promise<RigSheet> {
	if (rig.kind === 'quick') return quickSheet(rig);
	if (rig.kind === 'sheet') return rig.sheet;
	return reading().then(({ readBundled }) => readBundled(rig.id));
}

/** The last answer, for as long as the same is asked. */
function remember<Q, A>(answer: (question: Q) => A): (question: Q) => A {
	let last: { readonly key: string; readonly answer: A } | null = null;
	return (question) => {
		const key = JSON.stringify(question);
		if (last?.key !== key) last = { key, answer: answer(question) };
		return last.answer;
	};
}
