import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stockNames } from '#words/stock/index.ts';
import { BUNDLED, type Profile } from '../../../../shared/profile/index.ts';
import { readSheet } from '../../../../shared/sheet/index.ts';
import { blankEntry, stockFixture } from '../../../../shared/stock/index.ts';
import {
	freeId,
	MOST,
	rigStore,
	withDesk,
	withFixture,
	withName,
	withoutFixture,
} from '../../../../src/features/rig/index.ts';
import { runs } from '../../../runs.ts';
import { deeds, pair } from './sheets.ts';

/** A fixture of the crew's own, which a sheet has to carry. */
const own = stockFixture({ ...blankEntry('own-1', 'Ours', 0), chart: '1 Dimmer\n2 Red' }, stockNames)
	.profile as Profile;

describe('changes to a sheet', () => {
	it('always leave a sheet that can be read, and a log that can be played', () => {
		const change = fc.oneof(
			fc.record({ act: fc.constant('add' as const), of: fc.constantFrom(...BUNDLED, own) }),
			fc.record({ act: fc.constant('take' as const), at: fc.nat(8) }),
			fc.record({ act: fc.constant('name' as const), at: fc.nat(8), name: fc.constantFrom('Left', 'Right', 'Pulpit') }),
			fc.record({ act: fc.constant('desk' as const) }),
		);
		fc.assert(
			fc.property(deeds(12), fc.array(change, { maxLength: 8 }), (log, changes) => {
				const store = rigStore(pair, log);
				for (const each of changes) {
					const { sheet } = store.rig;
					const id = 'at' in each ? sheet.fixtures[each.at % Math.max(1, sheet.fixtures.length)]?.id : undefined;
					if (each.act === 'add') expect(store.edit((it) => withFixture(it, each.of, 'Wash'))).toBe(true);
					if (each.act === 'desk') expect(store.edit((it) => withDesk(it, 'Prep desk'))).toBe(true);
					if (each.act === 'take' && id) expect(store.edit((it) => withoutFixture(it, id))).toBe(true);
					if (each.act === 'name' && id) expect(store.edit((it) => withName(it, id, each.name))).toBe(true);
					expect(readSheet(JSON.parse(JSON.stringify(store.rig.sheet)))).toEqual(store.rig.sheet);
				}
				expect(store.said).toBeNull();
			}),
			{ numRuns: runs(60) },
		);
	});

	it('keep what was done to what stays', () => {
		const store = rigStore(pair);
		store.send({ type: 'key.tap', fixture: 'wash-1', key: 'down' });
		store.send({ type: 'cable.unplug', cable: 'cable-2', end: 'to' });
		store.send({ type: 'key.tap', fixture: 'wash-2', key: 'down' });
		const before = JSON.stringify(store.look('wash-1'));
		store.edit((sheet) => withoutFixture(sheet, 'wash-2'));
		expect(JSON.stringify(store.look('wash-1'))).toBe(before);
		expect(store.rig.gear.cables.map(({ id, to }) => [id, to])).toEqual([
			['cable-1', 'wash-1:in'],
			['cable-2', null],
		]);
		expect(store.rig.gear.terminators).toEqual([]);
		expect(store.rig.gear.desk?.patch.map(({ fixture }) => fixture)).toEqual(['wash-1']);
	});

	it('give ids that are free, and take mains from those fed by what is gone', () => {
		expect(freeId([{ id: 'wash-1' }, { id: 'wash-3' }], 'wash')).toBe('wash-2');
		const linked = readSheet({
			version: 1,
			name: 'x',
			fixtures: [
				{ id: 'bar-1', name: 'Bar 1', profile: 'picket-8', place: { x: 1, y: 0, throw: 2 }, plug: 'wall' },
				{ id: 'bar-2', name: 'Bar 2', profile: 'picket-8', place: { x: 3, y: 0, throw: 2 }, plug: 'bar-1' },
			],
		});
		expect(withoutFixture(linked, 'bar-1').fixtures.map(({ plug }) => plug)).toEqual(['none']);
	});

	it('make room on the wall for twenty-four', () => {
		let sheet = pair;
		const [first] = BUNDLED;
		for (let i = 0; i < 22; i++) if (first) sheet = withFixture(sheet, first, 'Wash');
		expect(sheet.fixtures).toHaveLength(24);
		expect(sheet.hall.width).toBeGreaterThan(Math.max(...sheet.fixtures.map(({ place }) => place.x)));
		expect(new Set(sheet.fixtures.map(({ id }) => id)).size).toBe(24);
		expect(sheet.fixtures.at(-1)).toMatchObject({ name: 'Wash 24', on: false, plug: 'none' });
	});

	// places went on past the longest wall, and what was kept did not open again
	it('find room for as many as a bench holds, each at a place of its own, in a sheet that opens again', () => {
		let sheet = { ...pair, fixtures: [] as typeof pair.fixtures };
		const [first] = BUNDLED;
		for (let i = 0; i < MOST.fixtures; i++) if (first) sheet = withFixture(sheet, first, 'Wash');
		expect(readSheet(JSON.parse(JSON.stringify(sheet))).fixtures).toHaveLength(MOST.fixtures);
		expect(new Set(sheet.fixtures.map(({ place }) => place.x)).size).toBe(MOST.fixtures);
	});
});
