import { expect, type Locator, type Page } from '@playwright/test';
import { bundledRig, type RigId, type RigSheet } from '../../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../../sim/event/index.ts';
import { type Check, type ComplaintKind, ELSE, faultyWitness, openOutcomes } from '../../../../sim/finder/index.ts';

/** A rig that stands where the tech cannot look into it, with something wrong: what each check shows on it. */
export interface Hidden {
	readonly rig: RigId;
	readonly fixture: string;
	readonly complaint: ComplaintKind;
	readonly fault: PlacedFault;
}

/** What a check shows on the hidden rig, by the check's id. @param sheet its own, where it is none of the bundled rigs */
export function readingOf(
	{ rig, fixture, complaint, fault }: Hidden,
	sheet: RigSheet = bundledRig(rig),
): (check: string) => string {
	const bench = openOutcomes(sheet, { kind: complaint, fixture });
	const seen = faultyWitness(bench.meant, [fault]);
	const checks = new Map(bench.checks.map((check): [string, Check] => [check.id, check]));
	return (id) => checks.get(id)?.read(seen) ?? ELSE;
}

export const idOf = ({ fault: { fault, place, detail } }: Hidden): string =>
	`${fault}@${place}${detail ? `:${detail}` : ''}`;

/** Waits until the finder asks, or has its verdict. */
async function settled(tab: Page): Promise<void> {
	const asked = tab.locator('.finder[data-busy="false"]').locator('[data-check], [data-because]');
	await expect(asked.first()).toBeAttached();
}

export const tap = (at: Locator): Promise<void> => at.click();

/** From the first screen to the first check. `press` says how: by finger, or by keys. */
export async function begin(tab: Page, { rig, fixture, complaint }: Hidden, press = tap): Promise<void> {
	await press(tab.locator(`[data-choice="${rig}"]`));
	if (bundledRig(rig).fixtures.length > 1) await press(tab.locator(`[data-choice="${fixture}"]`));
	await press(tab.locator(`[data-choice="${complaint}"]`));
	await settled(tab);
}

/** The check asked, or the repair that comes first, by its id; null once the walk is over. */
async function askedOf(tab: Page): Promise<string | null> {
	if ((await tab.locator('[data-because="mended"], [data-because="unknown"]').count()) > 0) return null;
	const asked = tab.locator('[data-check], [data-mend]').first();
	return (await asked.getAttribute('data-check')) ?? (await asked.getAttribute('data-mend'));
}

/** Answers with what the hidden rig shows, `most` times or to the end. Returns the ids of what was asked. */
export async function answer(tab: Page, read: (check: string) => string, most = 40, press = tap): Promise<string[]> {
	const asked: string[] = [];
	while (asked.length < most) {
		const id = await askedOf(tab);
		if (id === null) break;
		asked.push(id);
		const turn = (await tab.locator('.finder').getAttribute('data-turn')) ?? '';
		await press(tab.locator(`[data-check="${id}"], [data-mend="${id}"]`).locator(`[data-outcome="${read(id)}"]`));
		await expect(tab.locator('.finder')).not.toHaveAttribute('data-turn', turn);
		await settled(tab);
	}
	return asked;
}
