import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drillWords, ownDrills as words } from '#words/drills/index.ts';
import { InputError } from '../../../../shared/error/index.ts';
import { BUNDLED } from '../../../../shared/profile/index.ts';
import { ownLink, readOwnLink } from '../../../../src/features/own-drills/link.ts';
import { openAt } from '../../../../src/features/own-drills/opened.ts';
import { runs } from '../../../runs.ts';
import { inventions } from '../../../shared/invent/kit.ts';

const profiles = [...BUNDLED, ...inventions(20)];

describe('the link to a drill on a fixture of somebody’s own', () => {
	it('carries the fixture whole, and the seed', async () => {
		for (const [seed, profile] of profiles.entries()) {
			const link = await ownLink({ profile, seed });
			expect(link).toMatch(/^#seed=\d+&on=1\.[\w-]+$/);
			expect(await readOwnLink(link)).toEqual({ profile, seed });
		}
	});

	it('is read or refused with an error that has words, however it was damaged', async () => {
		const link = await ownLink({ profile: profiles[5] as (typeof profiles)[number], seed: 7 });
		const damage = fc.tuple(fc.nat(link.length - 1), fc.nat(30), fc.string({ maxLength: 4 }));
		await fc.assert(
			fc.asyncProperty(damage, async ([at, length, by]) => {
				const damaged = link.slice(0, at) + by + link.slice(at + length);
				const read = await readOwnLink(damaged).catch((error: unknown) => error);
				if (read instanceof Error) expect(read).toBeInstanceOf(InputError);
			}),
			{ numRuns: runs(200) },
		);
		for (const bad of [
			'#',
			'#seed=1',
			'#seed=1&on=2.abc',
			'#seed=99999999999999999&on=1.abc',
			`#seed=1&on=1.${'a'.repeat(100_001)}`,
		])
			await expect(readOwnLink(bad)).rejects.toBeInstanceOf(InputError);
	});

	// symptom: with the network gone a good link was called a bad one; cause: whatever went wrong was told alike
	it('that is bad is told apart from a part that could not be fetched, which can be tried again', async () => {
		const link = await ownLink({ profile: profiles[0] as (typeof profiles)[number], seed: 7 });
		const gone = () => Promise.reject(new TypeError('Failed to fetch'));
		expect(await openAt(link, gone)).toEqual({ is: 'wrong', sentence: drillWords.failed, again: true });
		expect(await openAt('#seed=1&on=1.abc')).toEqual({ is: 'wrong', sentence: words.failed, again: false });
		expect(await openAt(link)).toMatchObject({ is: 'task', seed: 7 });
		expect(await openAt('#', gone)).toEqual({ is: 'list' });
	});
});
