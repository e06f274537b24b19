import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { LIMITS, readArchive, readFixtureType, writeArchive } from '../../../shared/gdtf/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { thrownBy } from '../thrown.ts';
import { made } from './made.ts';

const small = made();
const zip = (files: Record<string, Uint8Array>): Uint8Array => zipSync(files, { mtime: '2000-01-01T12:00:00' });
const description = strToU8(small);

/** A copy with some bytes put in its central list, counted from that entry's start; and in the local header where told. */
function forged(bytes: Uint8Array, at: number, put: readonly number[], localAt?: number): Uint8Array {
	const copy = bytes.slice();
	const view = new DataView(copy.buffer);
	let entry = copy.length - 46;
	while (view.getUint32(entry, true) !== 0x02014b50) entry--;
	copy.set(put, entry + at);
	if (localAt !== undefined) copy.set(put, localAt);
	return copy;
}
const word = (value: number): number[] => [value & 255, (value >> 8) & 255, (value >> 16) & 255, value >>> 24];

/** The archive's refusal, and that it can be said. */
function refusal(bytes: Uint8Array): unknown {
	const error = thrownBy(() => readArchive(bytes));
	expect(error.code).toBe('gdtf.archive');
	expect(errorText(error)).toMatch(/^[A-Z].*\.$/);
	return error.facts;
}

describe('an archive', () => {
	it('gives its description, whatever lies beside it, stored or packed', () => {
		const files = {
			'description.xml': description,
			'wheels/': strToU8(''),
			'wheels/star.png': strToU8('x'),
			'__MACOSX/._description.xml': strToU8('y'),
		};
		expect(readArchive(zip(files))).toEqual({ description: small, otherFiles: 2 });
		expect(readArchive(zipSync({ 'description.xml': [description, { level: 0 }] }))).toEqual({
			description: small,
			otherFiles: 0,
		});
		expect(readArchive(writeArchive(small))).toEqual({ description: small, otherFiles: 0 });
	});

	it('is read where it lies within a larger buffer', () => {
		const bytes = zip({ 'description.xml': description });
		const buffer = new Uint8Array(bytes.length + 20);
		buffer.set(bytes, 7);
		expect(readArchive(buffer.subarray(7, 7 + bytes.length)).description).toBe(small);
	});

	it('may begin its text with a byte order mark', () => {
		expect(readArchive(zip({ 'description.xml': strToU8(`\uFEFF${small}`) })).description).toBe(small);
	});

	it.each<[string, Uint8Array, object]>([
		['no archive', strToU8('<GDTF/>'), { trouble: 'no-archive' }],
		['nothing', new Uint8Array(), { trouble: 'no-archive' }],
		['an archive of nothing', zip({}), { trouble: 'empty' }],
		['no description', zip({ 'other.xml': description }), { trouble: 'no-description' }],
		['a description in a folder', zip({ 'a/description.xml': description }), { trouble: 'no-description' }],
		['a description with another case', zip({ 'Description.xml': description }), { trouble: 'no-description' }],
		[
			'a name that leads outside',
			zip({ 'description.xml': description, '../evil.sh': description }),
			{ trouble: 'name-outside', found: '../evil.sh' },
		],
		[
			'a name from the top',
			zip({ 'description.xml': description, '/etc/evil': description }),
			{ trouble: 'name-outside', found: '/etc/evil' },
		],
		[
			'a name with a backslash',
			zip({ 'description.xml': description, '..\\evil': description }),
			{ trouble: 'name-outside', found: '..\\evil' },
		],
		[
			'a text that is no UTF-8',
			zip({ 'description.xml': Uint8Array.of(0xff, 0xfe, 0x3c, 0) }),
			{ trouble: 'not-utf-8' },
		],
		['a password', forged(zip({ 'description.xml': description }), 8, [1]), { trouble: 'locked' }],
		[
			'another way of packing',
			forged(zip({ 'description.xml': description }), 10, [12]),
			{ trouble: 'method', method: 12 },
		],
		['a size too small', forged(zip({ 'description.xml': description }), 24, word(100)), { trouble: 'size-false' }],
		['a size too large', forged(zip({ 'description.xml': description }), 24, word(100_000)), { trouble: 'size-false' }],
		[
			'a size past the limit',
			forged(zip({ 'description.xml': description }), 24, word(2 ** 31)),
			{ trouble: 'too-large', what: 'description', megabytes: 8 },
		],
		['a wrong check sum', forged(zip({ 'description.xml': description }), 16, word(1)), { trouble: 'sum-false' }],
		['a place past its end', forged(zip({ 'description.xml': description }), 42, word(1e6)), { trouble: 'damaged' }],
		[
			'more packed than there is',
			forged(zip({ 'description.xml': description }), 20, word(1e6)),
			{ trouble: 'damaged' },
		],
		[
			'less packed than there is',
			forged(zip({ 'description.xml': description }), 20, word(40)),
			{ trouble: 'damaged' },
		],
		['nothing packed', forged(zip({ 'description.xml': description }), 20, word(0)), { trouble: 'size-false' }],
	])('of %s is refused', (_, bytes, facts) => {
		expect(refusal(bytes)).toEqual(facts);
	});

	it('with a flipped byte in what is stored is refused', () => {
		const bytes = zipSync({ 'description.xml': [description, { level: 0 }] });
		const at = 30 + 'description.xml'.length + 200;
		bytes[at] = (bytes[at] as number) ^ 1;
		expect(refusal(bytes)).toEqual({ trouble: 'sum-false' });
	});

	it('with two descriptions is refused', () => {
		const bytes = zip({ 'description.xml': description, descriptionAxml: description });
		const text = new TextDecoder('latin1').decode(bytes).replaceAll('descriptionAxml', 'description.xml');
		expect(refusal(Uint8Array.from(text, (it) => it.charCodeAt(0)))).toEqual({ trouble: 'two-descriptions' });
	});

	it('that is a bomb is stopped at the limit, whatever size it says', () => {
		const zeros = zipSync({ 'description.xml': [new Uint8Array(40 * 2 ** 20), { level: 9 }] });
		expect(zeros.length).toBeLessThan(100_000);
		const tooLarge = { trouble: 'too-large', what: 'description', megabytes: 8 };
		expect(refusal(zeros)).toEqual(tooLarge);
		expect(refusal(forged(zeros, 24, word(1000)))).toEqual(tooLarge);
	});

	it('of too many bytes is refused unread', () => {
		expect(refusal(new Uint8Array(LIMITS.archiveBytes + 1))).toEqual({
			trouble: 'too-large',
			what: 'archive',
			megabytes: 16,
		});
	});
});

describe('a description', () => {
	const refused = (xml: string) => {
		const error = thrownBy(() => readFixtureType(xml));
		expect(errorText(error)).toMatch(/^[A-Z].*\.$/);
		return { code: error.code, path: error.path, facts: error.facts };
	};
	const deep = (levels: number): string => '<a>'.repeat(levels) + '</a>'.repeat(levels);

	it.each<[string, string, string, object]>([
		['no XML', 'hello', 'gdtf.xml', { trouble: 'malformed', line: 1, column: 1 }],
		['nothing', '', 'gdtf.xml', { trouble: 'malformed' }],
		['two roots', '<GDTF/><GDTF/>', 'gdtf.xml', { trouble: 'malformed', line: 1 }],
		['a bare ampersand', '<GDTF a="&"/>', 'gdtf.xml', { trouble: 'malformed' }],
		['an attribute twice', '<GDTF a="1" a="2"/>', 'gdtf.xml', { trouble: 'malformed' }],
		['a control character', '<GDTF a="\u0001"/>', 'gdtf.xml', { trouble: 'malformed' }],
		[
			'entities of its own',
			'<!DOCTYPE GDTF [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><GDTF>&b;</GDTF>',
			'gdtf.xml',
			{ trouble: 'malformed' },
		],
		['a document type', '<!DOCTYPE GDTF SYSTEM "file:///etc/passwd"><GDTF/>', 'gdtf.xml', { trouble: 'document-type' }],
		['65 levels', deep(65), 'gdtf.xml', { trouble: 'too-deep', limit: 64 }],
		['50,000 levels', deep(50_000), 'gdtf.xml', { trouble: 'too-deep', limit: 64 }],
		['another root', '<HTML/>', 'gdtf.tree', { trouble: 'no-fixture-type', found: 'HTML' }],
		['no fixture', '<GDTF/>', 'gdtf.tree', { trouble: 'no-fixture-type', found: 'GDTF' }],
		['no modes', made({ modes: '' }), 'gdtf.tree', { trouble: 'no-modes' }],
		[
			'65 modes',
			made({ modes: '<DMXMode/>'.repeat(65) }),
			'gdtf.tree',
			{ trouble: 'too-many-modes', count: 65, limit: 64 },
		],
		[
			'an offset that is none',
			made({ channels: [{ offset: 'one', functions: [] }] }),
			'gdtf.tree',
			{ trouble: 'bad-value', attribute: 'Offset', found: 'one' },
		],
		[
			'a break that is none',
			made({ channels: [{ offset: '1', break: '0', functions: [] }] }),
			'gdtf.tree',
			{ trouble: 'bad-value', attribute: 'DMXBreak', found: '0' },
		],
		[
			'a value that is none',
			made({ channels: [{ offset: '1', functions: ['DMXFrom="300/1"'] }] }),
			'gdtf.tree',
			{ trouble: 'bad-value', attribute: 'DMXFrom', found: '300/1' },
		],
	])('of %s is refused', (_, xml, code, facts) => {
		expect(refused(xml)).toMatchObject({ code, facts });
	});

	it('says at which place a value is wrong', () => {
		const wrong = made({ channels: [{ offset: '1', functions: [['Name="A"', '<ChannelSet DMXFrom="1"/>']] }] });
		expect(refused(wrong).path).toBe('modes[0].channels[0].functions[0].sets[0]');
	});

	it('of too much text is refused unread', () => {
		expect(refused(`<GDTF>${' '.repeat(LIMITS.descriptionBytes)}</GDTF>`)).toMatchObject({
			code: 'gdtf.archive',
			facts: { what: 'description' },
		});
	});
});
