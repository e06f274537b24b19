import { expect, test } from 'vitest';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { textAt, written } from '../written.ts';

// Symptom: an edge of a band, a colour's level or the order of a menu could change by one and nothing said so, though papers, drills and links
// hang on them. So each fixture stands here a second time, as its manual to be read by eye. One that must change is changed in both places, on
// purpose.
test.each(BUNDLED.map(({ id }) => id))('%s is what its manual says', (id) => {
	const profile = BUNDLED.find((each) => each.id === id);
	expect(written(profile ?? {})).toBe(textAt('profile', id));
});
