import { expect, type Page, test } from '@playwright/test';
import { allowWords } from '#words/finder/index.ts';
import { KEPT } from '../../src/storage/index.ts';
import { answer, begin, type Hidden, readingOf } from '../src/features/finder/hidden.ts';

/*
 * Symptom: on a card that sends somebody up a ladder, the answers stood at the bottom of the glass and could be tapped while the
 * caution was still below the picture, or had not come yet. Cause: the answers stick to the glass, and the cautions came last.
 */

test.use({ serviceWorkers: 'block' });

const scenes: readonly Hidden[] = [
	{
		rig: 'two-universes',
		fixture: 'bar-2',
		complaint: 'dark',
		fault: { fault: 'mains-unplugged', place: 'bar-2' },
	},
	{
		rig: 'mixed-panels',
		fixture: 'old-2',
		complaint: 'dark',
		fault: { fault: 'mains-unplugged', place: 'old-2' },
	},
];
const [first] = scenes as [Hidden];

const card = '[data-check]:has(.caution)';
/** Said of a card before its cautions have come. */
const waiting = '[data-check][data-cautioned="true"]';

/** Walks on until a card with a caution comes, or the first repair. */
async function toCaution(tab: Page, scene: Hidden): Promise<void> {
	await tab.goto('/finder/');
	await begin(tab, scene);
	const read = readingOf(scene);
	for (let asked = 0; asked < 20 && (await tab.locator(waiting).count()) === 0; asked++) {
		if ((await tab.locator('[data-mend]').count()) > 0) throw new Error('no card had a caution');
		await answer(tab, read, 1);
	}
	await expect(tab.locator('.caution').first()).toBeVisible();
}

for (const [name, viewport] of [
	['a phone', { width: 390, height: 664 }],
	['a tall phone', { width: 390, height: 844 }],
	['a wide screen', { width: 1280, height: 800 }],
] as const)
	for (const scene of scenes)
		test(`${scene.fixture} at ${name}: the caution is on the glass, and above the first answer`, async ({
			page: tab,
		}) => {
			await tab.setViewportSize(viewport);
			await toCaution(tab, scene);
			const boxes = await tab.evaluate((of) => {
				const found = document.querySelector(of);
				const y = (part: Element | null | undefined) => part?.getBoundingClientRect();
				const cautions = [...(found?.querySelectorAll('.caution') ?? [])];
				return {
					caution: y(cautions[0])?.top ?? Number.NaN,
					harm: y(cautions[0]?.querySelector('.caution-harm'))?.bottom ?? Number.NaN,
					last: y(cautions.at(-1))?.bottom ?? Number.NaN,
					answer: y(found?.querySelector('.answers .answer'))?.top ?? Number.NaN,
				};
			}, card);
			expect(boxes.caution).toBeGreaterThanOrEqual(0);
			expect(boxes.harm, 'what can happen is read on the first screen').toBeLessThanOrEqual(viewport.height);
			expect(boxes.answer, 'every caution stands above the first answer').toBeGreaterThan(boxes.last);
		});

test('nothing can be answered before the cautions are there', async ({ page: tab }) => {
	let open = (): void => {};
	const gate = new Promise<void>((resolve) => {
		open = resolve;
	});
	await tab.route(/CautionBoxes/, async (route) => {
		await gate;
		await route.continue();
	});
	await tab.goto('/finder/');
	await begin(tab, first);
	const read = readingOf(first);
	for (let asked = 0; asked < 20 && (await tab.locator(waiting).count()) === 0; asked++) await answer(tab, read, 1);
	await expect(tab.locator(`${waiting} .answer`).first()).toBeDisabled();
	await expect(tab.locator(`${waiting} [data-way="back"]`)).toBeEnabled();
	open();
	await expect(tab.locator(`${waiting} .caution`).first()).toBeVisible();
	await expect(tab.locator(`${waiting} .answer`).first()).toBeEnabled();
});

test('a mend overhead carries height and hanging, above what is tapped when it is done', async ({ page: tab }) => {
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto('/finder/');
	await begin(tab, first);
	const read = readingOf(first);
	for (let asked = 0; asked < 40 && (await tab.locator('[data-mend]').count()) === 0; asked++) {
		if ((await tab.locator('[data-because]').count()) > 0) break;
		const id = await tab.locator('[data-check]').getAttribute('data-check');
		if (id === 'mend-plug-mains@bar-2') break;
		await answer(tab, read, 1);
	}
	const mend = tab.locator('[data-mend="mend-plug-mains@bar-2"], [data-check="mend-plug-mains@bar-2"]');
	await expect(mend).toContainText('Isolate first');
	await expect(mend.getByRole('heading', { name: /Working at height/ })).toBeVisible();
	await expect(mend.getByRole('heading', { name: /Mains electricity/ })).toBeVisible();
	const low = await mend.locator('.caution').last().boundingBox();
	const button = await mend.locator('[data-outcome="cleared"]').boundingBox();
	expect(button?.y ?? 0).toBeGreaterThan((low?.y ?? 0) + (low?.height ?? 0));
});

test('where a ladder is climbed or hands do something, a caution met before is whole again, above the answers', async ({
	page: tab,
}) => {
	const scene: Hidden = { ...first, fault: { fault: 'lead-dead', place: 'bar-1' } };
	const read = readingOf(scene);
	await tab.setViewportSize({ width: 390, height: 844 });
	await tab.goto('/finder/');
	await begin(tab, scene);
	const met = new Set<string>();
	let again = 0;
	for (let asked = 0; asked < 20 && (await tab.locator('[data-mend], [data-because]').count()) === 0; asked++) {
		const card = tab.locator('.check');
		if ((await tab.locator(waiting).count()) > 0) {
			await expect(card.locator('.caution').first()).toBeVisible();
			const isLook = (await card.getAttribute('data-sort')) === 'look';
			const isUp = /ladder/.test((await card.locator('.check-costs').textContent()) ?? '');
			for (const title of await card.locator('.caution:not(details)').getByRole('heading').allTextContents()) {
				if (met.has(title)) again++;
				met.add(title);
			}
			if (!isLook || isUp) await expect(card.locator('details.caution')).toHaveCount(0);
			const low = await card.locator('.caution').last().boundingBox();
			const top = await tab.locator('.answers .answer').first().boundingBox();
			expect(top?.y ?? 0).toBeGreaterThan((low?.y ?? 0) + (low?.height ?? 0));
		}
		await answer(tab, read, 1);
	}
	expect(again, 'a caution came twice, whole').toBeGreaterThan(0);
});

/** Opens the finder on a walk that was kept before the page was there, about a bar of two universes that doesn't answer. */
async function openKept(tab: Page, steps: readonly (readonly [check: string, outcome: string])[], showRunning = false) {
	const walk = {
		rig: { kind: 'bundled', id: 'two-universes' },
		fixture: 'bar-4',
		complaint: 'no-answer',
		steps: steps.map(([check, outcome]) => ({ did: 'answer', check, outcome })),
		learnt: {},
		began: 0,
		counted: [],
	};
	const { key, version } = KEPT.walk;
	const text = JSON.stringify({ version, allows: { without: [], showRunning, alone: false }, walk });
	await tab.addInitScript(([at, kept]) => localStorage.setItem(at, kept), [key, text] as const);
	await tab.goto('/finder/');
}

test('a caution that an earlier look at this walk has told is whole on a page opened anew, and folds once it was told there', async ({
	page: tab,
}) => {
	await openKept(tab, [
		['socket-live@bar-3', 'live'],
		['colour@bar-3', 'dark'],
	]);
	const look = tab.locator('[data-check="mains-plug@bar-3"][data-sort="look"]');
	await expect(look.locator('.caution').first()).toBeVisible();
	await expect(look.locator('details.caution')).toHaveCount(0);
	await look.locator('[data-way="unsure"]').click();
	await expect(look).toHaveCount(0);
	await tab.locator('[data-check] [data-way="back"]').click();
	await expect(look.locator('details.caution')).not.toHaveCount(0);
});

test('a check that another switch of the gig brings at the same step waits for its own cautions', async ({
	page: tab,
}) => {
	let open = (): void => {};
	const gate = new Promise<void>((resolve) => {
		open = resolve;
	});
	await tab.route(/CautionBoxes/, async (route) => {
		await gate;
		await route.continue();
	});
	await openKept(
		tab,
		[
			['brightness@bar-4', 'dark'],
			['colour@bar-3', 'dark'],
		],
		true,
	);
	await expect(tab.locator('[data-check][data-cautioned="false"] .answer').first()).toBeEnabled();
	await tab.locator('button.allowed').click();
	await tab.getByRole('switch', { name: allowWords.show }).click();
	await tab.keyboard.press('Escape');
	await expect(tab.locator('[data-check="mains-plug@bar-3"] .answers[aria-busy="false"]')).toBeVisible();
	await expect(tab.locator(`${waiting} .answer`).first()).toBeDisabled();
	open();
	await expect(tab.locator(`${waiting} .caution`).first()).toBeVisible();
	await expect(tab.locator(`${waiting} .answer`).first()).toBeEnabled();
});
