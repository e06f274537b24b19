import { reasons, stages } from '#words/reasons/index.ts';
import type { Says } from '#words/rig/index.ts';
import type { Reason, ReasonId, Rig } from '../../sim/rig/index.ts';
import { sentence } from './fill.ts';
import { profileKinds } from './kinds.ts';
import { modeName } from './names.ts';
import { reasonFacts } from './reasonFacts.ts';
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
