import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { readArchive, readFixtureType, toProfile, writeGdtf } from '../../../shared/gdtf/index.ts';
import { BUNDLED, readProfile } from '../../../shared/profile/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { made } from './made.ts';

const written = BUNDLED.map((profile) => writeGdtf(profile));
const texts = [
	made(),
	made({
		geometries:
			'<Geometry Name="Pod"><Beam Name="Lens"/></Geometry><Geometry Name="Body"><GeometryReference Name="A" Geometry="Pod"><Break/></GeometryReference><GeometryReference Name="B" Geometry="Pod"><Break DMXOffset="3"/></GeometryReference></Geometry>',
		wheels: '<Wheel Name="W"><Slot Name="Open" Color="0.31,0.33,100"/><Slot Name="Red" Color="0.6,0.3,10"/></Wheel>',
		channels: [
			{ geometry: 'Pod', offset: '1,2', functions: ['Name="R" Attribute="ColorAdd_R" DMXFrom="0/2"'] },
			{
				geometry: 'Body',
				offset: '5',
				functions: [
					[
						'Name="Wheel" Attribute="Color1" Wheel="W" DMXFrom="0/1" ModeMaster="Pod_ColorAdd_R" ModeFrom="0/1" ModeTo="9/1"',
						'<ChannelSet Name="Open" WheelSlotIndex="1"/><ChannelSet Name="Red" DMXFrom="128/1" WheelSlotIndex="2"/>',
					],
					'Name="Strobe" Attribute="Shutter1Strobe" DMXFrom="200/1" PhysicalFrom="1" PhysicalTo="20"',
				],
			},
		],
	}),
	...written.map(({ description }) => description),
];
const archives = [
	...written.map(({ bytes }) => bytes),
	zipSync({ 'description.xml': [strToU8(texts[1] as string), { level: 0 }] }),
];

/** All the way, as the page has it: a profile that holds to the schema, or an error that can be said. */
function whole(bytes: Uint8Array): 'read' | 'refused' {
	try {
		const { profile } = toProfile(readFixtureType(readArchive(bytes).description), gdtfNames);
		readProfile(JSON.parse(JSON.stringify(profile)));
		return 'read';
	} catch (error) {
		if (!isInputError(error)) throw error;
		expect(errorText(error)).toMatch(/\.$/);
		return 'refused';
	}
}

const share = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

it('an archive with some bytes changed, cut out or doubled is read or refused, and nothing else', () => {
	const change = fc.tuple(
		fc.constantFrom('put', 'flip', 'cut', 'double', 'end'),
		share,
		fc.integer({ min: 0, max: 255 }),
	);
	const met = { read: 0, refused: 0 };
	fc.assert(
		fc.property(fc.constantFrom(...archives), fc.array(change, { minLength: 1, maxLength: 3 }), (archive, changes) => {
			let bytes = Array.from(archive);
			for (const [how, where, value] of changes) {
				// half of them near the end, where the list of files is
				const at =
					value % 2 ? Math.floor(where * bytes.length) : Math.max(0, bytes.length - 1 - Math.floor(where * 90));
				if (how === 'put') bytes[at] = value;
				else if (how === 'flip') bytes[at] = (bytes[at] ?? 0) ^ (1 << (value % 8));
				else if (how === 'cut') bytes.splice(at, 1 + (value % 9));
				else if (how === 'double') bytes.splice(at, 0, ...bytes.slice(at, at + 1 + (value % 40)));
				else bytes = bytes.slice(0, at);
			}
			met[whole(Uint8Array.from(bytes))]++;
		}),
		{ numRuns: runs(1000) },
	);
	expect(met.refused).toBeGreaterThan(500);
});

it('a description with its values and elements changed is read or refused, and nothing else', () => {
	const odd = fc.constantFrom(
		'',
		'0',
		'-1',
		'1e9',
		'9999999999',
		'255/1',
		'1/9',
		'None',
		'0,0,0',
		'1,1,1',
		'0.3,0.3,-5',
		'NaN',
		'1,2,3,4',
		'2,1',
		'512',
		'Body',
		'Pod',
		'Overwrite',
		'__proto__',
		'Dimmer',
		'Shutter1',
		'ColorAdd_UV',
		'\u{1F526}'.repeat(30),
		'x'.repeat(300),
	);
	const change = fc.tuple(fc.constantFrom('value', 'value', 'value', 'drop', 'double', 'swap'), share, odd, share);
	const met = { read: 0, refused: 0 };
	fc.assert(
		fc.property(fc.constantFrom(...texts), fc.array(change, { minLength: 1, maxLength: 5 }), (text, changes) => {
			let xml = text;
			for (const [how, where, value, other] of changes) {
				const all = [...xml.matchAll(how === 'value' ? /"[^"]*"/g : /<\w+[^>]*\/>/g)];
				const one = all[Math.floor(where * all.length)];
				if (!one) continue;
				const [before, after] = [xml.slice(0, one.index), xml.slice(one.index + one[0].length)];
				if (how === 'value') xml = `${before}"${value}"${after}`;
				else if (how === 'drop') xml = before + after;
				else if (how === 'double') xml = before + one[0] + one[0] + after;
				else xml = before + (all[Math.floor(other * all.length)]?.[0] ?? '') + after;
			}
			met[whole(zipSync({ 'description.xml': [strToU8(xml), { level: 0 }] }))]++;
		}),
		{ numRuns: runs(1000) },
	);
	expect(met.read).toBeGreaterThan(100);
	expect(met.refused).toBeGreaterThan(100);
});
