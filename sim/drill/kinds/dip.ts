import type { Random } from '../../../shared/random/index.ts';
import type { SheetFixture } from '../../../shared/sheet/index.ts';
import { settingsFromDip } from '../../fixture/index.ts';
import type { Condition } from '../types.ts';
import { another, anyAddress, COBBLE, fixture, ids, type Made, setting } from './stage.ts';

// Kinds done at ten switches.

const hands = ['panel', 'power'] as const;

/** Switches and slides as anybody may have left them. */
function anyhow(random: Random): SheetFixture {
	const panel = COBBLE.panel.kind === 'dip' ? COBBLE.panel : null;
	const placed = fixture('bench', COBBLE, 1, {});
	return {
		...placed,
		switches: Array.from({ length: 10 }, () => random.chance(0.4)),
		slides: panel?.slides.map(({ positions }) => random.int(0, positions.length - 1)) ?? [],
	};
}

export function addressDip(random: Random): Made {
	const placed = anyhow(random);
	const mode = ids(COBBLE.modes)[placed.slides?.[0] ?? 0] ?? 'three';
	const address = anyAddress(random, COBBLE, mode);
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'work', 'line'), setting(placed.id, 'address', address)],
		hands,
		facts: { fixture: placed.id, profile: COBBLE.id, mode, address },
	};
}

export function dipColour(random: Random): Made {
	const placed = anyhow(random);
	const isHeld = random.chance(0.6);
	const held = random.pick(ids(COBBLE.held));
	const choices = COBBLE.panel.kind === 'dip' ? COBBLE.panel.fields : [];
	const speeds = choices.flatMap(({ choices: each }) => each.flatMap(({ sets }) => sets.speed ?? []));
	const speed = random.pick(speeds);
	const now =
		COBBLE.panel.kind === 'dip' ? settingsFromDip(COBBLE, COBBLE.panel, placed.switches ?? [], []) : COBBLE.defaults;
	const reachable = choices.flatMap(({ choices: each }) => each.flatMap(({ sets }) => sets.programme ?? []));
	const programme = another(random, reachable, now.programme);
	const goal: Condition[] = isHeld
		? [setting(placed.id, 'work', 'held'), setting(placed.id, 'held', held)]
		: [
				setting(placed.id, 'work', 'programme'),
				setting(placed.id, 'programme', programme),
				setting(placed.id, 'speed', speed),
			];
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [...goal, setting(placed.id, 'lead', 'off')],
		hands,
		facts: {
			fixture: placed.id,
			profile: COBBLE.id,
			...(isHeld ? { does: 'held', held } : { does: 'programme', programme, speed }),
		},
	};
}
