import { isDeepStrictEqual } from 'node:util';
import type { Answer, AnswerKey, Form, Item, MistakeId, QuestionGround } from '../../../shared/paper/index.ts';
import { judge, looksLike } from '../../../shared/paper/mark.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { optionText } from '../../../src/wording/papers.ts';
import { throughJson } from '../json.ts';
import { countRight, isRight, standsFor } from './oracle.ts';

/** The answers a key calls right: one, or every number in its ranges. */
function rightAnswers(key: AnswerKey): Answer[] {
	switch (key.form) {
		case 'one':
			return [{ form: 'one', chose: key.right }];
		case 'several':
			return [{ form: 'several', chose: key.right }];
		case 'number':
			return key.within.flatMap(({ from, to }) =>
				Array.from({ length: to - from + 1 }, (_, i): Answer => ({ form: 'number', value: from + i })),
			);
		case 'order':
			return [{ form: 'order', order: key.right }];
		case 'switches':
			return [{ form: 'switches', up: key.up }];
		case 'match':
			return [{ form: 'match', pairs: key.right }];
		default:
			return [];
	}
}

/** What items are held to besides themselves: `whole` looks at their journeys too, and mistakes that they know go into `found`. */
interface Held {
	readonly forms: readonly Form[];
	readonly whole: boolean;
	readonly found: Set<MistakeId>;
}

/** Everything that does not hold of an item, each with the item beside it. */
export function wrongWith(item: Item, ground: QuestionGround, { forms, whole, found }: Held): string[] {
	const wrong: string[] = [];
	const hold = (holds: boolean, what: string): void => {
		if (!holds) wrong.push(`${what}: ${JSON.stringify({ ...item, bench: null })}`);
	};
	hold(forms.includes(item.ask.form) && item.key.form === item.ask.form, 'form');
	const rights = rightAnswers(item.key);
	hold(rights.length > 0, 'nothing is right');
	for (const answer of rights) {
		hold(isRight(item, answer, ground), `the key is wrong by the oracle ${JSON.stringify(answer)}`);
		const verdict = judge(item, answer);
		hold(verdict.fits && verdict.right && verdict.share === 1, `its own key is marked wrong ${JSON.stringify(answer)}`);
	}
	const { right, keyed } = countRight(item, ground);
	hold(right === keyed, `${right} answers are right, and the key has ${keyed}`);
	for (const { mistake, answer } of item.mistakes) {
		const verdict = judge(item, answer);
		hold(!isRight(item, answer, ground), `${mistake} is right by the oracle`);
		hold(verdict.fits && !verdict.right, `${mistake} is marked right`);
		hold(looksLike(item, answer) === mistake, `${mistake} looks like ${looksLike(item, answer)}`);
		found.add(mistake);
	}
	if (item.key.form === 'several' && item.key.right.length > 1) {
		const looks = looksLike(item, { form: 'several', chose: item.key.right.slice(1) });
		hold(looks !== null, 'one missed looks like nothing');
		if (looks) found.add(looks);
	}
	holdOptions(item, hold);
	if (whole) {
		hold(isDeepStrictEqual(throughJson(item), item), 'JSON changes it');
		if (item.bench)
			hold(isDeepStrictEqual(readSheet(throughJson(item.bench)), item.bench), 'its bench is no whole sheet');
	}
	return wrong;
}

/** Options read differently, wrong ones of `one` each have their mistake, and an order is settled by what is written. */
function holdOptions(item: Item, hold: (holds: boolean, what: string) => void): void {
	const { ask, key, mistakes } = item;
	const lists = 'options' in ask ? [ask.options] : ask.form === 'match' ? [ask.left, ask.right] : [];
	for (const list of lists) {
		hold(new Set(list.map(({ id }) => id)).size === list.length, 'two ids alike');
		hold(
			new Set(list.map((each) => optionText(item, each).toLowerCase())).size === list.length,
			'two options read alike',
		);
	}
	if (ask.form === 'one' && key.form === 'one') {
		const wrong = ask.options.map(({ id }) => id).filter((id) => id !== key.right);
		const named = mistakes.map(({ answer }) => (answer.form === 'one' ? answer.chose : '')).sort();
		hold(wrong.length >= 2 && String(named) === String(wrong), 'wrong options are few, or have no mistake');
	}
	if (ask.form === 'several' && key.form === 'several')
		hold(key.right.length > 0 && ask.options.length >= 3, 'too few options');
	if (ask.form === 'number') hold(mistakes.length > 0, 'no mistake is known');
	if (ask.form === 'order' && key.form === 'order') {
		const values = key.right.map((id) =>
			ask.options.filter((each) => each.id === id).flatMap(({ label }) => standsFor(label)),
		);
		for (const [i, here] of values.entries()) {
			const next = values[i + 1];
			hold(here.length > 0 && (!next || Math.max(...here) < Math.min(...next)), 'the order is open');
		}
	}
}
