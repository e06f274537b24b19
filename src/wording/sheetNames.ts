import { places } from '#words/checks/index.ts';
import { sockets } from '#words/rig/index.ts';
import { type Profile, SETTING_KEYS, type SettingValue } from '../../shared/profile/index.ts';
import { boxesOf, profileFor, type RigSheet } from '../../shared/sheet/index.ts';
import { type FactWords, fill } from './fill.ts';
import { profileKinds, settingValueText } from './kinds.ts';
import { cableName, cableText, deviceName, type NameSource, portText } from './names.ts';
import { rigKinds } from './rigKinds.ts';

const known = new WeakMap<RigSheet, NameSource>();

/** A sheet as names are read from it. Made once a sheet. */
function namedBy(sheet: RigSheet): NameSource {
	let named = known.get(sheet);
	if (!named) {
		const units = sheet.fixtures.map(
			(placed) => [placed.id, { placed, profile: profileFor(sheet, placed.profile) }] as const,
		);
		const { desk, cables } = sheet;
		named = { gear: { units: new Map(units), desk, boxes: boxesOf(sheet), cables } };
		known.set(sheet, named);
	}
	return named;
}

/** Any place of a fault, repair or check by the name people use, told in full: 'wash 1', 'cable 3 (from … to …)', 'desk, output A', 'the remote'. */
export function placeText(sheet: RigSheet, place: string): string {
	const named = namedBy(sheet);
	if (place.includes(':')) return portText(place, named);
	if (sheet.fixtures.some(({ id }) => id === place)) return deviceName(named, place);
	if (sheet.cables.some(({ id }) => id === place)) return cableText(named, place);
	if (sheet.desk?.outputs.some(({ id }) => id === place)) return portText(`desk:${place}`, named);
	return (places as Readonly<Record<string, string>>)[place] ?? deviceName(named, place);
}

/** The profile of a fixture of a sheet; undefined where there is no such fixture. */
export const sheetProfile = (sheet: RigSheet, fixture: string): Profile | undefined =>
	namedBy(sheet).gear.units.get(fixture)?.profile;

/** A place named in as few words as will do: 'cable 3', 'output A'. */
export function placeName(sheet: RigSheet, place: string): string {
	const isOf = (things: readonly { readonly id: string }[] | undefined) =>
		things?.some(({ id }) => id === place) === true;
	if (!isOf(sheet.fixtures)) {
		if (isOf(sheet.cables)) return cableName(place);
		if (isOf(sheet.desk?.outputs)) return outputName(place);
	}
	return placeText(sheet, place);
}

/** An output of the desk: 'output A'. */
export const outputName = (id: string): string => fill(sockets.output, { id: id.toUpperCase() });

/** Kinds for words about a sheet; those of a profile's own ids where the place is a fixture. */
export function sheetKinds(sheet: RigSheet, place: string): FactWords {
	const named = namedBy(sheet);
	const profile = named.gear.units.get(place)?.profile;
	return {
		...(profile ? { ...settingKinds(profile), ...profileKinds(profile) } : {}),
		...rigKinds(named),
		output: outputName,
		cableEnds: (id: string) => cableText(named, id),
		emitter: (id: string) => (profile ? profileKinds(profile).emitters([id]) : id),
	};
}

/** A kind for each setting, so that a value is worded as that setting's. */
function settingKinds(profile: Profile): FactWords {
	return Object.fromEntries(
		SETTING_KEYS.map((key) => [key, (value: SettingValue) => settingValueText(profile, key, value)]),
	);
}
