import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { checks } from '#words/checks/index.ts';
import { rigQuestions } from '#words/papers/index.ts';
import { LEVELS, RIG_KIND_IDS } from '../../../shared/paper/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { BUNDLED_KINDS, makeDrill } from '../../../sim/drill/index.ts';
import { CHECK_KINDS } from '../../../sim/finder/index.ts';
import { drillFacts } from '../../../sim/paper/drills.ts';
import { drillTask } from '../../../src/wording/drills.ts';
import {
	answerText,
	keyText,
	optionText,
	questionAsk,
	questionText,
	whyText,
	workingText,
} from '../../../src/wording/papers.ts';
import { runs } from '../../runs.ts';
import { itemOf, itemsOf } from '../../sim/paper/items.ts';

/** What no sentence for a person holds: a hole left open, or an id. */
const BARE = /[{}[\]]|undefined|null|NaN|\b(tallow-6|picket-8|cobble|wash-\d|bar-\d|floor-\d|whole-plus)\b/;

describe('the words of questions read from a rig', () => {
	it('are there for every kind, caution and check', () => {
		expect(Object.keys(rigQuestions).sort()).toEqual([...RIG_KIND_IDS].sort());
		for (const id of Object.keys(cautions))
			expect(rigQuestions['caution-here']?.labels).toHaveProperty([`caution-${id}`]);
		for (const kind of Object.keys(checks))
			expect(rigQuestions['first-check']?.labels).toHaveProperty([`check-${kind}`]);
		expect(CHECK_KINDS.length).toBeGreaterThan(0);
	});

	it.each(RIG_KIND_IDS)('%s: question, options, key, working and why all fill, and no two options read alike', (id) => {
		for (const item of itemsOf(id, runs(24, 600))) {
			const { ask } = item;
			const mark = { right: false, answered: true, looksLike: null } as never;
			const texts = [questionText(item), keyText(item), workingText(item), whyText(item, mark)];
			const groups = ask.form === 'match' ? [ask.left, ask.right] : 'options' in ask ? [ask.options] : [];
			for (const options of groups) {
				const said = options.map((option) => optionText(item, option));
				expect(new Set(said.map((text) => text.toLowerCase())).size).toBe(said.length);
				texts.push(...said);
			}
			for (const { answer } of item.mistakes) texts.push(answerText(item, answer));
			for (const text of texts) {
				expect(text).not.toBe('');
				expect(text).not.toMatch(BARE);
			}
			expect(questionText(item)).toMatch(/[.?]$/);
		}
	});

	it('say whatever a caution hangs on: no lamp that nobody speaks of flashes or shines ultraviolet', () => {
		for (const item of itemsOf('caution-here', runs(24, 600))) {
			const said = questionText(item).toLowerCase();
			if (/Ultraviolet/.test(keyText(item))) expect(said).toContain('ultraviolet');
			if (/Flashing/.test(keyText(item))) expect(said).toMatch(/strobe|flashing by itself/);
		}
	});

	it('tell a task on the bench as the drill itself does, whatever the drill', () => {
		const item = itemOf('on-the-bench', 0, { profiles: BUNDLED, sheet: null }, LEVELS[0]);
		for (const kind of BUNDLED_KINDS) {
			for (let seed = 0; seed < runs(4, 40); seed++) {
				const drill = makeDrill(kind, seed);
				expect(questionAsk({ ...item, facts: drillFacts(drill), bench: drill.sheet })).toBe(drillTask(drill));
			}
		}
	});
});
