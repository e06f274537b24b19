import { InputError } from '../error/index.ts';
import { LIMITS } from './limits.ts';
import type { Beam, DmxChannel, DmxMode, FixtureType, Geometry } from './tree.ts';

/** A channel where it stands on the line, once the references of its mode's geometry are followed. */
export interface PlacedChannel {
	readonly channel: DmxChannel;
	/** Its place in the mode's list, from 0. */
	readonly index: number;
	readonly break: number;
	/** Slots within the break from 1, high byte first; none for a virtual channel. */
	readonly slots: readonly number[];
	/** The references it stands in, from the outermost; none where the mode's own geometry has it. */
	readonly references: readonly string[];
	/** The beams at or under its geometry, as places in the mode's list of beams. */
	readonly beams: readonly number[];
}

export interface ExpandedMode {
	readonly channels: readonly PlacedChannel[];
	/** Every beam of the mode's geometry, in order. */
	readonly beams: readonly Beam[];
}

/** A geometry as it stands in a mode: a referenced one stands there once for each reference. */
interface Instance {
	readonly references: readonly Geometry[];
	readonly beams: readonly number[];
}

/**
 * The layout of a mode: each channel once for each place its geometry has.
 * @param path of the mode in the tree
 * @throws InputError `gdtf.mode`: a geometry that is not there, goes round in a circle or is too much; a break that a reference does
 *   not have; a slot past the end, or used twice
 */
export function expandMode(type: FixtureType, mode: DmxMode, path: string): ExpandedMode {
	const beams: Beam[] = [];
	const instances = instancesOf(type, mode, path, beams);
	const channels: PlacedChannel[] = [];
	for (const [index, channel] of mode.channels.entries()) {
		const at = `${path}.channels[${index}]`;
		const places = instances.get(channel.geometry);
		if (!places) throw new InputError('gdtf.mode', at, { trouble: 'no-geometry', name: channel.geometry });
		for (const { references, beams: lit } of places) {
			channels.push({
				channel,
				index,
				...placed(channel, references, at),
				references: references.map(({ name }) => name),
				beams: lit,
			});
			if (channels.length > LIMITS.channels) throw tooMuch(path);
		}
	}
	checkSlots(channels, path);
	return { channels, beams };
}

const tooMuch = (path: string) =>
	new InputError('gdtf.mode', path, { trouble: 'too-many-channels', limit: LIMITS.channels });

/** Every geometry of the mode by name, with the beams in it. */
function instancesOf(type: FixtureType, mode: DmxMode, path: string, beams: Beam[]): Map<string, Instance[]> {
	const top = new Map(type.geometries.map((geometry) => [geometry.name, geometry]));
	const instances = new Map<string, Instance[]>();
	let count = 0;
	const visit = (geometry: Geometry, references: readonly Geometry[], depth: number): void => {
		if (depth > LIMITS.depth || ++count > LIMITS.channels) throw tooMuch(path);
		if (geometry.refersTo !== null) {
			const target = top.get(geometry.refersTo);
			if (!target) throw new InputError('gdtf.mode', path, { trouble: 'no-geometry', name: geometry.refersTo });
			if (references.some(({ refersTo }) => refersTo === geometry.refersTo))
				throw new InputError('gdtf.mode', path, { trouble: 'circle', name: geometry.refersTo });
			visit(target, [...references, geometry], depth + 1);
			return;
		}
		const first = beams.length;
		if (geometry.beam) beams.push(geometry.beam);
		for (const child of geometry.children) visit(child, references, depth + 1);
		const lit = Array.from({ length: beams.length - first }, (_, i) => first + i);
		const alike = instances.get(geometry.name) ?? [];
		alike.push({ references, beams: lit });
		instances.set(geometry.name, alike);
	};
	const root = mode.geometry === null ? undefined : top.get(mode.geometry);
	if (!root) throw new InputError('gdtf.mode', path, { trouble: 'no-geometry', name: mode.geometry ?? '' });
	visit(root, [], 1);
	return instances;
}

/**
 * Where one channel comes to stand. Each reference around it shifts it by its offset for the channel's break, the first that names
 * it; `Overwrite` takes the last break of the innermost reference, and that break's number.
 */
function placed(
	channel: DmxChannel,
	references: readonly Geometry[],
	path: string,
): { break: number; slots: number[] } {
	const missing = (name: string, number: number | 'overwrite') =>
		new InputError('gdtf.mode', path, { trouble: 'missing-break', name, channel: channel.name, break: number });
	let number = channel.break;
	let shift = 0;
	for (const reference of references.toReversed()) {
		const wanted = number;
		const found =
			wanted === 'overwrite' ? reference.breaks.at(-1) : reference.breaks.find((each) => each.number === wanted);
		if (!found) throw missing(reference.name, wanted);
		number = found.number;
		shift += found.offset - 1;
	}
	if (number === 'overwrite') throw missing(channel.geometry, number);
	const slots = channel.offsets.map((offset) => offset + shift);
	const off = slots.find((slot) => slot < 1 || slot > LIMITS.slots);
	if (off !== undefined)
		throw new InputError('gdtf.mode', path, {
			trouble: 'slot-outside',
			channel: channel.name,
			slot: off,
			limit: LIMITS.slots,
		});
	return { break: number, slots };
}

function checkSlots(channels: readonly PlacedChannel[], path: string): void {
	const taken = new Map<string, string>();
	for (const { channel, break: number, slots } of channels) {
		for (const slot of slots) {
			const key = `${number}.${slot}`;
			const other = taken.get(key);
			if (other !== undefined)
				throw new InputError('gdtf.mode', path, { trouble: 'slot-twice', slot, one: other, other: channel.name });
			taken.set(key, channel.name);
		}
	}
}
