import { expect, type Locator, type Page, test } from '@playwright/test';
import { layOut, openFresh, take } from '../src/features/bench/open.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 700, height: 1000 } });

/** Whether two places look otherwise: what only a colour of ours told apart looks the same in forced colours. */
async function expectOther(one: Locator, two: Locator | (() => Promise<void>), what: string): Promise<void> {
	const before = await one.screenshot({ animations: 'disabled' });
	if (typeof two === 'function') await two();
	const after = await (typeof two === 'function' ? one : two).screenshot({ animations: 'disabled' });
	expect(before.equals(after), what).toBe(false);
}

/** A place is drawn with more than the ground it stands on. */
async function expectDrawn(tab: Page, selector: string): Promise<void> {
	const shown = await tab
		.locator(selector)
		.first()
		.evaluate((element) => {
			const groundOf = (it: Element | null): string => {
				const { backgroundColor } = getComputedStyle(it ?? document.body);
				return it && /^rgba.*, 0\)$/.test(backgroundColor) ? groundOf(it.parentElement) : backgroundColor;
			};
			const isLined = getComputedStyle(element).borderTopWidth !== '0px';
			return isLined || groundOf(element) !== groundOf(element.parentElement);
		});
	expect(shown, selector).toBe(true);
}

// the knob of a switch, the bars of a battery and the mark of the page one is on were grounds, which forced colours take away
for (const { colorScheme } of looks)
	test(`forced colours, ${colorScheme}: navigation, switch, battery and indicators are told apart`, async ({
		page: tab,
	}) => {
		await tab.emulateMedia({ forcedColors: 'active', colorScheme });
		await openFresh(tab);
		await layOut(tab, 'One battery wash');

		const nav = await tab.locator('.site-nav a').evaluateAll((all) =>
			all.map((it) => ({
				here: it.getAttribute('aria-current') !== null,
				line: getComputedStyle(it).borderBottomColor,
			})),
		);
		const ground = await tab.evaluate(() => getComputedStyle(document.body).backgroundColor);
		expect(nav.filter(({ here }) => here)).toHaveLength(1);
		for (const { here, line } of nav) expect(line === ground, 'a line under the page one is on alone').toBe(!here);

		const power = tab.getByRole('switch', { name: 'Power switch' });
		await expectDrawn(tab, '.toggle-knob');
		const dot = tab.locator('.lamp[data-lamp="power"] .lamp-dot');
		const out = await dot.screenshot({ animations: 'disabled' });
		await expectOther(power.locator('.toggle-slot'), () => power.click(), 'a switch, off and on');
		await expect(tab.locator('.lamp[data-lamp="power"]')).toContainText('lit');
		expect(out.equals(await dot.screenshot({ animations: 'disabled' })), 'an indicator, out and lit').toBe(false);

		const bars = tab.locator('.lamp-bars');
		await expectDrawn(tab, '.lamp-bars span');
		const flat = () =>
			bars.locator('span').evaluateAll((all) => {
				for (const it of all) it.setAttribute('data-on', 'false');
			});
		await expectOther(bars, flat, 'a battery, full and flat');
		await expectDrawn(tab, '.lamp-bars span');

		await layOut(tab, 'Mixed panels');
		await take(tab, 'Old wash').click();
		const dip = tab.locator('.dip').first();
		await expectDrawn(tab, '.dip-slot');
		await expectDrawn(tab, '.dip-knob');
		await expectOther(dip.locator('.dip-slot'), () => dip.click(), 'a DIP switch, off and on');
		const grounds = await Promise.all(
			[tab.locator('.slide-stop:has(:checked)').first(), tab.locator('.slide-stop:not(:has(:checked))').first()].map(
				(it) => it.evaluate((element) => getComputedStyle(element).backgroundColor),
			),
		);
		expect(grounds[0], 'the stop a slide stands at').not.toBe(grounds[1]);
		const themes = tab.locator('.theme-switch label');
		const chosen = await themes.evaluateAll((all) => all.map((it) => getComputedStyle(it).backgroundColor));
		expect(new Set(chosen).size, 'the look that was chosen').toBe(2);
	});
