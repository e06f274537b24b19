import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { looks } from './looks.ts';
import { sampled } from './pages.ts';

test.use({ serviceWorkers: 'block' });

for (const page of sampled) {
	for (const { colorScheme, width } of looks) {
		test(`axe finds nothing on ${page}, ${colorScheme}, ${width} wide`, async ({ browser, baseURL }) => {
			const context = await browser.newContext({ colorScheme, viewport: { width, height: 844 } });
			const tab = await context.newPage();
			await tab.goto(`${baseURL}${page}`);
			await tab.waitForLoadState('networkidle');
			const { violations, passes } = await new AxeBuilder({ page: tab }).analyze();
			expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
			expect(passes.length).toBeGreaterThan(10);
			await context.close();
		});
	}
}
