import { describe, expect, test } from 'vitest';
import { CHART_KIND_IDS, needsRig, RIG_KIND_IDS, readRecipe, setPaper } from '../../../../shared/paper/index.ts';
import { planSheet } from '../../../../shared/plan/index.ts';
import { isStandIn, type Profile } from '../../../../shared/profile/index.ts';
import { readSheet } from '../../../../shared/sheet/index.ts';
import { blankEntry } from '../../../../shared/stock/index.ts';
import { readStored } from '../../../../src/features/finder/reading.ts';
import { makeWork } from '../../../../src/features/finder/routes.ts';
import { ALLOWS_ALL, freshWalk, type RigChoice } from '../../../../src/features/finder/walk.ts';
import { papersWork } from '../../../../src/features/papers/routes.ts';
import { draftOf, FIRST_DRAFT, offerFor, readDraft } from '../../../../src/features/papers/trainer/draft.ts';
import { rowOf } from '../../../../src/features/rig-sheet/begin.ts';
import { fixtureOf } from '../../../../src/features/stock/maker.ts';
import { ownFixture } from '../../../../src/features/stock/own.ts';
import { KEPT } from '../../../../src/storage/index.ts';

const CHART = `1 Dimmer
2 Strobe
 0-9 open
 10-255 strobe, slow to fast
3 Red
4 Green
5 Blue`;
const entry = { ...blankEntry('own-1', 'Row wash', 0), chart: CHART };
const { profile } = fixtureOf(entry) as { profile: Profile };

describe('a fixture of the crew’s own', () => {
	test('is offered by its name, and made when it is chosen; one that is not ready says so', async () => {
		const { name, profile: make } = ownFixture(entry);
		expect(name).toBe('Row wash');
		expect(await make()).toEqual({ profile });
		const unready = await ownFixture({ ...entry, name: '', chart: '1 Red 9-0 off' }).profile();
		expect(unready).toEqual({ wrong: expect.stringContaining('Unnamed fixture isn’t ready') });
	});

	test('stands in the finder’s three taps: led to a first check, kept, and taken up again', async () => {
		const work = makeWork();
		const rig: RigChoice = { kind: 'quick', count: 3, linked: 'desk', profile: profile.id, own: profile };
		const laid = await work.lay({ rig });
		expect(laid).toMatchObject({ isQuick: true });
		expect(laid.fixtures).toHaveLength(3);
		const [fixture] = laid.fixtures.map(({ id }) => id) as [string];
		const complaints = await work.complaints({ rig, fixture }, () => undefined);
		expect(complaints.map(({ kind }) => kind)).toContain('dark');
		const walk = { ...freshWalk(rig, {}, 0), fixture, complaint: 'dark' as const };
		const { check } = await work.look({ walk, allows: ALLOWS_ALL, isPartEnough: true }, () => undefined);
		expect(check?.title).not.toBe('');
		const text = JSON.stringify({ version: KEPT.walk.version, allows: ALLOWS_ALL, walk });
		expect((await readStored({ walk: text, counts: null })).kept?.walk?.rig).toEqual(rig);
		const bad = text.replace(`"mode":"${profile.defaults.mode}"`, '"mode":"nothing"');
		expect(await readStored({ walk: bad, counts: null })).toMatchObject({ kept: null, damaged: ['walk'] });
	});

	test('makes a row of tonight’s rig, which carries it onto the bench', () => {
		const plan = rowOf(4, profile.id, 33, [profile]);
		expect(plan.rows.map(({ address }) => address)).toEqual([33, 38, 43, 48]);
		const sheet = readSheet(JSON.parse(JSON.stringify(planSheet(plan))));
		expect(sheet.profiles.map(({ panel }) => isStandIn(panel))).toEqual([true]);
	});

	describe('in a quiz', () => {
		const draft = { ...FIRST_DRAFT, unseen: '', own: [profile], count: '12' };

		test('goes with it whole, and is asked of its chart and its numbers alone', async () => {
			const recipe = readRecipe(readDraft(draft).recipe as never);
			expect(recipe.own).toEqual([profile]);
			expect(needsRig(recipe)).toBe(false);
			for (const seed of [1, 2, 3]) {
				const { items } = setPaper(recipe, seed);
				expect(items).toHaveLength(12);
				for (const { kind, facts } of items) {
					expect(CHART_KIND_IDS).toContain(kind);
					if ('profile' in facts) expect(facts['profile']).toBe('Row wash');
				}
			}
			// as whoever takes it has it, with no stock of their own
			const { link } = await papersWork.handPaper({ recipe, seed: 2, page: 'https://prep.test/papers/sit/' });
			const opened = await papersWork.open({ text: link });
			expect(opened.recipe.own).toEqual([profile]);
		});

		test('leaves kinds that were picked only where its chart has the answer, and says which are offered', async () => {
			expect(readDraft({ ...draft, kinds: ['display-says', 'band-edge'] }).recipe?.kinds).toEqual(['band-edge']);
			expect(readDraft({ ...draft, kinds: ['display-says'] }).recipe?.kinds).toEqual([...CHART_KIND_IDS]);
			const offer = offerFor(draft, await papersWork.offer({ recipe: readDraft(draft).recipe as never }));
			expect(offer.kinds.filter(({ id }) => (RIG_KIND_IDS as readonly string[]).includes(id))).toEqual([]);
			expect(offer.topics.find(({ id }) => id === 'panel')?.fits).toBe(false);
			expect(offer.topics.find(({ id }) => id === 'bands')?.fits).toBe(true);
			// without it all is as it was
			expect(readDraft({ ...draft, own: [], kinds: ['display-says'] }).recipe?.kinds).toEqual(['display-says']);
			expect(readDraft({ ...draft, about: 'rig', rig: 'one-wash' }).recipe?.kinds).toEqual([]);
		});

		test('is taken up again as it was', () => {
			const recipe = readRecipe(readDraft(draft).recipe as never);
			expect(readDraft(draftOf(recipe, 5)).recipe).toEqual(readDraft({ ...draft, seed: 5 }).recipe);
			expect(draftOf(recipe, 5).kinds).toEqual([]);
		});
	});
});
