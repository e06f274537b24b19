import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { type FileParts, gatherMvr, writeMvr } from '../../../shared/mvr/index.ts';
import { emptyPlan, withRows } from '../../../shared/plan/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { nameOf, plans } from '../plan/plans.ts';
import { archive, fixture, matrix, read, scene } from './made.ts';

const MB = 2 ** 20;

/** A file of which is counted how much is read. */
function counted(bytes: Uint8Array): FileParts & { readonly total: () => number } {
	let total = 0;
	return {
		size: bytes.length,
		read: async (from, to) => {
			const part = bytes.slice(from, to);
			total += part.length;
			return part;
		},
		total: () => total,
	};
}

/** A scene with one fixture of each file. */
const of = (...specs: readonly string[]): string =>
	scene(specs.map((spec, i) => fixture(String(i), `<GDTFSpec>${spec}</GDTFSpec>${matrix(0, 0, 0)}`)).join(''));

const stored = (bytes: number): [Uint8Array, { level: 0 }] => [new Uint8Array(bytes), { level: 0 }];

const refusal = (file: FileParts): Promise<object> =>
	gatherMvr(file).then(
		() => ({}),
		(error) => {
			if (!isInputError(error)) throw error;
			expect(errorText(error)).toMatch(/^[A-Z].*\.$/);
			return { code: error.code, ...error.facts };
		},
	);

describe('what is read of an MVR file', () => {
	it('is as much as the whole says, for any plan', async () => {
		await fc.assert(
			fc.asyncProperty(plans, async (plan) => {
				const { bytes } = writeMvr(plan);
				expect(read(await gatherMvr(counted(bytes)))).toEqual(read(bytes));
			}),
			{ numRuns: runs(8) },
		);
	});

	it('is no model, however large the file is with them', async () => {
		const { bytes: own } = writeMvr(withRows(emptyPlan('Test'), [{ profile: 'tallow-6' }], nameOf));
		const files = { 'hall.glb': stored(60 * MB), 'seats.3ds': stored(40 * MB), 'Gone.gdtf': stored(20 * MB) };
		const bytes = zipSync({
			...files,
			'GeneralSceneDescription.xml': strToU8(of('Used')),
			'USED.gdtf': [own, { level: 0 }],
		});
		const file = counted(bytes);
		const gathered = await gatherMvr(file);
		expect(file.total()).toBeLessThan(own.length + 150_000);
		expect(gathered.length).toBeLessThan(own.length + 2000);
		const { left } = read(gathered);
		// a model is told of as ever, and the fixture file is found by a name without its ending: it is an MVR file, and so refused
		expect(left).toContainEqual({ path: '', code: 'files-unused', facts: { count: 4 } });
		expect(left[0]?.because?.facts).toEqual({ trouble: 'no-description' });
	});

	it('is refused where the fixture files alone are too much, and one that is too large by itself is told', async () => {
		const names = Array.from({ length: 5 }, (_, i) => `k${i}.gdtf`);
		const five = zipSync({
			'GeneralSceneDescription.xml': strToU8(of(...names)),
			...Object.fromEntries(names.map((name) => [name, stored(14 * MB)])),
		});
		expect(await refusal(counted(five))).toEqual({
			code: 'mvr.archive',
			trouble: 'too-large',
			what: 'archive',
			megabytes: 64,
		});
		const large = zipSync({ 'GeneralSceneDescription.xml': strToU8(of('a.gdtf')), 'a.gdtf': stored(17 * MB) });
		const file = counted(large);
		const { left } = read(await gatherMvr(file));
		expect(file.total()).toBeLessThan(MB);
		expect(left.find(({ code }) => code === 'file-refused')?.because?.facts).toMatchObject({
			trouble: 'too-large',
			megabytes: 16,
		});
	});

	it('is refused for its list, or as ZIP64, in words of their own', async () => {
		const bytes = zipSync({ 'hall.glb': stored(17 * MB), 'GeneralSceneDescription.xml': strToU8(of('Used')) });
		const end = bytes.length - 22;
		const changed = (at: number, length: number, value: number): Uint8Array => {
			const copy = bytes.slice();
			const view = new DataView(copy.buffer);
			if (length === 4) view.setUint32(at, value, true);
			else view.setUint16(at, value, true);
			return copy;
		};
		// one that says its list begins where the file does
		expect(await refusal(counted(changed(end + 16, 4, 0)))).toEqual({
			code: 'mvr.archive',
			trouble: 'too-large',
			what: 'list',
			megabytes: 16,
		});
		const wide = { code: 'mvr.archive', trouble: 'wide' };
		expect(await refusal(counted(changed(end + 16, 4, 0xffffffff)))).toEqual(wide);
		expect(await refusal(counted(changed(end + 10, 2, 0xffff)))).toEqual(wide);
		// a scene that is too large is no matter of fixture files
		const list = new DataView(bytes.buffer, bytes.byteOffset).getUint32(end + 16, true);
		const scene = list + 46 + 'hall.glb'.length;
		expect(await refusal(counted(changed(scene + 20, 4, 100 * MB)))).toMatchObject({ what: 'description' });
	});

	it('is refused as the whole is', async () => {
		expect(await refusal(counted(strToU8('no archive')))).toMatchObject({ trouble: 'no-archive' });
		expect(await refusal(counted(zipSync({})))).toMatchObject({ trouble: 'empty' });
		expect(await refusal(counted(archive('x')))).toMatchObject({ code: 'mvr.xml' });
		const bytes = archive(of('a.gdtf'));
		expect(await refusal(counted(bytes.subarray(0, bytes.length - 1)))).toMatchObject({ trouble: 'no-archive' });
		expect(await refusal(counted(bytes.subarray(40)))).toMatchObject({ trouble: 'damaged' });
		// with no scene, or two, it goes on to what says so
		const none = await gatherMvr(counted(zipSync({ 'a.xml': strToU8('x') })));
		expect(() => read(none)).toThrow(expect.objectContaining({ facts: { trouble: 'no-description' } }));
	});

	it('of a file with some bytes changed, is read as the whole is, or refused', async () => {
		const { bytes } = writeMvr(withRows(emptyPlan('Test'), [{ profile: 'tallow-6' }, { profile: 'picket-8' }], nameOf));
		const outcome = (act: () => unknown): unknown => {
			try {
				return act();
			} catch (error) {
				if (!isInputError(error)) throw error;
				return 'refused';
			}
		};
		await fc.assert(
			fc.asyncProperty(
				fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 }),
				async (changes) => {
					const copy = bytes.slice();
					for (const [at, value] of changes) copy[at] = value;
					const gathered = await gatherMvr(counted(copy)).catch((error: unknown) => {
						if (!isInputError(error)) throw error;
						return null;
					});
					if (gathered) expect(outcome(() => read(gathered))).toEqual(outcome(() => read(copy)));
					else expect(outcome(() => read(copy))).toBe('refused');
				},
			),
			{ numRuns: runs(60) },
		);
	});
});
