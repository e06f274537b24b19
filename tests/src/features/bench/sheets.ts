import { type RigSheet, readSheet } from '../../../../shared/sheet/index.ts';

/** Battery washes on the floor with these settings, and nothing plugged. */
export const sheetOf = (settings: readonly RigSheet['fixtures'][number]['settings'][]): RigSheet =>
	readSheet({
		version: 1,
		name: 'Lantern Row Hall',
		fixtures: settings.map((each, i) => ({
			id: `wash-${i + 1}`,
			name: `Wash ${i + 1}`,
			profile: 'tallow-6',
			place: { x: 2 * (i + 1), y: 0, throw: 3 },
			settings: each,
		})),
		remote: { code: 1 },
	});
