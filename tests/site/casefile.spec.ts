import { expect, type Page, test } from '@playwright/test';
import { tap } from '../src/features/finder/hidden.ts';
import { axe } from './axe.ts';
import { looks } from './looks.ts';

test.use({ serviceWorkers: 'block' });

/** From the chooser to the tree. */
async function work(tab: Page): Promise<void> {
	await tab.getByLabel('Rig').selectOption('four-in-line');
	await tab.getByLabel('Fixture').selectOption('wash-3');
	await tab.getByLabel('What’s wrong').selectOption('no-answer');
	await tab.getByRole('button', { name: 'Work the tree out' }).click();
	await expect(tab.locator('.tree')).toBeVisible({ timeout: 60_000 });
}

// symptom: the complaint chosen went back to the first of the list. cause: the answer about the fixture chosen just before it came later
test('a complaint chosen while a fixture’s are still on their way stays chosen', async ({ page: tab }) => {
	await tab.goto('/finder/tree/');
	await tab.getByLabel('Rig').selectOption('four-in-line');
	const complaint = tab.getByLabel('What’s wrong');
	await expect(complaint).toBeEnabled();
	await tab.evaluate(() => {
		for (const [name, value] of [
			['fixture', 'wash-3'],
			['complaint', 'no-answer'],
		] as const) {
			const list = document.querySelector<HTMLSelectElement>(`select[name="${name}"]`);
			if (!list) throw new Error(name);
			list.value = value;
			list.dispatchEvent(new Event('change', { bubbles: true }));
		}
	});
	await expect(tab.getByRole('button', { name: 'Work the tree out' })).toBeEnabled();
	await expect(complaint).toHaveValue('no-answer');
	await expect(tab.getByLabel('Fixture')).toHaveValue('wash-3');
});

/** Pages that the tab prints to on A4. */
async function sheetsOf(tab: Page): Promise<number> {
	const pdf = await tab.pdf({ format: 'A4', preferCSSPageSize: true });
	return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

test('a tree is worked out, stands in the address, and prints on two A4 sheets at most, in 10 pt, with no frame', async ({
	page: tab,
}) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto('/finder/tree/');
	await work(tab);
	await expect(tab.locator('.tree-basis')).toHaveText(
		/^Worked out for .+, Wash 3, centre right doesn’t answer the desk, from \d+ suspects; a rough estimate of \d+ seconds on average\.$/,
	);
	const ends = Number(await tab.locator('.tree').getAttribute('data-ends'));
	expect(ends).toBeGreaterThan(10);
	await expect(tab.locator('.tree-end')).toHaveCount(ends);
	expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
	const words = await tab.locator('.tree').textContent();
	await tab.reload();
	await expect(tab.locator('.tree')).toHaveText(words ?? '', { timeout: 60_000 });
	await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
	for (const gone of ['.site-head', '.site-foot', '.casefile-choose', '.casefile-top', '.casefile-ways'])
		await expect(tab.locator(gone), gone).toBeHidden();
	expect(await tab.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)');
	expect(
		await tab
			.locator('.tree-seen')
			.first()
			.evaluate((it) => getComputedStyle(it).color),
	).toBe('rgb(0, 0, 0)');
	expect(await sheetsOf(tab)).toBeLessThanOrEqual(2);
});

test('a link that fits nothing gets a sentence, and the chooser stays', async ({ page: tab }) => {
	for (const bad of ['#rig=barn&fixture=wash-1&complaint=dark', '#rig=one-wash&fixture=wash-9&complaint=dark']) {
		await tab.goto('about:blank');
		await tab.goto(`/finder/tree/${bad}`);
		await expect(tab.locator('.notice-wrong')).toContainText('names no rig, fixture and complaint known here');
		await expect(tab.getByLabel('Rig')).toBeEnabled();
	}
});

for (const { colorScheme, width } of looks) {
	test(`axe finds nothing on a tree, ${colorScheme}, ${width} wide`, async ({ page: tab }) => {
		await tab.emulateMedia({ colorScheme });
		await tab.setViewportSize({ width, height: 844 });
		await tab.goto('/finder/tree/#rig=two-universes&fixture=bar-3&complaint=dark');
		await expect(tab.locator('.tree')).toBeVisible({ timeout: 60_000 });
		const { violations } = await axe(tab);
		expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
	});
}

test('from a walk the finder leads to the tree of that rig, which is chosen there', async ({ page: tab }) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto('/finder/');
	await tap(tab.getByRole('button', { name: '2 fixtures', exact: true }));
	await tap(tab.locator('[data-choice="desk"]'));
	await tap(tab.locator('[data-choice="tallow-6"]'));
	await tap(tab.locator('[data-choice="wash-2"]'));
	await tap(tab.locator('[data-choice="dark"]'));
	await expect(tab.locator('[data-check]')).toBeVisible();
	await tab.locator('.walk-log-line').click();
	await tab.getByRole('link', { name: 'A tree of all checks, to print' }).click();
	await expect(tab.locator('.tree')).toBeVisible({ timeout: 60_000 });
	await expect(tab.getByLabel('Rig')).toHaveValue('finder');
	await expect(tab.locator('.tree-basis')).toContainText('is dark');
});
