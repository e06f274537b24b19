import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { bundledRig, RIG_IDS, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { placedFaults } from '../../../sim/fault/index.ts';
import { openRig, type Rig, toSheet } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { hall } from '../../shared/sheet/hall.ts';
import { anyEvent } from './events.ts';
import { comeToRest, expectSame, unsettled } from './same.ts';
import { led, mixed } from './sheets.ts';

const rigs: [name: string, sheet: RigSheet][] = [
	['mixed', mixed],
	['led', led],
	['hall', readSheet(hall)],
	...RIG_IDS.map((id): [string, RigSheet] => [id, bundledRig(id)]),
];

/** Does what can be done of a list of events. Returns which were refused. */
function act(rig: Rig, events: readonly RigEvent[]): number[] {
	return events.flatMap((event, i) => {
		try {
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
			return [];
		} catch (error) {
			if (!isInputError(error)) throw error;
			return [i];
		}
	});
}

/** A sheet as a rig has it: levels one for each slot that stands up, in order. */
function normal(sheet: RigSheet): RigSheet {
	const slots = new Map(sheet.desk?.levels.map((each) => [each.universe * 1000 + each.slot, each]));
	const levels = [...slots].sort(([a], [b]) => a - b).flatMap(([, each]) => (each.level > 0 ? [each] : []));
	return { ...sheet, desk: sheet.desk && { ...sheet.desk, levels } };
}

/** Shares to the hundredth: a battery of less is empty within the moment, and two clocks may tell that a millisecond apart. */
const coarse = (event: RigEvent): RigEvent =>
	JSON.parse(JSON.stringify(event), (key, value) =>
		['batteryHealth', 'foldBack', 'level'].includes(key) && value < 1 ? Math.round(value * 100) / 100 : value,
	);

const isPanel = (event: RigEvent): boolean => event.type.startsWith('key.');

describe.each(rigs)('a rig as a sheet, %s', (_, sheet) => {
	test('that nothing was done to is the sheet it came from', () => {
		expect(toSheet(openRig(sheet))).toEqual(normal(sheet));
	});

	test('looks as the rig does, now and after whatever is done to both', () => {
		const events = fc.array(anyEvent(sheet).map(coarse), { maxLength: 30 });
		fc.assert(
			fc.property(events, events, (before, after) => {
				const rig = openRig(sheet);
				act(rig, before);
				comeToRest(rig);
				const open = unsettled(rig);
				const taken = toSheet(rig);
				expect(readSheet(JSON.parse(JSON.stringify(taken)))).toEqual(taken);
				const again = openRig(taken);
				expect(toSheet(again)).toEqual(taken);
				expectSame(rig, again, open);
				const rest = after.filter((event) => !isPanel(event) || !('fixture' in event && open.has(event.fixture)));
				expect(act(again, rest)).toEqual(act(rig, rest));
				for (const each of [rig, again]) each.wait(2000);
				expectSame(rig, again, open, true);
			}),
			{ numRuns: runs(Math.ceil(240 / sheet.fixtures.length)) },
		);
	});
});

test('each fault is in the sheet as what it physically is', () => {
	for (const sheet of [mixed, led, bundledRig('two-universes')]) {
		for (const { placed } of placedFaults(sheet)) {
			const rig = openRig(sheet, { faults: [placed] });
			comeToRest(rig);
			const taken = toSheet(rig);
			expect(taken, placed.fault).not.toEqual(toSheet(openRig(sheet)));
			expectSame(rig, openRig(taken), new Set());
		}
	}
});

test('a fixture on mains or battery holds in the sheet what it held when its data went', () => {
	const rig = openRig(mixed);
	rig.send({ type: 'settings.become', fixture: 'bar-1', change: { loss: 'hold' } });
	rig.send({ type: 'cable.unplug', cable: 'c1', end: 'from' });
	rig.wait(2000);
	const taken = toSheet(rig);
	expect(taken.fixtures.map(({ lost }) => lost?.find(({ slot }) => slot === 8)?.level)).toEqual([200, 200, 200]);
	const again = openRig(taken);
	for (const { id } of mixed.fixtures) expect(again.look(id)).toEqual(rig.look(id));
	expect(again.look('bar-1').light.whole.brightness).toBeGreaterThan(0);
	// and goes on by the loss setting it is given later
	for (const each of [rig, again]) each.send({ type: 'settings.become', fixture: 'bar-1', change: { loss: 'dark' } });
	expect(again.look('bar-1')).toEqual(rig.look('bar-1'));
	expect(again.look('bar-1').light.whole.brightness).toBe(0);
});

test('a sheet that says data was lost, of a rig whose line is whole, gives a rig that has it', () => {
	const [first, ...rest] = mixed.fixtures;
	const rig = openRig({ ...mixed, fixtures: [{ ...(first as NonNullable<typeof first>), lost: null }, ...rest] });
	expect(rig.look('wash-1').light).toEqual(openRig(mixed).look('wash-1').light);
	expect(toSheet(rig)).toEqual(mixed);
});

test('a sheet that says of a rig all that can be wrong with it is that rig’s sheet', () => {
	const worn: RigSheet = {
		...mixed,
		hall: { ...mixed.hall, power: false, sound: 0.5 },
		fixtures: mixed.fixtures.map((each, i) => ({
			...each,
			condition: { batteryHealth: 0.3, covered: true, deadEmitters: ['red'] },
			...(i === 0 ? { lost: [{ slot: 8, level: 200 }] } : {}),
		})),
		desk: mixed.desk && { ...mixed.desk, outputs: mixed.desk.outputs.map((each) => ({ ...each, startCode: 23 })) },
		remote: { code: 2, battery: false },
	};
	expect(readSheet(worn)).toEqual(worn);
	expect(toSheet(openRig(worn))).toEqual(worn);
});

test('a charger that was dead is dead in the rig made again: an hour on mains puts nothing in', () => {
	const rig = openRig(mixed);
	rig.send({ type: 'charge.become', fixture: 'wash-1', charge: 0.5 });
	rig.send({ type: 'condition.become', fixture: 'wash-1', change: { chargerDead: true } });
	const again = openRig(toSheet(rig));
	for (const each of [rig, again]) {
		each.send({ type: 'mains.plug', fixture: 'wash-1', into: 'wall' });
		each.wait(3_600_000);
		expect(each.look('wash-1').lamps.battery).toEqual({ bars: 2, charging: false });
	}
});
