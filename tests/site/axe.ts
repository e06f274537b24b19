import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/**
 * What axe finds on a page, or in a part of it. Of rules that pass it lists the rule and not every element, and it runs in the page
 * itself, as no page here has frames: on a page of some thousand elements that is five seconds instead of thirty.
 * @param part a selector; the whole page unless told
 */
export function axe(tab: Page, part?: string) {
	const all = new AxeBuilder({ page: tab }).options({ resultTypes: ['violations'] }).setLegacyMode();
	return (part === undefined ? all : all.include(part)).analyze();
}

/** That axe finds nothing on a page, and nothing is wider than it. */
export async function expectNothingWrong(tab: Page): Promise<void> {
	const { violations } = await axe(tab);
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	expect(await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}
