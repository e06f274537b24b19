import { reasons, slotRaised, stages } from '#words/reasons/index.ts';
import type { Says } from '#words/rig/index.ts';
import { LAST_SLOT } from '../../shared/dmx/index.ts';
import { modeOf, type Slot } from '../../shared/profile/index.ts';
import { hasDataIn } from '../../sim/fixture/index.ts';
import { LINE_LIMITS } from '../../sim/line/index.ts';
import { type Reason, type ReasonId, type Rig, readsFrom, type Sight, type Unit } from '../../sim/rig/index.ts';
import { coloursText } from './describe.ts';
import { fill, sentence, type TemplateFacts } from './fill.ts';
import { listed, plainKinds, profileKinds } from './kinds.ts';
import { modeName, partCalled } from './names.ts';
import { rigKinds } from './rigKinds.ts';

const words: Readonly<Record<ReasonId, Says>> = reasons;

/** One link of a fixture's reason trail as a plain sentence or two. For a reason the rig has just given: it is worded as the rig stands. */
export function reasonText(rig: Rig, fixtureId: string, reason: Reason): string {
	const unit = rig.gear.units.get(fixtureId);
	if (!unit) return '';
	const talker = rig.gear.receptions.get(fixtureId)?.talker;
	const leader = talker?.kind === 'leader' ? rig.gear.units.get(talker.fixture) : undefined;
	return sentence(words[reason.id], reasonFacts(rig, unit, reason), {
		...rigKinds(rig),
		...profileKinds(unit.profile),
		theirMode: (id: string) => modeName((leader ?? unit).profile, id),
	});
}

/** The title of the stage a reason belongs to: 'Power', 'What decides', 'The line' ... */
export function reasonStage(reason: Pick<Reason, 'id'>): string {
	return stages[reason.id.slice(0, reason.id.indexOf('.')) as keyof typeof stages];
}

/** The most a line can take of what a cause has too much of. */
const MOST: Readonly<Record<string, number>> = {
	'line.too-long': LINE_LIMITS.dataMetres,
	'line.too-many-loads': LINE_LIMITS.unitLoads,
	'line.extra-terminators': LINE_LIMITS.terminators,
};

/** A reason's own facts, and those that can be worked out beside them from the same rig. */
export function reasonFacts(rig: Rig, unit: Unit, reason: Reason): TemplateFacts {
	const reception = rig.gear.receptions.get(unit.placed.id);
	const { facts } = reason;
	const damaged = hasDataIn(unit.state) && reception?.quality === 'marginal' ? Math.round(reception.rate * 100) : null;
	return {
		...facts,
		effect: reason.effect,
		talker: reception?.talker?.kind ?? null,
		end: LAST_SLOT,
		most: MOST[reason.id] ?? null,
		damaged,
		// a share of frames is told beside a cause only where it is the only one
		spoiled: reception?.causes.length === 1 ? damaged : null,
		span: spanOf(facts['address'], facts['last']),
		// an open end: whether its socket is free for a terminator
		...(Array.isArray(facts['plugged']) ? { free: facts['plugged'].length === 0 } : {}),
		...slotFacts(unit, facts),
		...(reason.id === 'light.shows' ? seenFacts(rig.look(unit.placed.id)) : {}),
	};
}

/** Cells that do not show the same are told by themselves: together they make a colour that nobody sees. */
function seenFacts({ light }: Sight): TemplateFacts {
	return { seen: coloursText(light) };
}

function spanOf(first: unknown, last: unknown): number[] {
	if (typeof first !== 'number' || typeof last !== 'number') return [];
	return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

/** What the mode's chart says of the slots a reason names. */
function slotFacts(unit: Unit, { slot, slots, values, value }: Reason['facts']): TemplateFacts {
	const chart = modeOf(unit.profile, unit.state.context.settings.mode).slots;
	const from = readsFrom(unit);
	const slotAt = (number: unknown): Slot | undefined => chart.find((each) => each.at === Number(number) - from + 1);
	const one = slotAt(slot);
	const band =
		one?.drives.kind === 'bands' && typeof value === 'number'
			? one.drives.bands.find((each) => each.from <= value && value <= each.to)
			: undefined;
	const raised =
		Array.isArray(slots) && Array.isArray(values)
			? slots.flatMap((number, i) => {
					const level = Number(values[i]);
					return level > 0
						? [fill(slotRaised, { slot: partCalled(slotAt(number)?.name ?? `${number}`), level }, plainKinds)]
						: [];
				})
			: [];
	return {
		slotName: one ? partCalled(one.name) : null,
		...(band ? { band: partCalled(band.name) } : {}),
		overruled: band?.effect.do === 'programme' || band?.effect.do === 'held',
		raised: listed(raised),
		up: raised.length,
	};
}
