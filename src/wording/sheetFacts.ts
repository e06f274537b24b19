import { checkParts } from '#words/checks/index.ts';
import {
	footprintOf,
	modeOf,
	type Profile,
	SETTING_KEYS,
	type Settings,
	type Slot,
} from '../../shared/profile/index.ts';
import { profileFor, type RigSheet, type SheetFixture, splitPort } from '../../shared/sheet/index.ts';
import { ALL_DOWN, inputFrom } from '../../sim/fixture/index.ts';
import { fill, type TemplateFacts } from './fill.ts';
import { plainKinds } from './kinds.ts';
import { cableName } from './names.ts';
import { outputName } from './sheetNames.ts';

/** A fader of the desk: a slot of a patched fixture's chart, and the level the sheet has there. */
export interface SheetFader {
	readonly name: string;
	readonly kind: Slot['drives']['kind'];
	readonly level: number;
}

/** All that a sheet means at one place, as the words of faults, repairs and checks ask for it. Each kind of place has facts of its own. */
export function sheetFacts(sheet: RigSheet, place: string): TemplateFacts {
	const fixture = sheet.fixtures.find(({ id }) => id === place);
	const cable = sheet.cables.find(({ id }) => id === place);
	return {
		place,
		master: sheet.desk?.master ?? null,
		code: sheet.remote?.code ?? null,
		universe: sheet.desk?.outputs.find(({ id }) => id === place)?.universe ?? null,
		plugs: plugsText(sheet),
		...(cable ? { from: cable.from, to: cable.to, length: cable.length } : {}),
		...(fixture ? fixtureFacts(sheet, fixture) : {}),
	};
}

/** What a fixture is set to as the sheet has it, or with other switches, slides or settings. */
export function settingsOf(profile: Profile, fixture: SheetFixture): Settings {
	return inputFrom(profile, fixture, false).settings;
}

/** Settings as facts: `meantAddress`, `isMode`. */
export function settingFacts(prefix: 'meant' | 'is', settings: Settings): TemplateFacts {
	return Object.fromEntries(
		SETTING_KEYS.map((key) => [`${prefix}${key.charAt(0).toUpperCase()}${key.slice(1)}`, settings[key]]),
	);
}

function fixtureFacts(sheet: RigSheet, fixture: SheetFixture): TemplateFacts {
	const profile = profileFor(sheet, fixture.profile);
	const settings = settingsOf(profile, fixture);
	const switches = fixture.switches ?? ALL_DOWN;
	return {
		...settingFacts('meant', settings),
		footprint: footprintOf(modeOf(profile, settings.mode)),
		follows: profile.follows,
		plug: fixture.plug,
		leads: settings.lead === 'on' ? checkParts.leads : null,
		up: switches.flatMap((isUp, i) => (isUp ? [i + 1] : [])),
		allDown: !switches.includes(true),
		slides: slideTexts(profile, fixture),
		cableIn: cableAt(sheet, `${fixture.id}:in`),
		cableOut: cableAt(sheet, `${fixture.id}:out`),
		...deskFacts(sheet, fixture.id),
	};
}

function slideTexts({ panel }: Profile, { slides }: SheetFixture): string[] {
	if (panel.kind !== 'dip') return [];
	return panel.slides.map(({ title, positions }, i) =>
		fill(checkParts.slide, { title, label: positions[slides?.[i] ?? 0]?.label ?? '' }),
	);
}

const cableAt = (sheet: RigSheet, port: string): string | null =>
	sheet.cables.find(({ from, to }) => from === port || to === port)?.id ?? null;

/** What the desk means for a fixture: its patch, and its faders by kind. Null or empty where it has none. */
function deskFacts(sheet: RigSheet, fixture: string): TemplateFacts {
	const patch = sheet.desk?.patch.find((each) => each.fixture === fixture);
	const faders = fadersFor(sheet, fixture);
	const of = (...kinds: SheetFader['kind'][]) => faders.filter(({ kind }) => kinds.includes(kind));
	return {
		patchUniverse: patch?.universe ?? null,
		patchAddress: patch?.address ?? null,
		patchMode: patch?.mode ?? null,
		intensity: of('intensity').map(faderText),
		functions: of('bands', 'speed').map(faderText),
		...raised('colours', 'otherColours', of('emitter')),
		...raised('raised', 'others', faders),
	};
}

/** The faders that are up, and a word for the rest where there is any. */
function raised(name: string, rest: string, faders: readonly SheetFader[]): TemplateFacts {
	const up = faders.filter(({ level }) => level > 0);
	return {
		[name]: up.length > 0 ? up.map(faderText) : null,
		[rest]: fill(checkParts.others, { some: up.length < faders.length }),
	};
}

const faderText = ({ name, level }: SheetFader): string => fill(checkParts.fader, { name, level }, plainKinds);

/** A patched fixture's faders with the levels of the sheet, those past the end of the universe left out; none where it has no patch. */
function fadersFor(sheet: RigSheet, fixture: string): SheetFader[] {
	const patch = sheet.desk?.patch.find((each) => each.fixture === fixture);
	const placed = sheet.fixtures.find(({ id }) => id === fixture);
	if (!sheet.desk || !patch || !placed) return [];
	const levels = new Map(
		sheet.desk.levels.flatMap(({ universe, slot, level }) => (universe === patch.universe ? [[slot, level]] : [])),
	);
	return modeOf(profileFor(sheet, placed.profile), patch.mode)
		.slots.map(({ name, at, drives }) => ({ name, kind: drives.kind, slot: patch.address + at - 1 }))
		.filter(({ slot }) => slot <= 512)
		.map(({ name, kind, slot }) => ({ name, kind, level: levels.get(slot) ?? 0 }));
}

/** Which cable belongs in which output of the desk: 'cable 1 in output A'. */
function plugsText(sheet: RigSheet): string[] {
	return sheet.cables.flatMap(({ id, from, to }) => {
		const port = [from, to].find((end) => end?.startsWith('desk:'));
		if (!port) return [];
		return [
			fill(checkParts.plug, { cable: id, output: splitPort(port).socket }, { cable: cableName, output: outputName }),
		];
	});
}
