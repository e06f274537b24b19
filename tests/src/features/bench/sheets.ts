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

/** Fixtures of one line at most: what a line takes (EIA-485). */
const ON_A_LINE = 32;

/** So many washes, six slots each, one after another on one line with its terminator; past 32 of them on further outputs of the desk. */
export function longLine(count: number): RigSheet {
	const at = Array.from({ length: count }, (_, i) => {
		const line = Math.floor(i / ON_A_LINE);
		return { id: `wash-${i + 1}`, output: 'abcdefgh'.charAt(line), universe: line + 1, place: i % ON_A_LINE };
	});
	const address = (place: number): number => 1 + 6 * place;
	return readSheet({
		version: 1,
		name: 'Lantern Row Hall',
		hall: { width: Math.max(16, 2 + 0.6 * count), height: 6 },
		fixtures: at.map(({ id, place }, i) => ({
			id,
			name: `Wash ${i + 1}`,
			profile: 'tallow-6',
			place: { x: 0.5 + 0.6 * i, y: 0, throw: 3 },
			settings: { work: 'line', address: address(place) },
		})),
		desk: {
			name: 'Prep desk',
			outputs: [...new Set(at.map(({ output }) => output))].map((id, i) => ({ id, universe: i + 1 })),
			patch: at.map(({ id, universe, place }) => ({ fixture: id, universe, address: address(place), mode: 'short' })),
			levels: at.map(({ universe, place }) => ({ universe, slot: address(place), level: 200 })),
		},
		cables: at.map(({ id, output, place }, i) => ({
			id: `cable-${i + 1}`,
			kind: 'data',
			length: 5,
			from: place === 0 ? `desk:${output}` : `wash-${i}:out`,
			to: `${id}:in`,
		})),
		terminators: at.flatMap(({ id, place }, i) => (place === ON_A_LINE - 1 || i === count - 1 ? [`${id}:out`] : [])),
	});
}
