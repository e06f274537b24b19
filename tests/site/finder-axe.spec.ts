import { expect, type Page, test } from '@playwright/test';
import { answer, begin, type Hidden, readingOf } from '../src/features/finder/hidden.ts';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block' });

const it: Hidden = {
	rig: 'two-universes',
	fixture: 'bar-3',
	complaint: 'dark',
	fault: { fault: 'cable-dead', place: 'cable-3' },
};

async function finds(tab: Page, where: string): Promise<void> {
	const { violations, passes } = await axe(tab);
	expect(violations.map(({ id, nodes }) => `${where}: ${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	expect(passes.length).toBeGreaterThan(10);
}

for (const { colorScheme, width } of looks) {
	test(`axe finds nothing on a walk, ${colorScheme}, ${width} wide`, async ({ browser, baseURL }) => {
		const context = await browser.newContext({ colorScheme, viewport: { width, height: 844 } });
		const tab = await context.newPage();
		await tab.goto(`${baseURL}/finder/`);
		await tab.locator('.count').nth(5).click();
		await finds(tab, 'how they are linked');
		await tab.locator('[data-choice="desk"]').click();
		await finds(tab, 'which panel');
		await tab.getByRole('button', { name: 'Back' }).click();
		await tab.getByRole('button', { name: 'Back' }).click();
		await begin(tab, it);
		await finds(tab, 'the first check, with cautions');
		await tab.locator('.why summary').click();
		if (width < 1024) await tab.locator('.suspects-line').click();
		await finds(tab, 'why this, and the suspects');
		if (width < 1024) await tab.locator('.suspects-line').click();
		await tab.getByRole('button', { name: /^At this gig/ }).click();
		await finds(tab, 'what the gig allows');
		await tab.getByRole('button', { name: 'Close' }).click();
		await answer(tab, readingOf(it), 2);
		await finds(tab, 'mid-walk');
		await answer(tab, readingOf(it));
		await tab.locator('.walk-log-line').click();
		await finds(tab, 'the verdict and the log');
		await context.close();
	});
}
