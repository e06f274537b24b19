import { expect, type Page, test } from '@playwright/test';
import { handOnWords } from '#words/finder/index.ts';
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
	await tab.locator('[data-way="noted"]').click();
	await expect(note).toHaveCount(0);
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
		await expect(tab.locator('[data-check]')).toBeVisible();
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
