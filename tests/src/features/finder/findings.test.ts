import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bundledRig, RIG_IDS } from '../../../../shared/sheet/index.ts';
import { FAULTS, faultEvents } from '../../../../sim/fault/index.ts';
import { faultyWitness, openOutcomes } from '../../../../sim/finder/index.ts';
import { beginOn } from '../../../../src/features/finder/begin.ts';
import { closeFinding, findingOf } from '../../../../src/features/finder/findings.ts';
import { withFound } from '../../../../src/features/finder/keep.ts';
import { otherThanSheet } from '../../../../src/features/finder/other.ts';
import type { FinderStore } from '../../../../src/features/finder/store.ts';
import { KEPT } from '../../../../src/storage/index.ts';
import { sheetFacts } from '../../../../src/wording/sheetFacts.ts';
import { runs } from '../../../runs.ts';
import { memory } from '../../storage/memory.ts';
import { askHere, storeOn } from './parts.ts';

const PLAN = '00112233445566aa';
const sheet = bundledRig('four-in-line');

/** Begins on the third wash of a plan and walks with what a rig with this fault shows, to the end or to its verdict. */
async function walked(device: ReturnType<typeof memory>, fault: string, detail?: string, upTo?: 'verdict') {
	expect(beginOn(device.store, sheet, 'wash-3', PLAN, 5)).toBe(true);
	const { store } = storeOn(device);
	await store.open();
	await store.pickComplaint('dark');
	const bench = openOutcomes(sheet, { kind: 'dark', fixture: 'wash-3' });
	const rig = faultyWitness(bench.meant, [{ fault, place: 'wash-3', ...(detail ? { detail } : {}) }]);
	for (let left = 40; left > 0; left--) {
		const { view } = store.scene;
		if (view?.verdict && (upTo || view.verdict.because === 'mended')) break;
		const id = view?.check?.id ?? view?.verdict?.repairs[0]?.check ?? '';
		await store.answer(id, bench.checks.find((check) => check.id === id)?.read(rig) ?? '');
	}
	return store as FinderStore;
}

describe('a walk that began from a plan', () => {
	test('tells that plan alone what it was and what fixed it, and no more once that is noted', async () => {
		const device = memory();
		const store = await walked(device, 'switched-off');
		expect(store.scene.view?.verdict?.because).toBe('mended');
		const finding = await findingOf(device.store, askHere(), PLAN);
		expect(finding).toMatchObject({ fixture: 'wash-3', began: 5 });
		expect(finding?.was).toContain('wash 3');
		expect(finding?.repair).toMatch(/^Switch on wash 3/);
		expect(finding?.done).toEqual({ repair: 'switch-on', place: 'wash-3' });
		expect(await findingOf(device.store, askHere(), 'ffffffffffffffff')).toBeNull();
		await closeFinding(device.store, askHere(), 4);
		expect(await findingOf(device.store, askHere(), PLAN)).toEqual(finding);
		await closeFinding(device.store, askHere(), 5);
		expect(await findingOf(device.store, askHere(), PLAN)).toBeNull();
	});

	test('tells nothing before a repair has helped, nor once that is taken back', async () => {
		const device = memory();
		const store = await walked(device, 'battery-flat', undefined, 'verdict');
		expect(store.scene.view?.verdict?.because).not.toBe('mended');
		expect(await findingOf(device.store, askHere(), PLAN)).toBeNull();
		await store.answer(store.scene.view?.verdict?.repairs[0]?.check ?? '', 'cleared');
		expect(await findingOf(device.store, askHere(), PLAN)).not.toBeNull();
		await store.back();
		expect(await findingOf(device.store, askHere(), PLAN)).toBeNull();
	});

	test('a light at another address may be right: the plan is asked, and not once the walk goes on', async () => {
		const device = memory();
		const store = await walked(device, 'wrong-address', 'one-up', 'verdict');
		const cause = store.scene.view?.verdict?.causes.find(({ other }) => other !== null);
		if (!cause) throw new Error('no cause is another address');
		store.askPlan(cause);
		const finding = await findingOf(device.store, askHere(), PLAN);
		expect(finding).toMatchObject({ repair: null, done: null, other: { fixture: 'wash-3', by: 'light' } });
		await store.back();
		expect(await findingOf(device.store, askHere(), PLAN)).toBeNull();
	});

	test('tells of the repair that was done and of no other; of none where the verdict does not name it', async () => {
		const { scene } = await walked(memory(), 'switched-off');
		const { walk, view } = scene;
		const verdict = view?.verdict;
		const [done] = verdict?.repairs ?? [];
		if (!walk || !verdict || !done) throw new Error('no repair was done');
		const other = { ...done, check: 'mend-swap-fixture@wash-3', title: 'Swap it' };
		const told = (...repairs: (typeof done)[]) => withFound(walk, { ...verdict, repairs }, 5).found?.repair;
		expect(told(other, done)).toBe(done.title);
		expect(told(other)).toBeUndefined();
		expect(told()).toBeUndefined();
	});

	test('one that began from no plan is kept as before', async () => {
		const device = memory();
		const { store } = storeOn(device);
		await store.open();
		await store.choose({ kind: 'bundled', id: 'four-in-line' });
		expect(device.held.get(KEPT.walk.key)).not.toContain('plan');
	});
});

describe('what a fault comes down to', () => {
	test('is another address or mode where its events say so, on every bundled rig, and else nothing', () => {
		for (const id of RIG_IDS) {
			const rig = bundledRig(id);
			for (const fault of FAULTS)
				for (const spot of fault.spots(rig).slice(0, 3)) {
					const placed = { fault: fault.id, ...spot };
					const other = otherThanSheet(rig, [placed]);
					const events = faultEvents(rig, placed);
					const says = events.some(
						(event) =>
							event.type === 'desk.patch' ||
							(event.type === 'settings.become' && ('address' in event.change || 'mode' in event.change)) ||
							event.type === 'switch.flip' ||
							event.type === 'slide.move',
					);
					if (other) expect(says, fault.id).toBe(true);
					if (other === null) continue;
					const facts = sheetFacts(rig, other.fixture);
					const { fixture, by, ...is } = other;
					const planned =
						by === 'desk'
							? { universe: facts['patchUniverse'], address: facts['patchAddress'], mode: facts['patchMode'] }
							: { universe: null, address: facts['meantAddress'], mode: facts['meantMode'] };
					expect(is, `${fault.id} on ${id}`).not.toEqual(planned);
					expect(rig.fixtures.map((each) => each.id)).toContain(fixture);
				}
		}
		const at = (fault: string, detail?: string) =>
			otherThanSheet(sheet, [{ fault, place: 'wash-3', ...(detail ? { detail } : {}) }]);
		const meant = sheet.desk?.patch.find(({ fixture }) => fixture === 'wash-3');
		expect(at('wrong-address', 'one-up')).toMatchObject({ by: 'light', address: (meant?.address ?? 0) + 1 });
		expect(at('patched-elsewhere')).toMatchObject({ by: 'desk', address: (meant?.address ?? 0) + 10 });
		expect(at('patched-other-mode', 'short')).toBeNull();
		expect(at('switched-off')).toBeNull();
		expect(at('left-on-held', 'held')).toBeNull();
		const modes = FAULTS.find(({ id }) => id === 'wrong-mode')?.spots(sheet) ?? [];
		fc.assert(
			fc.property(fc.constantFrom(...modes), (spot) => {
				const other = otherThanSheet(sheet, [{ fault: 'wrong-mode', ...spot }]);
				expect(other?.mode).toBe(spot.detail);
			}),
			{ numRuns: runs(20) },
		);
	});
});
