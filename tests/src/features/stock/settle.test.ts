import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { panelQuestions, stockNames, panelSettle as words } from '#words/stock/index.ts';
import type { Profile } from '../../../../shared/profile/index.ts';
import {
	blankEntry,
	blankPanel,
	type PanelEntry,
	type StockEntry,
	stockFixture,
} from '../../../../shared/stock/index.ts';
import { CannotRun, Ended } from '../../../../src/engine/index.ts';
import { Check, type Settling, settlerTo } from '../../../../src/features/stock/PanelSettle.tsx';
import { routes } from '../../../../src/features/stock/routes.ts';

const MENU = 'Setup\n\tAddress 1-512\n\tColour: Red, Green\nLight comes from: DMX, Static';
const entryOf = (answers: PanelEntry['answers']): StockEntry => ({
	...blankEntry('own-1', 'Made up', 0),
	chart: '1 Dimmer\n2 Red\n3 Green',
	panel: { ...blankPanel('keys'), menu: MENU, answers },
});

// symptom: a person held a key of the real one with no word that this may lock it or set it back; cause: only the question had the caution
test('a check that holds a key says what a long hold may do', () => {
	const entry = entryOf({ acts: 'stored', stores: 'key', rests: 'stays', ends: 'stops' });
	const check = routes.settle({ entry, left: {} });
	if (!check) throw new Error('no check');
	expect([check.question, check.steps.some((step) => step.do === 'hold')]).toEqual(['held', true]);
	const { profile } = stockFixture(entry as never, stockNames);
	const shown = renderToString(
		h(Check, { check, profile: profile as Profile, onSee: () => undefined, onNeither: () => undefined }),
	);
	expect(shown).toContain(panelQuestions.questions.held.care.replaceAll("'", '&#39;'));
});

// symptom: a worker that broke said that no few presses tell; cause: whatever went wrong was taken for an answer
test('a check that could not be worked out says what went wrong', async () => {
	const shownOf = async (settle: () => Promise<null>): Promise<Settling[]> => {
		const shown: Settling[] = [];
		await settlerTo((each) => shown.push(each)).ask(settle);
		return shown;
	};
	const fails = (error: Error) => () => Promise.reject(error);
	expect(await shownOf(() => Promise.resolve(null))).toEqual(['working', 'none']);
	expect(await shownOf(fails(new Ended('slow')))).toEqual(['working', { wrong: words.slow }]);
	expect(await shownOf(fails(new CannotRun()))).toEqual(['working', { wrong: words.noWorker }]);
	expect(await shownOf(fails(new Error('any')))).toEqual(['working', { wrong: words.broke }]);
});

// symptom: a check for a panel as it no longer was stood there, over a newer one; cause: whichever answer came last was shown
test('only the check that was asked for last is shown, and none that was let go', async () => {
	const shown: Settling[] = [];
	const settler = settlerTo((each) => shown.push(each));
	const answers: ((check: null) => void)[] = [];
	const signals: AbortSignal[] = [];
	const ask = () =>
		settler.ask((signal) => {
			signals.push(signal);
			return new Promise((resolve) => answers.push(resolve));
		});
	const first = ask();
	const second = ask();
	answers[1]?.(null);
	await second;
	answers[0]?.(null);
	await first;
	expect(shown).toEqual(['working', 'working', 'none']);
	const third = ask();
	settler.letGo();
	answers[2]?.(null);
	await third;
	expect(shown.slice(3)).toEqual(['working']);
	// the worker is told, too
	expect(signals.map(({ aborted }) => aborted)).toEqual([true, true, true]);
	// what ends of a question that was let go is no trouble to anybody
	const ended = settler.ask(() => Promise.reject(new Ended('stopped')));
	settler.letGo();
	await ended;
	expect(shown.slice(4)).toEqual(['working']);
});
