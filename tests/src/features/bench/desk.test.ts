import { describe, expect, it } from 'vitest';
import { bandOf } from '../../../../shared/dmx/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import { faderGroups, levelAt, levelsWith, suggestedPatch } from '../../../../src/features/bench/desk.ts';
import { presetSheet } from '../../../../src/features/bench/presets.ts';

describe('the strips of the desk', () => {
	it('stand in the order of the slots, each with its name, its fine half behind it, and its band', () => {
		const rig = openRig(presetSheet('mixed'));
		const [, bar] = faderGroups(rig);
		expect(bar?.faders.map(({ slot }) => slot)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20]);
		expect(bar?.faders.slice(-3).map(({ name, fine }) => [name, fine])).toEqual([
			['Intensity', false],
			['Intensity', true],
			['Shutter', false],
		]);
		const shutter = bar?.faders.at(-1);
		const band = () => bandOf(shutter?.bands ?? [], levelAt(rig, 1, shutter?.slot ?? 0))?.id;
		expect(band()).toBe('open');
		expect([bar?.last, bar?.pastEnd]).toEqual([20, false]);
		rig.send({ type: 'desk.level', universe: 1, slot: 20, level: 3 });
		expect(band()).toBe('closed');
	});

	it('end at slot 512, and say that something lies past it', () => {
		const rig = openRig(presetSheet('four'));
		rig.send({ type: 'desk.patch', fixture: 'wash-1', universe: 1, address: 508, mode: 'middle' });
		const group = faderGroups(rig).find(({ fixture }) => fixture === 'wash-1');
		expect(group).toMatchObject({ last: 512, pastEnd: true });
		expect(group?.faders.at(-1)?.slot).toBe(512);
	});

	it('go by what the desk thinks, and not by what the fixture is', () => {
		const rig = openRig(presetSheet('one'));
		expect(rig.gear.units.get('wash-1')?.state.context.settings.mode).toBe('short');
		expect(faderGroups(rig)[0]?.faders).toHaveLength(9);
		expect(faderGroups(openRig(presetSheet('leader')))).toEqual([]);
	});
});

describe('a patch for a fixture that has none', () => {
	it('goes past what is taken in the first output’s universe', () => {
		const sheet = presetSheet('four');
		const rig = openRig({ ...sheet, desk: sheet.desk && { ...sheet.desk, patch: sheet.desk.patch.slice(0, 3) } });
		expect(suggestedPatch(rig, 'wash-4')).toEqual({ fixture: 'wash-4', universe: 1, address: 28, mode: 'middle' });
		expect(suggestedPatch(openRig(presetSheet('leader')), 'wash-1')).toBeNull();
	});
});

describe('a look to recall', () => {
	it('is what stands, with the changes in it', () => {
		const rig = openRig(presetSheet('one'));
		const { desk } = rig.gear;
		if (!desk) throw new Error('no desk');
		const levels = levelsWith(desk, [
			{ universe: 1, slot: 10, level: 0 },
			{ universe: 2, slot: 1, level: 255 },
		]);
		rig.send({ type: 'desk.recall', levels });
		expect(rig.gear.desk?.levels.get(1)?.[9]).toBe(0);
		expect(rig.gear.desk?.levels.get(1)?.[12]).toBe(255);
		expect(rig.gear.desk?.levels.get(2)?.[0]).toBe(255);
	});
});
