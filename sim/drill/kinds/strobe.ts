import type { Random } from '../../../shared/random/index.ts';
import { patched, quiet, slot, UNIVERSE } from './patched.ts';
import { COBBLE, fixture, idOf, ids, type Made, PICKET, setting, TALLOW } from './stage.ts';

/** Something flashes: at its own panel, or in a band of a slot. */
export function strobeLeftOn(random: Random): Made {
	return random.chance(0.5) ? strobeByPanel(random) : strobeByDesk(random);
}

function strobeByPanel(random: Random): Made {
	const profile = random.pick([TALLOW, PICKET]);
	const count = random.int(1, 3);
	const row = Array.from({ length: count }, (_, i) => idOf(profile, i + 1));
	const flashing = random.pick(row);
	const rate = random.int(1, 20);
	const fixtures = row.map((id, i) =>
		fixture('show', profile, i + 1, {
			work: 'held',
			held: random.pick(ids(profile.held)),
			strobe: id === flashing ? rate : 0,
		}),
	);
	return {
		scene: 'show',
		rig: { fixtures },
		goal: [setting(flashing, 'strobe', 0), { is: 'steady', fixture: flashing }, { is: 'lit', fixture: flashing }],
		hands: ['panel', 'power'],
		facts: { fixture: flashing, profile: profile.id, by: 'panel', rate },
	};
}

function strobeByDesk(random: Random): Made {
	const places = [TALLOW, PICKET, COBBLE].flatMap((profile) =>
		profile.modes.flatMap(({ id, slots }) =>
			slots.flatMap((it) => {
				const strobe =
					it.drives.kind === 'bands' ? it.drives.bands.find(({ effect }) => effect.do === 'strobe') : undefined;
				return strobe && it.drives.kind === 'bands' ? [{ profile, mode: id, it, strobe, bands: it.drives.bands }] : [];
			}),
		),
	);
	const { profile, mode, it, strobe, bands } = random.pick(places);
	const { one, rig } = patched(random, profile, mode, 'show', random.pick(ids(profile.held)));
	const at = one.address + it.at - 1;
	const level = random.int(strobe.from, strobe.to);
	const levels = [...rig.desk.levels.filter((each) => each.slot !== at), { universe: UNIVERSE, slot: at, level }];
	return {
		scene: 'show',
		rig: { ...rig, desk: { ...rig.desk, levels } },
		goal: [slot(one, it, quiet(bands)), { is: 'steady', fixture: one.id }, { is: 'lit', fixture: one.id }],
		hands: ['panel', 'power', 'desk'],
		facts: { fixture: one.id, profile: profile.id, by: 'desk', mode, address: one.address, slot: at, level },
	};
}
