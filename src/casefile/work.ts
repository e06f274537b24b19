import { casefileWords } from '../../content/casefile/index.ts';
import { InputError } from '../../shared/error/index.ts';
import { bundledRig, RIG_IDS, type RigId, type RigSheet } from '../../shared/sheet/index.ts';
import { complaintsOf, meantWitness, openBench } from '../../sim/finder/index.ts';
import { complaintText } from '../words/index.ts';
import { fittingTree } from './fit.ts';
import type { NamedView, TreeOf, TreeView } from './view.ts';
import { viewTree } from './viewTree.ts';

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface CasefileWork {
	/** The fixtures of a bundled rig. */
	fixtures(asks: Pick<TreeOf, 'rig'>): NamedView[];
	/** What can be wrong with one of them: none where it is meant to do nothing that could be missed. */
	complaints(asks: Omit<TreeOf, 'complaint'>): NamedView[];
	/** @throws InputError `casefile.rig`, `casefile.none`, or as `openBench` does */
	tree(asks: TreeOf): TreeView;
}

export const casefileWork: CasefileWork = {
	fixtures: ({ rig }) => sheetOf(rig).fixtures.map(({ id, name }) => ({ id, name })),
	complaints({ rig, fixture }) {
		const sheet = sheetOf(rig);
		// asked of one fixture, so that a long line is not gone through whole
		const one = { ...sheet, fixtures: sheet.fixtures.filter(({ id }) => id === fixture) };
		return complaintsOf(meantWitness(sheet), one).map((complaint) => ({
			id: complaint.kind,
			name: complaintText(sheet, complaint).says,
		}));
	},
	tree({ rig, fixture, complaint }) {
		const bench = openBench(sheetOf(rig), { kind: complaint, fixture });
		if (bench.candidates.length === 0) throw new InputError('casefile.none', 'complaint', casefileWords.none);
		return viewTree(bench, fittingTree(bench));
	},
};

function sheetOf(rig: string): RigSheet {
	if (!RIG_IDS.includes(rig as RigId)) throw new InputError('casefile.rig', 'rig', casefileWords.noRig(rig));
	return bundledRig(rig as RigId);
}
