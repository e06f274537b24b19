import { describe, expect, test } from 'vitest';
import { type Item, LEVELS, type PaperLevel, RIG_KIND_IDS, type RigKindId } from '../../../shared/paper/index.ts';
import { BUNDLED_KINDS, type BundledKind, makeDrill } from '../../../sim/drill/index.ts';
import { setRigPaper } from '../../../sim/paper/index.ts';
import { runs } from '../../runs.ts';
import { profileOf, table } from './items.ts';

// As tests/shared/paper/levels.test.ts, for the questions that are read from a rig: what makes each of them easy or hard.

type Holds = (item: Item) => boolean;
const num = (item: Item, key: string): number => item.facts[key] as number;
const optionsOf = ({ ask }: Item) => ('options' in ask ? ask.options : []);

/** Levels of the slots of a frame that have bands, each with where it stands: on an edge of its band, in its middle, or elsewhere; those at rest left out. */
function functionsUp(item: Item): ('edge' | 'middle' | 'else')[] {
	const mode = profileOf(item).modes.find(({ name }) => name === item.facts['mode']);
	const frame = new Map(table(item, 'frame', 2) as [number, number][]);
	return (mode?.slots ?? []).flatMap(({ at, drives }) => {
		if (drives.kind !== 'bands') return [];
		const level = frame.get(num(item, 'start') + at - 1) ?? 0;
		const band = drives.bands.find(({ from, to }) => level >= from && level <= to);
		if (!band || band.effect.do === 'nothing' || band.effect.do === 'open') return [];
		if (level === band.from || level === band.to) return ['edge'];
		return level === Math.floor((band.from + band.to) / 2) ? ['middle'] : ['else'];
	});
}

/** Where the slot that keeps the colour in stands in its band; an intensity at 0 is at the bottom. */
function gateStands(item: Item): 'edge' | 'middle' | 'bottom' {
	const mode = profileOf(item).modes.find(({ name }) => name === item.facts['mode']);
	const slot = mode?.slots.find(({ at }) => at === item.facts['n']);
	if (slot?.drives.kind !== 'bands') return 'bottom';
	const stands = num(item, 'stands');
	return slot.drives.bands.some(({ from, to }) => from === stands || to === stands) ? 'edge' : 'middle';
}

/** Whether the mode has any slot that could do more than rest. */
const hasFunctions = (item: Item): boolean =>
	profileOf(item)
		.modes.find(({ name }) => name === item.facts['mode'])
		?.slots.some(
			({ drives }) =>
				drives.kind === 'bands' && drives.bands.some(({ effect }) => effect.do !== 'nothing' && effect.do !== 'open'),
		) ?? false;

/** Levels of the colour slots of a frame that are up. */
function coloursUp(item: Item): number[] {
	const mode = profileOf(item).modes.find(({ name }) => name === item.facts['mode']);
	const frame = new Map(table(item, 'frame', 2) as [number, number][]);
	return (mode?.slots ?? []).flatMap(({ at, drives }) => {
		const level = frame.get(num(item, 'start') + at - 1) ?? 0;
		return drives.kind === 'emitter' && level > 0 ? [level] : [];
	});
}

const isSwitches = (item: Item): boolean => item.facts['panel'] === 'dip';
/** Keys in a row, with how often. */
const presses = (item: Item) => table(item, 'presses', 2) as ['up' | 'down' | 'set' | 'back', number][];
const sets = (item: Item): number => presses(item).filter(([key]) => key === 'set').length;

const rowOf = (item: Item): (string | number)[][] => table(item, 'row', 6);
const lampsIn = ({ bench }: Item): number => bench?.fixtures.length ?? 0;

/** What must hold of every question of a kind, level by level. */
const EVERY: Readonly<Record<RigKindId, Record<PaperLevel, Holds>>> = {
	'frame-look': {
		easy: (item) =>
			item.facts['start'] === 1 && functionsUp(item).length === 0 && coloursUp(item).every((it) => it === 255),
		middle: (item) => num(item, 'start') > 1 && functionsUp(item).every((it) => it !== 'edge'),
		hard: (item) =>
			num(item, 'start') > 1 &&
			functionsUp(item).every((it) => it === 'edge') &&
			(functionsUp(item).length > 0 || !hasFunctions(item)),
	},
	'gate-slot': {
		easy: (item) => gateStands(item) !== 'edge',
		middle: (item) => gateStands(item) !== 'edge',
		hard: (item) => gateStands(item) !== 'middle',
	},
	'follow-setting': {
		easy: (item) => rowOf(item).length === 3 && item.facts['key'] === 'work',
		middle: (item) => rowOf(item).length === 3,
		hard: (item) => rowOf(item).length === 4,
	},
	'row-roles': {
		easy: (item) => lampsIn(item) === 3 && item.facts['lines'] === 1 && item.facts['hasDesk'] === false,
		middle: (item) => lampsIn(item) === 4 && item.facts['lines'] === 1,
		hard: (item) => lampsIn(item) === 5 && item.facts['lines'] === 2,
	},
	'display-says': {
		easy: (item) =>
			isFlat(item)
				? presses(item).length === 1
				: isSwitches(item)
					? fields(item) === 1
					: sets(item) === 0 && presses(item).length === 1,
		middle: (item) =>
			isFlat(item) ? presses(item).length === 2 : isSwitches(item) ? fields(item) === 2 : sets(item) >= 1,
		hard: (item) =>
			isFlat(item)
				? presses(item).length === 3
				: isSwitches(item)
					? fields(item) >= 2
					: sets(item) >= 1 && presses(item).length >= 2,
	},
	'first-check': {
		// the others need so much longer that it can be seen without reckoning
		easy: (item) => num(item, 'next') >= num(item, 'seconds'),
		middle: (item) => num(item, 'next') >= num(item, 'seconds'),
		hard: (item) => num(item, 'next') >= num(item, 'seconds'),
	},
	'caution-here': { easy: () => true, middle: () => true, hard: () => true },
	'on-the-bench': {
		easy: (item) => drillOf(item)?.level === 'easy',
		middle: (item) => drillOf(item)?.level === 'middle',
		hard: (item) => drillOf(item)?.level === 'hard',
	},
};

const isFlat = (item: Item): boolean => item.facts['panel'] === 'flat';
const fields = (item: Item): number => table(item, 'fields', 3).length;

const LEVEL_OF: Readonly<Record<PaperLevel, readonly BundledKind[]>> = {
	easy: [
		'address-keys',
		'address-dip',
		'held-colour',
		'loss-setting',
		'mains-row',
		'mode-address',
		'dip-colour',
		'programme-speed',
		'other-law-address',
	],
	middle: [
		'locked-address',
		'cable-missing',
		'past-512',
		'desk-percent',
		'sensors-audience',
		'row-as-one',
		'row-back-to-back',
		'desk-band',
		'strobe-left-on',
		'remote-three',
		'other-law-colour',
	],
	hard: [
		'leader-three',
		'followers-mode',
		'defaults',
		'line-longer',
		'two-universes',
		'leader-left-on',
		'other-law-handover',
	],
};

function drillOf({ ask }: Item): { readonly kind: BundledKind; readonly level: PaperLevel } | null {
	if (ask.form !== 'practical') return null;
	const kind = ask.drill.kind as BundledKind;
	return { kind, level: LEVELS.find((level) => LEVEL_OF[level].includes(kind)) ?? 'easy' };
}

/** What a share of the questions must show, of all of one level: it is what makes the level harder than the one below. */
const SHARE: readonly (readonly [RigKindId, PaperLevel, what: string, Holds, least: number, most: number])[] = [
	['frame-look', 'middle', 'a function up', (item) => functionsUp(item).length > 0, 0.2, 0.95],
	['follow-setting', 'middle', 'more than what it minds', (item) => item.facts['key'] !== 'work', 0.5, 1],
	['follow-setting', 'easy', 'the leader offered', (item) => offersLeader(item), 0, 0],
	['follow-setting', 'middle', 'the leader offered', (item) => offersLeader(item), 0, 0],
	['follow-setting', 'hard', 'the leader offered', (item) => offersLeader(item), 0.3, 1],
	['row-roles', 'middle', 'a desk', (item) => item.facts['hasDesk'] === true, 0.5, 1],
	['row-roles', 'hard', 'a desk', (item) => item.facts['hasDesk'] === true, 0.5, 1],
	['display-says', 'hard', 'a value moved', (item) => isSwitches(item) || sets(item) >= 1, 1, 1],
	['display-says', 'hard', 'every field of the switches', (item) => !isSwitches(item) || fields(item) > 2, 0.5, 1],
	['caution-here', 'easy', 'one caution', (item) => rights(item) === 1, 0.5, 1],
	['caution-here', 'middle', 'two cautions', (item) => rights(item) === 2, 0.5, 1],
	['caution-here', 'hard', 'three cautions or more', (item) => rights(item) >= 3, 0.5, 1],
];

const offersLeader = (item: Item): boolean =>
	optionsOf(item).some(({ label: { facts } }) => facts['fixture'] === item.facts['leader']);
const rights = ({ key }: Item): number => (key.form === 'several' ? key.right.length : 0);

const count = runs(10, 50);
const known = new Map<string, readonly Item[]>();

function itemsAt(id: RigKindId, level: PaperLevel): readonly Item[] {
	const items =
		known.get(`${id} ${level}`) ??
		setRigPaper({ version: 1, title: 'One level', count, kinds: [id], levels: [level] }, 3).items;
	known.set(`${id} ${level}`, items);
	return items;
}

describe.each(RIG_KIND_IDS)('%s', (id) => {
	test.each(LEVELS)('is what it is called: %s', (level) => {
		for (const item of itemsAt(id, level)) {
			expect(item.level).toBe(level);
			expect(EVERY[id][level](item), JSON.stringify(item.facts)).toBe(true);
		}
	});
});

test.each(SHARE)('%s, %s: %s', (id, level, _, holds, least, most) => {
	const items = itemsAt(id, level);
	const share = items.filter(holds).length / items.length;
	expect(share).toBeGreaterThanOrEqual(least);
	expect(share).toBeLessThanOrEqual(most);
});

test('the first check stands farther from the rest the easier it is', () => {
	const nearest = LEVELS.map((level) =>
		Math.min(...itemsAt('first-check', level).map((item) => num(item, 'next') / num(item, 'seconds'))),
	);
	const mean = LEVELS.map((level) => {
		const items = itemsAt('first-check', level);
		return items.reduce((sum, item) => sum + num(item, 'next') / num(item, 'seconds'), 0) / items.length;
	});
	expect(nearest[0]).toBeGreaterThan(nearest[2] ?? 0);
	expect(mean[0]).toBeGreaterThan(mean[2] ?? 0);
});

test('every drill has its level here', () => {
	expect(LEVELS.flatMap((level) => LEVEL_OF[level]).sort()).toEqual([...BUNDLED_KINDS].sort());
	for (const [level, kinds] of Object.entries(LEVEL_OF))
		for (const kind of kinds) expect(makeDrill(kind, 1).kind, level).toBe(kind);
});
