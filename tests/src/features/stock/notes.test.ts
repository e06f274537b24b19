import { describe, expect, test } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { readFixtureType, toProfile } from '../../../../shared/gdtf/index.ts';
import { entryFromFile, fileFixture } from '../../../../shared/stock/index.ts';
import { cautionsOf, inGroups } from '../../../../src/features/stock/notes.ts';
import { type Made, made } from '../../../shared/gdtf/made.ts';

const RGB = ['R', 'G', 'B'].map((letter, i) => ({
	offset: `${i + 1}`,
	functions: [`Name="${letter}" Attribute="ColorAdd_${letter}" DMXFrom="0/1"`],
}));

describe('what is said of a fixture from a file', () => {
	test('carries the cautions for ultraviolet and for what may flash', () => {
		const cautions = (file: Made) => {
			const entry = entryFromFile('own-f', toProfile(readFixtureType(made(file)), gdtfNames), 0);
			return cautionsOf(fileFixture(entry, 'Unnamed').profile, entry);
		};
		const shutter = (attribute: string) => ({
			channels: [...RGB, { offset: '4', functions: [`Name="Thing" Attribute="${attribute}" DMXFrom="0/1"`] }],
		});
		expect(cautions({ channels: RGB })).toEqual([]);
		expect(cautions(shutter('Shutter1Strobe'))).toEqual(['flashing']);
		// not acted out here: nobody knows what the real one does
		expect(cautions(shutter('Effects1'))).toEqual(['flashing']);
		expect(cautions(shutter('ColorAdd_UV'))).toEqual(['ultraviolet']);
	});

	// symptom: a mode with an ultraviolet channel that was not picked took the caution away with it. cause: only picked modes were looked at
	test('keeps its caution for ultraviolet where the mode that speaks of it is not taken', () => {
		const mode = (name: string, attribute: string) =>
			`<DMXMode Name="${name}" Geometry="Body"><DMXChannels><DMXChannel Geometry="Body" DMXBreak="1" Offset="1"><LogicalChannel Attribute="${attribute}"><ChannelFunction Name="x" Attribute="${attribute}" DMXFrom="0/1"/></LogicalChannel></DMXChannel></DMXChannels></DMXMode>`;
		const type = readFixtureType(made({ modes: mode('Plain', 'Dimmer') + mode('More', 'ColorAdd_UV') }));
		const read = toProfile(type, gdtfNames, { modes: ['Plain'] });
		expect(cautionsOf(read.profile, { left: [] })).toEqual(['ultraviolet']);
	});

	test('shows what may flash first, and every note once', () => {
		const notes = (['weight', 'slot-unused', 'not-acted', 'mode-refused'] as const).map((code) => ({ code }));
		const groups = inGroups(notes);
		expect(groups.map(([group]) => group)).toEqual(['care', 'modes', 'channels', 'rest']);
		expect(groups.flatMap(([, each]) => each)).toHaveLength(4);
	});
});
