import { lightWords } from '#words/plan/index.ts';
import type { LightChange, Plan, PlanRow, RowLight } from '../../../shared/plan/index.ts';
import { lengthIn, lightIn, type Units } from './units.ts';

const metres = (units: Units, length: number): string =>
	Number.isFinite(length) ? lightWords.length(units, lengthIn(units, length)) : lightWords.endless;
const lux = (units: Units, light: number): string => lightWords.light(units, lightIn(units, light));

/** Height above the floor, m, past which a light is asked whether it hangs: higher than a fixture on the floor reaches (ours). */
const LOW = 1;

/** Whether a place contradicts its height: up and not said to hang, or low and said to. */
export const asksHang = ({ y, overhead }: PlanRow['place']): boolean => y > LOW !== overhead;

/** A pool, wide and high. */
export const poolText = ({ wide, high }: RowLight, units: Units): string =>
	`${metres(units, wide)} × ${metres(units, high)}`;

/** Light where the middle of a beam lands, and whether that is on the wall. */
export function lightText({ own, all, misses }: RowLight, units: Units): string {
	if (own === null || all === null) return lightWords.never;
	const said = lightWords.ofAll(lux(units, own), lux(units, all));
	return misses ? `${said}: ${lightWords.misses}` : said;
}

/** How a pool meets the next one. */
export function nextText({ next }: RowLight, units: Units, nameOf: (row: string) => string): string {
	if (!next) return lightWords.alone;
	const by = metres(units, Math.abs(next.overlap));
	return (next.overlap < 0 ? lightWords.gap : lightWords.overlap)(by, nameOf(next.row));
}

/** What a fixture's figures are worked out from, each with how it is known. */
export function sumText({ show }: Plan, light: RowLight, units: Units): string {
	const how = (isAssumed: boolean): string => lightWords.how[isAssumed ? 'assumed' : 'given'];
	return lightWords.sum({
		peak: lightWords.number(light.peak),
		beam: lightWords.number(light.beam),
		throw: metres(units, light.throw),
		throwHow: how(light.assumed.throw),
		tilt: lightWords.number(light.tilt),
		tiltHow: how(light.assumed.tilt),
		look: lightWords.number(show.look * 100),
	});
}

/** What a move changes, a sentence each. */
export function changesText(changes: readonly LightChange[], units: Units, nameOf: (row: string) => string): string[] {
	return changes.flatMap(({ row, lux: light, overlap }) => [
		...(light ? [lightWords.luxChange(nameOf(row), lux(units, light.was), lux(units, light.is))] : []),
		...(overlap
			? [(overlap.is < 0 ? lightWords.gapNow : lightWords.overlapNow)(nameOf(row), metres(units, Math.abs(overlap.is)))]
			: []),
	]);
}
