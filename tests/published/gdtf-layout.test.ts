import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { readArchive, readFixtureType, toProfile } from '../../shared/gdtf/index.ts';
import { layoutOf } from '../shared/gdtf/layout.ts';
import { naiveLayout } from '../shared/gdtf/naive.ts';
import { thrownBy } from '../shared/thrown.ts';

// Files and layout as another reader of GDTF publishes them for its own tests, under the licence beside them.

const folder = new URL('data/gdtf/', import.meta.url);
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, folder)));
const descriptionOf = (name: string): string => readArchive(bytesOf(name)).description;

/** The published layout: `1.3 Element 1 -> AbstractElement_Pan`, bytes of one channel as `(1/2)`, a number with no name unused. */
const published = readFileSync(new URL('expected_channel_layout.md', folder), 'utf8')
	.split('\n')
	.filter((line) => /^\d\.\d+ \S/.test(line))
	.map((line) => line.replaceAll(' -> ', ' > '))
	.map((line) => (/\(\d\/\d\)$/.test(line) ? line : `${line} (1/1)`))
	.sort();

describe('the layout of two breaks with references', () => {
	it('is published for 18 of 20 slots', () => {
		expect(published).toHaveLength(18);
	});

	it.each(['layout-test.gdtf', 'layout-test-v12.gdtf'])('%s', (file) => {
		const description = descriptionOf(file);
		expect(layoutOf(description, 'Mode 1')).toEqual(published);
		expect(naiveLayout(description, 'Mode 1')).toEqual(published);
	});

	it('has two start addresses, and so is no mode of a fixture here', () => {
		const error = thrownBy(() => toProfile(readFixtureType(descriptionOf('layout-test.gdtf')), gdtfNames));
		expect(error).toMatchObject({
			code: 'gdtf.mode',
			path: 'modes[0]',
			facts: { trouble: 'several-breaks', count: 2 },
		});
	});
});

describe('files that are wrong, though the published schema takes them', () => {
	it('one slot used twice', () => {
		const description = descriptionOf('channel-clash.gdtf');
		expect(naiveLayout(description, 'Mode 1')).toBeNull();
		expect(thrownBy(() => layoutOf(description, 'Mode 1'))).toMatchObject({
			code: 'gdtf.mode',
			facts: { trouble: 'slot-twice', slot: 3, one: 'Main_Dimmer', other: 'AbstractElement_Pan' },
		});
	});

	it('a reference without the break its channel needs', () => {
		const description = descriptionOf('missing-break.gdtf');
		expect(naiveLayout(description, 'Mode 1')).toBeNull();
		expect(thrownBy(() => layoutOf(description, 'Mode 1'))).toMatchObject({
			code: 'gdtf.mode',
			facts: { trouble: 'missing-break', name: 'Element 2', channel: 'AbstractElement_XYZ_Z', break: 2 },
		});
	});

	it('an archive of nothing', () => {
		expect(thrownBy(() => readArchive(bytesOf('empty.gdtf')))).toMatchObject({
			code: 'gdtf.archive',
			facts: { trouble: 'empty' },
		});
	});
});
