import { beforeEach, describe, expect, it, vi } from 'vitest';

// each test begins with nothing at hand, as a page does that has only some of the files
beforeEach(() => vi.resetModules());

const door = () => import('../../../shared/profile/bundled/at-hand.ts');

describe('a bundled profile', () => {
	it('is at hand once it has been fetched, and not before', async () => {
		const { loadProfile, PROFILE_IDS, profileAtHand } = await door();
		for (const id of PROFILE_IDS) {
			expect(profileAtHand(id)).toBeUndefined();
			const profile = await loadProfile(id);
			expect(profile?.id).toBe(id);
			expect(profileAtHand(id)).toBe(profile);
			expect(await loadProfile(id)).toBe(profile);
		}
	});

	it('of no such name is none', async () => {
		const { loadProfile } = await door();
		for (const id of ['no-such-wash', 'constructor', '']) expect(await loadProfile(id)).toBeUndefined();
	});

	it('is at hand at once, with all others and in the same order, for whoever takes them all', async () => {
		const { BUNDLED } = await import('../../../shared/profile/bundled/index.ts');
		const { PROFILE_IDS, profileAtHand } = await door();
		expect(BUNDLED.map(({ id }) => id)).toEqual(PROFILE_IDS);
		for (const profile of BUNDLED) expect(profileAtHand(profile.id)).toBe(profile);
	});
});

describe('a sheet', () => {
	it('is opened where its profiles have been fetched; one that names none of the bundled is refused with a sentence', async () => {
		const { loadProfiles, profileFor } = await import('../../../shared/sheet/find.ts');
		const sheet = { fixtures: [{ profile: 'cobble' }, { profile: 'no-such-wash' }], profiles: [] };
		await loadProfiles(sheet);
		expect(profileFor(sheet as never, 'cobble').id).toBe('cobble');
		expect(() => profileFor(sheet as never, 'no-such-wash')).toThrow(/no such profile \(id no-such-wash\)/);
	});
});
