import { describe, expect, test } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { stockNames } from '#words/stock/index.ts';
import { readFixtureType, toProfile } from '../../../shared/gdtf/index.ts';
import { readProfile } from '../../../shared/profile/index.ts';
import { entryFromFile, type FigureCode, type FileEntry, fileFixture } from '../../../shared/stock/index.ts';
import { type Made, made } from '../gdtf/made.ts';

const entryOf = (file: Made = {}, label: Partial<FileEntry> = {}): FileEntry => ({
	...entryFromFile('own-f', toProfile(readFixtureType(made(file)), gdtfNames), 0),
	...label,
});
const fixture = (entry: FileEntry) => fileFixture(entry, { ...stockNames, unnamed: 'Unnamed' });
const is = (entry: FileEntry, code: FigureCode) => fixture(entry).figures.find((each) => each.code === code)?.is;

const RGBW = {
	channels: ['R', 'G', 'B', 'W'].map((letter, i) => ({
		offset: `${i + 1}`,
		functions: [`Name="${letter}" Attribute="ColorAdd_${letter}" DMXFrom="0/1"`],
	})),
};
const BARE = '<Geometry Name="Body"><Beam Name="Lens"/></Geometry>';

describe('a fixture from a file', () => {
	test('is as the file has it, under a name of the crew’s and an id of its own', () => {
		const entry = entryOf(RGBW, { name: 'Row' });
		const { profile } = fixture(entry);
		expect(readProfile(JSON.parse(JSON.stringify(profile)))).toEqual(profile);
		expect({ ...profile, id: '', name: '' }).toEqual({ ...entry.profile, id: '', name: '' });
		expect(profile.name).toBe('Row');
		expect(profile.id).toMatch(/^own-f-/);
		expect(fixture({ ...entry, name: 'Other' }).profile.id).not.toBe(profile.id);
		expect(fixture({ ...entry, name: ' ' }).profile.name).toBe('Unnamed');
	});

	test('tells of each figure whether the file gave it or it was assumed', () => {
		for (const code of ['watts', 'lumens', 'beam', 'field'] as const) {
			expect(is(entryOf(RGBW), code)).toBe('given');
			expect(is(entryOf({ ...RGBW, geometries: BARE }), code)).toBe('assumed');
		}
		for (const code of ['panel', 'feed', 'defaults', 'follows', 'remote', 'unit-loads', 'idle'] as const)
			expect(is(entryOf(RGBW), code)).toBe('assumed');
	});

	// symptom: a file's own figure left out what a label's holds. cause: only its emitters were counted
	test('has at full all that it draws, with what it draws dark, by the file as by the label', () => {
		const wattsOf = (entry: FileEntry) => fixture(entry).figures.find(({ code }) => code === 'watts')?.facts;
		const entry = entryOf(RGBW);
		const { emitters, power } = entry.profile;
		const drawn = emitters.reduce((sum, { watts }) => sum + watts, 0) + power.idleWatts;
		expect(power.idleWatts).toBeGreaterThan(0);
		expect(wattsOf(entry)).toEqual({ watts: Math.round(drawn * 10) / 10 });
		expect(wattsOf({ ...entry, watts: drawn })).toEqual(wattsOf(entry));
	});

	test('takes its label before the file: sums come to it, and each emitter keeps its share', () => {
		const plain = fixture(entryOf(RGBW)).profile;
		const entry = entryOf(RGBW, { watts: 102, lumens: 4000, beam: 10, wattHours: 300, shape: 'bar' });
		const { profile, figures } = fixture(entry);
		const sum = (of: 'watts' | 'lumens') => profile.emitters.reduce((all, emitter) => all + emitter[of], 0);
		expect(sum('watts') + profile.power.idleWatts).toBeCloseTo(102, 6);
		expect(sum('lumens')).toBeCloseTo(4000, 6);
		const share = (of: typeof plain) => of.emitters.map(({ lumens }) => lumens / (of.emitters[0]?.lumens ?? 1));
		for (const [i, each] of share(profile).entries()) expect(each).toBeCloseTo(share(plain)[i] as number, 9);
		expect(profile.optics.beam).toBe(10);
		expect(profile.shape).toBe('bar');
		expect(profile.power).toMatchObject({ battery: { wattHours: 300 }, link: false });
		const told = Object.fromEntries(figures.map((figure) => [figure.code, figure.is]));
		expect(told).toMatchObject({ watts: 'given', lumens: 'given', beam: 'given', field: 'assumed', feed: 'given' });
		expect(readProfile(JSON.parse(JSON.stringify(profile)))).toEqual(profile);
	});
});
