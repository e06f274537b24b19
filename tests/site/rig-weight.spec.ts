import { expect, test } from '@playwright/test';
import { told, weighScripts } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

/** kB of 1000 bytes of script, as sent: a plan and nothing else asked for. It was 101 begun and 124 kept, with the machine of the bench in it; 90 was asked. */
const bar = 82;

test('a plan that is begun, and one that is kept, comes without the machine of the bench', async ({ page: tab }) => {
	const scripts = weighScripts(tab);
	await tab.goto('/rig/');
	await tab.getByRole('button', { name: '4 fixtures', exact: true }).click();
	await tab.locator('.rig-choice').first().click();
	await tab.locator('.rig-count').first().click();
	await expect(tab.locator('.rig-line')).toHaveCount(4);
	await tab.waitForLoadState('networkidle');
	const begun = await scripts();
	console.log(`/rig/ with a plan begun ${told(begun)}`);
	expect(begun.sent).toBeLessThanOrEqual(bar);
	const again = weighScripts(tab);
	await tab.reload();
	await expect(tab.locator('.rig-line')).toHaveCount(4);
	await tab.waitForLoadState('networkidle');
	const kept = await again();
	console.log(`/rig/ with a kept plan ${told(kept)}`);
	expect(kept.sent).toBeLessThanOrEqual(bar);
});
