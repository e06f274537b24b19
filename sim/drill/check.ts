import type { Port } from '../../shared/sheet/index.ts';
import { isPowered } from '../fixture/index.ts';
import type { Rig, Unit } from '../rig/index.ts';
import { mainsRecord } from './harm.ts';
import type { DrillCondition, FactValue, Finding, Range, Source, Task } from './types.ts';
import { allows, isGoodJoin, isInside, wishOfCondition } from './wish.ts';

/** What is not as the drill asks, in the order of its goal; empty when it is done. Read off the rig and its log, and nothing else. */
export function findingsOf(drill: Pick<Task, 'sheet' | 'goal'>, rig: Rig): Finding[] {
	return drill.goal.flatMap((condition, at) =>
		judge(drill.sheet, condition, rig).map((finding) => ({ at, condition, ...finding })),
	);
}

/** What tells one finding from another, whatever is found there by now. */
export const findingName = ({ at, place, what }: Finding): string => `${at} ${place} ${what}`;

type WrongPlace = Pick<Finding, 'place' | 'what' | 'found' | 'wanted'>;

function judge(sheet: Task['sheet'], condition: DrillCondition, rig: Rig): WrongPlace[] {
	switch (condition.is) {
		case 'setting':
		case 'setting-within':
		case 'kept':
		case 'defaults':
			return judgeSettings(sheet, condition, rig);
		case 'on': {
			const runs = isPowered(unitOf(rig, condition.fixture).state);
			return wrongIf(!runs, condition.fixture, 'power', 'off', 'on');
		}
		case 'fed': {
			const { plug } = unitOf(rig, condition.fixture);
			if (plug !== condition.from) return [wrong(condition.fixture, 'mains', plug, condition.from)];
			const wall = mainsRecord(rig.sheet, rig.log).madeLive.get(condition.fixture);
			return wall === undefined ? [] : [wrong(condition.fixture, 'isolated', wall, 'none')];
		}
		case 'slot': {
			const level = levelOf(rig, condition.universe, condition.slot);
			return wrongIf(
				!isInside(condition.within, level),
				'desk',
				`slot ${condition.slot}`,
				level,
				told(condition.within),
			);
		}
		case 'levels-kept':
			return judgeLevels(sheet, condition, rig);
		case 'master': {
			const level = rig.gear.desk?.master ?? null;
			return wrongIf(level !== condition.level, 'desk', 'master', level, condition.level);
		}
		case 'output': {
			const output = rig.gear.desk?.outputs.find(({ id }) => id === condition.output);
			const place = `desk:${condition.output}`;
			return [
				...wrongIf(output?.on !== true, place, 'output', 'off', 'on'),
				...wrongIf(
					output?.universe !== condition.universe,
					place,
					'universe',
					output?.universe ?? null,
					condition.universe,
				),
			];
		}
		case 'joined': {
			const { a, b } = condition;
			const cables = rig.gear.cables.filter((cable) => [cable.from, cable.to].some((port) => port === a || port === b));
			const holds = cables.length === 1 && cables.every((cable) => isGoodJoin(condition, cable));
			const found = acrossFrom(rig, a);
			return wrongIf(!holds, a, 'cable', found === b ? 'unfit' : found, b);
		}
		case 'terminators': {
			const { terminators } = rig.gear;
			return [
				...condition.ports
					.filter((port) => !terminators.includes(port))
					.map((port) => wrong(port, 'terminator', 'none', 'fitted')),
				...terminators
					.filter((port) => !condition.ports.includes(port))
					.map((port) => wrong(port, 'terminator', 'fitted', 'none')),
			];
		}
		case 'data-from': {
			const found = sourceOf(rig, condition.fixture);
			const wanted = sourceText(condition.source);
			return wrongIf(found !== wanted, condition.fixture, 'data', found, wanted);
		}
		case 'steady': {
			const { flashes } = rig.look(condition.fixture).light;
			return wrongIf(flashes > 0, condition.fixture, 'light', 'flashes', 'steady');
		}
		case 'lit': {
			const { whole } = rig.look(condition.fixture).light;
			return wrongIf(whole.brightness === 0 && whole.ultraviolet === 0, condition.fixture, 'light', 'dark', 'lit');
		}
	}
}

function judgeSettings(
	sheet: Task['sheet'],
	condition: Extract<DrillCondition, { readonly fixture: string }>,
	rig: Rig,
): WrongPlace[] {
	const { settings } = unitOf(rig, condition.fixture).state.context;
	return wishOfCondition(sheet, condition)
		.filter(([key, allowed]) => !allows(allowed, settings[key]))
		.map(([key, allowed]) =>
			wrong(condition.fixture, key, settings[key], 'value' in allowed ? allowed.value : told(allowed.within)),
		);
}

function judgeLevels(
	sheet: Task['sheet'],
	condition: Extract<DrillCondition, { readonly is: 'levels-kept' }>,
	rig: Rig,
): WrongPlace[] {
	const found: WrongPlace[] = [];
	const kept = keptLevels(sheet, condition.universe);
	for (let slot = 1; slot <= 512; slot++) {
		const level = levelOf(rig, condition.universe, slot);
		const was = kept.get(slot) ?? 0;
		if (level !== was && !condition.except.includes(slot)) found.push(wrong('desk', `slot ${slot}`, level, was));
	}
	return found;
}

/** Levels of a universe that stand up in the sheet, by slot. */
export function keptLevels(sheet: Task['sheet'], universe: number): ReadonlyMap<number, number> {
	return new Map(
		(sheet.desk?.levels ?? []).filter((each) => each.universe === universe).map(({ slot, level }) => [slot, level]),
	);
}

/** The level entered at the desk, 0..255. */
export function levelOf(rig: Rig, universe: number, slot: number): number {
	return rig.gear.desk?.levels.get(universe)?.[slot - 1] ?? 0;
}

function unitOf(rig: Rig, fixture: string): Unit {
	const unit = rig.gear.units.get(fixture);
	if (!unit) throw new RangeError(`no fixture '${fixture}' on the drill's rig`);
	return unit;
}

/** Who is heard: `universe 2`, a leader's id, or `nothing`; `collision` where more than one talks; `damaged` where frames come spoilt. */
function sourceOf(rig: Rig, fixture: string): string {
	const reception = rig.gear.receptions.get(fixture);
	if (reception?.causes.some(({ cause }) => cause === 'collision')) return 'collision';
	if (!reception?.talker || reception.quality === 'nothing') return 'nothing';
	return reception.quality === 'marginal' ? 'damaged' : sourceText(reception.talker);
}

const sourceText = (source: Source): string =>
	source.kind === 'desk' ? `universe ${source.universe}` : source.fixture;

/** What a socket is joined to: the socket at the cable's other end, `loose` where that hangs, null where no cable is in it. */
function acrossFrom(rig: Rig, port: Port): string | null {
	const cable = rig.gear.cables.find(({ from, to }) => from === port || to === port);
	if (!cable) return null;
	return (cable.from === port ? cable.to : cable.from) ?? 'loose';
}

const told = (within: readonly Range[]): FactValue => within.flatMap(({ from, to }) => [from, to]);
const wrong = (place: string, what: string, found: FactValue, wanted: FactValue): WrongPlace => ({
	place,
	what,
	found,
	wanted,
});
const wrongIf = (is: boolean, place: string, what: string, found: FactValue, wanted: FactValue): WrongPlace[] =>
	is ? [wrong(place, what, found, wanted)] : [];
