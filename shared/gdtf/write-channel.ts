import type { Band, Emitter, Profile, Slot } from '../profile/index.ts';
import { PRIMARIES } from './attributes.ts';
import { type Attributes, element, figure, nameOf } from './write-xml.ts';

/** The wheel that static colours are written as. */
export const WHEEL = 'Static colours';

/** How an emitter is named in the file, and the attribute it is driven by. */
export type Drivers = ReadonlyMap<string, { readonly name: string; readonly attribute: string }>;

/** The standard's attribute whose colour is nearest to each emitter's, each once while there are any left. */
export function driversOf(emitters: readonly Emitter[]): Drivers {
	const taken = new Set<string>();
	return new Map(
		emitters.map(({ id, name, xy, ultraviolet }) => {
			const fit = PRIMARIES.filter((each) => each.isUltraviolet === ultraviolet);
			const free = fit.filter(({ attribute }) => !taken.has(attribute));
			const apart = ({ colour }: (typeof PRIMARIES)[number]) => Math.hypot(colour.xy[0] - xy[0], colour.xy[1] - xy[1]);
			const [nearest] = (free.length > 0 ? free : fit).toSorted((one, other) => apart(one) - apart(other));
			const attribute = nearest?.attribute ?? 'ColorAdd_W';
			taken.add(attribute);
			return [id, { name: nameOf(name), attribute }];
		}),
	);
}

/** A slot as a channel, and the attributes it uses. */
export function channelOf(
	slot: Slot,
	geometry: string,
	drivers: Drivers,
	profile: Profile,
): { readonly attributes: readonly string[]; readonly xml: string } {
	const functions = functionsOf(slot, drivers, profile);
	const attributes = [...new Set(functions.map(({ attribute }) => attribute))];
	const [first] = attributes;
	return {
		attributes,
		xml: element(
			'DMXChannel',
			{
				DMXBreak: 1,
				Offset: slot.fine === undefined ? slot.at : `${slot.at},${slot.fine}`,
				Highlight: 'None',
				Geometry: geometry,
				...(functions[0] ? { InitialFunction: `${geometry}_${first}.${first}.${functions[0].name}` } : {}),
			},
			attributes.map((attribute) =>
				element(
					'LogicalChannel',
					{ Attribute: attribute, Snap: 'No', Master: 'None' },
					functions.filter((each) => each.attribute === attribute).map(({ xml }) => xml),
				),
			),
		),
	};
}

interface NamedFunction {
	readonly attribute: string;
	readonly name: string;
	readonly xml: string;
}

function functionsOf({ name, fine, drives }: Slot, drivers: Drivers, { held, programmes }: Profile): NamedFunction[] {
	const bytes = fine === undefined ? 1 : 2;
	const whole = (attribute: string, more: Attributes = {}): NamedFunction[] => [
		written(attribute, nameOf(name), 0, bytes, { PhysicalFrom: 0, PhysicalTo: 1, ...more }),
	];
	if (drives.kind === 'intensity') return whole('Dimmer');
	if (drives.kind === 'speed') return whole('Effects1Rate');
	if (drives.kind === 'emitter') {
		const driver = drivers.get(drives.emitter);
		return driver ? whole(driver.attribute, { Emitter: driver.name }) : [];
	}
	const taken = new Set<string>();
	return drives.bands.map((band) => {
		// names of one channel's functions are told apart by number
		const plain = nameOf(band.name);
		let called = plain;
		for (let n = 2; taken.has(called); n++) called = `${plain} ${n}`;
		taken.add(called);
		return bandOf(band, called, held, programmes);
	});
}

function bandOf(
	{ name, from, effect }: Band,
	called: string,
	held: Profile['held'],
	programmes: Profile['programmes'],
): NamedFunction {
	const physical = (first: number, last: number): Attributes => ({
		PhysicalFrom: figure(first),
		PhysicalTo: figure(last),
	});
	const at = (attribute: string, more: Attributes = {}, set: Attributes = {}): NamedFunction =>
		written(attribute, called, from, 1, more, { Name: nameOf(name), ...set });
	if (effect.do === 'open') return at('Shutter1', physical(1, 1));
	if (effect.do === 'dark') return at('Shutter1', physical(0, 0));
	if (effect.do === 'strobe') return at('Shutter1Strobe', physical(effect.slow, effect.fast));
	if (effect.do === 'held') {
		const place = held.findIndex(({ id }) => id === effect.held);
		return at('ColorMacro1', { Wheel: WHEEL }, { WheelSlotIndex: place + 1 });
	}
	if (effect.do === 'programme') {
		const kind = programmes.find(({ id }) => id === effect.programme)?.kind;
		return at(kind === 'change' || kind === 'fade' ? 'ColorEffects1' : 'Effects1');
	}
	return at('NoFeature');
}

function written(
	attribute: string,
	name: string,
	from: number,
	bytes: number,
	more: Attributes,
	set: Attributes | null = null,
): NamedFunction {
	const value = { DMXFrom: `${from}/${bytes}` };
	return {
		attribute,
		name,
		xml: element(
			'ChannelFunction',
			{ Name: name, Attribute: attribute, OriginalAttribute: '', ...value, Default: `0/${bytes}`, ...more },
			set ? [element('ChannelSet', { ...set, ...value })] : [],
		),
	};
}
