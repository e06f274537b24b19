import { describe, expect, it } from 'vitest';
import { bundledRig, type RigSheet, splitPort } from '../../../shared/sheet/index.ts';
import {
	type Complaint,
	complaintsOf,
	finderOn,
	meantWitness,
	offeredBy,
	openOutcomes,
} from '../../../sim/finder/index.ts';

/*
 * Symptom: a look at the back of a bar overhead cost as much as one on the floor, so the finder sent people up for what the floor tells,
 * and some checks up there (a line ended at a bar, a cable's plugs) asked for no ladder at all. Cause: a climb cost nothing, and the
 * need of a ladder was written down for some kinds of check only.
 */

/** Least seconds of going up once: common practice, no source. */
const CLIMB = 60;

const up: Complaint = { kind: 'no-answer', fixture: 'bar-2' };
const bench = openOutcomes(bundledRig('two-universes'), up);
const overheadOf = (sheet: RigSheet) =>
	new Set(sheet.fixtures.flatMap(({ id, place }) => (place.overhead ? [id] : [])));

describe('a check overhead', () => {
	it('costs a climb, beside the walk and the doing, and the next one up there none', () => {
		const finder = finderOn(bench, { here: 'desk' });
		const [first, second] = [finder.check('mains-plug@bar-2'), finder.check('socket-in@bar-2')];
		if (!first || !second) throw new Error('no such checks');
		finder.answer(first.id, 'in');
		expect(finder.spent).toBeGreaterThanOrEqual(CLIMB + first.seconds);
		const before = finder.spent;
		finder.answer(second.id, 'plugged');
		expect(finder.spent - before).toBe(second.seconds);
	});

	it('at another place means down and up again', () => {
		const finder = finderOn(bench);
		finder.answer('mains-plug@bar-2', 'in');
		const before = finder.spent;
		const other = finder.check('line-ended@bar-1');
		if (!other) throw new Error('no such check');
		finder.answer(other.id, 'steady');
		expect(finder.spent - before).toBeGreaterThanOrEqual(CLIMB + other.seconds);
	});

	it('needs a ladder and carries height and hanging: every one that lays a hand on something up there', () => {
		const fromTheFloor =
			/^(lit|colour|brightness|flashing|moving|jumping|ultraviolet|clap|remote-close|sight-line|desk-.*|hall-power|remote-.*|neighbour-strips|row-right|socket-live|mend-other-socket)$/;
		for (const rig of ['two-universes', 'mixed-panels'] as const) {
			const sheet = bundledRig(rig);
			const overhead = overheadOf(sheet);
			for (const complaint of complaintsOf(meantWitness(sheet), sheet).slice(0, 12)) {
				for (const check of offeredBy(openOutcomes(sheet, complaint))) {
					const cable = sheet.cables.find(({ id }) => id === check.place);
					const ends = (cable ? [cable.from, cable.to] : [check.place]).flatMap((port) =>
						port === null ? [] : [port.includes(':') ? splitPort(port).device : port],
					);
					// a leader is asked at its own panel; a cable's kind and length are read at whichever end is nearest the floor
					const hands = check.kind === 'leader-change' ? [check.other ?? ''] : ends;
					const isHigh = /^cable-(kind|length)$/.test(check.kind)
						? hands.every((id) => overhead.has(id))
						: hands.some((id) => overhead.has(id));
					const isWallPlug =
						check.kind === 'mains-plug' && sheet.fixtures.some(({ id, plug }) => id === check.place && plug === 'wall');
					const isFloor = fromTheFloor.test(check.kind) || isWallPlug || check.needs.includes('desk');
					const at = `${rig} ${complaint.kind} ${check.id}`;
					expect(check.needs.includes('ladder'), at).toBe(isHigh && !isFloor);
					if (isHigh && !isFloor) expect(check.cautions, at).toEqual(expect.arrayContaining(['height', 'hanging']));
				}
			}
		}
	});

	// symptom: 'the dead socket' of a bar overhead sent a hand up the ladder; cause: what is in the wall was looked for at the fixture
	it('is none where the hands go to the wall: its socket tried, or another taken', () => {
		const wall = offeredBy(openOutcomes(bundledRig('two-universes'), { kind: 'dark', fixture: 'bar-1' }));
		for (const id of ['socket-live@bar-1', 'mains-plug@bar-1', 'mend-other-socket@bar-1']) {
			const check = wall.find((each) => each.id === id);
			expect(check, id).toMatchObject({ at: 'bar-1', needs: [], cautions: ['mains'] });
		}
		// a link hangs where its fixtures hang, and so does a lead with both its ends
		expect(wall.find(({ id }) => id === 'mains-plug@bar-2')?.needs).toContain('ladder');
		expect(wall.find(({ id }) => id === 'mend-replace-lead@bar-1')?.needs).toContain('ladder');
	});

	it('waits for one from the floor that parts the suspects alike', () => {
		const sheet = bundledRig('two-universes');
		for (const complaint of complaintsOf(meantWitness(sheet), sheet)) {
			const table = openOutcomes(sheet, complaint);
			const next = finderOn(table).next()?.check;
			if (!next?.needs.includes('ladder')) continue;
			const split = (id: string): string => {
				const row = table.outcomes[table.checks.findIndex((check) => check.id === id)] ?? [];
				return row.map((outcome) => row.indexOf(outcome)).join();
			};
			const floor = table.checks.filter(({ id, needs }) => !needs.includes('ladder') && split(id) === split(next.id));
			expect(
				floor.map(({ id }) => id),
				`${complaint.kind} ${complaint.fixture}: ${next.id}`,
			).toEqual([]);
		}
	});

	it('comes after the floor in a walk: the first that is asked of a bar overhead is looked at from below', () => {
		for (const kind of ['dark', 'no-answer'] as const) {
			const sheet = bundledRig('two-universes');
			const fits = complaintsOf(meantWitness(sheet), sheet).filter((each) => each.kind === kind);
			for (const complaint of fits)
				expect(
					finderOn(openOutcomes(sheet, complaint)).next()?.check.needs,
					`${kind} ${complaint.fixture}`,
				).not.toContain('ladder');
		}
	});

	it('is shared by a repair up there, and a repair overhead is put behind one from the floor by what it costs', () => {
		const finder = finderOn(bench);
		const swap = finder
			.suspects()
			.flatMap(({ repairs }) => repairs)
			.find(({ id }) => id === 'swap-fixture');
		expect(swap?.seconds).toBeGreaterThanOrEqual(300 + CLIMB);
		finder.answer('mains-plug@bar-2', 'in');
		const before = finder.spent;
		finder.answer('mend-swap-fixture@bar-2', 'still');
		expect(finder.spent - before).toBe(finder.check('mend-swap-fixture@bar-2')?.seconds);
	});
});

describe('a repair of a link', () => {
	it('darkens its row, since that is isolated for it; one at the wall does not', () => {
		const link = openOutcomes(bundledRig('two-universes'), { kind: 'dark', fixture: 'bar-2' });
		const wall = openOutcomes(bundledRig('two-universes'), { kind: 'dark', fixture: 'bar-1' });
		const repair = (of: typeof link, id: string) => offeredBy(of).find((check) => check.id === id);
		expect(repair(link, 'mend-plug-mains@bar-2')).toMatchObject({
			disturbs: true,
			cautions: expect.arrayContaining(['mains']),
		});
		expect(repair(wall, 'mend-plug-mains@bar-1')?.disturbs).toBe(false);
	});
});
