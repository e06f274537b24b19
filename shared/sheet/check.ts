import * as v from 'valibot';
import { type ErrorFacts, InputError } from '../error/index.ts';
import { checkProfile, checkValue, noMode, type Profile, readShape, type SettingKey } from '../profile/index.ts';
import { BOX_LISTS, type SheetFixture } from './devices.ts';
import { loadProfiles, portsOf, profileFor } from './find.ts';
import { type Port, type RigSheet, sheetSchema } from './schema.ts';

// apart, so that a page that opens rigs need not carry what reads them
export { loadProfiles, portsOf, profileFor, splitPort } from './find.ts';

/** As much of a sheet as says which profiles it names. */
const namesSchema = v.object({ fixtures: v.array(v.object({ profile: v.string() })) });

/**
 * Reads a rig sheet from outside.
 * @param input parsed JSON, of any shape
 * @returns the sheet, with optional parts filled in
 * @throws InputError `sheet.shape` where the shape is off; `sheet.id`, `sheet.socket`, `sheet.reference`, `sheet.settings`
 *   or `sheet.mains` where the parts do not fit each other; and what `readProfile` throws for profiles inside it.
 */
export function readSheet(input: unknown): RigSheet {
	const sheet = readShape(sheetSchema, input, 'sheet.shape');
	checkSheet(sheet);
	return sheet;
}

/** As `readSheet`, for a page: the bundled profiles that it names are fetched first. @throws InputError as `readSheet`, NotFetched */
export async function loadSheet(input: unknown): Promise<RigSheet> {
	await loadProfiles(readShape(namesSchema, input, 'sheet.shape'));
	return readSheet(input);
}

function checkSheet(sheet: RigSheet): void {
	sheet.profiles.forEach(checkOwnProfile);
	once(sheet.profiles, 'profiles', 'profile');
	let taken = once(sheet.fixtures, 'fixtures', 'device', new Set(['desk', 'wall', 'none', 'hand', 'remote', 'rig']));
	for (const list of BOX_LISTS) taken = once(sheet[list], list, 'device', taken);
	once(sheet.cables, 'cables', 'cable');
	for (const [i, fixture] of sheet.fixtures.entries()) checkFixture(sheet, fixture, `fixtures[${i}]`);
	checkMains(sheet);
	const ports = new Set(portsOf(sheet));
	const socket = (port: Port | null, path: string): void => {
		if (port !== null && !ports.has(port))
			throw new InputError('sheet.socket', path, { trouble: 'no-such-socket', port });
	};
	for (const [i, cable] of sheet.cables.entries()) {
		socket(cable.from, `cables[${i}].from`);
		socket(cable.to, `cables[${i}].to`);
		if (cable.from !== null && cable.from === cable.to)
			throw new InputError('sheet.socket', `cables[${i}].to`, {
				trouble: 'both-ends-in-one-socket',
				cable: cable.id,
				port: cable.from,
			});
	}
	for (const [i, port] of sheet.terminators.entries()) socket(port, `terminators[${i}]`);
	checkDesk(sheet);
}

/** A profile of the sheet's own, with its place in the sheet before the path of whatever is wrong in it. */
function checkOwnProfile(profile: Profile, i: number): void {
	try {
		checkProfile(profile);
	} catch (error) {
		throw error instanceof InputError ? error.within(`profiles[${i}]`) : error;
	}
}

function checkFixture(sheet: RigSheet, fixture: SheetFixture, place: string): void {
	const profile = profileFor(sheet, fixture.profile, `${place}.profile`);
	for (const [key, value] of Object.entries(fixture.settings))
		checkValue(profile, key as SettingKey, value, `${place}.settings.${key}`, 'sheet.settings');
	const dip = profile.panel.kind === 'dip' ? profile.panel : null;
	if (!dip && (fixture.switches || fixture.slides))
		throw new InputError('sheet.settings', `${place}.${fixture.switches ? 'switches' : 'slides'}`, {
			trouble: 'no-switches',
			profile: profile.name,
		});
	if (dip && Object.keys(fixture.settings).length > 0) {
		throw new InputError('sheet.settings', `${place}.settings`, { trouble: 'switches-alone', profile: profile.name });
	}
	if (dip && fixture.slides) {
		if (fixture.slides.length !== dip.slides.length)
			throw new InputError('sheet.settings', `${place}.slides`, {
				trouble: 'slides-off',
				profile: profile.name,
				slides: dip.slides.length,
				given: fixture.slides.length,
			});
		for (const [i, position] of fixture.slides.entries()) {
			const count = dip.slides[i]?.positions.length ?? 0;
			if (position >= count)
				throw new InputError('sheet.settings', `${place}.slides[${i}]`, {
					trouble: 'no-such-position',
					last: count - 1,
					position,
				});
		}
	}
}

/** Mains links must lead to the wall, from fixtures that have a link socket. */
function checkMains(sheet: RigSheet): void {
	const byId = new Map(sheet.fixtures.map((fixture) => [fixture.id, fixture]));
	for (const [i, fixture] of sheet.fixtures.entries()) {
		const path = `fixtures[${i}].plug`;
		const seen = new Set([fixture.id]);
		let at = fixture.plug;
		while (at !== 'wall' && at !== 'none') {
			const feeder = byId.get(at);
			if (!feeder) throw new InputError('sheet.mains', path, { trouble: 'no-such-fixture', id: at });
			if (!profileFor(sheet, feeder.profile, path).power.link)
				throw new InputError('sheet.mains', path, { trouble: 'no-link-socket', name: feeder.name });
			if (seen.has(at)) throw new InputError('sheet.mains', path, { trouble: 'circle', name: feeder.name });
			seen.add(at);
			at = feeder.plug;
		}
	}
}

function checkDesk(sheet: RigSheet): void {
	if (!sheet.desk) return;
	once(sheet.desk.outputs, 'desk.outputs', 'output');
	const seen = new Set<string>();
	for (const [i, patch] of sheet.desk.patch.entries()) {
		const path = `desk.patch[${i}]`;
		const fixture = sheet.fixtures.find((each) => each.id === patch.fixture);
		if (!fixture)
			throw new InputError('sheet.reference', `${path}.fixture`, { trouble: 'patch-to-none', id: patch.fixture });
		if (seen.has(patch.fixture))
			throw new InputError('sheet.reference', `${path}.fixture`, { trouble: 'patched-twice', name: fixture.name });
		seen.add(patch.fixture);
		const profile = profileFor(sheet, fixture.profile, path);
		if (profile.modes.every(({ id }) => id !== patch.mode))
			throw new InputError('sheet.reference', `${path}.mode`, noMode(profile, patch.mode));
	}
}

/** Each id once, and none of those taken. Hands back all that are taken now. */
function once(
	things: readonly { readonly id: string }[],
	place: string,
	of: ErrorFacts['sheet.id']['of'],
	taken: ReadonlySet<string> = new Set(),
): ReadonlySet<string> {
	const seen = new Set(taken);
	for (const [i, thing] of things.entries()) {
		if (seen.has(thing.id))
			throw new InputError('sheet.id', `${place}[${i}].id`, { trouble: 'id-taken', id: thing.id, of });
		seen.add(thing.id);
	}
	return seen;
}
