import { InputError, isInputError } from '../error/index.ts';
import {
	ASSUMED,
	assumedDefaults,
	type Emitter,
	idByContent,
	idMaker,
	type Profile,
	readProfile,
	type StaticColour,
	standInPanel,
	titleOf,
	ULTRAVIOLET,
} from '../profile/index.ts';
import { roleOf } from './attributes.ts';
import { type ExpandedMode, expandMode } from './expand.ts';
import type { Asked, LeftOut } from './left.ts';
import { lightOf, opticsOf } from './light.ts';
import { fitColour } from './mix.ts';
import type { GdtfNames } from './names.ts';
import { functionsAt, type Making, slotsOf } from './slots.ts';
import type { DmxMode, FixtureType, Geometry } from './tree.ts';

/** A profile out of a file, with everything that was lost on the way and everything that had to be assumed. */
export interface ProfileFromFile {
	/** Its panel is a stand-in (`isStandIn`): no such file says anything of one. */
	readonly profile: Profile;
	readonly left: readonly LeftOut[];
	readonly asked: readonly Asked[];
	/** E1.20 personality numbers by mode id, for modes that the file gives one. */
	readonly personalities: Readonly<Record<string, number>>;
}

/** Which modes to take, by their names in the file; left out: all that can be. */
export interface ModeChoice {
	readonly modes?: readonly string[] | undefined;
}

interface UsableMode {
	readonly mode: DmxMode;
	readonly path: string;
	readonly expanded: ExpandedMode;
}

/** A profile has as many cells at most. */
const MOST_CELLS = 64;

/**
 * Makes a profile of what a GDTF file says. A mode that no profile can hold is left out, and that is said; where none is left, the
 * first one's reason is thrown.
 * @param names for what the file leaves without one
 * @throws InputError `gdtf.mode`
 */
export function toProfile(type: FixtureType, names: GdtfNames, choice: ModeChoice = {}): ProfileFromFile {
	const left: LeftOut[] = [...type.left];
	const asked: Asked[] = [];
	const usable = usableModes(type, choice, left);
	const beams = usable.reduce<ExpandedMode['beams']>(
		(most, { expanded }) => (expanded.beams.length > most.length ? expanded.beams : most),
		[],
	);
	const light = lightOf(type, usable.flatMap(drivenIn), beams, {
		left,
		asked,
		names,
		isUltraviolet: speaksOfUltraviolet(type),
	});
	const optics = opticsOf(beams, { left, asked });
	const { held, heldFor } = heldMaker(light.emitters, names);
	const making: Making = {
		light,
		wheels: new Map(type.wheels.map((wheel) => [wheel.name, wheel])),
		left,
		asked,
		names,
		held: heldFor,
	};
	const cells = Math.max(1, beams.length);
	const ids = idMaker();
	const personalities: Record<string, number> = {};
	const modes = usable.map(({ mode, path, expanded }, i) => {
		if (expanded.beams.length < beams.length)
			left.push({
				path,
				code: 'cells-differ',
				facts: { mode: mode.name, cells: expanded.beams.length, most: beams.length },
			});
		const name = titled(mode.name, names.mode(i + 1), path, left);
		const id = ids(name, 'mode');
		const number = type.personalities.find((each) => each.mode === mode.name)?.number;
		if (number !== undefined) personalities[id] = number;
		return { id, name, slots: slotsOf(mode, expanded.channels, beams.length, path, making) };
	});
	const name = titled(type.name || type.longName, names.fixture, 'name', left);
	const base = { modes, held, programmes: programmesOf(names) };
	const [first] = modes;
	const profile: Profile = {
		version: 1,
		id: 'file',
		name,
		about: titleOf(type.description || type.longName, names.about, 120),
		shape: cells > 1 ? 'bar' : 'wash',
		panel: standInPanel(base, names.panel),
		power: { battery: null, link: type.geometries.some(hasPowerOutput), idleWatts: ASSUMED.idleWatts },
		optics,
		cells,
		emitters: [...light.emitters],
		...base,
		sensor: false,
		microphone: false,
		follows: ASSUMED.follows,
		unitLoads: ASSUMED.unitLoads,
		defaults: assumedDefaults({ mode: first?.id ?? '', held: FULL, programme: PULSE }),
	};
	askWhatNoFileSays(asked, type.isWired, profile, names);
	const own = readProfile({ ...profile, id: idByContent(name, 'fixture', profile) });
	return { profile: own, left, asked: once(asked), personalities };
}

function usableModes(type: FixtureType, { modes }: ModeChoice, left: LeftOut[]): UsableMode[] {
	const usable: UsableMode[] = [];
	let first: InputError | null = null;
	for (const [i, mode] of type.modes.entries()) {
		const path = `modes[${i}]`;
		if (modes && !modes.includes(mode.name)) {
			left.push({ path, code: 'mode-not-asked', facts: { mode: mode.name } });
			continue;
		}
		try {
			const expanded = expandMode(type, mode, path);
			checkFits(expanded, path);
			usable.push({ mode, path, expanded });
		} catch (error) {
			if (!isInputError(error)) throw error;
			first ??= error;
			const because = { code: error.code, path: error.path, facts: error.facts };
			left.push({ path, code: 'mode-refused', facts: { mode: mode.name }, because });
		}
	}
	if (usable.length > 0) return usable;
	throw (
		first ??
		new InputError('gdtf.mode', 'modes', { trouble: 'none-chosen', known: type.modes.map((mode) => mode.name) })
	);
}

/** What a profile cannot hold of a mode. */
function checkFits({ channels, beams }: ExpandedMode, path: string): void {
	const onLine = channels.filter(({ slots }) => slots.length > 0);
	if (onLine.length === 0) throw new InputError('gdtf.mode', path, { trouble: 'no-slots' });
	const breaks = new Set(onLine.map((channel) => channel.break));
	if (breaks.size > 1) throw new InputError('gdtf.mode', path, { trouble: 'several-breaks', count: breaks.size });
	if (beams.length > MOST_CELLS)
		throw new InputError('gdtf.mode', path, { trouble: 'too-many-cells', count: beams.length, limit: MOST_CELLS });
}

/** Each function of a mode that drives an emitter. */
function drivenIn({ mode, expanded }: UsableMode): Parameters<typeof lightOf>[1][number][] {
	const channels = new Map(mode.channels.map((channel) => [channel.name, channel]));
	const onLine = new Set(expanded.channels.filter(({ slots }) => slots.length > 0).map(({ channel }) => channel));
	return [...onLine].flatMap((channel) => {
		const functions = functionsAt(channel, channels);
		return functions.flatMap((fn) => {
			const role = roleOf(fn.attribute);
			// a part of a slot drives nothing: see `slotsOf`
			return role.is === 'emitter' && functions.length === 1 ? [[fn, role.primary] as const] : [];
		});
	});
}

/**
 * Whether any of a fixture's names or modes speaks of ultraviolet: an attribute or a name is enough, wherever it stands, and in a mode
 * that is not taken too. What drives nothing here may still be in the real one, and hurt.
 */
const speaksOfUltraviolet = ({ name, longName, description, modes }: FixtureType): boolean =>
	[name, longName, description].some((text) => ULTRAVIOLET.test(text)) ||
	modes.some((mode) =>
		mode.channels.some(({ functions }) =>
			functions.some(({ name: called, attribute, sets }) => {
				const role = roleOf(attribute);
				if (role.is === 'emitter' && role.primary.isUltraviolet) return true;
				return [called, ...sets.map((set) => set.name)].some((text) => ULTRAVIOLET.test(text));
			}),
		),
	);

const FULL = 'full';
const PULSE = 'pulse';

/** Static colours: all at full, which a profile must have, and those that bands ask for. */
function heldMaker(emitters: readonly Emitter[], names: GdtfNames): { held: StaticColour[]; heldFor: Making['held'] } {
	const ids = idMaker();
	const held: StaticColour[] = [
		{ id: ids(FULL, FULL), name: names.full, levels: Object.fromEntries(emitters.map(({ id }) => [id, 255])) },
	];
	const known = new Map<string, { id: string; code: 'colour-fitted' | 'colour-out-of-reach' }>();
	// one that gives no light to see makes no colour
	const seen = emitters.filter(({ lumens }) => lumens > 0);
	const sources = seen.map(({ xy, lumens }) => ({ xy, flux: lumens }));
	const heldFor: Making['held'] = (name, colour, leave) => {
		const key = `${name} ${colour.xy.join(' ')}`;
		const there = known.get(key);
		if (there) {
			leave(there.code);
			return there.id;
		}
		const fit = fitColour(sources, colour.xy);
		const code = fit.isWithin ? 'colour-fitted' : 'colour-out-of-reach';
		leave(code);
		const id = ids(name, 'colour');
		const levels = seen.flatMap((emitter, i) => (fit.levels[i] ? [[emitter.id, fit.levels[i]] as const] : []));
		held.push({ id, name, levels: Object.fromEntries(levels) });
		known.set(key, { id, code });
		return id;
	};
	return { held, heldFor };
}

/** A profile's settings name a programme, so there must be one; no slot starts it. */
const programmesOf = (names: GdtfNames): Profile['programmes'] => [
	{ id: PULSE, name: names.pulse, kind: 'pulse', colours: [FULL], slowest: 10, fastest: 1 },
];

const hasPowerOutput = (geometry: Geometry): boolean =>
	geometry.isPowerOutput || geometry.children.some(hasPowerOutput);

function askWhatNoFileSays(
	asked: Asked[],
	isWired: boolean,
	{ power, unitLoads, defaults }: Profile,
	names: GdtfNames,
): void {
	const ask = (path: string, code: Asked['code'], assumed: string | number): void => {
		asked.push({ path, code, facts: { assumed } });
	};
	ask('panel', 'panel', 'text');
	ask('power.battery', 'battery', 0);
	ask('power.idleWatts', 'idle-watts', power.idleWatts);
	if (!isWired) ask('power.link', 'power-link', 0);
	ask('unitLoads', 'line', unitLoads);
	ask('follows', 'follows', '');
	ask('defaults', 'settings', defaults.loss);
	ask('programmes', 'programme', names.pulse);
	ask('held[0]', 'static-colour', names.full);
}

/** Each question once, in the order met. */
const once = (asked: readonly Asked[]): Asked[] => [
	...new Map(asked.map((each) => [`${each.path} ${each.code}`, each])).values(),
];

/** A name cut to a title, and told where anything of it was lost. */
function titled(found: string, otherwise: string, path: string, left: LeftOut[]): string {
	const name = titleOf(found, otherwise);
	if (found.trim() !== '' && name !== found.trim())
		left.push({ path, code: 'name-cut', facts: { found: found.slice(0, 80), name } });
	return name;
}
