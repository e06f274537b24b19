import { describe, expect, test } from 'vitest';
import { bundledProfile, type Profile } from '../../../shared/profile/index.ts';
import { bundledRig, type RigSheet } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { FAULTS, faultEvents, faultOf, MENDS, placedFaults, type RepairId } from '../../../sim/fault/index.ts';
import { saidBy } from '../../shared/thrown.ts';
import { boxed } from '../finder/boxed.ts';
import { CATALOGUE, CHANGES, MENDED, PLACES, REPAIRS } from './tables.ts';

const tallow = bundledProfile('tallow-6') as Profile;

const lines = (text: string): string[] =>
	text
		.trim()
		.split('\n')
		.map((line) => line.trim());

const rounded = (weight: number): number => Number(weight.toFixed(3));

/** Events as they stand in the tables. */
const written = (events: readonly RigEvent[]): string =>
	events
		.map(({ type, ...rest }) => `${type} ${JSON.stringify(rest).replaceAll('"', '').replace('fixture:', '')}`)
		.join(' ; ');

const sheetOf = (id: string): RigSheet => (id === 'boxed' ? boxed : bundledRig(id as Parameters<typeof bundledRig>[0]));

describe('the catalogue', () => {
	test('gives each fault its family, weight, repair and cautions', () => {
		expect(
			FAULTS.map(({ id, family, weight, repair, cautions }) =>
				`${id}: ${family} ${weight} ${repair} ${cautions.join(' ')}`.trim(),
			),
		).toEqual(lines(CATALOGUE));
	});

	test('gives each repair its seconds, needs and cautions', () => {
		expect(
			Object.values(MENDS).map(({ id, seconds, needs, cautions, disturbs }) =>
				`${id}: ${seconds} ${needs.join(' ')} | ${cautions.join(' ')} | ${disturbs}`.replace(/ +/g, ' '),
			),
		).toEqual(lines(REPAIRS));
		for (const [id, repair] of Object.entries(MENDS)) expect(repair.id).toBe(id);
	});

	test.each(Object.entries(PLACES))('finds the places a fault can sit in, with its weight there: %s', (id, text) => {
		const places = new Map<string, string[]>();
		for (const { placed, weight } of placedFaults(sheetOf(id))) {
			const { fault, place, detail } = placed;
			const here = `${place}${detail ? `:${detail}` : ''}=${rounded(weight)}`;
			places.set(fault, [...(places.get(fault) ?? []), here]);
		}
		expect([...places].map(([fault, at]) => `${fault}: ${at.join(' ')}`)).toEqual(lines(text));
	});
});

describe('a fault', () => {
	test.each(lines(CHANGES).map((line) => [line.split(' ')[0] ?? '', line.split(' ')[1] ?? '', line] as const))(
		'changes just this on %s: %s',
		(rig, name, line) => {
			const sheet = sheetOf(rig);
			const at = placedFaults(sheet).find(
				({ placed: { fault, place, detail } }) => `${fault}@${place}${detail ? `:${detail}` : ''}` === name,
			);
			if (!at) throw new Error(`no ${name} on ${rig}`);
			expect(written(faultEvents(sheet, at.placed))).toBe(line.split(' ').slice(2).join(' '));
		},
	);

	test('every one of them is in that list', () => {
		const listed = new Set(lines(CHANGES).map((line) => (line.split(' ')[1] ?? '').split('@')[0]));
		const elsewhere = [
			'hearing-nothing',
			'microphone-dead',
			'patched-elsewhere',
			'patched-other-universe',
			// of splitters and of switches that lead, which no bundled rig has: boxes.test.ts, by-hand.test.ts
			'splitter-off',
			'splitter-output-dead',
			'function-switch-wrong',
			'tenth-switch-down',
		];
		expect(
			FAULTS.map(({ id }) => id)
				.filter((id) => !listed.has(id))
				.sort(),
		).toEqual([...elsewhere].sort());
	});

	test('of the microphone sits where a programme listens, and nowhere else', () => {
		const [fixture, ...rest] = bundledRig('one-wash').fixtures;
		if (!fixture || rest.length > 0) throw new Error('one wash was to be alone');
		const hears = (programme: string): string[] =>
			placedFaults({
				...bundledRig('one-wash'),
				fixtures: [{ ...fixture, settings: { ...fixture.settings, work: 'programme', programme } }],
			}).flatMap(({ placed, weight }) =>
				['hearing-nothing', 'microphone-dead'].includes(placed.fault)
					? `${placed.fault} ${placed.detail} ${weight}`
					: [],
			);
		const [sound, fade] = ['sound', 'fade'].map(
			(kind) => tallow.programmes.find((each) => each.kind === kind)?.id ?? '',
		);
		expect(hears(sound ?? '')).toEqual(['hearing-nothing deaf 2', 'microphone-dead undefined 1']);
		expect(hears(fade ?? '')).toEqual(['microphone-dead undefined 1']);
		const listening = {
			...bundledRig('one-wash'),
			fixtures: [{ ...fixture, settings: { ...fixture.settings, work: 'programme', programme: sound ?? '' } }],
		} satisfies RigSheet;
		expect(written(faultEvents(listening, { fault: 'hearing-nothing', place: 'wash-1', detail: 'deaf' }))).toBe(
			'settings.become {wash-1,change:{hearing:0}}',
		);
		expect(written(faultEvents(listening, { fault: 'microphone-dead', place: 'wash-1' }))).toBe(
			'condition.become {wash-1,change:{microphoneDead:true}}',
		);
	});

	test.each([
		[{ fault: 'patched-elsewhere', place: 'bar-2' }, 1, 20, 10],
		[{ fault: 'patched-other-universe', place: 'bar-2' }, 2, 10, 0],
	] as const)('of the patch takes the levels with it: %j', (placed, universe, address, by) => {
		const sheet = bundledRig('two-universes');
		const [patch, recall, ...rest] = faultEvents(sheet, placed);
		expect(rest).toEqual([]);
		expect(patch).toEqual({ type: 'desk.patch', fixture: 'bar-2', universe, address, mode: 'whole-plus' });
		if (recall?.type !== 'desk.recall') throw new Error('the desk was to be recalled');
		const mine = (sheet.desk?.levels ?? []).filter((each) => each.universe === 1 && each.slot >= 10 && each.slot <= 18);
		const others = (sheet.desk?.levels ?? []).filter((each) => !mine.includes(each));
		expect(mine).toHaveLength(6);
		expect(recall.levels).toEqual([...others, ...mine.map((each) => ({ ...each, universe, slot: each.slot + by }))]);
	});
});

describe('a mend', () => {
	test.each(lines(MENDED).map((line) => [line.split(' ')[0] ?? '', line.split(' ')[1] ?? '', line] as const))(
		'does just this on %s: %s',
		(rig, id, line) => {
			const [, , place = '', ...events] = line.split(' ');
			expect(written(MENDS[id as RepairId].events(sheetOf(rig), place))).toBe(events.join(' '));
		},
	);

	test('every one of them is in that list', () => {
		expect(
			lines(MENDED)
				.map((line) => line.split(' ')[1])
				.sort(),
		).toEqual(Object.keys(MENDS).sort());
	});

	test('an id nobody knows, or a place it cannot sit in, is refused', () => {
		expect(saidBy(() => faultOf('nothing'))).toMatch(/No fault is called 'nothing'/);
		const sheet = bundledRig('one-wash');
		expect(saidBy(() => faultEvents(sheet, { fault: 'switched-off', place: 'wash-2' }))).toMatch(
			/can’t sit at 'wash-2'/,
		);
		expect(saidBy(() => faultEvents(sheet, { fault: 'level-down', place: 'wash-1', detail: 'up' }))).toMatch(/\(up\)/);
	});
});
