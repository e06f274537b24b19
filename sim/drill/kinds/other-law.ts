import type { Random } from '../../../shared/random/index.ts';
import { another, anyAddress, type DrillDraft, fixture, footprint, ids, OTHER_LAW, setting } from './stage.ts';

// Kinds done at the panel of one fixture whose law is not that of the first two: what acts, what stores, what leaves is to be found out.

const hands = ['panel', 'power'] as const;

export function otherLawAddress(random: Random): DrillDraft {
	const profile = random.pick(OTHER_LAW);
	const mode = random.pick(ids(profile.modes));
	const from = anyAddress(random, profile, mode);
	const address = anyAddress(random, profile, mode);
	const work = random.pick(['line', 'held', 'programme'] as const);
	const placed = fixture('bench', profile, 1, { work, mode, address: from });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'work', 'line'), setting(placed.id, 'address', address)],
		hands,
		facts: { fixture: placed.id, profile: profile.id, mode, address, from },
	};
}

export function otherLawColour(random: Random): DrillDraft {
	const profile = random.pick(OTHER_LAW);
	const from = random.pick(ids(profile.held));
	const held = another(random, ids(profile.held), from);
	const level = random.pick([40, 60, 75]);
	const work = random.pick(['line', 'programme', 'follow'] as const);
	const placed = fixture('bench', profile, 1, { work, held: from });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [
			setting(placed.id, 'work', 'held'),
			setting(placed.id, 'held', held),
			setting(placed.id, 'level', level),
			{ is: 'lit', fixture: placed.id },
		],
		hands,
		facts: { fixture: placed.id, profile: profile.id, held, level },
	};
}

/** Left giving its own light, it goes under the desk: mode, address, and what it does when data goes. */
export function otherLawHandover(random: Random): DrillDraft {
	const profile = random.pick(OTHER_LAW);
	const fromMode = random.pick(ids(profile.modes));
	const mode = another(random, ids(profile.modes), fromMode);
	const losses = ['hold', 'dark', 'programme'] as const;
	const fromLoss = random.pick(losses);
	const loss = another(random, losses, fromLoss);
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, {
		work: random.pick(['held', 'programme'] as const),
		mode: fromMode,
		loss: fromLoss,
		address: anyAddress(random, profile, fromMode),
	});
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [
			setting(placed.id, 'work', 'line'),
			setting(placed.id, 'mode', mode),
			setting(placed.id, 'address', address),
			setting(placed.id, 'loss', loss),
		],
		hands,
		facts: { fixture: placed.id, profile: profile.id, mode, address, loss, footprint: footprint(profile, mode) },
	};
}
