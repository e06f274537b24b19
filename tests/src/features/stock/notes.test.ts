import { describe, expect, test } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { stockNames } from '#words/stock/index.ts';
import { readFixtureType, toProfile } from '../../../../shared/gdtf/index.ts';
import { BUNDLED, type Profile } from '../../../../shared/profile/index.ts';
import { entryFromFile, fileFixture } from '../../../../shared/stock/index.ts';
import { cardCautions, cautionsOf, inGroups } from '../../../../src/features/stock/notes.ts';
import { type Made, made } from '../../../shared/gdtf/made.ts';

const RGB = ['R', 'G', 'B'].map((letter, i) => ({
	offset: `${i + 1}`,
	functions: [`Name="${letter}" Attribute="ColorAdd_${letter}" DMXFrom="0/1"`],
}));

describe('what is said of a fixture from a file', () => {
	test('carries the cautions for ultraviolet and for what may flash', () => {
		const cautions = (file: Made) => {
			const entry = entryFromFile('own-f', toProfile(readFixtureType(made(file)), gdtfNames), 0);
			return cautionsOf(fileFixture(entry, stockNames).profile, entry);
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
		expect(cautionsOf(read.profile, { left: [], asked: [] })).toEqual(['ultraviolet']);
		// and the mode may strobe, for all that is known here
		expect(
			cautionsOf(read.profile, { left: [{ path: '', code: 'mode-not-asked', facts: { mode: 'More' } }], asked: [] }),
		).toEqual(['ultraviolet', 'flashing']);
	});

	test('keeps it where the emitter itself was left out, and a slot of functions may always flash', () => {
		const plain = { emitters: [], modes: [] };
		const unused = { path: '', code: 'emitter-unused' as const, facts: { name: 'UV' } };
		expect(cautionsOf(plain, { left: [unused], asked: [] })).toEqual(['ultraviolet']);
		expect(cautionsOf({ ...plain, modes: BUNDLED[0]?.modes ?? [] }, { left: [], asked: [] })).toEqual(['flashing']);
		expect(cautionsOf(plain, { left: [], asked: [] })).toEqual([]);
	});

	test('a card begins with what hands meet: what hangs, and what feeds it, both where that is assumed', () => {
		const onMains = { power: { ...(BUNDLED[1] as Profile).power, battery: null } };
		expect(cardCautions(onMains, false, ['flashing'])).toEqual(['hanging', 'mains', 'flashing']);
		expect(cardCautions(onMains, true, [])).toEqual(['hanging', 'mains', 'batteries']);
	});

	test('shows what may flash first, and every note once', () => {
		const notes = (['weight', 'slot-unused', 'not-acted', 'mode-refused'] as const).map((code) => ({ code }));
		const groups = inGroups(notes);
		expect(groups.map(([group]) => group)).toEqual(['care', 'modes', 'channels', 'rest']);
		expect(groups.flatMap(([, each]) => each)).toHaveLength(4);
	});
});
