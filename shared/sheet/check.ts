import * as v from 'valibot';
import { InputError } from '../error/index.ts';
import { checkProfile, checkValue, modeOf, type Profile, readShape, type SettingKey } from '../profile/index.ts';
import { BOX_LISTS, type SheetFixture, SOCKET_WORDS } from './devices.ts';
import { loadProfiles, portsOf, profileFor } from './find.ts';
import { type Port, type RigSheet, sheetSchema } from './schema.ts';

// apart, so that a page that opens rigs need not carry what reads them
export { loadProfiles, portsOf, profileFor, splitPort } from './find.ts';

const WORDS = { code: 'sheet.shape', what: 'The rig sheet', mend: 'Mend that place and open it again.' };

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
	const sheet = readShape(sheetSchema, input, WORDS);
	checkSheet(sheet);
	return sheet;
}

/** As `readSheet`, for a page: the bundled profiles that it names are fetched first. @throws InputError as `readSheet`, NotFetched */
export async function loadSheet(input: unknown): Promise<RigSheet> {
	await loadProfiles(readShape(namesSchema, input, WORDS));
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
			throw new InputError(
				'sheet.socket',
				path,
				`There is no socket '${port}' on this rig. A${Object.values(SOCKET_WORDS).join(', ').slice(1)}.`,
			);
	};
	for (const [i, cable] of sheet.cables.entries()) {
		socket(cable.from, `cables[${i}].from`);
		socket(cable.to, `cables[${i}].to`);
		if (cable.from !== null && cable.from === cable.to)
			throw new InputError(
				'sheet.socket',
				`cables[${i}].to`,
				`Cable '${cable.id}' has both ends in ${cable.from}. Move one of them.`,
			);
	}
	for (const [i, port] of sheet.terminators.entries()) socket(port, `terminators[${i}]`);
	checkDesk(sheet);
}

/** A profile of the sheet's own, with its place in the sheet before the path of whatever is wrong in it. */
function checkOwnProfile(profile: Profile, i: number): void {
	try {
		checkProfile(profile);
	} catch (error) {
		throw error instanceof InputError
			? new InputError(error.code, `profiles[${i}].${error.path}`, error.message)
			: error;
	}
}

function checkFixture(sheet: RigSheet, fixture: SheetFixture, place: string): void {
	const profile = profileFor(sheet, fixture.profile, `${place}.profile`);
	for (const [key, value] of Object.entries(fixture.settings))
		checkValue(profile, key as SettingKey, value, `${place}.settings.${key}`, 'sheet.settings');
	const dip = profile.panel.kind === 'dip' ? profile.panel : null;
	if (!dip && (fixture.switches || fixture.slides))
		throw new InputError(
			'sheet.settings',
			`${place}.${fixture.switches ? 'switches' : 'slides'}`,
			`${profile.name} has no switches; set it by its settings.`,
		);
	if (dip && Object.keys(fixture.settings).length > 0) {
		throw new InputError(
			'sheet.settings',
			`${place}.settings`,
			`${profile.name} is set by its switches and slides alone; give those instead of settings.`,
		);
	}
	if (dip && fixture.slides) {
		if (fixture.slides.length !== dip.slides.length)
			throw new InputError(
				'sheet.settings',
				`${place}.slides`,
				`${profile.name} has ${dip.slides.length} slides; the sheet gives ${fixture.slides.length}.`,
			);
		for (const [i, position] of fixture.slides.entries()) {
			const count = dip.slides[i]?.positions.length ?? 0;
			if (position >= count)
				throw new InputError(
					'sheet.settings',
					`${place}.slides[${i}]`,
					`That slide has positions 0 to ${count - 1}, not ${position}.`,
				);
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
			if (!feeder)
				throw new InputError(
					'sheet.mains',
					path,
					`'${at}' is no fixture of this rig. A mains plug is in 'wall', 'none' or a fixture with a link socket.`,
				);
			if (!profileFor(sheet, feeder.profile, path).power.link)
				throw new InputError(
					'sheet.mains',
					path,
					`'${feeder.name}' has no mains link socket to feed another fixture from.`,
				);
			if (seen.has(at))
				throw new InputError(
					'sheet.mains',
					path,
					`The mains links run in a circle through '${feeder.name}'. One of them must be plugged into the wall.`,
				);
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
			throw new InputError(
				'sheet.reference',
				`${path}.fixture`,
				`The desk is patched to '${patch.fixture}', which is no fixture of this rig.`,
			);
		if (seen.has(patch.fixture))
			throw new InputError(
				'sheet.reference',
				`${path}.fixture`,
				`The desk is patched to '${fixture.name}' twice. Keep one line for it.`,
			);
		seen.add(patch.fixture);
		try {
			modeOf(profileFor(sheet, fixture.profile, path), patch.mode);
		} catch (error) {
			throw error instanceof InputError ? new InputError('sheet.reference', `${path}.mode`, error.message) : error;
		}
	}
}

/** Each id once, and none of those taken. Hands back all that are taken now. */
function once(
	things: readonly { readonly id: string }[],
	place: string,
	what: string,
	taken: ReadonlySet<string> = new Set(),
): ReadonlySet<string> {
	const seen = new Set(taken);
	for (const [i, thing] of things.entries()) {
		if (seen.has(thing.id))
			throw new InputError(
				'sheet.id',
				`${place}[${i}].id`,
				`'${thing.id}' is taken: give each ${what} an id of its own.`,
			);
		seen.add(thing.id);
	}
	return seen;
}
