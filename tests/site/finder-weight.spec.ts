import { expect, type Page, test } from '@playwright/test';
import { quickSheet } from '../../shared/sheet/index.ts';
import { answer, begin, type Hidden, readingOf, tap } from '../src/features/finder/hidden.ts';
import { told, weighScripts } from './weigh.ts';

test.use({ serviceWorkers: 'block' });

// kB of 1000 bytes
/** What the finder is allowed, brotli: page and worker together. It was to be 110; the words of faults, repairs and checks come whole, with all that is to be said before a hand goes to mains or a battery, and so do the law of a flat panel, a sign for each complaint and indicator, one’s own fixtures, what a verdict hangs on, and half a kilobyte for a plan that is told of it; then fifteen more faults with their checks and repairs, who is asked before hands go to a supply, and panels as their crews wrote them down, seven kilobytes; then wrong answers priced over every history of answers where suspects are few, who can be reached by a fault told before a rig is opened, a look along the row, and a walk that is handed on, six; then what to ask of one until it is read, and which cable is plugged in at an open end, 0.7. */
const bar = 135.5;
/** It was 30; a walk tells the plan it began from what it found, and is handed on by a link, and what to ask of it outlives a reload. */
const page = 33;
/** The whole of a page beside it: what the plain code costs, a tree 107 kB, with 10 for the machine library as it is published, a twentieth, what is said of a shock and a seizure, and half a kilobyte for what a fault is against a plan; six for how checks are chosen, and practice on tonight's rig. */
const beside = 147;
/** The words of all cautions, with the first check or repair that has any. */
const cautions = 2.3;
/** What reads sheets, links and kept walks. */
const reading = 11;

/** Walks begun by three taps, each ending in other words: what is hidden, and the two taps before the fixture. */
const quick: readonly {
	readonly linked: 'desk' | 'leader';
	readonly profile: string;
	readonly hidden: Omit<Hidden, 'rig'>;
	readonly cautioned?: boolean;
}[] = [
	{
		linked: 'desk',
		profile: 'tallow-6',
		hidden: { fixture: 'wash-2', complaint: 'dark', fault: { fault: 'switched-off', place: 'wash-2' } },
	},
	{
		linked: 'leader',
		profile: 'tallow-6',
		hidden: {
			fixture: 'wash-3',
			complaint: 'follower-silent',
			fault: { fault: 'left-on-sound', place: 'wash-3', detail: 'sound' },
		},
	},
	{
		linked: 'desk',
		profile: 'picket-8',
		hidden: { fixture: 'bar-3', complaint: 'flicker', fault: { fault: 'minus-open', place: 'cable-3' } },
	},
	{
		linked: 'desk',
		profile: 'cobble',
		hidden: {
			fixture: 'wash-2',
			complaint: 'no-answer',
			fault: { fault: 'master-down', place: 'desk', detail: 'out' },
		},
	},
	{
		linked: 'leader',
		profile: 'tallow-6',
		hidden: { fixture: 'wash-4', complaint: 'dark', fault: { fault: 'battery-flat', place: 'wash-4' } },
		cautioned: true,
	},
];

async function threeTaps(tab: Page, linked: string, profile: string, { fixture, complaint }: Omit<Hidden, 'rig'>) {
	await tap(tab.getByRole('button', { name: '4 fixtures', exact: true }));
	for (const choice of [linked, profile, fixture, complaint]) await tap(tab.locator(`[data-choice="${choice}"]`));
	await expect(tab.locator('[data-check]')).toBeVisible();
}

for (const { linked, profile, hidden, cautioned } of quick) {
	test(`the finder keeps to its weight, from three taps to a verdict: ${hidden.complaint} on ${profile}, ${linked}`, async ({
		page: tab,
		context,
	}) => {
		const total = weighScripts(context);
		await tab.goto('/finder/');
		await tab.waitForLoadState('networkidle');
		const atRest = await total();
		await threeTaps(tab, linked, profile, hidden);
		const first = await total();
		const sheet = quickSheet({ count: 4, linked, profile });
		await answer(tab, readingOf({ rig: 'one-wash', ...hidden }, sheet));
		await expect(tab.locator('[data-because="mended"]')).toBeVisible();
		const verdict = await total();
		console.log(
			`finder, ${hidden.complaint} on ${profile}: ${told(atRest)} of script, ${told(first)} to the first check, ${told(verdict)} to the verdict`,
		);
		expect(first.sent).toBeGreaterThan(atRest.sent + 20);
		expect(atRest.sent).toBeLessThanOrEqual(page);
		expect(first.sent).toBeLessThanOrEqual(bar);
		expect(verdict.sent).toBeLessThanOrEqual(cautioned ? bar + cautions : bar);
	});
}

test('a walk on a rig with names keeps to it too; one that is taken up again fetches besides what reads it', async ({
	page: tab,
	context,
}) => {
	const walk: Hidden = {
		rig: 'four-in-line',
		fixture: 'wash-3',
		complaint: 'no-answer',
		fault: { fault: 'cable-out', place: 'cable-2', detail: 'to' },
	};
	const total = weighScripts(context);
	await tab.goto('/finder/');
	await begin(tab, walk);
	const first = await total();
	await answer(tab, readingOf(walk));
	await expect(tab.locator('[data-because="mended"]')).toBeVisible();
	const verdict = await total();
	await tab.reload();
	await expect(tab.locator('[data-because="mended"]')).toBeVisible();
	const resumed = await total();
	console.log(
		`finder, on ${walk.rig}: ${told(first)} to the first check, ${told(verdict)} to the verdict, ${told(resumed)} once the walk is taken up again`,
	);
	expect(first.sent).toBeLessThanOrEqual(bar);
	expect(verdict.sent).toBeLessThanOrEqual(bar);
	expect(resumed.sent).toBeLessThanOrEqual(bar + reading);
});

test('the pages beside it, a printed tree and a hidden fault, keep near it', async ({ context }) => {
	const weigh = async (link: string, done: string): Promise<number> => {
		const tab = await context.newPage();
		const total = weighScripts(tab);
		await tab.goto(link);
		await expect(tab.locator(done)).toBeVisible({ timeout: 60_000 });
		const weight = await total();
		console.log(`${link} ${told(weight)} of script`);
		await tab.close();
		return weight.sent;
	};
	const tree = await weigh('/finder/tree/#rig=four-in-line&fixture=wash-3&complaint=no-answer', '.tree');
	const drill = await weigh('/finder/practise/#rig=leader-and-three&seed=7&count=1', '.hidden-one[data-busy="false"]');
	expect(Math.max(tree, drill)).toBeLessThanOrEqual(beside);
});
