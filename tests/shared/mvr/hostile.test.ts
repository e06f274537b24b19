import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { packedFiles } from '../../../shared/gdtf/index.ts';
import { readScene, writeMvr } from '../../../shared/mvr/index.ts';
import { emptyPlan, withRows } from '../../../shared/plan/index.ts';
import { errorText, mvrLeftText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { nameOf } from '../plan/plans.ts';
import { thrownBy } from '../thrown.ts';
import { archive, fixture, matrix, read, scene } from './made.ts';

const good = scene(fixture('a', matrix(0, 0, 0)));

/** A file's refusal, and that it can be said. */
function refused(bytes: Uint8Array): object {
	const error = thrownBy(() => read(bytes));
	expect(errorText(error)).toMatch(/^[A-Z].*\.$/);
	return { code: error.code, ...error.facts };
}

const lying = (bytes: Uint8Array, size: number): Uint8Array => {
	const copy = bytes.slice();
	const view = new DataView(copy.buffer);
	let entry = copy.length - 46;
	while (view.getUint32(entry, true) !== 0x02014b50) entry--;
	view.setUint32(entry + 24, size, true);
	return copy;
};

describe('an archive', () => {
	it.each<[string, () => Uint8Array, object]>([
		['no archive', () => strToU8(good), { trouble: 'no-archive' }],
		['nothing', () => packedFiles({}), { trouble: 'empty' }],
		['no scene', () => packedFiles({ 'a.xml': strToU8(good) }), { trouble: 'no-description' }],
		[
			'a name that leads outside',
			() => archive(good, { '../../evil.gdtf': strToU8('x') }),
			{ trouble: 'name-outside', found: '../../evil.gdtf' },
		],
		[
			'a bomb',
			() => zipSync({ 'GeneralSceneDescription.xml': [new Uint8Array(40 * 2 ** 20), { level: 9 }] }),
			{ trouble: 'too-large', what: 'description', megabytes: 8 },
		],
		[
			'a bomb that says it is small',
			() => lying(zipSync({ 'GeneralSceneDescription.xml': [new Uint8Array(40 * 2 ** 20), { level: 9 }] }), 1000),
			{ trouble: 'too-large', what: 'description', megabytes: 8 },
		],
		['a size too small', () => lying(archive(good), 100), { trouble: 'size-false' }],
		[
			'too many bytes',
			() => new Uint8Array(80 * 2 ** 20 + 1),
			{ trouble: 'too-large', what: 'archive', megabytes: 80 },
		],
	])('of %s is refused', (_, bytes, facts) => {
		expect(refused(bytes())).toEqual({ code: 'mvr.archive', ...facts });
	});

	it('with a bomb for a fixture file is read without it', () => {
		const bomb = zipSync({ 'description.xml': [new Uint8Array(40 * 2 ** 20), { level: 9 }] });
		const inside = `<GDTFSpec>bomb.gdtf</GDTFSpec>${matrix(0, 0, 0)}`;
		const { left } = read(archive(scene(fixture('a', inside)), { 'bomb.gdtf': bomb }));
		expect(left.map(({ code }) => code)).toEqual(['file-refused', 'files-unused', 'fixture-left']);
		for (const each of left) expect(mvrLeftText(each)).toMatch(/\.$/);
	});
});

describe('a scene', () => {
	it.each<[string, () => string, object]>([
		['no XML', () => 'x', { code: 'mvr.xml', trouble: 'malformed' }],
		['another kind', () => '<GDTF/>', { code: 'mvr.scene', trouble: 'no-scene', found: 'GDTF' }],
		['no fixtures', () => scene(''), { code: 'mvr.scene', trouble: 'no-fixtures' }],
		['a malformed comment', () => `<!-->${good}`, { code: 'mvr.xml', trouble: 'malformed' }],
		[
			'entities that grow',
			() =>
				`<!DOCTYPE a [<!ENTITY b "bbbb"><!ENTITY c "&b;&b;">]><GeneralSceneDescription>&c;</GeneralSceneDescription>`,
			{ code: 'mvr.xml' },
		],
		[
			'groups within groups without end',
			() => scene(`${'<GroupObject><ChildList>'.repeat(3000)}${'</ChildList></GroupObject>'.repeat(3000)}`),
			{ code: 'mvr.xml', trouble: 'too-deep', limit: 64 },
		],
		[
			'too many fixtures',
			() => scene('<Fixture/>'.repeat(2001)),
			{ code: 'mvr.scene', trouble: 'too-many-fixtures', count: 2001, limit: 2000 },
		],
	])('of %s is refused', (_, text, facts) => {
		expect(refused(archive(text()))).toMatchObject(facts);
	});

	it('of the most fixtures a plan takes is read', () => {
		expect(readScene(scene('<Fixture/>'.repeat(2000))).fixtures).toHaveLength(2000);
	});
});

const whole = writeMvr(
	withRows(emptyPlan('Test'), [{ profile: 'tallow-6', address: 1 }, { profile: 'picket-8' }], nameOf),
);

it('a file with some bytes changed, cut out or doubled is read or refused, and nothing else', () => {
	const change = fc.tuple(fc.nat(whole.bytes.length - 1), fc.nat(255), fc.constantFrom('set', 'cut', 'double'));
	fc.assert(
		fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
			const copy = [...whole.bytes];
			for (const [at, value, how] of changes)
				if (how === 'set') copy[at] = value;
				else if (how === 'cut') copy.splice(at, 1);
				else copy.splice(at, 0, copy[at] ?? 0);
			const bytes = Uint8Array.from(copy);
			tried(() => read(bytes));
		}),
		{ numRuns: runs(100) },
	);
});

it('a scene with its values and elements changed is read or refused, and nothing else', () => {
	const parts = whole.scene.split(/(?<=[>"])/);
	const change = fc.tuple(
		fc.nat(parts.length - 1),
		fc.oneof(fc.constantFrom('', '"', '<a/>', 'NaN', '-1', '1e999', '{}', '__proto__', '\u0000', '&x;'), fc.string()),
	);
	fc.assert(
		fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
			const copy = [...parts];
			for (const [at, text] of changes) copy[at] = text;
			tried(() => {
				const { left } = read(archive(copy.join('')));
				for (const each of left) expect(mvrLeftText(each)).toMatch(/\.$/);
			});
		}),
		{ numRuns: runs(200) },
	);
});

function tried(act: () => unknown): void {
	try {
		act();
	} catch (error) {
		if (!isInputError(error)) throw error;
		expect(errorText(error)).toMatch(/\.$/);
	}
}
