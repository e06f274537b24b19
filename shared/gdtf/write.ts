import type { Emitter, Mode, Profile } from '../profile/index.ts';
import { writeArchive } from './archive.ts';
import type { LeftOut, NotWritten } from './left.ts';
import { mixOf } from './mix.ts';
import { channelOf, type Drivers, driversOf, WHEEL } from './write-channel.ts';
import { geometriesOf } from './write-geometry.ts';
import { type Attributes, element, figure, guidOf, nameOf } from './write-xml.ts';

/** A GDTF file, and what of the profile it has no place for. */
export interface WrittenFixture {
	readonly bytes: Uint8Array;
	/** What stands in it, as text. */
	readonly description: string;
	readonly left: readonly LeftOut[];
}

/**
 * Writes a profile as a GDTF file (data version 1.2). Each mode has geometries of its own, since a slot for some cells needs one that
 * holds just those. The same profile gives the same file, byte for byte.
 */
export function writeGdtf(profile: Profile): WrittenFixture {
	const left: LeftOut[] = [];
	leaveNames(profile, left);
	const drivers = driversOf(profile.emitters);
	const modes = profile.modes.map((mode, i) => writeMode(profile, mode, i, drivers, left));
	const description = `<?xml version="1.0" encoding="UTF-8"?>\n${element('GDTF', { DataVersion: '1.2' }, [
		element(
			'FixtureType',
			{
				Name: nameOf(profile.name),
				ShortName: profile.name,
				LongName: profile.name,
				Manufacturer: '',
				Description: profile.about,
				FixtureTypeID: guidOf(profile.id),
				CanHaveChildren: 'No',
			},
			[
				definitions(new Set(modes.flatMap(({ attributes }) => attributes))),
				element('Wheels', {}, [writeWheel(profile)]),
				element('PhysicalDescriptions', {}, [
					element(
						'Emitters',
						{},
						profile.emitters.map((emitter) => writeEmitter(emitter, fluxOf(profile))),
					),
				]),
				element('Models'),
				element(
					'Geometries',
					{},
					modes.map(({ geometry }) => geometry),
				),
				element(
					'DMXModes',
					{},
					modes.map(({ xml }) => xml),
				),
			],
		),
	])}\n`;
	for (const what of notWritten(profile)) left.push({ path: '', code: 'not-written', facts: { what } });
	return { bytes: writeArchive(description), description, left };
}

function notWritten({ power, programmes, held, emitters }: Profile): NotWritten[] {
	const all: readonly (readonly [NotWritten, boolean])[] = [
		['panel', true],
		['battery', power.battery !== null],
		['idle-watts', power.idleWatts > 0],
		['emitter-watts', emitters.length > 1],
		['static-levels', held.length > 0],
		['programmes', programmes.length > 0],
		['settings', true],
		['line', true],
	];
	return all.filter(([, isLost]) => isLost).map(([what]) => what);
}

/** Tells of every name that the standard does not take as it is. */
function leaveNames({ name, emitters, held, modes }: Profile, left: LeftOut[]): void {
	const check = (found: string, path: string): void => {
		const plain = nameOf(found);
		if (plain !== found) left.push({ path, code: 'name-changed', facts: { found, name: plain } });
	};
	check(name, 'name');
	for (const [i, emitter] of emitters.entries()) check(emitter.name, `emitters[${i}].name`);
	for (const [i, colour] of held.entries()) check(colour.name, `held[${i}].name`);
	for (const [m, mode] of modes.entries()) {
		check(mode.name, `modes[${m}].name`);
		for (const [s, slot] of mode.slots.entries()) {
			const path = `modes[${m}].slots[${s}]`;
			if (slot.drives.kind === 'bands')
				for (const [b, band] of slot.drives.bands.entries()) check(band.name, `${path}.drives.bands[${b}].name`);
			else check(slot.name, `${path}.name`);
		}
	}
}

const fluxOf = ({ emitters }: Profile): number => emitters.reduce((sum, emitter) => sum + emitter.lumens, 0);

/** A luminance as the file has it: percent of the whole fixture's light. */
const shareOf = (lumens: number, flux: number): string => figure(flux > 0 ? (lumens / flux) * 100 : 0);

/** Nanometres of ultraviolet: that of its colour in `CHROMATICITY` (from memory). */
const ULTRAVIOLET_NM = 395;

const writeEmitter = ({ name, xy, lumens, ultraviolet }: Emitter, flux: number): string =>
	element('Emitter', {
		Name: nameOf(name),
		// one that is hardly seen has no colour, by the standard, which then asks for its wavelength; what it gives is not told either
		...(ultraviolet
			? { DominantWaveLength: figure(ULTRAVIOLET_NM) }
			: { Color: `${figure(xy[0])},${figure(xy[1])},${shareOf(lumens, flux)}` }),
	});

function writeWheel(profile: Profile): string {
	const sources = profile.emitters.map(({ xy, lumens }) => ({ xy, flux: lumens }));
	const slots = profile.held.map(({ name, levels }) => {
		const mixed = mixOf(
			sources,
			profile.emitters.map(({ id }) => levels[id] ?? 0),
		);
		const colour: Attributes = mixed
			? { Color: `${figure(mixed.xy[0])},${figure(mixed.xy[1])},${shareOf(mixed.flux, fluxOf(profile))}` }
			: {};
		return element('Slot', { Name: nameOf(name), ...colour });
	});
	return element('Wheel', { Name: WHEEL }, slots);
}

function writeMode(
	profile: Profile,
	mode: Mode,
	index: number,
	drivers: Drivers,
	left: LeftOut[],
): { attributes: string[]; geometry: string; xml: string } {
	const { cells, optics, emitters } = profile;
	const beam = {
		BeamAngle: figure(optics.beam),
		FieldAngle: figure(optics.field),
		LuminousFlux: figure(fluxOf(profile) / cells),
		PowerConsumption: figure(emitters.reduce((sum, { watts }) => sum + watts, 0) / cells),
	};
	const body = geometriesOf(profile, mode, index, beam, left);
	const channels = mode.slots.map((slot) => channelOf(slot, body.geometryOf(slot), drivers, profile));
	return {
		attributes: channels.flatMap(({ attributes }) => attributes),
		geometry: body.xml,
		xml: element('DMXMode', { Name: nameOf(mode.name), Geometry: body.root }, [
			element(
				'DMXChannels',
				{},
				channels.map(({ xml }) => xml),
			),
			element('Relations'),
			element('FTMacros'),
		]),
	};
}

/** The feature an attribute belongs to (annex B, read). */
const FEATURES: readonly (readonly [RegExp, string, string])[] = [
	[/^Dimmer/, 'Dimmer', 'Dimmer'],
	[/^Color(Add|Macro)/, 'Color', 'RGB'],
	[/^Color/, 'Color', 'Color'],
	[/^(Shutter|Effects)/, 'Beam', 'Beam'],
	[/^/, 'Control', 'Control'],
];

function definitions(attributes: ReadonlySet<string>): string {
	const featured = [...attributes].map((attribute) => {
		const [, group = '', feature = ''] = FEATURES.find(([pattern]) => pattern.test(attribute)) ?? [];
		return { attribute, group, feature };
	});
	const groups = Map.groupBy(featured, ({ group }) => group);
	return element('AttributeDefinitions', {}, [
		element('ActivationGroups'),
		element(
			'FeatureGroups',
			{},
			[...groups].map(([group, each]) =>
				element('FeatureGroup', { Name: group, Pretty: group }, [
					...new Set(each.map(({ feature }) => element('Feature', { Name: feature }))),
				]),
			),
		),
		element(
			'Attributes',
			{},
			featured.map(({ attribute, group, feature }) =>
				element('Attribute', { Name: attribute, Pretty: attribute, Feature: `${group}.${feature}` }),
			),
		),
	]);
}
