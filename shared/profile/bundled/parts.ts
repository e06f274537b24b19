import type { Band, Effect, Emitter, LeafItem, Slot } from '../schema.ts';

/**
 * Emitters, as chromaticities on or near the CIE 1931 locus (read: 465 nm .1355 .0399; 525 nm .1142 .8262;
 * 590 nm .5752 .4242; 625 nm .7006 .2993) and LED illuminants (read: LED-B4 .3422 .3502).
 * A real emitter sits a little inside the locus. Lumens and watts are invented.
 */
const XY: Readonly<Record<string, readonly [number, number]>> = Object.freeze({
	red: [0.7006, 0.2993],
	green: [0.1142, 0.8262],
	blue: [0.1355, 0.0399],
	amber: [0.5752, 0.4242],
	white: [0.3422, 0.3502],
	/** LED-B1, 2733 K, from memory. */
	'warm-white': [0.456, 0.4078],
	/** 395 nm, from memory: the far violet end of the locus. */
	ultraviolet: [0.1738, 0.005],
});

export function emitter(id: string, name: string, lumens: number, watts: number): Emitter {
	const xy = XY[id];
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
