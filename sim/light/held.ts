import { InputError, shown } from '../../shared/error/index.ts';
import type { Profile } from '../../shared/profile/index.ts';

const tables = new WeakMap<Profile, readonly Float32Array[]>();

/**
 * Each held colour of a profile as levels 0..1, one array a colour, by emitter in the profile's order.
 * Made once a profile; callers only read it.
 */
export function heldTable(profile: Profile): readonly Float32Array[] {
	let table = tables.get(profile);
	if (table === undefined) {
		table = profile.held.map((colour) =>
			Float32Array.from(profile.emitters, (emitter) => (colour.levels[emitter.id] ?? 0) / 255),
		);
		tables.set(profile, table);
	}
	return table;
}

/**
 * The levels of a held colour.
 * @param held index into the profile's held colours, from 0
 * @param out written over: 0..1 by cell, then emitter (`out[cell * emitters + emitter]`)
 * @throws InputError `held.index` where there is no such colour
 */
export function heldLevels(profile: Profile, held: number, out: Float32Array): void {
	const colour = heldTable(profile)[held];
	if (colour === undefined) {
		const last = profile.held.length - 1;
		throw new InputError('held.index', 'held', {
			expected: 'place-in-list',
			profile: profile.name,
			last,
			found: shown(held),
		});
	}
	for (let at = 0; at < out.length; at += colour.length) out.set(colour, at);
}
