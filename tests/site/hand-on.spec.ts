import { expect, type Page, test } from '@playwright/test';
import { finderWords, handOnWords } from '#words/finder/index.ts';
import { walkLink } from '../../src/features/finder/handOn.ts';
import { ALLOWS_ALL, freshWalk } from '../../src/features/finder/walk.ts';
import { begin } from '../src/features/finder/hidden.ts';

test.use({ serviceWorkers: 'block' });

const walk = {
	...freshWalk({ kind: 'bundled', id: 'four-in-line' }, {}, 0),
	fixture: 'wash-3',
	complaint: 'dark',
} as const;
const link = async () => (await walkLink({ allows: ALLOWS_ALL, walk })) ?? '';

const hashOf = (tab: Page) => tab.evaluate(() => location.hash);

test('a link to a walk leaves the address once it was read, and what to ask first stays over the steps', async ({
	page: tab,
}) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto(`/finder/${await link()}`);
	const note = tab.locator('.notice-plain [data-note]');
	await expect(note).toHaveText(handOnWords.taken);
	await expect(note).toBeInViewport();
	await expect(tab.locator('.notice-wrong')).toHaveCount(0);
	expect(await hashOf(tab)).toBe('');
	await tab.locator('[data-check] [data-way="unsure"]').click();
	await expect(tab.locator('.walk-log-line .value')).toHaveText('1');
	await expect(note).toBeInViewport();
	await tab.reload();
	await expect(note).toHaveText(handOnWords.taken);
	await expect(tab.locator('.walk-log-line .value')).toHaveText('1');
	await tab.locator('[data-way="noted"]').click();
	await expect(note).toHaveCount(0);
	await expect(tab.locator('[data-begin]')).toBeFocused();
	await tab.reload();
	await expect(tab.locator('[data-check]')).toBeVisible();
	await expect(note).toHaveCount(0);
});

/** What is read out at once: of trouble, and of what to ask first. */
const told = (tab: Page) => tab.locator('.finder > [role="alert"]').allTextContents();

test('dismissing one sentence has no other read again, and the same once more is read once more', async ({
	page: tab,
}) => {
	const hash = await link();
	await tab.goto(`/finder/${hash}`);
	const note = tab.locator('[data-note]');
	await expect(note).toBeVisible();
	const [, first] = await told(tab);
	await tab.evaluate(
		(bad) => {
			location.hash = bad;
		},
		hash.slice(0, -20),
	);
	await expect(tab.locator('.notice-wrong')).toBeVisible();
	const [wrong, stands] = await told(tab);
	expect([wrong === '', stands]).toEqual([false, first]);
	await tab.locator('[data-way="told"]').click();
	expect(await told(tab)).toEqual(['', first]);
	await expect(tab.locator('[data-begin]')).toBeFocused();
	await tab.evaluate((good) => {
		location.hash = good;
	}, hash);
	await expect(note).toHaveText(`${handOnWords.taken} ${handOnWords.aside}`);
	const [, second] = await told(tab);
	await tab.evaluate((good) => {
		location.hash = good;
	}, hash);
	await expect.poll(() => told(tab)).not.toEqual(['', second]);
	expect((await told(tab))[1]?.trim()).toBe(second?.trim());
});

test('where the device has no room, the link is tried again by a button, in the same tab', async ({ page: tab }) => {
	await tab.goto('/finder/');
	await begin(tab, {
		rig: 'one-wash',
		fixture: 'wash-1',
		complaint: 'dark',
		fault: { fault: 'switched-off', place: 'wash-1' },
	});
	await tab.evaluate(() => {
		const put = Storage.prototype.setItem;
		Storage.prototype.setItem = function (key: string, text: string) {
			if (key.includes('.aside.')) throw new DOMException('full', 'QuotaExceededError');
			put.call(this, key, text);
		};
	});
	const hash = await link();
	await tab.evaluate((to) => {
		location.hash = to;
	}, hash);
	const again = tab.locator('[data-way="try-link"]');
	await expect(tab.locator('.notice-wrong')).toContainText(handOnWords.noRoom);
	await again.click();
	await expect(tab.locator('.notice-wrong')).toContainText(handOnWords.noRoom);
	await tab.getByRole('button', { name: finderWords.startAgain }).click();
	await tab.locator('.sure button').first().click();
	await expect(tab.locator('.notice-wrong')).toContainText(handOnWords.waits);
	expect(await hashOf(tab)).toBe(hash);
	await again.click();
	await expect(tab.locator('[data-note]')).toHaveText(handOnWords.taken);
	expect(await hashOf(tab)).toBe('');
});

for (const [name, height] of [
	['a tall phone', 844],
	['a phone', 664],
] as const)
	test(`what to ask of a walk that was handed on is read whole on arrival, before any answer: ${name}`, async ({
		page: tab,
	}) => {
		await tab.setViewportSize({ width: 390, height });
		// another walk stands there, so that both sentences come
		await tab.goto('/finder/');
		await begin(tab, {
			rig: 'one-wash',
			fixture: 'wash-1',
			complaint: 'dark',
			fault: { fault: 'switched-off', place: 'wash-1' },
		});
		await tab.goto(`/finder/${await link()}`);
		const note = tab.locator('.notice-plain [data-note]');
		await expect(note).toHaveText(`${handOnWords.taken} ${handOnWords.aside}`);
		await expect(tab.locator('.answers')).toBeVisible();
		for (const part of [note, tab.locator('[data-way="noted"]')]) await expect(part).toBeInViewport({ ratio: 1 });
		const box = async (of: string) => (await tab.locator(of).first().boundingBox()) ?? { y: Number.NaN, height: 0 };
		const [said, dismiss, answers] = [await box('[data-note]'), await box('[data-way="noted"]'), await box('.answers')];
		expect(said.y).toBeGreaterThanOrEqual(0);
		expect(answers.y, 'no answer stands over it').toBeGreaterThan(dismiss.y + dismiss.height);
	});

test('a link that could not be read stays in the address', async ({ page: tab }) => {
	const hash = (await link()).slice(0, -20);
	await tab.goto(`/finder/${hash}`);
	await expect(tab.locator('.notice-wrong')).toBeVisible();
	expect(await hashOf(tab)).toBe(hash);
	// and not where something of one's own was begun: it would give way to it at the next reload
	await tab.locator('[data-choice="four-in-line"]').click();
	await expect(tab.locator('[data-phase="fixture"]')).toBeVisible();
	expect(await hashOf(tab)).toBe('');
});

const noLinkWhere = {
	'the browser can make no link': [
		() => {
			Reflect.deleteProperty(window, 'CompressionStream');
		},
		handOnWords.noLink,
	],
	'the link comes out longer than is read': [
		() => {
			class Longer extends TransformStream {
				constructor() {
					// bytes that stand for a walk of megabytes
					super({ transform: (_, out) => out.enqueue(new Uint8Array(800_000)) });
				}
			}
			Object.assign(window, { CompressionStream: Longer });
		},
		handOnWords.tooLong,
	],
} as const;

for (const [where, [spoil, says]] of Object.entries(noLinkWhere))
	test(`where ${where}, that is said`, async ({ page: tab }) => {
		await tab.addInitScript(spoil);
		await tab.goto('/finder/');
		await begin(tab, {
			rig: 'four-in-line',
			fixture: 'wash-3',
			complaint: 'dark',
			fault: { fault: 'switched-off', place: 'wash-3' },
		});
		await tab.locator('.walk-log-line').click();
		await tab.locator('[data-hand-on] summary').click();
		await expect(tab.getByText(says).first()).toBeVisible();
		await expect(tab.locator('[data-way="hand-on"]')).toBeDisabled();
	});

test('that a walk is too long for a link is no longer said once there is a link again', async ({ page: tab }) => {
	await tab.addInitScript(() => {
		const { CompressionStream: Packs } = window;
		class Longer extends TransformStream {
			constructor() {
				super({ transform: (_, out) => out.enqueue(new Uint8Array(800_000)) });
			}
		}
		Object.assign(window, {
			CompressionStream: new Proxy(Packs, {
				construct: (_, how: ConstructorParameters<typeof Packs>) =>
					document.querySelector('[data-step-too-far]') ? new Longer() : new Packs(...how),
			}),
		});
	});
	await tab.goto('/finder/');
	await begin(tab, {
		rig: 'four-in-line',
		fixture: 'wash-3',
		complaint: 'dark',
		fault: { fault: 'switched-off', place: 'wash-3' },
	});
	await tab.locator('.walk-log-line').click();
	await tab.locator('[data-hand-on] summary').click();
	const field = tab.locator('[data-link]');
	await expect(field).toHaveValue(/#walk=/);
	const too = tab.getByText(handOnWords.tooLong);
	const isTooFar = (on: boolean) => tab.evaluate((is) => document.body.toggleAttribute('data-step-too-far', is), on);
	await isTooFar(true);
	await tab.locator('[data-check] [data-way="unsure"]').click();
	await expect(too.first()).toBeVisible();
	await isTooFar(false);
	await tab.locator('[data-way="back"]').first().click();
	await expect(field).toHaveValue(/#walk=/);
	await expect(too).toHaveCount(0);
});
