import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemAt } from '../../../sim/fixture/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { describeDisplay, describePanel, itemTitle, panelTitle } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { TREE_KEYS } from '../../sim/keys.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { readsWell } from './wording.ts';

const tap = (rig: Rig, fixture: string, ...keys: (typeof TREE_KEYS)[number][]) => {
	for (const key of keys) rig.send({ type: 'key.tap', fixture, key });
};

describe('a display, aloud', () => {
	it('gives what stands there, the item’s title and what a key would do now', () => {
		const rig = openRig(mixed);
		tap(rig, 'wash-1', 'down', 'set');
		expect(describePanel(rig, 'wash-1')).toBe('Display reads STRT, Start address, browsing.');
		tap(rig, 'wash-1', 'set', 'up');
		expect(describePanel(rig, 'wash-1')).toBe('Display reads 2, editing Start address.');
		tap(rig, 'bar-1', 'down', 'set');
		expect(describePanel(rig, 'bar-1')).toBe('Display reads Slots used: Whole plus 9, editing Mode.');
	});

	it('does not say a title twice', () => {
		expect(describePanel(openRig(mixed), 'bar-1')).toBe('Display reads Start address: 11, browsing.');
	});

	it('asks before it does what cannot be undone', () => {
		const rig = openRig(mixed);
		tap(rig, 'wash-1', 'up', 'set', 'up', 'set');
		expect(describePanel(rig, 'wash-1')).toBe('Display asks Back to defaults: YES? Set for yes, Back for no.');
		tap(rig, 'bar-1', 'up', 'set', 'up', 'set');
		expect(describePanel(rig, 'bar-1')).toBe('Display asks Back to defaults: Set all back? Set for yes, Back for no.');
	});

	it('says that it is locked', () => {
		const rig = openRig(mixed);
		for (const fixture of ['wash-1', 'bar-1'])
			rig.send({ type: 'settings.become', fixture, change: { lock: 'on', sleep: 0 } });
		rig.wait(20_000);
		expect(describePanel(rig, 'wash-1')).toBe('Display reads LOCK, locked.');
		expect(describePanel(rig, 'bar-1')).toBe('Display reads Panel locked: Hold Set, locked.');
	});

	it('tells no one why a display is dark: asleep, dead and unpowered look alike', () => {
		const asleep = openRig(mixed);
		asleep.wait(61_000);
		const dead = openRig(mixed);
		dead.send({ type: 'condition.become', fixture: 'wash-1', change: { displayDead: true } });
		const off = openRig(mixed);
		off.send({ type: 'power.switch', fixture: 'wash-1', on: false });
		for (const rig of [asleep, dead, off]) expect(describePanel(rig, 'wash-1')).toBe('Display dark.');
	});

	it('gives switches and slides as they stand, and not what they come to', () => {
		const rig = openRig(mixed);
		const slides = 'slide “Slots” at 5, slide “Data gone” at Dark and slide “Dimming” at Straight.';
		expect(describePanel(rig, 'old-1')).toBe(`Switches 1, 3 and 5 up, the others down; ${slides}`);
		for (const number of [1, 3, 5]) rig.send({ type: 'switch.flip', fixture: 'old-1', switch: number, up: false });
		expect(describePanel(rig, 'old-1')).toBe(`All ten switches down; ${slides}`);
		for (let number = 1; number <= 10; number++)
			rig.send({ type: 'switch.flip', fixture: 'old-1', switch: number, up: true });
		expect(describePanel(rig, 'old-1')).toBe(`All ten switches up; ${slides}`);
	});

	it('finds the item by what is shown, wherever browsing leads', () => {
		const seen = new Set<string>();
		fc.assert(
			fc.property(
				fc.constantFrom('wash-1', 'bar-1'),
				fc.array(fc.constantFrom(...TREE_KEYS), { maxLength: 25 }),
				(fixture, keys) => {
					const rig = openRig(mixed);
					tap(rig, fixture, ...keys);
					const unit = rig.gear.units.get(fixture);
					const { display } = rig.look(fixture);
					if (!unit || display.kind !== 'keyed' || unit.profile.panel.kind === 'dip') throw new Error('no keys');
					const said = describePanel(rig, fixture);
					readsWell(said.replace('? Set', '. Set'));
					if (display.state === 'browsing') {
						expect(describeDisplay(display, unit.profile)).toBe(said);
						seen.add(`${fixture} ${itemAt(unit.profile.panel, unit.state.context.path).id}`);
					}
				},
			),
			{ numRuns: runs(300) },
		);
		// the walk went into the menus, and did not stay at the door
		expect(seen.size).toBeGreaterThan(20);
	});

	it('is that of the leader too', () => {
		expect(describePanel(openRig(led), 'lead')).toBe('Display reads SRCE, What decides the light, browsing.');
	});
});

// symptom: a code such as HUE or GONE stood on the bench with nothing to say what it means but the learner's own guess
describe('the plain title under a display', () => {
	it('says what a code stands for, and what is being set', () => {
		const rig = openRig(mixed);
		tap(rig, 'wash-1', 'down', 'set');
		expect(panelTitle(rig, 'wash-1', rig.look('wash-1').display)).toBe('Start address');
		tap(rig, 'wash-1', 'set', 'up');
		expect(panelTitle(rig, 'wash-1', rig.look('wash-1').display)).toBe('Start address: 2');
	});

	it('is there at every item of every panel with keys, wherever keys lead, and nowhere on a dark display', () => {
		fc.assert(
			fc.property(
				fc.constantFrom('wash-1', 'bar-1'),
				fc.array(fc.constantFrom(...TREE_KEYS), { maxLength: 30 }),
				(id, keys) => {
					const rig = openRig(mixed);
					for (const key of ['down', ...keys] as const) {
						tap(rig, id, key);
						const { display } = rig.look(id);
						if (display.kind !== 'keyed') throw new Error('no display');
						const said = panelTitle(rig, id, display);
						// a display that says it itself, as MODE does, needs no second word for it
						const unit = rig.gear.units.get(id);
						if (unit?.profile.panel.kind === 'dip' || !unit) throw new Error('no panel');
						const title = itemTitle(itemAt(unit.profile.panel, unit.state.context.path));
						const itself = display.lines[0]?.trim().toLowerCase() === title.toLowerCase();
						if (itself) expect(said === '' || said.startsWith(title)).toBe(true);
						else expect(said.startsWith(title)).toBe(true);
						expect(said).not.toMatch(/[{}]|undefined/);
					}
					rig.send({ type: 'condition.become', fixture: id, change: { displayDead: true } });
					expect(panelTitle(rig, id, rig.look(id).display)).toBe('');
				},
			),
			{ numRuns: runs(60) },
		);
	});

	it('says that a panel is locked, and nothing of switches', () => {
		const rig = openRig(mixed);
		rig.send({ type: 'settings.become', fixture: 'wash-1', change: { lock: 'on', sleep: 0 } });
		rig.wait(20_000);
		expect(panelTitle(rig, 'wash-1', rig.look('wash-1').display)).toBe('Panel locked');
		expect(panelTitle(rig, 'old-1', rig.look('old-1').display)).toBe('');
	});
});
