import { overlaps } from '../../../shared/dmx/index.ts';
import { SETTING_KEYS, type SettingKey, type Settings, type SomeSettings } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import type { SheetFixture } from '../../../shared/sheet/index.ts';
import { settingsFromDip } from '../../fixture/index.ts';
import type { DrillCondition } from '../types.ts';
import { menuMap } from '../way/index.ts';
import {
	another,
	anyAddress,
	COBBLE,
	type DrillDraft,
	fixture,
	footprint,
	idOf,
	ids,
	KEYED,
	PICKET,
	rangesOf,
	setting,
	TALLOW,
} from './stage.ts';

// Kinds done at the panel of one fixture on the prep bench.

const hands = ['panel', 'power'] as const;

export function addressKeys(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const mode = random.pick(ids(profile.modes));
	const from = anyAddress(random, profile, mode);
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, { work: 'line', mode, address: from });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'address', address)],
		hands,
		facts: { fixture: placed.id, profile: profile.id, mode, address, from },
	};
}

export function modeAddress(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const fromMode = random.pick(ids(profile.modes));
	const mode = another(random, ids(profile.modes), fromMode);
	const from = anyAddress(random, profile, fromMode);
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, { work: 'line', mode: fromMode, address: from });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'mode', mode), setting(placed.id, 'address', address)],
		hands,
		facts: {
			fixture: placed.id,
			profile: profile.id,
			mode,
			address,
			fromMode,
			from,
			footprint: footprint(profile, mode),
		},
	};
}

/** Beside neighbours that stay, a fixture whose last slots lie past 512. */
export function past512(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const mode = random.pick(ids(profile.modes));
	const slots = footprint(profile, mode);
	const from = 513 - random.int(1, slots - 1);
	const id = idOf(profile, 1);
	const neighbours = [2, 3].flatMap((n) => {
		const its = random.pick(KEYED);
		const itsMode = random.pick(ids(its.modes));
		const start = anyAddress(random, its, itsMode);
		const placed = fixture('bench', its, n, { work: 'line', mode: itsMode, address: start });
		const place = { id: placed.id, universe: 1, start, footprint: footprint(its, itsMode) };
		return random.chance(0.7) ? [{ placed, place }] : [];
	});
	const isFree = (start: number): boolean => {
		const here = { id, universe: 1, start, footprint: slots };
		const lying = overlaps([...neighbours.map(({ place }) => place), here]);
		return lying.every(({ first, second }) => first !== id && second !== id);
	};
	const free = Array.from({ length: 513 - slots }, (_, i) => i + 1).filter(isFree);
	const isHighest = random.chance(0.5);
	const within = rangesOf(isHighest ? free.slice(-1) : free);
	const others = neighbours.map(({ placed }) => placed);
	return {
		scene: 'bench',
		rig: { fixtures: [fixture('bench', profile, 1, { work: 'line', mode, address: from }), ...others] },
		goal: [{ is: 'setting-within', fixture: id, key: 'address', within }],
		hands,
		facts: {
			fixture: id,
			profile: profile.id,
			mode,
			from,
			footprint: slots,
			last: from + slots - 1,
			neighbours: ids(others),
			where: isHighest ? 'highest' : 'anywhere',
		},
	};
}

export function lockedAddress(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const mode = random.pick(ids(profile.modes));
	const from = anyAddress(random, profile, mode);
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, { work: 'line', mode, address: from, lock: 'on' });
	const seconds = profile.panel.kind === 'dip' ? 0 : profile.panel.unlockHold / 1000;
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'address', address)],
		hands,
		facts: { fixture: placed.id, profile: profile.id, address, from, seconds },
	};
}

export function staticColour(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const from = random.pick(ids(profile.held));
	const held = another(random, ids(profile.held), from);
	const work = random.pick(['line', 'held', 'programme', 'follow'] as const);
	const level = random.pick([100, 80, 60]);
	const placed = fixture('bench', profile, 1, { work, held: from, level });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'work', 'held'), setting(placed.id, 'held', held), { is: 'lit', fixture: placed.id }],
		hands,
		facts: { fixture: placed.id, profile: profile.id, held },
	};
}

export function programmeSpeed(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const from = random.pick(ids(profile.programmes));
	const programme = another(random, ids(profile.programmes), from);
	const speed = random.int(1, 100);
	const work = random.pick(['line', 'held', 'programme'] as const);
	const placed = fixture('bench', profile, 1, { work, programme: from, speed: random.int(1, 100) });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [
			setting(placed.id, 'work', 'programme'),
			setting(placed.id, 'programme', programme),
			setting(placed.id, 'speed', speed),
		],
		hands,
		facts: { fixture: placed.id, profile: profile.id, programme, speed },
	};
}

export function lossSetting(random: Random): DrillDraft {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	const losses = ['hold', 'dark', 'programme'] as const;
	const from = random.pick(losses);
	const loss = another(random, losses, from);
	const mode = random.pick(ids(profile.modes));
	const address = anyAddress(random, profile, mode);
	const placed = fixture('bench', profile, 1, { work: 'line', mode, address, loss: from });
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [setting(placed.id, 'loss', loss)],
		hands,
		facts: { fixture: placed.id, profile: profile.id, loss, from },
	};
}

/** Somebody before you has been through the menu. */
export function defaults(random: Random): DrillDraft {
	const profile = random.pick(KEYED);
	const settings = spoiltSettings(random, profile === TALLOW ? TALLOW : PICKET, random.int(3, 8));
	const placed = fixture('bench', profile, 1, settings);
	const changed = SETTING_KEYS.filter(
		(key) => (placed.settings?.[key] ?? profile.defaults[key]) !== profile.defaults[key],
	);
	return {
		scene: 'bench',
		rig: { fixtures: [placed] },
		goal: [{ is: 'defaults', fixture: placed.id }],
		hands,
		facts: { fixture: placed.id, profile: profile.id, changed },
	};
}

function spoiltSettings(random: Random, profile: (typeof KEYED)[number], count: number): SomeSettings {
	if (profile.panel.kind === 'dip') return {};
	const { bySetting } = menuMap(profile.panel);
	const spoilt: [SettingKey, Settings[SettingKey]][] = [];
	for (const key of random.shuffle([...bySetting.keys()].filter((each) => each !== 'sleep')).slice(0, count)) {
		const item = bySetting.get(key)?.item;
		if (item?.kind === 'choice')
			spoilt.push([
				key,
				another(
					random,
					item.options.map(({ value }) => value),
					profile.defaults[key],
				) as never,
			]);
		if (item?.kind === 'number') spoilt.push([key, random.int(item.least, item.most)]);
	}
	return Object.fromEntries(spoilt);
}

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

export function addressDip(random: Random): DrillDraft {
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

export function dipColour(random: Random): DrillDraft {
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
	const goal: DrillCondition[] = isHeld
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
