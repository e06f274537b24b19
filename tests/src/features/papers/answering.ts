import { expect, type Locator, type Page } from '@playwright/test';
import type { Answer } from '../../../../shared/paper/index.ts';

/** Which question of a paper shows, by its place from 0. */
export async function placeOf(tab: Page): Promise<number> {
	const [, at] = /Question (\d+) of/.exec((await tab.locator('.sit-where').textContent()) ?? '') ?? [];
	return Number(at) - 1;
}

/** Moves the focus on by Tab until it is there. */
export async function tabTo(tab: Page, target: Locator): Promise<void> {
	for (let i = 0; i < 80; i++) {
		if (await target.evaluate((element) => element === document.activeElement)) return;
		await tab.keyboard.press('Tab');
	}
	throw new Error(`Tab does not lead to ${target}`);
}

/** Gives an answer by mouse or touch. */
export async function give(tab: Page, answer: Answer): Promise<void> {
	switch (answer.form) {
		case 'one':
			return tab.locator(`.sit-option input[value="${answer.chose}"]`).check();
		case 'several':
			for (const id of answer.chose) await tab.locator(`.sit-option input[value="${id}"]`).check();
			return;
		case 'number':
			return tab.getByLabel('Your answer').fill(String(answer.value));
		case 'switches':
			for (const n of answer.up) await tab.getByRole('switch', { name: `Switch ${n}`, exact: true }).click();
			return;
		default:
			throw new Error(`no hand for ${answer.form} here`);
	}
}

/** Gives an answer by keyboard alone, from the question's heading on. */
export async function giveByKeys(tab: Page, answer: Answer): Promise<void> {
	if (answer.form === 'number') {
		await tabTo(tab, tab.getByLabel('Your answer'));
		await tab.keyboard.type(String(answer.value));
		return;
	}
	if (answer.form !== 'one') throw new Error(`no keys for ${answer.form} here`);
	const options = tab.locator('.sit-option input');
	await tabTo(tab, options.first());
	await tab.keyboard.press('Space');
	for (let i = 0; i < (await options.count()); i++) {
		const chosen = tab.locator('.sit-option input:checked');
		if ((await chosen.count()) > 0 && (await chosen.getAttribute('value')) === answer.chose) return;
		await tab.keyboard.press('ArrowDown');
	}
	expect(await tab.locator('.sit-option input:checked').getAttribute('value')).toBe(answer.chose);
}
