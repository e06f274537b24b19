import type { Profile } from '../../../shared/profile/index.ts';
import { type RigSheet, splitPort } from '../../../shared/sheet/index.ts';

/** Metres between fixtures that are set down in a row, and room left at both ends of the wall. */
const PITCH = 2;
const MARGIN = 2;
/** Throw of a fixture that is set down, metres. */
const THROW = 3;

/**
 * The sheet with one more fixture at the end of the row: switched off, unplugged, as it left its maker.
 * @param kind what the crew calls its like: 'Wash'; a number is put behind
 */
export function withFixture(sheet: RigSheet, profile: Profile, kind: string): RigSheet {
	const id = freeId(sheet.fixtures, profile.shape);
	const last = Math.max(MARGIN - PITCH, ...sheet.fixtures.map(({ place }) => place.x));
	const x = last + PITCH;
	const name = `${kind} ${id.slice(id.lastIndexOf('-') + 1)}`;
	return {
		...sheet,
		hall: { ...sheet.hall, width: Math.min(200, Math.max(sheet.hall.width, x + MARGIN)) },
		fixtures: [
			...sheet.fixtures,
			{
				id,
				name,
				profile: profile.id,
				place: { x, y: 0, throw: THROW, overhead: false },
				settings: {},
				on: false,
				plug: 'none',
				charge: 1,
				hidden: false,
			},
		],
	};
}

/** The sheet without a fixture: what was plugged into it hangs loose, what it fed has no mains. */
export function withoutFixture(sheet: RigSheet, id: string): RigSheet {
	const gone = (port: string | null) => port !== null && splitPort(port).device === id;
	return {
		...sheet,
		fixtures: sheet.fixtures
			.filter((fixture) => fixture.id !== id)
			.map((fixture) => (fixture.plug === id ? { ...fixture, plug: 'none' } : fixture)),
		cables: sheet.cables.map((cable) => ({
			...cable,
			from: gone(cable.from) ? null : cable.from,
			to: gone(cable.to) ? null : cable.to,
		})),
		terminators: sheet.terminators.filter((port) => !gone(port)),
		desk: sheet.desk && { ...sheet.desk, patch: sheet.desk.patch.filter(({ fixture }) => fixture !== id) },
	};
}

/** The sheet with a fixture called otherwise. */
export function withName(sheet: RigSheet, id: string, name: string): RigSheet {
	return { ...sheet, fixtures: sheet.fixtures.map((fixture) => (fixture.id === id ? { ...fixture, name } : fixture)) };
}

/** The sheet with a desk of two outputs and nothing patched, if it had none. */
export function withDesk(sheet: RigSheet, name: string): RigSheet {
	const output = (id: string, universe: number) => ({ id, universe, on: true });
	return {
		...sheet,
		desk: sheet.desk ?? { name, outputs: [output('a', 1), output('b', 2)], patch: [], levels: [], master: 255 },
	};
}

/** The first id of a kind that is free: `wash-3`. */
export function freeId(taken: readonly { readonly id: string }[], kind: string): string {
	for (let n = 1; ; n++) if (taken.every(({ id }) => id !== `${kind}-${n}`)) return `${kind}-${n}`;
}
