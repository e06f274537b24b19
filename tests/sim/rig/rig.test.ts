import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { type RigEvent, readEvent } from '../../../sim/event/index.ts';
import { openRig, REASON_IDS, type Rig, replay, why } from '../../../sim/rig/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { anyEvent } from './events.ts';
import { led, mixed } from './sheets.ts';

/** Everything a rig holds, as plain data. */
function stateOf(rig: Rig): unknown {
	const { gear } = rig;
	return {
		now: gear.now,
		units: [...gear.units].map(([id, unit]) => [
			id,
			unit.state.value,
			unit.state.context,
			unit.condition,
			unit.plug,
			unit.hidden,
			unit.kept && [...unit.kept],
			unit.deadline,
		]),
		desk: gear.desk && {
			...gear.desk,
			levels: [...gear.desk.levels].map(([universe, frame]) => [universe, [...frame]]),
		},
		cables: gear.cables,
		terminators: gear.terminators,
		receptions: [...gear.receptions],
		remote: gear.remote,
		hall: gear.hallPower,
		sound: gear.sound,
	};
}

/** Does what can be done of a list of events; the rest must be refused with a sentence, and change nothing. */
function act(rig: Rig, events: readonly RigEvent[]): void {
	for (const event of events) {
		try {
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		} catch (error) {
			if (!isInputError(error)) throw error;
			expect(errorText(error)).toMatch(/[.]$/);
		}
	}
}

describe.each([
	['mixed', mixed],
	['led', led],
])('a rig, %s', (_, sheet) => {
	const events = fc.array(anyEvent(sheet), { maxLength: 60 });

	test('what it shows and why it shows it agree, whatever is done to it', () => {
		fc.assert(
			fc.property(events, (list) => {
				const rig = openRig(sheet);
				act(rig, list);
				for (const { id } of sheet.fixtures) {
					const { light, lamps } = rig.look(id);
					const trail = why(rig, id);
					const dark = light.whole.brightness === 0 && light.whole.ultraviolet === 0;
					// damaged frames jump between dark and lit: the trail tells of the jumping
					if (light.flicker) expect(trail.map((reason) => reason.id)).toContain('light.flickers');
					else expect(trail.some(({ effect }) => effect === 'stops')).toBe(dark);
					expect(trail.length).toBeGreaterThan(0);
					for (const reason of trail) expect(REASON_IDS).toContain(reason.id);
					expect(trail.some((reason) => reason.id === 'light.flashes')).toBe(light.flashes > 0);
					if (lamps.power === 'out') expect(dark).toBe(true);
					for (const cell of light.cells) for (const level of cell.levels) expect(level).toBeGreaterThanOrEqual(0);
					for (const cell of light.cells) for (const level of cell.levels) expect(level).toBeLessThanOrEqual(1);
				}
			}),
			{ numRuns: runs(150) },
		);
	});

	test('the same sheet and log give the same rig, state for state, through JSON', () => {
		fc.assert(
			fc.property(events, (list) => {
				const rig = openRig(sheet);
				act(rig, list);
				const log = (JSON.parse(JSON.stringify(rig.log)) as unknown[]).map((event) => readEvent(event));
				const again = replay(sheet, log);
				expect(stateOf(again)).toEqual(stateOf(rig));
				expect(again.log).toEqual(rig.log);
			}),
			{ numRuns: runs(150) },
		);
	});

	test('looking changes nothing, and a refused event changes nothing', () => {
		fc.assert(
			fc.property(events, anyEvent(sheet), (list, last) => {
				const rig = openRig(sheet);
				act(rig, list);
				const before = JSON.stringify(stateOf(rig));
				for (const { id } of sheet.fixtures) {
					rig.look(id);
					why(rig, id);
				}
				expect(JSON.stringify(stateOf(rig))).toBe(before);
				if (last.type === 'clock.wait') return;
				try {
					rig.send(last);
				} catch {
					expect(JSON.stringify(stateOf(rig))).toBe(before);
				}
			}),
			{ numRuns: runs(100) },
		);
	});

	test('a fork goes its own way', () => {
		fc.assert(
			fc.property(events, events, (list, more) => {
				const rig = openRig(sheet);
				act(rig, list);
				const before = JSON.stringify(stateOf(rig));
				const fork = rig.fork();
				expect(JSON.stringify(stateOf(fork))).toBe(before);
				act(fork, more);
				expect(JSON.stringify(stateOf(rig))).toBe(before);
			}),
			{ numRuns: runs(60) },
		);
	});

	test('a wait cut in pieces is the same wait', () => {
		fc.assert(
			fc.property(
				events,
				fc.array(fc.integer({ min: 1, max: 4_000_000 }), { minLength: 1, maxLength: 6 }),
				(list, pieces) => {
					const rig = openRig(sheet);
					act(rig, list);
					const whole = rig.fork();
					for (const ms of pieces) rig.wait(ms);
					whole.wait(pieces.reduce((sum, ms) => sum + ms, 0));
					expect(stateOf(rig)).toEqual(stateOf(whole));
					expect(rig.log).toEqual(whole.log);
				},
			),
			{ numRuns: runs(80) },
		);
	});
});
