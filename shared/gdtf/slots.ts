import { ASSUMED, type Band, type Effect, idMaker, rateWithin, type Slot, titleOf } from '../profile/index.ts';
import { roleOf } from './attributes.ts';
import { bytesOf, type Leave, type Stretch, stretchesOf } from './bands.ts';
import type { PlacedChannel } from './expand.ts';
import type { Asked, LeftOut } from './left.ts';
import type { Light } from './light.ts';
import type { GdtfNames } from './names.ts';
import type { ChannelFunction, DmxChannel, DmxMode, Wheel } from './tree.ts';
import { type Colour, inBytes } from './values.ts';

/** What the slots of a mode are made with. */
export interface Making {
	readonly light: Light;
	/** By name. */
	readonly wheels: ReadonlyMap<string, Wheel>;
	readonly left: LeftOut[];
	readonly asked: Asked[];
	readonly names: GdtfNames;
	/** The id of a static colour of that name and colour, fitted to the emitters. */
	held(name: string, colour: Colour, leave: (code: 'colour-fitted' | 'colour-out-of-reach') => void): string;
}

/** What a channel becomes: what it drives, and what its slot is called. */
interface Drives {
	readonly name: string;
	readonly drives: Slot['drives'];
}

/**
 * The slots of a mode: one for each channel where it stands, fine halves with their coarse ones. What has no counterpart is there
 * with its name, and does nothing. So is a number of the footprint that no channel has.
 * @param path of the mode in the tree
 * @param cells how many beams the mode has
 */
export function slotsOf(
	mode: DmxMode,
	placed: readonly PlacedChannel[],
	cells: number,
	path: string,
	making: Making,
): Slot[] {
	const { names } = making;
	const ids = idMaker();
	const channels = new Map(mode.channels.map((channel) => [channel.name, channel]));
	const known = new Map<number, Drives>();
	const slots: Slot[] = [];
	for (const place of placed) {
		const { channel, index, slots: numbers, references, beams } = place;
		const [at, fine, ...extra] = numbers;
		const at0 = `${path}.channels[${index}]`;
		const facts = { mode: mode.name, channel: channel.name };
		if (at === undefined) {
			making.left.push({ path: at0, code: 'virtual-channel', facts });
			continue;
		}
		const isFirst = !known.has(index);
		const made = known.get(index) ?? drivesOf(mode, channel, channels, at0, making);
		known.set(index, made);
		const called = references.length > 0 ? `${made.name}, ${references.join(' ')}` : made.name;
		const name = titleOf(called, names.noFunction);
		if (name.length < called.length && isFirst)
			making.left.push({ path: at0, code: 'name-cut', facts: { found: called.slice(0, 80), name } });
		const some = beams.length > 0 && beams.length < cells ? { cells: beams.map((beam) => beam + 1) } : {};
		const isFine = fine !== undefined && made.drives.kind !== 'bands';
		slots.push({ id: ids(name, 'slot'), name, at, ...(isFine ? { fine } : {}), drives: made.drives, ...some });
		const idle = isFine || fine === undefined ? extra : [fine, ...extra];
		if (isFirst && extra.length > 0)
			making.left.push({ path: at0, code: 'extra-bytes', facts: { ...facts, bytes: extra.length } });
		if (isFirst && fine !== undefined && !isFine) making.left.push({ path: at0, code: 'fine-of-bands', facts });
		for (const number of idle) slots.push(idleSlot(ids, names.fine(name), number, names));
	}
	const taken = new Set(slots.flatMap((slot) => [slot.at, slot.fine ?? slot.at]));
	const last = Math.max(0, ...taken);
	for (let slot = 1; slot <= last; slot++) {
		if (taken.has(slot)) continue;
		making.left.push({ path, code: 'slot-unused', facts: { mode: mode.name, slot } });
		slots.push(idleSlot(ids, names.unusedAt(slot), slot, names));
	}
	return slots.sort((one, other) => one.at - other.at);
}

const idleSlot = (ids: ReturnType<typeof idMaker>, name: string, at: number, names: GdtfNames): Slot => ({
	id: ids(name, 'slot'),
	name: titleOf(name, names.unused),
	at,
	drives: {
		kind: 'bands',
		bands: [{ id: 'none', name: names.noFunction, from: 0, to: 255, effect: { do: 'nothing' } }],
	},
});

/** The functions of a channel that hold while every master is at its default. The others are told. */
export function functionsAt(
	channel: DmxChannel,
	channels: ReadonlyMap<string, DmxChannel>,
	leave: Leave = () => undefined,
): ChannelFunction[] {
	return channel.functions.filter((fn) => {
		if (!fn.master) return true;
		const master = channels.get(fn.master.of.split('.')[0] ?? '');
		if (!master) {
			leave('master-unknown', fn, { master: fn.master.of });
			return true;
		}
		const bytes = bytesOf(master);
		const value = restingValue(master);
		const holds = inBytes(fn.master.from, bytes) <= value && value <= inBytes(fn.master.to, bytes);
		if (!holds) leave('other-master', fn, { master: fn.master.of });
		return holds;
	});
}

/** The value a desk rests a channel at: the default of its first function, or of the one it names. */
function restingValue(channel: DmxChannel): number {
	const named = channel.initialFunction?.split('.').at(-1);
	const initial = channel.functions.find(({ name }) => name === named) ?? channel.functions[0];
	return initial?.default ? inBytes(initial.default, bytesOf(channel)) : 0;
}

function drivesOf(
	mode: DmxMode,
	channel: DmxChannel,
	channels: ReadonlyMap<string, DmxChannel>,
	path: string,
	making: Making,
): Drives {
	const told = new Set<string>();
	const leave: Leave = (code, fn, more = {}) => {
		// of the many sets of one function each loss is said once
		const key = `${code} ${fn.name} ${fn.attribute}`;
		if (told.has(key)) return;
		told.add(key);
		const facts = { mode: mode.name, channel: channel.name, name: fn.name, attribute: fn.attribute, ...more };
		making.left.push({ path, code, facts } as LeftOut);
	};
	const resting = Math.floor(restingValue(channel) / 256 ** (bytesOf(channel) - 1));
	if (resting > 0)
		making.left.push({
			path,
			code: 'resting-level',
			facts: { mode: mode.name, channel: channel.name, level: resting },
		});
	const functions = functionsAt(channel, channels, leave);
	const [only] = functions;
	if (only && functions.length === 1) {
		const whole = wholeSlot(only, making, leave);
		if (whole) return { name: only.name, drives: whole };
	}
	const ids = idMaker();
	const bands = stretchesOf(channel, functions, leave).map((stretch): Band => {
		const name = titleOf(stretch.set?.name || stretch.fn?.name || '', making.names.noFunction);
		const effect = effectOf(stretch, name, making, leave);
		return { id: ids(name, 'band'), name, from: stretch.from, to: stretch.to, effect };
	});
	return { name: only?.attribute ?? making.names.unused, drives: { kind: 'bands', bands } };
}

/** What a slot drives that is one function from end to end; null where a profile can say it only as bands. */
function wholeSlot(fn: ChannelFunction, { light }: Making, leave: Leave): Slot['drives'] | null {
	const role = roleOf(fn.attribute);
	if (role.is !== 'intensity' && role.is !== 'speed' && role.is !== 'emitter') return null;
	if (fn.from.value > 0) return null;
	if ((fn.physicalFrom ?? 0) > (fn.physicalTo ?? 1)) {
		leave('reversed', fn);
		return null;
	}
	const named = fn.sets.filter(({ name }) => name !== '').length;
	if (named > 0) leave('sets-dropped', fn, { count: named });
	if (role.is === 'emitter') return { kind: 'emitter', emitter: light.idOf(fn, role.primary) };
	return { kind: role.is };
}

function effectOf(stretch: Stretch, name: string, making: Making, leave: Leave): Effect {
	const { fn } = stretch;
	if (!fn) return { do: 'nothing' };
	const role = roleOf(fn.attribute);
	if (role.is === 'nothing') return { do: 'nothing' };
	if (role.is === 'shutter') {
		const [from, to] = physicalOf(stretch, fn);
		if (from === 1 && to === 1) return { do: 'open' };
		if (from === 0 && to === 0) return { do: 'dark' };
		leave('shutter-between', fn);
	} else if (role.is === 'strobe') return strobeOf(stretch, fn, making, leave);
	else if (role.is === 'colour') {
		const colour = colourOf(stretch, fn, making.wheels);
		if (colour) {
			const called = titleOf(colour.name, name);
			return { do: 'held', held: making.held(called, colour.colour, (code) => leave(code, fn)) };
		}
		leave('colour-not-given', fn);
	} else leave(role.is === 'other' ? 'not-acted' : 'part-of-slot', fn);
	return { do: 'nothing' };
}

function colourOf(
	{ set }: Stretch,
	fn: ChannelFunction,
	wheels: ReadonlyMap<string, Wheel>,
): { name: string; colour: Colour } | null {
	const wheel = fn.wheel === null ? undefined : wheels.get(fn.wheel);
	// slots of a wheel count from 1
	const slot = set?.wheelSlot ? wheel?.slots[set.wheelSlot - 1] : undefined;
	return slot?.colour ? { name: slot.name, colour: slot.colour } : null;
}

/** What a stretch is from its first value to its last, in the function's unit: the set's own, or its part of the function's. */
function physicalOf({ set, from, to, fnFrom, fnTo }: Stretch, fn: ChannelFunction): [number, number] {
	// the standard's defaults
	const first = fn.physicalFrom ?? 0;
	const last = fn.physicalTo ?? 1;
	const at = (value: number): number =>
		fnTo === fnFrom ? first : first + ((last - first) * (value - fnFrom)) / (fnTo - fnFrom);
	return [set?.physicalFrom ?? at(from), set?.physicalTo ?? at(to)];
}

function strobeOf(stretch: Stretch, fn: ChannelFunction, making: Making, leave: Leave): Effect {
	const { set } = stretch;
	const isGiven = (set?.physicalFrom ?? fn.physicalFrom) !== null && (set?.physicalTo ?? fn.physicalTo) !== null;
	// 0 to 1 is what the standard has where nothing is known
	if (!isGiven || ((fn.physicalFrom ?? 0) === 0 && (fn.physicalTo ?? 1) === 1)) {
		const { slow, fast } = ASSUMED.strobe;
		making.asked.push({ path: 'modes', code: 'strobe-rate', facts: { assumed: `${slow}–${fast}` } });
		return { do: 'strobe', slow, fast };
	}
	const [from, to] = physicalOf(stretch, fn);
	if (from > to) {
		leave('reversed', fn);
		return { do: 'nothing' };
	}
	const [slow, fast] = [from, to].map((found) => {
		const rate = rateWithin(found);
		if (rate !== found) leave('rate-clamped', fn, { found, rate });
		return rate;
	}) as [number, number];
	return { do: 'strobe', slow, fast };
}
