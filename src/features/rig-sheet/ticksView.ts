import type { CautionId } from '#words/cautions/index.ts';
import { slipWords, tickWords } from '#words/plan/index.ts';
import {
	type DataLink,
	isOnBattery,
	type Plan,
	type PlanRow,
	profileOf,
	roleOf,
	stepsOf,
	type TickBoard,
	type TickStep,
} from '../../../shared/plan/index.ts';
import { cautionsOf, modeTitle, threeDigits } from './view.ts';

/** What a step comes to on this fixture, in words; empty where its name says it all. */
export function stepDetail(plan: Plan, row: PlanRow, link: DataLink | null, step: TickStep): string {
	const { details } = tickWords;
	const nameOf = (id: string): string => plan.rows.find((each) => each.id === id)?.name ?? id;
	switch (step) {
		case 'mode':
			return `${modeTitle(profileOf(plan, row.profile), row.mode)} · ${slipWords.role[roleOf(plan, row)]}`;
		case 'address':
			return `${threeDigits(row.address)} · ${slipWords.universe(row.universe)}`;
		case 'off':
			return details.supply;
		case 'linked': {
			const start = link?.split ? details.split : details.desk;
			const leads = plan.source === 'leader' && link?.from === null;
			return [
				leads ? details.leads : details.in(link?.from == null ? start : nameOf(link.from)),
				...(link?.to == null ? (link?.terminates === false ? [] : [details.end]) : [details.out(nameOf(link.to))]),
				...(isOnBattery(plan, row) ? [] : [details.mains]),
			].join(' · ');
		}
		case 'lit':
			return isOnBattery(plan, row) ? details.batteryLit : details.mainsLit;
		default:
			return '';
	}
}

/** The steps at which hands meet what a caution is about. */
const AT: Readonly<Partial<Record<CautionId, readonly TickStep[]>>> = {
	batteries: ['charged'],
	hanging: ['hung', 'bond'],
	height: ['hung', 'linked'],
	// a mains light is plugged in to be set, and may light or flash while it is
	mains: ['mode', 'off', 'linked'],
	hot: ['lit'],
	ultraviolet: ['mode', 'lit'],
	staring: ['mode', 'lit'],
	flashing: ['mode', 'lit'],
};

/** A light on its battery meets the mains where it is charged. */
const CHARGED: readonly TickStep[] = ['charged'];

/** The cautions of a row by the step they stand at; one that has no step of its own here stands at the first. */
export function cautionsAt(plan: Plan, row: PlanRow): ReadonlyMap<TickStep, readonly CautionId[]> {
	const steps = stepsOf(plan, row);
	const found = new Map<TickStep, CautionId[]>();
	for (const id of cautionsOf(plan, [row])) {
		const at = id === 'mains' && isOnBattery(plan, row) ? CHARGED : AT[id];
		const own = (at ?? []).filter((step) => steps.includes(step));
		for (const step of own.length > 0 ? own : steps.slice(0, 1)) found.set(step, [...(found.get(step) ?? []), id]);
	}
	return found;
}

/** How many of a row's steps are done. */
export const doneOf = (board: TickBoard, row: string, steps: readonly TickStep[]): number =>
	steps.filter((step) => board.isDone(row, step)).length;
