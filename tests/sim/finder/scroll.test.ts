import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BUNDLED, type KeyedPanel, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { bundledRig, quickSheet, type RigSheet } from '../../../shared/sheet/index.ts';
import { type FinderOptions, finderOn, offeredBy, openOutcomes, openPart } from '../../../sim/finder/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { TREE_KEYS } from '../keys.ts';

/*
 * Symptom: in a running show the finder sent people through live panels as if that did no harm. Cause: reading a setting counted as a
 * look on every fixture, and on much gear a value acts as it scrolls by.
 */

const keyed = BUNDLED.filter(({ panel }) => panel.kind !== 'dip' && panel.law === undefined);

/** The bundled fixture with nothing said about what scrolling does. */
function unsaid(profile: Profile): Profile {
	const { scrolling: _, ...panel } = profile.panel as KeyedPanel;
	return { ...profile, id: 'unsaid', panel } as Profile;
}

const withProfile = (sheet: RigSheet, profile: Profile): RigSheet => ({
	...sheet,
	profiles: [profile],
	fixtures: sheet.fixtures.map((fixture) => ({ ...fixture, profile: profile.id })),
});

const readsOf = (sheet: RigSheet, fixture: string, options: FinderOptions = {}) =>
	offeredBy(openOutcomes(sheet, { kind: 'no-answer', fixture }, options)).filter(({ kind }) =>
		kind.startsWith('panel-'),
	);

describe('reading a setting off a panel', () => {
	it.each(keyed)('of $id is a look, since its profile says that scrolling changes nothing', (profile) => {
		const sheet = quickSheet({ count: 2, linked: 'desk', profile: profile.id });
		const reads = readsOf(sheet, sheet.fixtures[0]?.id ?? '');
		expect(reads.length).toBeGreaterThan(3);
		for (const { disturbs, id } of reads) expect(disturbs, id).toBe(false);
	});

	it.each(keyed)('of a fixture like $id, of which nothing is said, disturbs a show', (profile) => {
		const sheet = withProfile(quickSheet({ count: 2, linked: 'desk', profile: profile.id }), unsaid(profile));
		const fixture = sheet.fixtures[0]?.id ?? '';
		for (const { disturbs, id } of readsOf(sheet, fixture)) expect(disturbs, id).toBe(true);
		const acts = { ...unsaid(profile), panel: { ...profile.panel, scrolling: 'acts' } } as Profile;
		for (const { disturbs, id } of readsOf(withProfile(sheet, acts), fixture)) expect(disturbs, id).toBe(true);
	});

	it('of a flat panel disturbs a show by its law, whatever else its profile says', () => {
		const sheet = quickSheet({ count: 2, linked: 'desk', profile: 'thimble-4' });
		const reads = readsOf(sheet, sheet.fixtures[0]?.id ?? '');
		expect(reads.length).toBeGreaterThan(3);
		for (const { disturbs, id } of reads) expect(disturbs, id).toBe(true);
	});

	it('of a rig that only stands in for the real one disturbs it too, and is not asked in a show', () => {
		for (const { id: profile } of keyed) {
			const sheet = quickSheet({ count: 3, linked: 'desk', profile });
			const fixture = sheet.fixtures[1]?.id ?? '';
			const reads = readsOf(sheet, fixture, { standIn: true });
			for (const { disturbs, id } of reads) expect(disturbs, id).toBe(true);
			const bench = openOutcomes(sheet, { kind: 'no-answer', fixture }, { standIn: true });
			const finder = finderOn(bench, { showRunning: true });
			for (let next = finder.next(); next; next = finder.next()) {
				expect(next.check.kind, next.check.id).not.toMatch(/^panel-/);
				finder.cannot(next.check.id);
			}
		}
	});

	it('of the part of a long row that stands in is as the whole has it', () => {
		const sheet = quickSheet({ count: 24, linked: 'desk', profile: 'tallow-6' });
		const part = openPart(sheet, { kind: 'no-answer', fixture: 'wash-9' }, { standIn: true });
		const reads = part?.checks.filter(({ kind }) => kind.startsWith('panel-')) ?? [];
		expect(reads.length).toBeGreaterThan(0);
		for (const { disturbs } of reads) expect(disturbs).toBe(true);
	});
});

describe('what a profile says of scrolling', () => {
	it.each(keyed)('is true of $id: no walk through its menu that stores nothing changes its light', (profile) => {
		expect((profile.panel as KeyedPanel).scrolling).toBe('still');
		const base = quickSheet({ count: 1, linked: 'alone', profile: profile.id });
		const id = base.fixtures[0]?.id ?? '';
		const held = profile.held.map((each) => each.id);
		fc.assert(
			fc.property(
				fc.constantFrom('held', 'programme'),
				fc.constantFrom(...held),
				fc.array(fc.constantFrom(...TREE_KEYS), { minLength: 1, maxLength: 60 }),
				(work, look, keys) => {
					const sheet = {
						...base,
						fixtures: base.fixtures.map((each) => ({ ...each, settings: { ...each.settings, work, held: look } })),
					} as RigSheet;
					const [touched, left] = [openRig(sheet), openRig(sheet)];
					for (const key of keys) {
						const { display } = touched.look(id);
						// Set while a value is edited or an action asked for is what stores it
						const stores = display.kind === 'keyed' && ['editing', 'confirming'].includes(display.state);
						touched.send({ type: 'key.tap', fixture: id, key: stores && key === 'set' ? 'back' : key });
						expect(touched.look(id).light).toEqual(left.look(id).light);
					}
				},
			),
			{ numRuns: runs(150) },
		);
	});

	it('is held to the schema', () => {
		const [profile] = keyed;
		if (!profile) throw new Error('there are fixtures with keys');
		const bad = { ...profile, panel: { ...profile.panel, scrolling: 'sometimes' } };
		expect(thrownBy(() => readProfile(bad))).toMatchObject({ code: 'profile.shape', path: 'panel.scrolling' });
		expect(readProfile(unsaid(profile)).panel).not.toHaveProperty('scrolling');
	});

	it('stays out of other rigs: a bundled one is read as a look', () => {
		for (const { disturbs } of readsOf(bundledRig('two-universes'), 'bar-2')) expect(disturbs).toBe(false);
	});
});
