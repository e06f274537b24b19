import { describe, expect, test } from 'vitest';
import {
	type Item,
	type ItemFacts,
	LEVELS,
	type PaperLevel,
	PLAIN_KIND_IDS,
	type PlainKindId,
	setPaper,
} from '../../../shared/paper/index.ts';
import { runs } from '../../runs.ts';
import { setAs } from './walk.ts';

// Symptom: with what is easy and what is hard exchanged, every test stayed green. Cause: whatever was asked was right, and nobody said
// what makes it hard. So here stands, kind by kind, what must hold of a question of each level, from what the question itself says.

const PERCENTS = Array.from({ length: 101 }, (_, percent) => percent);
const ROUND = [0, 20, 40, 50, 60, 80, 100];
const num = (facts: ItemFacts, key: string): number => facts[key] as number;
const list = (facts: ItemFacts, key: string): readonly (string | number)[] => facts[key] as (string | number)[];
const rows = (facts: ItemFacts, key: string, width: number): (string | number)[][] =>
	Array.from({ length: list(facts, key).length / width }, (_, i) => list(facts, key).slice(i * width, (i + 1) * width));
const digits = (value: number): [number, number] => [Math.floor(value / 16), value % 16];
const isLetter = (digit: number): boolean => digit > 9;
const levelAt = (percent: number): number => Math.round((percent * 255) / 100);
const holds = (facts: ItemFacts, key: string): boolean => facts[key] !== undefined && facts[key] !== null;

type Holds = (item: Item) => boolean;

const byHex = (key: string): Record<PaperLevel, Holds> => ({
	easy: ({ facts }) => digits(num(facts, key)).filter((digit) => digit > 0).length === 1,
	middle: ({ facts }) => digits(num(facts, key)).every((digit) => digit >= 1 && digit <= 9),
	hard: ({ facts }) => digits(num(facts, key)).some(isLetter) && digits(num(facts, key)).every((digit) => digit > 0),
});

const has = (key: string): Holds => {
	return ({ facts }) => holds(facts, key);
};
const is = (key: string, value: unknown): Holds => {
	return ({ facts }) => facts[key] === value;
};
/** The percents that are in the band of a question for sure. */
const sure = (facts: ItemFacts): number[] =>
	PERCENTS.filter((percent) =>
		setAs(percent).every((value) => value >= num(facts, 'from') && value <= num(facts, 'to')),
	);
/** So many percents set the band for sure. */
const wide = (least: number, most: number): Holds => {
	return ({ key }) => {
		const count = key.form === 'number' ? key.within.reduce((sum, { from, to }) => sum + to - from + 1, 0) : 0;
		return count >= least && count <= most;
	};
};
const fixtures = (count: number): Holds => {
	return (item) => fixturesIn(item) === count;
};
/** So many times as far is a whole number of such parts. */
const times = (parts: number): Holds => {
	return ({ facts }) => (num(facts, 'far') * parts) % num(facts, 'near') === 0;
};

const byHalves = (most: number): Holds => {
	return ({ facts }) => num(facts, 'coarse') <= most && num(facts, 'fine') <= most;
};
const byWord = (most: number): Holds => {
	return ({ facts }) => Math.floor(num(facts, 'word') / 256) <= most && num(facts, 'word') % 256 <= most;
};

const upBetween = (least: number, most: number): Holds => {
	return ({ facts }) => {
		const up = list(facts, 'up').length;
		return up >= least && up <= most;
	};
};

/** How far each listed fixture starts behind all that starts before it, within one universe. */
function gaps({ ask }: Item): number[] {
	if (ask.form !== 'several') return [];
	const placed = ask.options
		.map(({ label: { facts } }) => facts)
		.filter((facts) => facts['universe'] === 1)
		.map((facts) => [num(facts, 'start'), num(facts, 'footprint')] as const)
		.sort(([a], [b]) => a - b);
	return placed
		.slice(1)
		.map(([start], i) => start - Math.max(...placed.slice(0, i + 1).map(([from, footprint]) => from + footprint)));
}

/** What must hold of every question of a kind, level by level. */
const EVERY: Readonly<Record<PlainKindId, Record<PaperLevel, Holds>>> = {
	'value-function': {
		easy: ({ facts }) => num(facts, 'value') === Math.floor((num(facts, 'from') + num(facts, 'to')) / 2),
		middle: ({ facts }) =>
			!holds(facts, 'starts') &&
			(num(facts, 'to') - num(facts, 'from') <= 3 ||
				(num(facts, 'value') > num(facts, 'from') && num(facts, 'value') < num(facts, 'to'))),
		hard: ({ facts }) =>
			holds(facts, 'starts') &&
			!holds(facts, 'chart') &&
			[num(facts, 'from'), num(facts, 'to')].includes(num(facts, 'value')),
	},
	'function-values': {
		easy: ({ ask, facts }) => ask.form === 'one' && holds(facts, 'starts'),
		middle: ({ ask, facts }) => ask.form === 'several' && holds(facts, 'chart') && facts['byStarts'] === false,
		hard: ({ ask, facts }) => ask.form === 'several' && holds(facts, 'starts') && facts['byStarts'] === true,
	},
	'band-edge': {
		easy: ({ facts }) => holds(facts, 'chart') && facts['read'] === true && facts['hex'] === false,
		middle: ({ facts }) => !holds(facts, 'chart') && facts['read'] === false && facts['hex'] === false,
		hard: ({ facts }) => !holds(facts, 'chart') && facts['hex'] === false && facts['given'] !== null,
	},
	'band-middle': {
		easy: ({ facts }) => holds(facts, 'chart') && num(facts, 'to') - num(facts, 'from') < 40,
		middle: ({ facts }) =>
			holds(facts, 'chart') && (num(facts, 'to') - num(facts, 'from') >= 40 || facts['two'] === true),
		hard: ({ facts }) => !holds(facts, 'chart') && holds(facts, 'ends'),
	},
	'percent-of-value': {
		easy: ({ facts }) => ROUND.map(levelAt).includes(num(facts, 'value')),
		middle: ({ facts }) =>
			Array.from({ length: 19 }, (_, i) => 5 * (i + 1)).some(
				(percent) => !ROUND.includes(percent) && levelAt(percent) === num(facts, 'value'),
			),
		hard: ({ facts }) => num(facts, 'value') >= 1 && num(facts, 'value') <= 254,
	},
	'value-of-percent': {
		easy: ({ facts }) => ROUND.includes(num(facts, 'percent')),
		middle: ({ facts }) => num(facts, 'percent') % 5 === 0 && !ROUND.includes(num(facts, 'percent')),
		hard: ({ facts }) => num(facts, 'percent') >= 1 && num(facts, 'percent') <= 99,
	},
	'hex-of-value': byHex('value'),
	'value-of-hex': {
		easy: ({ facts }) => [...String(facts['hex'])].filter((digit) => digit !== '0').length === 1,
		middle: ({ facts }) => /^[1-9][1-9]$/.test(String(facts['hex'])),
		hard: ({ facts }) => /^[1-9A-F][1-9A-F]$/.test(String(facts['hex'])) && /[A-F]/.test(String(facts['hex'])),
	},
	'slot-does': {
		easy: ({ facts }) => facts['start'] === 1 && holds(facts, 'slotChart'),
		middle: ({ facts }) => num(facts, 'start') > 1 && holds(facts, 'slotChart'),
		hard: ({ facts }) => num(facts, 'start') > 1 && holds(facts, 'slotNames') && !holds(facts, 'slotChart'),
	},
	'match-slots': {
		easy: ({ facts }) => facts['start'] === 1,
		middle: ({ facts }) => num(facts, 'start') > 1,
		hard: ({ facts }) => num(facts, 'start') > 1,
	},
	'bands-in-order': {
		easy: ({ ask }) => written(ask).every((say) => say === 'ends-value'),
		middle: ({ ask }) => written(ask).every((say) => say !== 'ends-hex'),
		hard: ({ ask }) => new Set(written(ask)).size === 1 && !written(ask).includes('ends-hex'),
	},
	'desk-slot': {
		easy: ({ facts }) => num(facts, 'start') % 100 === 1 && facts['counted'] === false && holds(facts, 'slotChart'),
		middle: ({ facts }) => num(facts, 'start') > 1 && facts['counted'] === false && holds(facts, 'slotChart'),
		hard: ({ facts }) => num(facts, 'start') > 1 && facts['counted'] === true && holds(facts, 'slotNames'),
	},
	footprint: {
		easy: ({ facts }) => facts['count'] === 1 && facts['more'] === 0,
		middle: ({ facts }) => num(facts, 'count') >= 2 && num(facts, 'count') <= 6 && facts['more'] === 0,
		hard: ({ facts }) => num(facts, 'count') >= 2 && num(facts, 'more') >= 1 && num(facts, 'more') <= 4,
	},
	'last-slot': {
		easy: ({ facts }) => facts['count'] === 1 && num(facts, 'start') % 100 === 1,
		middle: ({ facts }) => facts['count'] === 1 && num(facts, 'start') > 1,
		hard: ({ facts }) => num(facts, 'count') >= 2 && num(facts, 'count') <= 8,
	},
	'next-free': {
		easy: ({ facts }) => num(facts, 'count') <= 2 && standsFrom(facts) === 1 && holes(facts) === 0,
		middle: ({ facts }) => num(facts, 'count') >= 3 && num(facts, 'count') <= 4 && holes(facts) === 0,
		hard: ({ facts }) => num(facts, 'count') >= 3 && num(facts, 'count') <= 4 && holes(facts) === 1,
	},
	'nth-address': {
		easy: ({ facts }) => facts['first'] === 1 && num(facts, 'n') >= 3 && num(facts, 'n') <= 4,
		middle: ({ facts }) => num(facts, 'n') >= 3 && num(facts, 'n') <= 8,
		hard: ({ facts }) => num(facts, 'n') <= 16 && (num(facts, 'n') >= 6 || 7 * num(facts, 'footprint') > 512),
	},
	overlaps: {
		easy: (item) => fixturesIn(item) === 3 && item.facts['others'] === false && gaps(item).some((gap) => gap >= 3),
		middle: (item) => fixturesIn(item) === 4 && item.facts['others'] === false && gaps(item).includes(0),
		hard: (item) => fixturesIn(item) === 5 && item.facts['others'] === true && gaps(item).includes(-1),
	},
	'runs-past': {
		easy: ({ facts }) => num(facts, 'last') <= 509 || num(facts, 'past') >= 3 || onFirst(facts),
		middle: ({ facts }) => (num(facts, 'last') >= 508 && num(facts, 'past') <= 5) || onFirst(facts),
		hard: ({ facts }) => (num(facts, 'last') >= 511 && num(facts, 'past') <= 1) || onFirst(facts),
	},
	'how-many-fit': {
		easy: ({ facts }) => facts['start'] === 1 && facts['others'] === 0,
		middle: ({ facts }) => facts['others'] === 0 && num(facts, 'start') <= 300,
		hard: ({ facts }) => num(facts, 'others') >= 2 && num(facts, 'others') <= 12,
	},
	'dip-to-address': { easy: upBetween(1, 2), middle: upBetween(3, 3), hard: upBetween(4, 6) },
	'address-to-dip': { easy: upBetween(1, 2), middle: upBetween(3, 3), hard: upBetween(4, 6) },
	'coarse-fine': { easy: byWord(9), middle: byWord(99), hard: byWord(255) },
	'value-of-pair': { easy: byHalves(9), middle: byHalves(99), hard: byHalves(255) },
	'band-of-percent': {
		easy: ({ facts }) => holds(facts, 'chart') && facts['percent'] === sure(facts)[Math.floor(sure(facts).length / 2)],
		middle: has('chart'),
		hard: ({ facts }) => holds(facts, 'starts') && [sure(facts)[0], sure(facts).at(-1)].includes(num(facts, 'percent')),
	},
	'percent-in-band': { easy: wide(13, 101), middle: wide(1, 101), hard: wide(1, 12) },
	'park-value': { easy: has('chart'), middle: has('starts'), hard: ({ facts }) => list(facts, 'stretches')[0] !== 0 },
	'fader-passes': { easy: is('inPercent', false), middle: is('inPercent', false), hard: has('starts') },
	'gap-values': {
		easy: is('hasGap', false),
		middle: is('hasBand', false),
		hard: ({ facts }) => facts['hasGap'] === true && facts['hasBand'] === true,
	},
	'hours-left': { easy: is('isFull', true), middle: is('isFull', false), hard: is('adds', true) },
	'fit-on-circuit': { easy: is('told', false), middle: is('planOn', 100), hard: is('planOn', 80) },
	'row-amps': {
		easy: is('told', false),
		middle: ({ facts }) => facts['told'] === true && num(facts, 'count') <= 8,
		hard: ({ facts }) => facts['told'] === true && num(facts, 'count') > 8,
	},
	'splitter-after': {
		easy: is('hasSplitter', false),
		middle: ({ facts }) => facts['hasSplitter'] === true && facts['whole'] === 0,
		hard: ({ facts }) => num(facts, 'whole') > 0,
	},
	'terminator-place': { easy: fixtures(3), middle: fixtures(5), hard: is('hasSplitter', true) },
	'lux-at-throw': { easy: times(1), middle: times(2), hard: is('near', 3) },
	'pool-at-throw': { easy: times(1), middle: times(2), hard: is('near', 3) },
	'row-spacing': {
		easy: ({ facts }) => num(facts, 'overlap') % 25 === 0,
		middle: is('scaled', false),
		hard: is('scaled', true),
	},
	'bond-check': { easy: fixtures(4), middle: fixtures(5), hard: fixtures(6) },
	'patch-against-panel': { easy: fixtures(4), middle: fixtures(5), hard: fixtures(6) },
};

/** What some question of twenty must show, where no question need: it is what makes the level harder than the one below. */
const SOME: Readonly<Partial<Record<PlainKindId, Partial<Record<PaperLevel, Holds>>>>> = {
	'percent-of-value': { hard: ({ facts }) => !ROUND.map(levelAt).includes(num(facts, 'value')) },
	'value-of-percent': { hard: ({ facts }) => num(facts, 'percent') % 5 !== 0 },
	'bands-in-order': {
		middle: ({ ask }) => written(ask).includes('ends-percent'),
		hard: ({ ask }) => written(ask).includes('ends-percent'),
	},
	'how-many-fit': { middle: ({ facts }) => num(facts, 'start') > 1 },
	'nth-address': { middle: ({ facts }) => num(facts, 'n') > 4, hard: ({ facts }) => num(facts, 'n') > 8 },
	'coarse-fine': {
		middle: ({ facts }) => num(facts, 'word') > 10 * 256,
		hard: ({ facts }) => num(facts, 'word') > 100 * 256,
	},
	'value-of-pair': {
		middle: ({ facts }) => num(facts, 'coarse') > 9,
		hard: ({ facts }) => num(facts, 'coarse') > 99,
	},
	'match-slots': {
		hard: ({ ask }) => ask.form === 'match' && ask.right.some(({ label }) => label.facts['part'] === 'fine'),
	},
	'runs-past': {
		middle: ({ facts }) => num(facts, 'past') > 1 || num(facts, 'last') < 511,
		hard: ({ facts }) => num(facts, 'last') === 512,
		easy: ({ facts }) => num(facts, 'past') >= 3,
	},
	'last-slot': { middle: ({ facts }) => num(facts, 'start') % 100 !== 1 },
	'fader-passes': { hard: is('inPercent', true) },
};

const written = (ask: Item['ask']): string[] => (ask.form === 'order' ? ask.options.map(({ label }) => label.say) : []);
const fixturesIn = ({ ask }: Item): number => (ask.form === 'several' ? ask.options.length : 0);
const onFirst = (facts: ItemFacts): boolean => facts['start'] === 1 || facts['start'] === 512;

const placedIn = (facts: ItemFacts): (readonly [start: number, end: number])[] =>
	rows(facts, 'placed', 3)
		.map(([, start, footprint]) => [Number(start), Number(start) + Number(footprint)] as const)
		.sort(([a], [b]) => a - b);
const standsFrom = (facts: ItemFacts): number => placedIn(facts)[0]?.[0] ?? 0;

/** Places between two fixtures that nothing takes. */
const holes = (facts: ItemFacts): number =>
	placedIn(facts).filter(([start], i, all) => i > 0 && start > (all[i - 1]?.[1] ?? 0)).length;

describe.each(PLAIN_KIND_IDS)('%s', (id) => {
	test.each(LEVELS)('is what it is called: %s', (level) => {
		const count = runs(20, 80);
		const recipe = { version: 2 as const, title: 'One level', count, kinds: [id], levels: [level] };
		const items = [1, 2].flatMap((seed) => setPaper(recipe, seed).items);
		for (const item of items) {
			expect(item.level).toBe(level);
			expect(EVERY[id][level](item), JSON.stringify(item.facts)).toBe(true);
		}
		const some = SOME[id]?.[level];
		if (some) expect(items.some(some)).toBe(true);
	});
});

test.each(['tallow-6', 'cobble'])('a hard desk-slot is counted off wherever one mode alone has pairs: %s', (id) => {
	const recipe = { version: 1 as const, title: 'One fixture', count: 20, kinds: ['desk-slot' as const] };
	for (const { facts } of setPaper({ ...recipe, profiles: [id], levels: ['hard'] }, 4).items)
		expect(facts['counted']).toBe(true);
});

// how far past 512 the last slot comes, or short of it, where the fixture could stand so: near for hard, farther for easy
test.each([
	['easy', [-8, -7, -6, -5, -4, -3, 3, 4, 5, 6, 7, 8]],
	['middle', [-4, -3, -2, -1, 0, 1, 2, 3, 4, 5]],
	['hard', [-1, 0, 1]],
] as const)('a %s fixture runs past the end, or not, by just so many: %j', (level, distances) => {
	const recipe = {
		version: 1 as const,
		title: 'At the end',
		count: 100,
		kinds: ['runs-past' as const],
		levels: [level],
	};
	const items = [1, 2].flatMap((seed) => setPaper({ ...recipe, profiles: ['picket-8'] }, seed).items);
	const met = new Set(
		items
			.filter(({ facts }) => !onFirst(facts))
			.map(({ facts }) => num(facts, 'start') + num(facts, 'footprint') - 513),
	);
	expect([...met].sort((a, b) => a - b)).toEqual(distances);
});
