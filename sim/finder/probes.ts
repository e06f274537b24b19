import { modeOf, type Slot } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Patch, Rig, Sight } from '../rig/index.ts';
import { isLit, sameColour, sameLight } from './seen.ts';
import type { Witness } from './witness.ts';

/** The desk's own idea of a fixture, as the desk stands; null where it has none. */
export const patchOf = (rig: Rig, fixture: string): Patch | null =>
	rig.gear.desk?.patch.find((patch) => patch.fixture === fixture) ?? null;

/** Slots of a fixture as the desk is patched, with their numbers on the line. */
export function stripsOf(
	rig: Rig,
	fixture: string,
): { readonly slot: Slot; readonly at: number; readonly fine: number | null; readonly universe: number }[] {
	const patch = patchOf(rig, fixture);
	const unit = rig.gear.units.get(fixture);
	if (!patch || !unit) return [];
	return modeOf(unit.profile, patch.mode)
		.slots.map((slot) => ({
			slot,
			at: patch.address + slot.at - 1,
			fine: slot.fine === undefined ? null : patch.address + slot.fine - 1,
			universe: patch.universe,
		}))
		.filter(({ at }) => at <= 512);
}

/** The level at which a band slot leaves the colour slots alone. */
function atRest(slot: Slot): number {
	if (slot.drives.kind !== 'bands') return 0;
	const band = slot.drives.bands.find(({ effect }) => effect.do === 'nothing' || effect.do === 'open');
	return band ? Math.floor((band.from + band.to) / 2) : 0;
}

/** Raises a fixture's strips at the desk: intensity and the wanted colours full, functions at rest; or all of it out. */
function raise(rig: Rig, fixture: string, wanted: (emitter: string) => boolean, full: 0 | 255): RigEvent[] {
	const raised = stripsOf(rig, fixture).flatMap(({ slot, at, fine, universe }) => {
		const { drives } = slot;
		const isOut = drives.kind === 'speed' || (drives.kind === 'emitter' && !wanted(drives.emitter));
		const level = drives.kind === 'bands' ? atRest(slot) : isOut ? 0 : full;
		return (fine === null || fine > 512 ? [at] : [at, fine]).map((number) => ({ universe, slot: number, level }));
	});
	return raised.length === 0 ? [] : [{ type: 'desk.recall', levels: [...standing(rig), ...raised] }];
}

/** All that stands up at the desk. */
function standing(rig: Rig): { universe: number; slot: number; level: number }[] {
	return [...(rig.gear.desk?.levels ?? [])].flatMap(([universe, frame]) => {
		const up: { universe: number; slot: number; level: number }[] = [];
		for (let i = 0; i < frame.length; i++) if (frame[i]) up.push({ universe, slot: i + 1, level: frame[i] as number });
		return up;
	});
}

/** Milliseconds a tech waits after raising a strip. */
const AT_ONCE = 200;

const deskFull = (w: Witness, fixture: string): Rig =>
	w.after(`desk-full ${fixture}`, (rig) => raise(rig, fixture, () => true, 255), AT_ONCE);
const deskOut = (w: Witness, fixture: string): Rig =>
	w.after(`desk-out ${fixture}`, (rig) => raise(rig, fixture, () => true, 0), AT_ONCE);

/** Whether fixture `seen` changes as the strips of `strips` go from full to out at the desk. */
export function answersStrips(w: Witness, strips: string, seen: string): boolean {
	const [full, out] = [deskFull(w, strips), deskOut(w, strips)];
	return !sameLight(full.look(seen), out.look(seen));
}

/** How a fixture takes its own strips: each colour raised by itself. */
export function coloursByDesk(w: Witness, fixture: string): 'all' | 'missing' | 'other' | 'none' {
	const unit = w.rig.gear.units.get(fixture);
	if (!unit) return 'none';
	const strips = stripsOf(w.rig, fixture).flatMap(({ slot }) =>
		slot.drives.kind === 'emitter' ? [slot.drives.emitter] : [],
	);
	const results = [...new Set(strips)].map((emitter): 'right' | 'dark' | 'other' => {
		const { light } = w
			.after(`desk-${emitter} ${fixture}`, (rig) => raise(rig, fixture, (id) => id === emitter, 255), AT_ONCE)
			.look(fixture);
		const at = unit.profile.emitters.findIndex(({ id }) => id === emitter);
		const lit = unit.profile.emitters.map((_, e) => light.cells.some((cell) => (cell.levels[e] ?? 0) > 0.03));
		if (light.moving || !lit.some(Boolean)) return light.moving ? 'other' : 'dark';
		return lit.every((on, e) => on === (e === at)) ? 'right' : 'other';
	});
	if (results.every((result) => result === 'right')) return 'all';
	if (results.every((result) => result === 'dark')) return 'none';
	return results.includes('other') ? 'other' : 'missing';
}

/** What a fixture does when the leader is given another held colour. */
export function followsLeader(w: Witness, leader: string, follower: string): 'follows' | 'differs' | 'still' | 'dark' {
	const unit = w.rig.gear.units.get(leader);
	const held = unit?.state.context.settings.held;
	const other = unit?.profile.held.find(
		({ id, levels }) => id !== held && !('ultraviolet' in levels) && Object.keys(levels).length === 1,
	)?.id;
	if (!unit || !other || unit.profile.panel.kind === 'dip') return 'still';
	const after = w.after(
		`leader ${leader}`,
		() => [{ type: 'settings.become', fixture: leader, change: { work: 'held', held: other, level: 100, strobe: 0 } }],
		AT_ONCE,
	);
	const [led, seen] = [after.look(leader), after.look(follower)];
	if (sameLight(seen, w.rest(follower))) return isLit(seen) ? 'still' : 'dark';
	return sameColour(led, seen) && !seen.light.flicker ? 'follows' : 'differs';
}

/** The sights before and after a press of the remote for a colour nobody shows: one the fixture's profile has. */
export function afterRemote(w: Witness, fixture: string): { readonly before: Sight; readonly after: Sight } {
	const unit = w.rig.gear.units.get(fixture);
	const before = w.rest(fixture);
	const other = unit?.profile.held.find(({ name }) => !before.light.whole.words.includes(name))?.id;
	if (!w.rig.gear.remote || !other) return { before, after: before };
	return {
		before,
		after: w.after(`remote ${other}`, () => [{ type: 'remote.press', button: `held:${other}` }], AT_ONCE).look(fixture),
	};
}

/** After a press with the remote held close, where nothing stands between. */
export function afterRemoteClose(w: Witness, fixture: string): { readonly before: Sight; readonly after: Sight } {
	const unit = w.rig.gear.units.get(fixture);
	const before = w.rest(fixture);
	const other = unit?.profile.held.find(({ name }) => !before.light.whole.words.includes(name))?.id;
	if (!w.rig.gear.remote || !other) return { before, after: before };
	const close = w.after(
		`remote close ${fixture}`,
		() => [
			{ type: 'sight.block', fixture, hidden: false },
			{ type: 'remote.press', button: `held:${other}` },
		],
		AT_ONCE,
	);
	return { before, after: close.look(fixture) };
}

/** Hours a rig is asked to run. */
const NIGHT_MS = 5 * 3_600_000;

/** The fixture after five hours as things stand. */
export const afterHours = (w: Witness, fixture: string): Sight => w.after('hours', () => [], NIGHT_MS).look(fixture);

/** The fixture while the desk restarts: its outputs silent long enough for data to count as lost. */
export function whileDeskRestarts(w: Witness, fixture: string): Sight {
	return w
		.after('desk restart', (rig) =>
			(rig.gear.desk?.outputs ?? [])
				.filter(({ on }) => on)
				.map(({ id }) => ({ type: 'desk.output', output: id, on: false })),
		)
		.look(fixture);
}

/** The fixture with a charger in, its battery half full, switched off. */
export function onCharger(w: Witness, fixture: string): Sight {
	return w
		.after(
			`charger ${fixture}`,
			() => [
				{ type: 'charge.become', fixture, charge: 0.3 },
				{ type: 'mains.plug', fixture, into: 'wall' },
				{ type: 'power.switch', fixture, on: false },
			],
			AT_ONCE,
		)
		.look(fixture);
}

/** The fixture after a clap beside it. */
export function afterClap(w: Witness, fixture: string): Sight {
	return w
		.after(
			'clap',
			() => [
				{ type: 'sound.play', level: 0 },
				{ type: 'sound.play', level: 1 },
			],
			40,
		)
		.look(fixture);
}

/** The fixture switched off and on again. */
export function afterPowerCycle(w: Witness, fixture: string): Sight {
	return w
		.after(`cycle ${fixture}`, () => [
			{ type: 'power.switch', fixture, on: false },
			{ type: 'power.switch', fixture, on: true },
		])
		.look(fixture);
}

/** The fixture given a plain held colour at its own panel, for as long as one looks. */
export function onHeldWhite(w: Witness, fixture: string): Sight | null {
	const unit = w.rig.gear.units.get(fixture);
	const display = w.rest(fixture).display;
	if (!unit || unit.condition.displayDead || display.kind !== 'keyed' || display.state === 'dark') return null;
	const white = unit.profile.held[0]?.id ?? '';
	return w
		.after(
			`held ${fixture}`,
			() => [{ type: 'settings.become', fixture, change: { work: 'held', held: white, level: 100, strobe: 0 } }],
			AT_ONCE,
		)
		.look(fixture);
}
