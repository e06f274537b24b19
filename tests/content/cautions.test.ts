import { describe, expect, it } from 'vitest';
import { cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';

describe('the cautions', () => {
	it('keep their ids: lessons, drills and saved work name them', () => {
		expect([...cautionIds].sort()).toEqual(
			[
				'batteries',
				'flashing',
				'hanging',
				'height',
				'hot',
				'lifting',
				'live-show',
				'mains',
				'staring',
				'ultraviolet',
			].sort(),
		);
		expect(Object.keys(cautions).sort()).toEqual([...cautionIds].sort());
	});

	it.each(cautionIds)('%s says what can happen, what to do, and who comes first, in whole sentences', (id) => {
		const { title, harm, care, defer } = cautions[id];
		expect(title).not.toBe('');
		expect(care.length).toBeGreaterThanOrEqual(2);
		for (const line of [harm, ...care, defer]) expect(line).toMatch(/^[A-Z].*[.]$/);
	});

	it.each(cautionIds)('%s never tells anyone to open a fixture', (id) => {
		for (const line of cautions[id].care) {
			if (/\bopen\b/i.test(line)) expect(line).toMatch(/\b(do not|never) open\b/i);
		}
	});

	it('defer to the place, the code and the competent person', () => {
		expect(siteFirst).toMatch(/rules.*local code.*competent person/);
	});

	// it stood nowhere, and the drill on a row of mains links went live from link to link
	it('ask to isolate before a mains connection is touched, and for the wall plug last', () => {
		expect(cautions.mains.care[0]).toMatch(/^Isolate before you touch a mains connection/);
		expect(cautions.mains.care[1]).toMatch(/supply off.*wall in last.*comes out first/);
	});

	it('ask for a rated secondary safety bond on everything overhead', () => {
		expect(cautions.hanging.care[0]).toMatch(/secondary safety bond, rated.*everything overhead/);
	});
});
