/** What the fault tree does in the worker. */

import { type CautionId, cautionIds } from '#words/cautions/index.ts';
import { suspectWords } from '#words/finder/index.ts';
import { fetched, InputError } from '../../../shared/error/index.ts';
import { loadRig, RIG_IDS, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import {
	complaintsOf,
	type FaultTree,
	faultTree,
	meantWitness,
	openOutcomes,
	type PrintedTree,
	type RigOutcomes,
	triedBy,
} from '../../../sim/finder/index.ts';
import { checkTitle, complaintText, faultName, outcomeText, placeName, repairTitle } from '../../wording/index.ts';
import {
	type EndNode,
	FINDERS,
	linesOf,
	type NamedView,
	PAGE_LINES,
	type TreeNode,
	type TreeOf,
	type TreeView,
} from './view.ts';

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

export const routes: FaultTreeRoutes = {
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
		const bench = openOutcomes(await sheetOf(asks), { kind: complaint, fixture });
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

/** Ends that two sheets hold in 10 pt and two columns, with the checks that lead to them. Tried out, no source. */
export const MOST_ENDS = 40;

/** Share below which a branch is kept together whatever the room. */
const LEAST_SHARE = 0.004;

/** A tree of at most `most` ends: branches are kept together from the lightest up until it fits. */
export function fittingTree(bench: RigOutcomes, most: number = MOST_ENDS): PrintedTree {
	const whole = faultTree(bench, LEAST_SHARE);
	if (whole.ends <= most) return whole;
	const shares = [...new Set(sharesIn(whole.tree, 1))].sort((a, b) => a - b);
	// a branch is kept together where it is lighter: a hair over its own share
	const share = shares.map((each) => each * (1 + 1e-9)).find((each) => endsAt(whole.tree, 1, each) <= most);
	return share === undefined ? whole : faultTree(bench, share);
}

function sharesIn(tree: FaultTree, share: number): number[] {
	if (tree.kind === 'end') return [];
	return [share, ...tree.branches.flatMap((branch) => sharesIn(branch.tree, branch.share))];
}

function endsAt(tree: FaultTree, share: number, least: number): number {
	if (tree.kind === 'end' || share < least) return 1;
	return tree.branches.reduce((sum, branch) => sum + endsAt(branch.tree, branch.share, least), 0);
}

/** A tree in words. */
export function viewTree(bench: RigOutcomes, { tree, expected, ends }: PrintedTree): TreeView {
	const { sheet, complaint } = bench;
	const found = new Set<CautionId>();
	const faults = byId(bench);
	const root = viewNode(bench, faults, tree, found);
	return {
		rig: sheet.name,
		complaint: complaintText(sheet, complaint).says,
		suspects: faults.size,
		expected,
		ends,
		cautions: cautionIds.filter((id) => found.has(id)),
		root,
	};
}

type Faults = ReadonlyMap<string, readonly PlacedFault[]>;

/** A suspect's faults by its id: as the finder writes it, its faults' texts. */
function byId({ candidates }: RigOutcomes): Faults {
	return new Map(
		candidates.map(({ faults }) => [
			faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+'),
			faults,
		]),
	);
}

function viewNode(bench: RigOutcomes, faults: Faults, tree: FaultTree, found: Set<CautionId>): TreeNode {
	if (tree.kind === 'end') return viewEnd(bench, faults, tree, found);
	const { check, seconds, branches } = tree;
	const meant = bench.meant.rig;
	return {
		kind: 'check',
		title: checkTitle(bench.sheet, meant, check),
		sort: check.sort,
		seconds,
		cautions: noted(check.cautions, found),
		branches: branches.map(({ outcome, share, tree: next }) => ({
			seen: outcomeText(bench.sheet, meant, check, outcome),
			share,
			node: viewNode(bench, faults, next, found),
		})),
	};
}

function viewEnd(
	{ sheet, checks }: RigOutcomes,
	faults: Faults,
	{ suspects, repairs }: FaultTree & { kind: 'end' },
	found: Set<CautionId>,
): EndNode {
	const shares = new Map<string, number>();
	for (const { id, share } of suspects) {
		const name = (faults.get(id) ?? [])
			.map((placed) => suspectWords.at(faultName(sheet, placed), placeName(sheet, placed.place)))
			.join(suspectWords.pair);
		shares.set(name || id, (shares.get(name || id) ?? 0) + share);
	}
	return {
		kind: 'end',
		causes: [...shares].map(([name, share]) => ({ name, share })).sort((a, b) => b.share - a.share),
		repairs: repairs.map(({ id, place, seconds }) => ({
			title: repairTitle(sheet, id, place),
			seconds,
			cautions: noted(checks.find((check) => check.id === triedBy({ id, place }))?.cautions ?? [], found),
		})),
	};
}

function noted(ids: readonly string[], found: Set<CautionId>): readonly CautionId[] {
	const known = ids as readonly CautionId[];
	for (const id of known) found.add(id);
	return known;
}
