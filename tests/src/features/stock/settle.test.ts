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
import { Check, type Settling, workOut } from '../../../../src/features/stock/PanelSettle.tsx';
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
		await workOut(settle, (each) => shown.push(each));
		return shown;
	};
	const fails = (error: Error) => () => Promise.reject(error);
	expect(await shownOf(() => Promise.resolve(null))).toEqual(['working', 'none']);
	expect(await shownOf(fails(new Ended('slow')))).toEqual(['working', { wrong: words.slow }]);
	expect(await shownOf(fails(new CannotRun()))).toEqual(['working', { wrong: words.noWorker }]);
	expect(await shownOf(fails(new Error('any')))).toEqual(['working', { wrong: words.broke }]);
});
