import { describe, expect, it } from 'vitest';
import { backWords } from '#words/bench/index.ts';
import { ownDrills } from '#words/drills/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { slipWords } from '#words/plan/index.ts';
import { ownReference } from '#words/reference/index.ts';
import { cardWords, panelEdit, panelQuestions, panelSettle, REAL_ACTS } from '#words/stock/index.ts';
import { textOf } from '../house/tree.ts';
import { lessonFiles } from './lessons.ts';
import { allSentences } from './sentences.ts';

// As in `safe-and-true.test.ts`: each opens with what was once said here that could hurt somebody.

const those = (pattern: RegExp) => allSentences().filter(({ text }) => pattern.test(text));
const lessonOf = (id: string) => {
	const found = lessonFiles().find(({ lesson }) => lesson.id === id);
	if (!found) throw new Error(id);
	return found;
};
/** A line of a lesson's front matter as it is written. */
const lineOf = (id: string, key: 'task' | 'vary'): string => {
	const line = textOf(`content/en/lessons/${id}.mdx`)
		.split('\n')
		.find((each) => each.startsWith(`${key}:`));
	if (line === undefined) throw new Error(`${id} ${key}`);
	return line;
};

// symptom: 'Press once, and look at the wall', 'Count the seconds on the real one' and 'warn people before you try it' sent hands to a
// panel that nobody knows, with no care before them; cause: the care stood in one worked-out check alone
describe('a real panel that nobody knows', () => {
	const CARE = [/before doors/i, /no data cable|data out/i, /nobody in front/i, /\b(told|warn)/i];

	it('is tried only before doors, with data out, all told and nobody in front, and set back', () => {
		for (const text of [panelEdit.care, panelSettle.care, REAL_ACTS, cardWords.realHint])
			for (const each of [...CARE, /set it back/i]) expect(text).toMatch(each);
		expect(panelSettle.care).toMatch(/First write down what each value is/);
		expect(panelSettle.care).toMatch(/press nothing more/);
		expect(panelSettle.neitherSays).toMatch(/^Set it back as it was first\./);
		expect(panelSettle.settled('x')).toMatch(/Now set it back as it was\.$/);
	});

	it('is sent to from nowhere else, but by way of that', () => {
		const { questions, lead } = panelQuestions;
		for (const text of [panelEdit.liveHint, panelEdit.ready, lead]) expect(text).toMatch(/manual/i);
		for (const text of [panelEdit.liveHint, panelEdit.ready, lead]) expect(text).toMatch(/as said above/);
		for (const id of ['held', 'opens'] as const) expect(questions[id].care).toMatch(/^Look in the manual first/);
		const sends = those(/\b(on|try|of) the real one\b/i).filter(({ text }) =>
			/\b(count|find out|check|try)\b/i.test(text),
		);
		for (const { file, text } of sends)
			expect(text, file).toMatch(/before doors|as said above|fewest presses|^Find out on/i);
	});

	it('is switched off and on at its own switch, or not at all', () => {
		for (const set of [[], ['Mode: 4']]) {
			expect(panelSettle.start(set)).toMatch(/On the bench and alone.*its own switch\. No switch\? Then skip/);
			expect(panelSettle.start(set)).toMatch(/no plug or link is pulled/);
		}
		expect(lessonOf('any-panel').body).toMatch(/at its own switch[^.]*\. Pull no mains link or plug/);
	});

	it('is taught with the flashing first, and so on the card', () => {
		const { lesson, body } = lessonOf('any-panel');
		expect(lesson.cautions).toEqual(expect.arrayContaining(['flashing', 'mains', 'staring']));
		expect(body.indexOf('<Care id="flashing" />')).toBeGreaterThan(0);
		expect(body.indexOf('<Care id="flashing" />')).toBeLessThan(body.indexOf('Press once'));
		for (const each of CARE) expect(body.replace(/\s+/g, ' ').split('Press once')[0]).toMatch(each);
		for (const each of CARE) expect(lesson.card[0]).toMatch(each);
	});

	it('as its crew wrote it down is said to be partly assumed, wherever it stands', () => {
		const told = [backWords.from, slipWords.panelFrom, ownDrills.panelFrom, ownReference.panelFrom];
		for (const { crew } of told) expect(crew).toMatch(/partly assumed.*stop and go by its manual.*may flash/);
		expect(cardWords.crew(2)).toMatch(/partly assumed.*may flash/);
		expect(hiddenWords.ownPanels).toMatch(/This is practice: nothing here says what your real rig has/);
		expect(ownReference.assumed).toMatch(/Don’t plan a circuit or a weight/);
	});
});

// symptom: a task in a running show had a wash set to go dark if data stops, and its curve changed 'with its light as it is'
describe('tasks near people', () => {
	const varied = (id: string): string => lineOf(id, 'vary');

	it('set nothing that goes dark, jumps or pulses unasked', () => {
		expect(varied('on-the-radio')).not.toMatch(/go dark|curve/);
		expect(varied('words-on-panels')).not.toMatch(/run auto/);
		expect(lessonOf('when-data-goes').lesson.cautions).toContain('flashing');
		expect(lessonOf('when-data-goes').lesson.card.join(' ')).toMatch(/back to hold before doors/);
		for (const dark of varied('when-data-goes')
			.split('["')
			.filter((each) => /up on the bench/.test(each)))
			expect(dark).toMatch(/Before they go out, they go back to what the sheet says/);
	});

	it('say who is told, who lets it up, and that links come before any wall plug', () => {
		const says = (id: string): string => lineOf(id, 'task');
		expect(says('exits-and-emergency-light')).toMatch(/tell whoever is in charge.*how to open the lock/);
		expect(says('weights-at-a-point')).toMatch(/only when the rigger says so.*nobody below.*no cable left/);
		expect(says('circuits-and-distribution')).toMatch(
			/comes out at the wall.*all links of all groups.*hands off, and only then the wall plugs/,
		);
		expect(says('cool-coil-charge-log')).toMatch(/Before you touch a link, see which wall plug feeds/);
	});
});
