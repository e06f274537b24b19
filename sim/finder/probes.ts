import { oncePer, onceUnder } from '../../shared/memo/index.ts';
import { modeOf, type Profile, type Slot } from '../../shared/profile/index.ts';
import { profileFor, type RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { lookUnder, type Patch, type Rig, type Sight, type Unit } from '../rig/index.ts';
import { isLit, sameColour, sameLight, type Witness } from './witness.ts';

/** The desk's own idea of a fixture, as the desk stands; null where it has none. */
export const patchOf = (rig: Rig, fixture: string): Patch | null =>
	rig.gear.desk?.patch.find((patch) => patch.fixture === fixture) ?? null;

/** What kind of fixture the sheet says stands there: what it is inside is nothing that a desk could know. */
const kindsOf = oncePer(
	(sheet: RigSheet): ReadonlyMap<string, Profile> =>
		new Map(sheet.fixtures.map(({ id, profile }) => [id, profileFor(sheet, profile)])),
);

/** Slots of a fixture as the desk is patched, with their numbers on the line. */
export function fadersOf(
	rig: Rig,
	fixture: string,
): { readonly slot: Slot; readonly at: number; readonly fine: number | null; readonly universe: number }[] {
	const patch = patchOf(rig, fixture);
	const profile = kindsOf(rig.sheet).get(fixture);
	if (!patch || !profile) return [];
	return modeOf(profile, patch.mode)
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

type UniverseLevels = ReadonlyMap<number, Uint8Array>;

/** The desk's levels with a fixture's strips raised: intensity and the wanted colours full, functions at rest; or all of it out. */
function raised(rig: Rig, fixture: string, wanted: (emitter: string) => boolean, full: 0 | 255): UniverseLevels {
	const levels = new Map(rig.gear.desk?.levels);
	const fresh = new Set<number>();
	for (const { slot, at, fine, universe } of fadersOf(rig, fixture)) {
		const { drives } = slot;
		const isOut = drives.kind === 'speed' || (drives.kind === 'emitter' && !wanted(drives.emitter));
		if (!fresh.has(universe)) levels.set(universe, levels.get(universe)?.slice() ?? new Uint8Array(512));
		fresh.add(universe);
		const frame = levels.get(universe);
		if (!frame) continue;
		const level = drives.kind === 'bands' ? atRest(slot) : isOut ? 0 : full;
		frame[at - 1] = level;
		if (fine !== null && fine <= 512) frame[fine - 1] = level;
	}
	return levels;
}

const raisings = onceUnder<object, string, UniverseLevels>();

/** Levels worked out once a desk: most rigs in question have one and the same. @param what names the raising */
function raisedOnce(rig: Rig, what: string, raise: () => UniverseLevels): UniverseLevels {
	const { desk } = rig.gear;
	return desk ? raisings(desk, what, raise) : new Map();
}

/** Milliseconds a tech waits after raising a fader. */
const AT_ONCE = 200;

const withFull = ({ rig }: Witness, faders: string, seen: string): Sight =>
	lookUnder(
		rig,
		seen,
		raisedOnce(rig, `full ${faders}`, () => raised(rig, faders, () => true, 255)),
		AT_ONCE,
	);
const withOut = ({ rig }: Witness, faders: string, seen: string): Sight =>
	lookUnder(
		rig,
		seen,
		raisedOnce(rig, `out ${faders}`, () => raised(rig, faders, () => true, 0)),
		AT_ONCE,
	);

/** Whether fixture `seen` changes as the strips of `strips` go from full to out at the desk. */
export function answersFaders(w: Witness, faders: string, seen: string): boolean {
	return !sameLight(withFull(w, faders, seen), withOut(w, faders, seen));
}

/** How a fixture takes its own strips: each colour raised by itself. */
export function coloursByDesk(w: Witness, fixture: string): 'all' | 'missing' | 'other' | 'none' {
	const unit = w.rig.gear.units.get(fixture);
	if (!unit) return 'none';
	const faders = fadersOf(w.rig, fixture).flatMap(({ slot }) =>
		slot.drives.kind === 'emitter' ? [slot.drives.emitter] : [],
	);
	const results = [...new Set(faders)].map((emitter): 'right' | 'dark' | 'other' => {
		const { rig } = w;
		const levels = raisedOnce(rig, `colour ${emitter} ${fixture}`, () =>
			raised(rig, fixture, (id) => id === emitter, 255),
		);
		const { light } = lookUnder(rig, fixture, levels, AT_ONCE);
		const at = unit.profile.emitters.findIndex(({ id }) => id === emitter);
		const lit = unit.profile.emitters.map((_, e) => light.cells.some((cell) => (cell.levels[e] ?? 0) > 0.03));
		if (light.moving || !lit.some(Boolean)) return light.moving ? 'other' : 'dark';
		return lit.every((on, e) => on === (e === at)) ? 'right' : 'other';
	});
	if (results.every((result) => result === 'right')) return 'all';
	if (results.every((result) => result === 'dark')) return 'none';
	return results.includes('other') ? 'other' : 'missing';
}

/** Hands that give a leader another static colour, a plain one, by its panel or its switches; null where it has none. */
function leaderRecoloured(rig: Rig, leader: string): RigEvent[] | null {
	const unit = rig.gear.units.get(leader);
	if (!unit) return null;
	const { profile, state } = unit;
	const others = profile.held.filter(
		({ id, levels }) =>
			id !== state.context.settings.held && !('ultraviolet' in levels) && Object.keys(levels).length === 1,
	);
	if (profile.panel.kind !== 'dip') {
		const held = others[0]?.id;
		return held === undefined
			? null
			: [{ type: 'settings.become', fixture: leader, change: { work: 'held', held, level: 100, strobe: 0 } }];
	}
	for (const { switches, choices } of profile.panel.fields) {
		const at = choices.findIndex(({ sets }) => sets.work === 'held' && others.some(({ id }) => id === sets.held));
		if (at < 0) continue;
		return switches.map((number, bit) => ({
			type: 'switch.flip',
			fixture: leader,
			switch: number,
			up: (at & (2 ** bit)) !== 0,
		}));
	}
	return null;
}

/** What a fixture does when the leader is given another static colour. */
export function followsLeader(w: Witness, leader: string, follower: string): 'follows' | 'differs' | 'still' | 'dark' {
	const change = leaderRecoloured(w.rig, leader);
	if (!change) return isLit(w.rest(follower)) ? 'still' : 'dark';
	const after = w.after(`leader ${leader}`, () => change, AT_ONCE);
	const [led, seen] = [after.look(leader), after.look(follower)];
	if (sameLight(seen, w.rest(follower))) return isLit(seen) ? 'still' : 'dark';
	return sameColour(led, seen) && !seen.light.flicker ? 'follows' : 'differs';
}

/** Share of an emitter's output by which a colour must differ from what is there, for a press of the remote to be told by it. */
const UNLIKE = 0.3;

/** The static colour least like what a fixture shows, by what its emitters do: it tells whether a press got in. Null for none. */
function unlikeColour(unit: Unit, { light }: Sight): string | null {
	const { emitters, held } = unit.profile;
	const now = emitters.map((_, e) => Math.max(...light.cells.map((cell) => cell.levels[e] ?? 0)));
	const scaled = (levels: readonly number[]): number[] => {
		const top = Math.max(...levels);
		return levels.map((level) => (top > 0 ? level / top : 0));
	};
	const shown = scaled(now);
	let best: string | null = null;
	let most = UNLIKE;
	for (const { id, levels } of held) {
		if (emitters.some((each) => each.ultraviolet && (levels[each.id] ?? 0) > 0)) continue;
		const wanted = scaled(emitters.map((each) => levels[each.id] ?? 0));
		const apart = Math.max(...wanted.map((level, e) => Math.abs(level - (shown[e] ?? 0))));
		if (apart <= most) continue;
		most = apart;
		best = id;
	}
	return best;
}

/** The sights before and after a press of the remote for a colour that the fixture does not show. */
export function afterRemote(w: Witness, fixture: string): { readonly before: Sight; readonly after: Sight } {
	return pressed(w, fixture, 'remote', []);
}

/** After a press with the remote held close, where nothing stands between. */
export function afterRemoteClose(w: Witness, fixture: string): { readonly before: Sight; readonly after: Sight } {
	return pressed(w, fixture, `remote close ${fixture}`, [{ type: 'sight.block', fixture, hidden: false }]);
}

function pressed(
	w: Witness,
	fixture: string,
	key: string,
	first: readonly RigEvent[],
): { readonly before: Sight; readonly after: Sight } {
	const unit = w.rig.gear.units.get(fixture);
	const before = w.rest(fixture);
	const other = unit && unlikeColour(unit, before);
	if (!w.rig.gear.remote || !other) return { before, after: before };
	const after = w.after(
		`${key} ${other}`,
		() => [...first, { type: 'remote.press', button: `held:${other}` }],
		AT_ONCE,
	);
	return { before, after: after.look(fixture) };
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
export function onStaticWhite(w: Witness, fixture: string): Sight | null {
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
