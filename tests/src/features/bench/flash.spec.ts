import { expect, type Page, test } from '@playwright/test';
import { openSheet, wash } from './open.ts';

test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 900 } });

/** Four lamps that flash at rates of their own, and one that changes as fast as its programme goes. */
const strobes = {
	version: 1,
	name: 'Lantern Row Hall',
	fixtures: [
		wash(1, { work: 'held', held: 'white', strobe: 20 }),
		wash(2, { work: 'held', held: 'red', strobe: 13 }),
		wash(3, { work: 'held', held: 'green', strobe: 3 }),
		wash(4, { work: 'held', held: 'blue', strobe: 2 }),
		wash(5, { work: 'programme', programme: 'flashes', speed: 100 }),
		wash(6, { work: 'programme', programme: 'steps', speed: 100 }),
	],
};

interface Change {
	readonly at: number;
	readonly pool: string;
}

/** Every change of colour drawn on the wall over a while, with the frame it came in. */
async function watch(tab: Page, milliseconds: number): Promise<Change[]> {
	return tab.evaluate(
		(time) =>
			new Promise<Change[]>((resolve) => {
				const found: Change[] = [];
				const observer = new MutationObserver((records) => {
					const at = performance.now();
					for (const { target } of records) {
						if (target instanceof SVGElement && target.classList.contains('wall-pool'))
							found.push({ at, pool: target.dataset['pool'] ?? '' });
					}
				});
				const wall = document.querySelector('.wall-picture');
				if (wall)
					observer.observe(wall, { subtree: true, attributes: true, attributeFilter: ['color', 'opacity', 'style'] });
				setTimeout(() => {
					observer.disconnect();
					resolve(found);
				}, time);
			}),
		milliseconds,
	);
}

/** The most moments of change within any one second. */
const mostInASecond = (times: readonly number[]): number =>
	Math.max(0, ...times.map((start) => times.filter((at) => at >= start && at < start + 1000).length));

test('whatever the rig does, no lamp and no wall flashes more than three times a second', async ({ page: tab }) => {
	await openSheet(tab, strobes);
	await expect(tab.locator('.card-light').first()).toContainText('flashing');
	await tab.waitForTimeout(1500);
	const changes = await watch(tab, 4000);
	expect(changes.length).toBeGreaterThan(6);
	const byPool = Map.groupBy(changes, ({ pool }) => pool);
	expect(byPool.size).toBeGreaterThan(2);
	// a flash is two changes, one each way
	for (const [pool, list] of byPool) expect(mostInASecond(list.map(({ at }) => at)), pool).toBeLessThanOrEqual(6);
	// all that jump, together: lamps out of step must not flash the wall faster
	const jumps = changes.filter(({ pool }) => pool !== 'wash-6.0');
	expect(mostInASecond([...new Set(jumps.map(({ at }) => at))])).toBeLessThanOrEqual(6);
	await expect(tab.getByText('nothing on this screen flashes more than three times a second')).toBeVisible();
	await expect(tab.getByRole('heading', { name: /Flashing light/ })).toBeVisible();
});

test('the real rate comes only after a warning, and goes again', async ({ page: tab }) => {
	await openSheet(tab, strobes);
	await tab.getByRole('button', { name: 'Draw flashes at their real rate' }).click();
	await expect(tab.getByRole('dialog')).toContainText('seizure');
	await tab.getByRole('dialog').getByRole('button', { name: 'Draw at most three flashes a second' }).click();
	await tab.waitForTimeout(1200);
	const still = (await watch(tab, 2000)).filter(({ pool }) => pool === 'wash-1.0');
	expect(mostInASecond(still.map(({ at }) => at))).toBeLessThanOrEqual(6);

	await tab.getByRole('button', { name: 'Draw flashes at their real rate' }).click();
	await tab.getByRole('button', { name: 'Flash at the real rate' }).click();
	// the way back is at hand while the wall flashes
	await expect(tab.getByRole('button', { name: 'Draw at most three flashes a second' })).toBeFocused();
	await expect(tab.getByRole('button', { name: 'Draw at most three flashes a second' })).toBeInViewport();
	const real = (await watch(tab, 2000)).filter(({ pool }) => pool === 'wash-1.0');
	expect(mostInASecond(real.map(({ at }) => at))).toBeGreaterThan(6);
	await tab.getByRole('button', { name: 'Draw at most three flashes a second' }).click();
	// symptom: the keyboard fell to the top of the page. cause: the button went with the note it stood in
	await expect(tab.getByRole('button', { name: 'Draw flashes at their real rate' })).toBeFocused();
	await tab.waitForTimeout(1200);
	const back = (await watch(tab, 2000)).filter(({ pool }) => pool === 'wash-1.0');
	expect(mostInASecond(back.map(({ at }) => at))).toBeLessThanOrEqual(6);
});

test('less motion stills it, and says so in words', async ({ page: tab }) => {
	await tab.emulateMedia({ reducedMotion: 'reduce' });
	await openSheet(tab, strobes);
	await expect(tab.getByText('moving and flashing light stands still here')).toBeVisible();
	await expect(tab.locator('.card-light').first()).toContainText('flashing');
	await expect(tab.locator('.wall-pool[data-pool="wash-1.0"]')).toHaveAttribute('color', /^#[c-f]/);
	await tab.waitForTimeout(500);
	expect(await watch(tab, 3000)).toEqual([]);
	await expect(tab.getByRole('button', { name: 'Draw flashes at their real rate' })).toHaveCount(0);
});
