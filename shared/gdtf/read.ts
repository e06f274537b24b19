import { InputError } from '../error/index.ts';
import type { LeftOut } from './left.ts';
import { LIMITS } from './limits.ts';
import type { Beam, ChannelFunction, ChannelSet, DmxChannel, DmxMode, FixtureType, Geometry } from './tree.ts';
import { type DmxValue, readColour, readDmxValue, readNumber, readOffsets } from './values.ts';
import { childOf, childrenOf, given, listOf, readXml, type XmlNode } from './xml.ts';

/** Parts of a fixture type that no profile has a place for, by where they stand; each counts its children. */
const UNUSED: readonly (readonly string[])[] = [
	['FTPresets'],
	['Models'],
	['Revisions'],
	['PhysicalDescriptions', 'AdditionalColorSpaces'],
	['PhysicalDescriptions', 'Gamuts'],
	['PhysicalDescriptions', 'Filters'],
	['PhysicalDescriptions', 'DMXProfiles'],
	['PhysicalDescriptions', 'CRIs'],
];

/**
 * Reads the description of a GDTF archive: a tree of plain data, with nothing filled in. Elements it does not know are passed over,
 * and order is not relied on.
 * @throws InputError `gdtf.xml` where it is no XML of modest depth; `gdtf.tree` where it is no fixture, or a value cannot be read that
 *   what follows would hang on. `path` is the place.
 */
export function readFixtureType(xml: string): FixtureType {
	const root = readXml(xml);
	const type = root.name === 'GDTF' ? childOf(root, 'FixtureType') : undefined;
	if (!type) throw new InputError('gdtf.tree', '', { trouble: 'no-fixture-type', found: root.name.slice(0, 80) });
	const left: LeftOut[] = [];
	const physical = childOf(type, 'PhysicalDescriptions');
	const modeNodes = listOf(type, 'DMXModes', 'DMXMode');
	if (modeNodes.length === 0) throw new InputError('gdtf.tree', 'modes', { trouble: 'no-modes' });
	if (modeNodes.length > LIMITS.modes)
		throw new InputError('gdtf.tree', 'modes', {
			trouble: 'too-many-modes',
			count: modeNodes.length,
			limit: LIMITS.modes,
		});
	leaveUnused(type, left);
	leaveWeight(physical, left);
	const geometries = childOf(type, 'Geometries')?.children.map(readGeometry) ?? [];
	return {
		name: given(type, 'Name') ?? '',
		longName: given(type, 'LongName') ?? '',
		description: given(type, 'Description') ?? '',
		emitters: listOf(physical, 'Emitters', 'Emitter').map((node, i) => readEmitter(node, `emitters[${i}]`, left)),
		wheels: listOf(type, 'Wheels', 'Wheel').map((node, w) => ({
			name: given(node, 'Name') ?? '',
			slots: childrenOf(node, 'Slot').map((slot, s) => ({
				name: given(slot, 'Name') ?? '',
				colour: colourOf(slot, `wheels[${w}].slots[${s}]`, left),
			})),
		})),
		geometries,
		modes: modeNodes.map((node, i) => readMode(node, `modes[${i}]`, left)),
		personalities: listOf(childOf(childOf(type, 'Protocols'), 'FTRDM'), 'SoftwareVersionID', 'DMXPersonality')
			.map((node) => ({ number: readHex(given(node, 'Value')), mode: given(node, 'DMXMode') ?? '' }))
			.filter(({ number }) => number > 0),
		isWired: hasWiring(childOf(type, 'Geometries')),
		left,
	};
}

/** E1.20 numbers personalities from 1; 0 for what is none. */
const readHex = (text: string | null): number =>
	/^(0x)?[0-9a-f]{1,2}$/i.test(text ?? '') ? Number.parseInt((text as string).replace(/^0x/i, ''), 16) : 0;

const hasWiring = (node: XmlNode | undefined): boolean =>
	node !== undefined &&
	((node.name === 'WiringObject' && given(node, 'SignalType') === 'Power') || node.children.some(hasWiring));

function leaveUnused(type: XmlNode, left: LeftOut[]): void {
	for (const path of UNUSED) {
		const node = path.reduce<XmlNode | undefined>((here, name) => childOf(here, name), type);
		if (node && node.children.length > 0)
			left.push({
				path: path.join('.'),
				code: 'part-unused',
				facts: { part: path.at(-1) as string, count: node.children.length },
			});
	}
	for (const mode of listOf(type, 'DMXModes', 'DMXMode')) {
		for (const part of ['Relations', 'FTMacros']) {
			const count = childOf(mode, part)?.children.length ?? 0;
			if (count > 0)
				left.push({
					path: `DMXModes.${given(mode, 'Name') ?? ''}.${part}`,
					code: 'part-unused',
					facts: { part, count },
				});
		}
	}
}

function leaveWeight(physical: XmlNode | undefined, left: LeftOut[]): void {
	const node = childOf(childOf(physical, 'Properties'), 'Weight');
	const kilograms = node ? readNumber(given(node, 'Value')) : null;
	if (kilograms !== null && kilograms > 0)
		left.push({ path: 'PhysicalDescriptions.Properties.Weight', code: 'weight', facts: { kilograms } });
}

// ---- light ---------------------------------------------------------------------------------

function readEmitter(node: XmlNode, path: string, left: LeftOut[]): FixtureType['emitters'][number] {
	const measurements = childrenOf(node, 'Measurement').length;
	if (measurements > 0) left.push({ path, code: 'part-unused', facts: { part: 'Measurement', count: measurements } });
	return {
		name: given(node, 'Name') ?? '',
		colour: colourOf(node, path, left),
		wavelength: numberOf(node, 'DominantWaveLength', path, left),
	};
}

function colourOf(node: XmlNode, path: string, left: LeftOut[]): ReturnType<typeof readColour> {
	const text = given(node, 'Color');
	const colour = readColour(text);
	if (text !== null && colour === null)
		left.push({ path, code: 'unreadable', facts: { attribute: 'Color', found: text.slice(0, 80) } });
	return colour;
}

/** A number that nothing else hangs on: one that cannot be read counts as not given, and that is said. */
function numberOf(node: XmlNode, attribute: string, path: string, left: LeftOut[] | null): number | null {
	const text = given(node, attribute);
	const number = readNumber(text);
	if (text !== null && number === null)
		left?.push({ path, code: 'unreadable', facts: { attribute, found: text.slice(0, 80) } });
	return number;
}

// ---- geometries ----------------------------------------------------------------------------

function readGeometry(node: XmlNode): Geometry {
	const name = given(node, 'Name') ?? '';
	const isReference = node.name === 'GeometryReference';
	return {
		name,
		refersTo: isReference ? (given(node, 'Geometry') ?? '') : null,
		breaks: isReference ? childrenOf(node, 'Break').map((each) => readBreak(each, name)) : [],
		beam: node.name === 'Beam' ? readBeam(node) : null,
		isPowerOutput:
			node.name === 'WiringObject' &&
			given(node, 'ComponentType') === 'Output' &&
			given(node, 'SignalType') === 'Power',
		children: isReference ? [] : node.children.filter(isGeometry).map(readGeometry),
	};
}

/** Elements within a geometry that are part of it, and not geometries. */
const PARTS: readonly string[] = ['Break', 'PinPatch', 'Protocol', 'MediaServer'];
const isGeometry = ({ name }: XmlNode): boolean => !PARTS.includes(name);

function readBreak(node: XmlNode, reference: string): Geometry['breaks'][number] {
	const path = `geometries.${reference}`;
	// the standard's defaults; a value like 1.129 would be in a second universe, which no break has
	return {
		number: wholeOf(node, 'DMXBreak', path, 1),
		offset: wholeOf(node, 'DMXOffset', path, 1),
	};
}

function wholeOf(node: XmlNode, attribute: string, path: string, otherwise: number): number {
	const text = given(node, attribute);
	if (text === null) return otherwise;
	if (!/^\d{1,5}$/.test(text) || Number(text) < 1) throw badValue(path, attribute, text);
	return Number(text);
}

const badValue = (path: string, attribute: string, found: string) =>
	new InputError('gdtf.tree', path, { trouble: 'bad-value', attribute, found: found.slice(0, 80) });

const readBeam = (node: XmlNode): Beam => ({
	beamAngle: positive(node, 'BeamAngle'),
	fieldAngle: positive(node, 'FieldAngle'),
	lumens: positive(node, 'LuminousFlux'),
	watts: positive(node, 'PowerConsumption'),
});

/** 0 says no more than nothing given, of an angle, a flux or a power. */
function positive(node: XmlNode, attribute: string): number | null {
	const number = readNumber(given(node, attribute));
	return number !== null && number > 0 ? number : null;
}

// ---- modes ---------------------------------------------------------------------------------

const readMode = (node: XmlNode, path: string, left: LeftOut[]): DmxMode => ({
	name: given(node, 'Name') ?? '',
	geometry: given(node, 'Geometry'),
	channels: listOf(node, 'DMXChannels', 'DMXChannel').map((each, i) =>
		readChannel(each, `${path}.channels[${i}]`, left),
	),
});

/** Up to 1.0 each byte of a channel had an attribute of its own. */
function offsetOf(node: XmlNode): string | null {
	const bytes = ['Coarse', 'Fine', 'Ultra', 'Uber'].map((name) => given(node, name)).filter((text) => text !== null);
	return given(node, 'Offset') ?? (bytes.length > 0 ? bytes.filter((text) => text !== 'None').join(',') || null : null);
}

function readChannel(node: XmlNode, path: string, left: LeftOut[]): DmxChannel {
	const geometry = given(node, 'Geometry') ?? '';
	const logical = childrenOf(node, 'LogicalChannel');
	const offset = offsetOf(node);
	const offsets = readOffsets(offset);
	if (offsets === null) throw badValue(path, 'Offset', offset ?? '');
	// up to 1.0 the resting level was the channel's
	const resting = dmxOf(node, 'Default', path);
	return {
		name: `${geometry}_${logical[0] ? (given(logical[0], 'Attribute') ?? '') : ''}`,
		geometry,
		break: given(node, 'DMXBreak') === 'Overwrite' ? 'overwrite' : wholeOf(node, 'DMXBreak', path, 1),
		offsets,
		initialFunction: given(node, 'InitialFunction'),
		functions: logical.flatMap((each) =>
			childrenOf(each, 'ChannelFunction').map((fn, i) =>
				readFunction(fn, `${path}.functions[${i}]`, given(each, 'Attribute') ?? '', resting, left),
			),
		),
	};
}

function readFunction(
	node: XmlNode,
	path: string,
	logical: string,
	resting: DmxValue | null,
	left: LeftOut[],
): ChannelFunction {
	const attribute = given(node, 'Attribute') ?? logical;
	const master = given(node, 'ModeMaster');
	return {
		name: given(node, 'Name') ?? attribute,
		attribute,
		from: dmxOf(node, 'DMXFrom', path) ?? ZERO,
		default: dmxOf(node, 'Default', path) ?? resting,
		physicalFrom: numberOf(node, 'PhysicalFrom', path, left),
		physicalTo: numberOf(node, 'PhysicalTo', path, left),
		wheel: given(node, 'Wheel'),
		emitter: given(node, 'Emitter'),
		master:
			master === null
				? null
				: {
						of: master,
						// the standard's defaults: they say nothing by themselves
						from: dmxOf(node, 'ModeFrom', path) ?? ZERO,
						to: dmxOf(node, 'ModeTo', path) ?? ZERO,
					},
		sets: childrenOf(node, 'ChannelSet').map((each, i) => readSet(each, `${path}.sets[${i}]`, left)),
	};
}

const readSet = (node: XmlNode, path: string, left: LeftOut[]): ChannelSet => ({
	name: given(node, 'Name') ?? '',
	from: dmxOf(node, 'DMXFrom', path) ?? ZERO,
	physicalFrom: numberOf(node, 'PhysicalFrom', path, left),
	physicalTo: numberOf(node, 'PhysicalTo', path, left),
	wheelSlot: /^\d{1,5}$/.test(given(node, 'WheelSlotIndex') ?? '') ? Number(given(node, 'WheelSlotIndex')) : null,
});

const ZERO: DmxValue = { value: 0, bytes: 1, isShifted: false };

function dmxOf(node: XmlNode, attribute: string, path: string): DmxValue | null {
	const text = given(node, attribute);
	if (text === null || text === 'None') return null;
	const value = readDmxValue(text);
	if (value === null) throw badValue(path, attribute, text);
	return value;
}
