import { type CautionId, cautionIds } from '#words/cautions/index.ts';
import { suspectWords } from '#words/finder/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import type { Bench, FaultTree, PrintedTree } from '../../../sim/finder/index.ts';
import { checkTitle, complaintText, faultName, mendTitle, outcomeText, placeName } from '../../wording/index.ts';
import type { EndNode, TreeNode, TreeView } from './view.ts';

/** A tree in words. */
export function viewTree(bench: Bench, { tree, expected, ends }: PrintedTree): TreeView {
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
function byId({ candidates }: Bench): Faults {
	return new Map(
		candidates.map(({ faults }) => [
			faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+'),
			faults,
		]),
	);
}

function viewNode(bench: Bench, faults: Faults, tree: FaultTree, found: Set<CautionId>): TreeNode {
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
	{ sheet, checks }: Bench,
	faults: Faults,
	{ suspects, mends }: FaultTree & { kind: 'end' },
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
		mends: mends.map(({ id, place, seconds }) => ({
			title: mendTitle(sheet, id, place),
			seconds,
			cautions: noted(checks.find((check) => check.id === `mend-${id}@${place}`)?.cautions ?? [], found),
		})),
	};
}

function noted(ids: readonly string[], found: Set<CautionId>): readonly CautionId[] {
	const known = ids as readonly CautionId[];
	for (const id of known) found.add(id);
	return known;
}
