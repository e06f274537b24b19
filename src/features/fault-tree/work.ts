import { fetched, InputError } from '../../../shared/error/index.ts';
import { loadRig, RIG_IDS, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';
import { complaintsOf, meantWitness, openBench } from '../../../sim/finder/index.ts';
import { complaintText } from '../../wording/index.ts';
import { fittingTree, MOST_ENDS } from './fit.ts';
import { linesOf, PAGE_LINES } from './lines.ts';
import { FINDERS, type NamedView, type TreeOf, type TreeView } from './view.ts';
import { viewTree } from './viewTree.ts';

/** What the finder keeps, as text: the rig called `FINDERS` is in it. */
export interface OfRig {
	readonly kept: string | null;
}

/** Everything the page can ask, done with no page at hand: the same under test as in the worker. */
export interface FaultTreeRoutes {
	/** The fixtures of a rig. */
	fixtures(asks: Pick<TreeOf, 'rig'> & OfRig): Promise<NamedView[]>;
	/** What can be wrong with one of them: none where it is meant to do nothing that could be missed. */
	complaints(asks: Omit<TreeOf, 'complaint'> & OfRig): Promise<NamedView[]>;
	/** @throws InputError `casefile.rig`, `casefile.none`, or as `openBench` does */
	tree(asks: TreeOf & OfRig): Promise<TreeView>;
}

/** Ends below which a tree is no use, whatever the paper. */
const LEAST_ENDS = 8;

export const faultTreeRoutes: FaultTreeRoutes = {
	fixtures: async (asks) => (await sheetOf(asks)).fixtures.map(({ id, name }) => ({ id, name })),
	async complaints({ fixture, ...asks }) {
		const sheet = await sheetOf(asks);
		// asked of one fixture, so that a long line is not gone through whole
		const one = { ...sheet, fixtures: sheet.fixtures.filter(({ id }) => id === fixture) };
		return complaintsOf(meantWitness(sheet), one).map((complaint) => ({
			id: complaint.kind,
			name: complaintText(sheet, complaint).says,
		}));
	},
	async tree({ fixture, complaint, ...asks }) {
		const bench = openBench(await sheetOf(asks), { kind: complaint, fixture });
		if (bench.candidates.length === 0) throw new InputError('casefile.none', 'complaint', { trouble: 'no-suspects' });
		let most = MOST_ENDS;
		let view = viewTree(bench, fittingTree(bench, most));
		// long names take more lines: fewer ends then, until it fits or is as short as is any use
		for (let lines = linesOf(view); lines > PAGE_LINES && most > LEAST_ENDS; lines = linesOf(view)) {
			most = Math.max(LEAST_ENDS, Math.min(most - 1, Math.floor((view.ends * PAGE_LINES) / lines)));
			view = viewTree(bench, fittingTree(bench, most));
		}
		return view;
	},
};

/** @throws InputError `casefile.rig` */
async function sheetOf({ rig, kept }: Pick<TreeOf, 'rig'> & OfRig): Promise<RigSheet> {
	if (rig === FINDERS) {
		// the finder's own work comes with it, and most trees are of a bundled rig
		const finder = await fetched(import('../finder/routes.ts'));
		const sheet = kept === null ? null : await finder.keptRig(kept);
		if (!sheet) throw new InputError('casefile.rig', 'rig', { trouble: 'none-kept' });
		return sheet;
	}
	if (!RIG_IDS.includes(rig as RigId)) throw new InputError('casefile.rig', 'rig', { trouble: 'no-such-rig', id: rig });
	return loadRig(rig as RigId);
}
