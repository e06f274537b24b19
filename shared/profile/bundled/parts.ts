import { CHROMATICITY } from '../chromaticity.ts';
import type { Band, Effect, Emitter, LeafItem, Slot } from '../schema.ts';

/** An emitter of that colour. Lumens and watts are invented. */
export function emitter(id: string, name: string, lumens: number, watts: number): Emitter {
	const xy = CHROMATICITY[id];
	if (!xy) throw new Error(`no chromaticity for ${id}`);
	return { id, name, xy: [xy[0], xy[1]], lumens, watts, ultraviolet: id === 'ultraviolet' };
}

/** A plain emitter slot; `cells` where it drives only some. */
export function colour(at: number, id: string, name: string, cells?: number[]): Slot {
	const drives = { kind: 'emitter' as const, emitter: id };
	return cells ? { id: `${id}-${cells[0]}-${cells.at(-1)}`, name, at, drives, cells } : { id, name, at, drives };
}

export function intensity(at: number, fine?: number): Slot {
	return fine === undefined
		? { id: 'intensity', name: 'Intensity', at, drives: { kind: 'intensity' } }
		: { id: 'intensity', name: 'Intensity', at, fine, drives: { kind: 'intensity' } };
}

/** Bands from a list of last values: each starts where the one before ended. */
export function bands(
	at: number,
	id: string,
	name: string,
	list: readonly (readonly [last: number, id: string, name: string, effect: Effect])[],
): Slot {
	let from = 0;
	const made: Band[] = list.map(([to, bandId, bandName, effect]) => {
		const band = { id: bandId, name: bandName, from, to, effect };
		from = to + 1;
		return band;
	});
	return { id, name, at, drives: { kind: 'bands', bands: made } };
}

export const speedSlot = (at: number): Slot => ({ id: 'speed', name: 'Speed', at, drives: { kind: 'speed' } });

export function choice(
	id: string,
	label: string,
	title: string,
	setting: Extract<LeafItem, { kind: 'choice' }>['setting'],
	options: readonly (readonly [string | number, string])[],
): LeafItem {
	return {
		kind: 'choice',
		id,
		label,
		title,
		setting,
		options: options.map(([value, text]) => ({ value, label: text })),
	};
}

/** A number on a panel: it stops at its ends and has no unit unless told. */
export function number(
	item: Omit<Extract<LeafItem, { kind: 'number' }>, 'kind' | 'wraps' | 'unit'> & {
		readonly wraps?: true;
		readonly unit?: string;
	},
): LeafItem {
	return { kind: 'number', wraps: false, unit: '', ...item };
}
