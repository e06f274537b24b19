import { describe, expect, it } from 'vitest';
import { bundledRig, quickSheet } from '../../../../shared/sheet/index.ts';
import { openOutcomes } from '../../../../sim/finder/index.ts';
import { fittingTree, MOST_ENDS, routes } from '../../../../src/features/fault-tree/routes.ts';
import {
	FINDERS,
	readTreeLink,
	type TreeNode,
	type TreeOf,
	treeLink,
} from '../../../../src/features/fault-tree/view.ts';
import { ALLOWS_ALL, freshWalk, type RigChoice } from '../../../../src/features/finder/walk.ts';
import { KEPT } from '../../../../src/storage/index.ts';
import { saidOf } from '../../../shared/thrown.ts';
import { textOf } from '../../../sim/finder/gig.ts';

const bench = openOutcomes(bundledRig('mixed-panels'), { kind: 'no-answer', fixture: 'old-1' });

const endsOf = (node: TreeNode): number =>
	node.kind === 'end' ? 1 : node.branches.reduce((sum, branch) => sum + endsOf(branch.node), 0);

describe('a tree made to fit the paper', () => {
	it.each([1, 4, 9, 15, MOST_ENDS])('has at most %i ends, and holds every suspect', (most) => {
		const { tree, ends } = fittingTree(bench, most);
		expect(ends).toBeLessThanOrEqual(most);
		const held: string[] = [];
		const walk = (node: typeof tree): void => {
			if (node.kind === 'end') held.push(...node.suspects.map(({ id }) => id));
			else for (const branch of node.branches) walk(branch.tree);
		};
		walk(tree);
		// a fault that came while the rig ran and the same one from before are one
		expect(new Set(held)).toEqual(new Set(bench.candidates.map(({ faults }) => textOf(faults))));
	});

	it('uses the room there is', () => {
		expect(fittingTree(bench, 15).ends).toBeGreaterThan(fittingTree(bench, 4).ends);
	});
});

describe('a tree in words', () => {
	it('has as many ends as it says, and a cause and a repair at each', async () => {
		const view = await routes.tree({
			rig: 'four-in-line',
			fixture: 'wash-3',
			complaint: 'no-answer',
			kept: null,
		});
		expect(endsOf(view.root)).toBe(view.ends);
		expect(view.complaint).toBe('Wash 3, centre right doesn’t answer the desk');
		const walk = (node: TreeNode): void => {
			if (node.kind === 'check') for (const branch of node.branches) walk(branch.node);
			else {
				expect(node.causes.length).toBeGreaterThan(0);
				expect(node.repairs.length).toBeGreaterThan(0);
			}
		};
		walk(view.root);
	});

	it('is refused in a sentence where no fault shows like that', async () => {
		const kept = null;
		const tree = routes.tree({ rig: 'one-wash', fixture: 'wash-1', complaint: 'goes-out', kept });
		expect(await saidOf(tree)).toContain('so there’s no tree');
		expect(await saidOf(routes.fixtures({ rig: 'barn', kept }))).toContain("No bundled rig is called 'barn'");
	});

	it('is worked out for the rig in the finder too: laid out the quick way, or from a sheet of the crew’s own', async () => {
		const quick = { kind: 'quick', count: 2, linked: 'leader', profile: 'picket-8' } as const;
		const rigs: RigChoice[] = [quick, { kind: 'sheet', sheet: bundledRig('leader-and-three') }];
		for (const rig of rigs) {
			const kept = JSON.stringify({ version: KEPT.walk.version, allows: ALLOWS_ALL, walk: freshWalk(rig, {}, 0) });
			const fixtures = await routes.fixtures({ rig: FINDERS, kept });
			const [, follower] = fixtures;
			const fixture = follower?.id ?? '';
			const [first] = await routes.complaints({ rig: FINDERS, fixture, kept });
			const complaint = first?.id as TreeOf['complaint'];
			const view = await routes.tree({ rig: FINDERS, fixture, complaint, kept });
			expect(view.ends).toBeGreaterThan(1);
			expect(view.rig).toBe(rig.kind === 'sheet' ? rig.sheet.name : quickSheet(quick).name);
		}
	});

	it.each([null, '', '{"version":1}', JSON.stringify({ version: KEPT.walk.version, allows: ALLOWS_ALL, walk: null })])(
		'with nothing of one’s own in the finder (%s) it says where to open it',
		async (kept) => {
			expect(await saidOf(routes.fixtures({ rig: FINDERS, kept }))).toContain('Open yours there first');
		},
	);
});

describe('a link to a tree', () => {
	const of = { rig: 'long-line', fixture: 'bar-3', complaint: 'dark' } as const;
	it('reads back what it was made of', () => {
		expect(readTreeLink(treeLink(of), ['long-line'])).toEqual({ is: 'tree', of });
	});
	it.each(['#rig=barn&fixture=bar-3&complaint=dark', '#rig=long-line', '#<b>', `${treeLink(of)}&more=1`])(
		'is bad: %s',
		(fragment) => {
			expect(readTreeLink(fragment, ['long-line'])).toEqual({ is: 'bad' });
		},
	);
	it('is nothing where there is no fragment', () => {
		expect(readTreeLink('', ['long-line'])).toEqual({ is: 'nothing' });
	});
});
