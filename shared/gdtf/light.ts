import { InputError } from '../error/index.ts';
import { ASSUMED, type Emitter, idMaker, titleOf, ULTRAVIOLET } from '../profile/index.ts';
import { PRIMARIES, type Primary } from './attributes.ts';
import type { Asked, LeftOut } from './left.ts';
import { LIMITS } from './limits.ts';
import type { GdtfNames } from './names.ts';
import type { Beam, ChannelFunction, EmitterPart, FixtureType } from './tree.ts';

/**
 * The standard's defaults for a beam. They stand in files whose writer never knew the figure, so such a value is not data: it counts
 * as not given.
 */
const DEFAULTS = Object.freeze({ lumens: 10_000, watts: 1000, degrees: 25 });

/** Lumens that a profile stands on where a file gives none. Invented, and asked of the person each time. */
const ASSUMED_LUMENS = 1000;

/** Light of a fixture: its emitters, by what names them in the file. */
export interface Light {
	readonly emitters: readonly Emitter[];
	/** The id of the emitter that a function drives. */
	idOf(fn: ChannelFunction, primary: Primary): string;
}

type Tell = { readonly left: LeftOut[]; readonly asked: Asked[] };

/** What lights are made with, besides what the file says of each. */
interface Making extends Tell {
	readonly names: GdtfNames;
	/** Whether anything in the file speaks of ultraviolet: one that no function drives is then there all the same. */
	readonly isUltraviolet: boolean;
}

/**
 * The emitters that some function drives. One that the file describes has its own colour and its share of the light; any other has
 * the standard's colour for its attribute, and that is asked. Ultraviolet that nothing drives is there too, with no light to see and
 * no watts, since its caution goes with it.
 * @param driven each function that drives one, in order
 * @param beams of the mode with the most of them
 * @throws InputError `gdtf.mode` where there are more than a fixture has
 */
export function lightOf(
	type: FixtureType,
	driven: readonly (readonly [ChannelFunction, Primary])[],
	beams: readonly Beam[],
	{ left, asked, names, isUltraviolet }: Making,
): Light {
	const parts = new Map(type.emitters.map((part) => [part.name, part]));
	const keyOf = (fn: ChannelFunction, primary: Primary): string =>
		fn.emitter !== null && parts.has(fn.emitter) ? `part ${fn.emitter}` : primary.attribute;
	const found = new Map<string, Described>();
	for (const [fn, primary] of driven) {
		const key = keyOf(fn, primary);
		if (!found.has(key))
			found.set(
				key,
				described(fn.emitter === null ? undefined : parts.get(fn.emitter), primary, names.emitters[primary.id]),
			);
	}
	// in the file's order, so that a fixture is told of as its maker does
	const places = new Map(type.emitters.map(({ name }, i) => [`part ${name}`, i]));
	const placeOf = (key: string): number => places.get(key) ?? type.emitters.length;
	const order = [...found.keys()].sort((one, other) => placeOf(one) - placeOf(other));
	if (order.length > LIMITS.emitters)
		throw new InputError('gdtf.mode', 'emitters', {
			trouble: 'too-many-emitters',
			count: order.length,
			limit: LIMITS.emitters,
		});
	const unused = type.emitters.filter(({ name }) => !found.has(`part ${name}`));
	const isLit = [...found.values()].some((each) => each.isUltraviolet);
	const unlit = unused.find(isUnseen);
	const hasMore = !isLit && (isUltraviolet || unlit !== undefined);
	for (const part of unused)
		if (!hasMore || part !== unlit) left.push({ path: 'emitters', code: 'emitter-unused', facts: { name: part.name } });
	if (order.length === 0) {
		order.push(names.light);
		found.set(names.light, described(undefined, WHITE, names.light));
		asked.push({ path: 'emitters', code: 'emitters', facts: { assumed: names.light } });
	}
	const ids = idMaker();
	const list = order.map((key) => {
		const each = found.get(key) as Described;
		return { key, each, id: ids(each.name, 'emitter') };
	});
	const shares = sharesOf(list.map(({ each }) => each));
	const lumens = sumOf(beams, 'lumens', left) ?? ask(asked, 'lumens', ASSUMED_LUMENS);
	const watts = sumOf(beams, 'watts', left) ?? ask(asked, 'watts', ASSUMED.wattsAnEmitter * list.length);
	if (list.length > 1) {
		// one figure for the whole fixture is all that a file has
		ask(asked, 'emitter-watts', watts / list.length);
		if (list.some(({ each }) => each.isAssumed)) ask(asked, 'emitter-lumens', lumens);
	}
	const emitters = list.map(({ each, id }, i): Emitter => {
		if (each.isAssumed)
			asked.push({ path: `emitters[${i}].xy`, code: 'emitter-colour', facts: { assumed: each.name } });
		return {
			id,
			name: each.name,
			xy: [each.xy[0], each.xy[1]],
			lumens: Math.min(1e5, lumens * (shares[i] as number)),
			watts: Math.min(5000, watts / list.length),
			ultraviolet: each.isUltraviolet,
		};
	});
	if (hasMore) {
		const { name, xy } = described(unlit, UNSEEN, names.emitters.ultraviolet);
		emitters.push({ id: ids(name, 'emitter'), name, xy: [xy[0], xy[1]], lumens: 0, watts: 0, ultraviolet: true });
	}
	const byKey = new Map(list.map(({ key, id }) => [key, id]));
	return { emitters, idOf: (fn, primary) => byKey.get(keyOf(fn, primary)) as string };
}

interface Described {
	readonly name: string;
	readonly xy: readonly [number, number];
	readonly luminance: number;
	readonly isUltraviolet: boolean;
	/** Whether its colour is the standard's for its attribute, and not the file's. */
	readonly isAssumed: boolean;
}

const WHITE = PRIMARIES.find(({ attribute }) => attribute === 'ColorAdd_W') as Primary;
const UNSEEN = PRIMARIES.find(({ isUltraviolet }) => isUltraviolet) as Primary;
/** Nanometres up to which a light of one wavelength is mostly unseen (CIE luminous efficiency under 0.001 there, from memory). */
const LAST_UNSEEN = 420;

/** Whether what a file says of an emitter makes it ultraviolet: its wavelength or its name is enough, whatever colour it gives. */
const isUnseen = ({ name, wavelength }: EmitterPart): boolean =>
	ULTRAVIOLET.test(name) || (wavelength !== null && wavelength <= LAST_UNSEEN);

function described(part: EmitterPart | undefined, primary: Primary, name: string): Described {
	if (!part) {
		const { colour, isUltraviolet } = primary;
		return { name, xy: colour.xy, luminance: colour.luminance, isUltraviolet, isAssumed: true };
	}
	const called = titleOf(part.name, name);
	// what is hardly seen can hurt
	const isUltraviolet = primary.isUltraviolet || isUnseen(part);
	if (part.colour) {
		const { xy, luminance } = part.colour;
		return { name: called, xy, luminance, isUltraviolet, isAssumed: false };
	}
	// a colour left out is how the standard marks what is not seen
	const { colour } = isUltraviolet ? UNSEEN : primary;
	const luminance = isUltraviolet ? 0 : colour.luminance;
	return { name: called, xy: colour.xy, luminance, isUltraviolet, isAssumed: true };
}

/** Each emitter's share of the light: they come to 1. */
function sharesOf(list: readonly Described[]): number[] {
	const whole = list.reduce((sum, { luminance }) => sum + luminance, 0);
	return list.map(({ luminance }) => (whole > 0 ? luminance / whole : 1 / list.length));
}

function ask(asked: Asked[], code: 'lumens' | 'watts' | 'emitter-lumens' | 'emitter-watts', assumed: number): number {
	asked.push({ path: 'emitters', code, facts: { assumed: Math.round(assumed * 10) / 10 } });
	return assumed;
}

/** A figure of all beams together; null where any of them does not give it, or gives the standard's default. */
function sumOf(beams: readonly Beam[], of: 'lumens' | 'watts', left: LeftOut[]): number | null {
	const known = beams.map((beam) => beam[of]).filter((figure) => figure !== null && figure !== DEFAULTS[of]);
	if (known.length < beams.length && known.length > 0)
		left.push({ path: 'geometries', code: 'mixed-figures', facts: { of } });
	if (known.length === 0 || known.length < beams.length) return null;
	return known.reduce<number>((sum, figure) => sum + (figure as number), 0);
}

/** Beam and field angle in degrees, within what a profile takes. */
export function opticsOf(beams: readonly Beam[], { left, asked }: Tell): { beam: number; field: number } {
	const [first] = beams;
	const differ = beams.filter((one) => one.beamAngle !== first?.beamAngle || one.fieldAngle !== first?.fieldAngle);
	if (differ.length > 0) left.push({ path: 'geometries', code: 'beams-differ', facts: { count: differ.length } });
	const given = (degrees: number | null | undefined): number | null =>
		degrees === undefined || degrees === DEFAULTS.degrees ? null : degrees;
	const found = { beam: given(first?.beamAngle), field: given(first?.fieldAngle) };
	// what is assumed of one agrees with what is given of the other
	const beam = angleOf('beam', found.beam, Math.min(DEFAULTS.degrees, found.field ?? DEFAULTS.degrees), 170, {
		left,
		asked,
	});
	const field = angleOf('field', found.field, Math.max(DEFAULTS.degrees, beam), 175, { left, asked });
	if (beam <= field) return { beam, field };
	left.push({ path: 'geometries', code: 'beams-swapped', facts: { beam, field } });
	return { beam: field, field: beam };
}

function angleOf(
	code: 'beam' | 'field',
	found: number | null,
	assumed: number,
	most: number,
	{ left, asked }: Tell,
): number {
	if (found === null) asked.push({ path: `optics.${code}`, code, facts: { assumed } });
	const degrees = Math.min(most, Math.max(1, found ?? assumed));
	if (found !== null && degrees !== found)
		left.push({ path: 'geometries', code: 'beam-clamped', facts: { found, degrees } });
	return degrees;
}
