import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { writeArchive } from '../../../../shared/gdtf/index.ts';
import { BUNDLED, isStandIn, readProfile } from '../../../../shared/profile/index.ts';
import { FEATURES } from '../../../../src/engine/routes.ts';
import { routes } from '../../../../src/features/gdtf/routes.ts';
import { made } from '../../../shared/gdtf/made.ts';
import { saidBy } from '../../../shared/thrown.ts';

const [profile] = BUNDLED as [(typeof BUNDLED)[number]];

test('the worker is asked for it by name', async () => {
	expect(Object.keys((await FEATURES.gdtf()).routes)).toEqual(['read', 'write']);
});

test('a written file is read back; all that crosses is plain', () => {
	const written = structuredClone(routes.write({ profile }));
	const read = structuredClone(routes.read({ bytes: written.bytes }));
	expect(read.profile.name).toBe(profile.name);
	expect(readProfile(read.profile)).toEqual(read.profile);
	expect(read.modes).toEqual(['6 slots', '9 slots', '12 slots']);
	expect(isStandIn(read.profile.panel)).toBe(true);
	for (const { says } of [...read.left, ...read.asked, ...written.left]) expect(says).toMatch(/^\S.*\.$/);
	expect(written.left.map(({ says }) => says)).toContain('Its battery isn’t in the file. GDTF has no place for one.');
});

test('the modes asked for are taken, and the others told', () => {
	const { bytes } = routes.write({ profile });
	const read = routes.read({ bytes, modes: ['9 slots'] });
	expect(read.profile.modes.map(({ name }) => name)).toEqual(['9 slots']);
	expect(read.modes).toHaveLength(3);
	expect(read.left.filter(({ code }) => code === 'mode-not-asked')).toHaveLength(2);
	expect(saidBy(() => routes.read({ bytes, modes: ['none'] }))).toBe(
		'None of its modes was picked. It has: 6 slots, 9 slots, 12 slots.',
	);
});

test('what cannot be used is refused with a sentence to act on', () => {
	const layout = readFileSync(new URL('../../../published/data/gdtf/layout-test.gdtf', import.meta.url));
	expect(saidBy(() => routes.read({ bytes: new Uint8Array(layout) }))).toBe(
		'This mode needs 2 start addresses. A fixture here has one, so pick another mode.',
	);
	expect(saidBy(() => routes.read({ bytes: writeArchive(made({ modes: '' })) }))).toBe(
		'This file tells of a fixture with no modes. Choose another file.',
	);
	expect(saidBy(() => routes.write({ profile: { ...profile, cells: 0 } }))).toMatch(
		/^The profile doesn’t fit at cells/,
	);
});

test('other files of the archive are counted', () => {
	// a written archive has none
	expect(routes.read({ bytes: routes.write({ profile }).bytes }).left.map(({ code }) => code)).not.toContain(
		'other-files',
	);
});
