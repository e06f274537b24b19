import { expect } from 'vitest';
import type { PanelKey } from '../../../shared/profile/index.ts';
import {
	chargeOf,
	type FixtureState,
	hasDataIn,
	hasMains,
	isSwitchedOn,
	panelOf,
	powerOf,
	signalOf,
} from '../../../sim/fixture/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';

/**
 * Brings a rig to where a sheet can hold it, by waiting and by hand: data that is going is gone, panels are back at the top of
 * their menus, and whoever hears anything hears what is played now.
 */
export function comeToRest(rig: Rig): void {
	while ([...rig.gear.units.values()].some(({ state }) => signalOf(state) === 'overdue')) rig.wait(1000);
	rig.send({ type: 'sound.play', level: rig.gear.sound });
	for (const [fixture, { profile }] of rig.gear.units) {
		if (profile.panel.kind === 'dip') continue;
		const tap = (key: PanelKey) => rig.send({ type: 'key.tap', fixture, key });
		const stands = () => rig.gear.units.get(fixture)?.state.context.path ?? [];
		for (let i = 0; i < 3; i++) tap('back');
		for (let i = 0; i < 40 && (stands()[0] ?? 0) > 0; i++) tap('down');
	}
}

/** Fixtures whose panel a sheet cannot hold even so: it is open though its lock is on, or was left elsewhere when it locked. */
export function unsettled({ gear }: Rig): Set<string> {
	const found = new Set<string>();
	for (const [id, { state, profile }] of gear.units) {
		if (profile.panel.kind === 'dip' || panelOf(state) === 'unlit') continue;
		const { path, settings } = state.context;
		if (path.length > 1 || path[0] !== 0 || (settings.lock === 'on' && panelOf(state) !== 'locked')) found.add(id);
	}
	return found;
}

/** What two rigs show alike wherever the clock stands: colours on the move and frames spoiled on the way are as the moment has them. */
function steady({ display, lamps, light }: Sight, isSpoiled: boolean, isOpen: boolean) {
	const { moving, flashes, flicker } = light;
	const still = moving || isSpoiled ? null : { cells: light.cells, whole: light.whole };
	return { display: isOpen ? null : display, lamps, moving, flashes: isSpoiled ? null : flashes, flicker, still };
}

/**
 * Whether the two look the same, by eye and on the line, and are set and wired the same.
 * @param open fixtures whose panels may differ
 * @param later whether time has gone by: what a leader sent last may then be another moment of its programme
 */
export function expectSame(one: Rig, other: Rig, open: ReadonlySet<string>, later = false): void {
	expect([...other.gear.receptions]).toEqual([...one.gear.receptions]);
	for (const [fixture, unit] of one.gear.units) {
		const its = other.gear.units.get(fixture) as typeof unit;
		const reception = one.gear.receptions.get(fixture);
		const isSpoiled = hasDataIn(unit.state) && (reception?.rate ?? 0) > 0;
		const isOther = later && isLost(unit.state) && `${unit.kept}` !== `${its.kept}`;
		const seen = (rig: Rig) => steady(rig.look(fixture), isSpoiled || isOther, open.has(fixture));
		if (!later && isLost(unit.state)) expect(its.kept, fixture).toEqual(unit.kept);
		expect(seen(other), fixture).toEqual(seen(one));
		expect([powerOf(its.state), signalOf(its.state)], fixture).toEqual([powerOf(unit.state), signalOf(unit.state)]);
		const charge = (rig: Rig, { profile, state }: typeof unit) => chargeOf(profile, state, rig.now);
		expect(charge(other, its)).toBeCloseTo(charge(one, unit), 3);
	}
	expect(factsOf(other)).toEqual(factsOf(one));
}

const isLost = (state: FixtureState): boolean => !['none', 'present'].includes(signalOf(state));

/** All a rig is set to, wired as and has wrong in it. */
function factsOf({ gear }: Rig) {
	const { desk, cables, boxes, terminators, remote, hallPower, sound } = gear;
	const units = [...gear.units].map(([id, { state, condition, plug, hidden, kept }]) => {
		const { settings, switches, slides } = state.context;
		const [on, live, data] = [isSwitchedOn(state), hasMains(state), hasDataIn(state)];
		return [
			id,
			{ settings, switches, slides, on, live, data, condition, plug, hidden, lost: isLost(state) && kept !== null },
		];
	});
	const levels = [...(desk?.levels ?? [])].flatMap(([universe, frame]) =>
		[...frame].flatMap((level, i) => (level > 0 ? [`${universe}.${i + 1} ${level}`] : [])),
	);
	return { units, desk: { ...desk, levels: levels.sort() }, cables, boxes, terminators, remote, hallPower, sound };
}
