import type { Answer, Item, ItemFacts, KindId, Option, QuestionGround } from '../../../shared/paper/index.ts';
import { jobOracles } from './job-oracles.ts';
import {
	alike,
	covered,
	doesOf,
	hexText,
	modeOf,
	num,
	numbered,
	type Oracle,
	readSwitches,
	rows,
	SLOTS,
	setAs,
	shownAs,
	VALUES,
	widthOf,
	wiringOf,
} from './walk.ts';

/**
 * What is right, worked out a second way: by walking every value, every slot or every setting of the switches over what the
 * question says and the profile's plain data. Nothing of `shared/dmx` or `shared/paper` is called.
 */

const deskSlots = (
	facts: ItemFacts,
	ground: QuestionGround,
	fits: (at: { name: string; part: string }) => boolean,
): number[] => {
	const chart = numbered(modeOf(ground, facts));
	let n = 0;
	return SLOTS.flatMap((slot) => {
		if (slot < num(facts, 'start')) return [];
		n++;
		const here = chart[n];
		return here && fits(here) ? [slot] : [];
	});
};

export const oracles: Readonly<Partial<Record<KindId, Oracle>>> = {
	'value-function': {
		option: ({ facts: { name } }, facts, ground) => alike(doesOf(ground, facts)[num(facts, 'value')], name),
	},
	'function-values': {
		option({ facts: label }, facts, ground) {
			const does = doesOf(ground, facts);
			const gives = VALUES.filter((value) => alike(does[value], facts['name']));
			if (label['value'] !== undefined) return gives.includes(num(label, 'value'));
			return String(gives) === String(covered(num(label, 'from'), num(label, 'to') - num(label, 'from') + 1));
		},
	},
	'band-edge': {
		numbers(facts, ground) {
			const does = doesOf(ground, facts);
			const gives = VALUES.filter((value) => alike(does[value], facts['name']));
			return [facts['edge'] === 'lowest' ? Math.min(...gives) : Math.max(...gives)];
		},
	},
	'band-middle': {
		numbers(facts, ground) {
			const does = doesOf(ground, facts);
			const gives = VALUES.filter((value) => alike(does[value], facts['name']));
			return gives.filter((_, i) => Math.abs(i - (gives.length - 1 - i)) <= 1);
		},
	},
	'percent-of-value': { numbers: (facts) => shownAs(num(facts, 'value')) },
	'value-of-percent': { numbers: (facts) => setAs(num(facts, 'percent')) },
	'hex-of-value': { numbers: (facts) => [num(facts, 'value')] },
	'value-of-hex': { numbers: (facts) => VALUES.filter((value) => hexText(value) === facts['hex']) },
	'slot-does': {
		option: ({ facts: label }, facts, ground) =>
			deskSlots(facts, ground, (at) => alike(at.name, label['name']) && at.part === label['part']).includes(
				num(facts, 'slot'),
			),
	},
	'match-slots': {
		pair: ({ facts: left }, { facts: right }, facts, ground) =>
			deskSlots(facts, ground, (at) => alike(at.name, right['name']) && at.part === right['part']).includes(
				num(left, 'slot'),
			),
	},
	'bands-in-order': {
		order(names, facts, ground) {
			const met = new Set(doesOf(ground, facts));
			return [...met].filter((name) => names.includes(name));
		},
	},
	'desk-slot': {
		numbers: (facts, ground) =>
			deskSlots(facts, ground, (at) => alike(at.name, facts['name']) && at.part === facts['part']),
	},
	footprint: {
		numbers(facts, ground) {
			const first = widthOf(modeOf(ground, facts)) * num(facts, 'count');
			if (num(facts, 'more') === 0) return [first];
			return [
				first +
					num(facts, 'more') *
						widthOf(modeOf(ground, { fixture: facts['moreFixture'] ?? '', mode: facts['moreMode'] ?? '' })),
			];
		},
	},
	'last-slot': {
		numbers(facts, ground) {
			const width = widthOf(modeOf(ground, facts));
			let slot = num(facts, 'start') - 1;
			for (let fixture = 0; fixture < num(facts, 'count'); fixture++) for (let n = 0; n < width; n++) slot++;
			return [slot];
		},
	},
	'next-free': {
		numbers(facts, ground) {
			const width = widthOf(modeOf(ground, facts));
			const taken = new Set(
				rows(facts['placed'], 3).flatMap(([, start, each]) => covered(Number(start), Number(each))),
			);
			const free = SLOTS.filter((start) => covered(start, width).every((slot) => slot <= 512 && !taken.has(slot)));
			return free.slice(0, 1);
		},
	},
	'nth-address': {
		numbers(facts, ground) {
			const width = widthOf(modeOf(ground, facts));
			let start = num(facts, 'first');
			for (let i = 1; i < num(facts, 'n'); i++) start += width;
			return [start];
		},
	},
	overlaps: {
		option({ facts: own }, _facts, _ground, all) {
			const mine = covered(num(own, 'start'), num(own, 'footprint'));
			return all.some(({ label: { facts: other } }) => {
				if (other['name'] === own['name'] || other['universe'] !== own['universe']) return false;
				return covered(num(other, 'start'), num(other, 'footprint')).some((slot) => slot <= 512 && mine.includes(slot));
			});
		},
	},
	'runs-past': {
		option({ say, facts: label }, facts, ground) {
			const slots = covered(num(facts, 'start'), widthOf(modeOf(ground, facts)));
			const lost = slots.filter((slot) => !SLOTS.includes(slot)).length;
			if (say === 'runs-fits') return lost === 0 && slots.at(-1) === label['last'];
			return say === 'runs-past' && lost > 0 && lost === label['past'];
		},
	},
	'how-many-fit': {
		numbers(facts, ground) {
			const width = widthOf(modeOf(ground, facts));
			let next = num(facts, 'start');
			if (num(facts, 'others') > 0) {
				next = 1;
				const each = widthOf(
					modeOf(ground, { fixture: facts['othersFixture'] ?? '', mode: facts['othersMode'] ?? '' }),
				);
				for (let i = 0; i < num(facts, 'others'); i++) next += each;
			}
			let fit = 0;
			while (covered(next, width).every((slot) => slot <= 512)) {
				fit++;
				next += width;
			}
			return [fit];
		},
	},
	'dip-to-address': {
		numbers: (facts, ground) => [readSwitches(facts['up'] as number[], wiringOf(ground, facts))],
	},
	'address-to-dip': {
		switches: (up, facts, ground) => readSwitches(up, wiringOf(ground, facts)) === num(facts, 'address'),
	},
	'coarse-fine': {
		option: ({ facts: label }, facts) => num(label, 'coarse') * 256 + num(label, 'fine') === num(facts, 'word'),
	},
	'value-of-pair': {
		numbers(facts) {
			let word = 0;
			for (let i = 0; i < num(facts, 'coarse'); i++) word += 256;
			return [word + num(facts, 'fine')];
		},
	},
	...jobOracles,
};

/** Every value a written last value of `bands-in-order` may stand for. */
export function standsFor({ say, facts: { end } }: Option['label']): number[] {
	if (say === 'ends-percent') return VALUES.filter((value) => shownAs(value).includes(Number(end)));
	return VALUES.filter((value) => (say === 'ends-hex' ? hexText(value) === end : value === end));
}

/** Every setting of nine switches. */
const SETTINGS = Array.from({ length: 512 }, (_, bits) =>
	Array.from({ length: 9 }, (_, i) => i + 1).filter((n) => Math.floor(bits / 2 ** (n - 1)) % 2 === 1),
);

/** Whether an answer is right, by the oracle alone. */
export function isRight(item: Item, answer: Answer, ground: QuestionGround): boolean {
	const { ask, facts, kind } = item;
	const oracle = oracles[kind];
	if (answer.form === 'number') return oracle?.numbers?.(facts, ground).includes(answer.value) ?? false;
	if (answer.form === 'switches') return oracle?.switches?.(answer.up, facts, ground) ?? false;
	if (ask.form === 'match' && answer.form === 'match') {
		return ask.left.every((left) => {
			const right = ask.right.find(({ id }) => id === answer.pairs[left.id]);
			return right !== undefined && oracle?.pair?.(left.label, right.label, facts, ground);
		});
	}
	if (!('options' in ask)) throw new Error('no oracle for this form');
	const holds = ({ label }: Option): boolean => oracle?.option?.(label, facts, ground, ask.options) ?? false;
	const byId = (id: string): Option => ask.options.find((each) => each.id === id) as Option;
	if (answer.form === 'one') return holds(byId(answer.chose));
	if (answer.form === 'several') return ask.options.every((each) => holds(each) === answer.chose.includes(each.id));
	if (answer.form !== 'order') throw new Error('no oracle for this form');
	const names = answer.order.map((id) => String(byId(id).label.facts['name']));
	return String(oracle?.order?.(names, facts, ground)) === String(names);
}

/** How many answers are right, by the oracle alone, over all that could be given: it must be one, or the numbers of the key. */
export function countRight(item: Item, ground: QuestionGround): { readonly right: number; readonly keyed: number } {
	const { ask, key, facts, kind } = item;
	const oracle = oracles[kind];
	if (ask.form === 'one') {
		const holds = ask.options.filter(({ id }) => isRight(item, { form: 'one', chose: id }, ground));
		return { right: holds.length, keyed: 1 };
	}
	if (key.form === 'number') {
		const right = new Set(oracle?.numbers?.(facts, ground));
		return { right: right.size, keyed: key.within.reduce((sum, { from, to }) => sum + to - from + 1, 0) };
	}
	if (ask.form === 'switches') {
		return { right: SETTINGS.filter((up) => oracle?.switches?.(up, facts, ground)).length, keyed: 1 };
	}
	if (ask.form === 'match') {
		const each = ask.left.map(
			(left) => ask.right.filter((right) => oracle?.pair?.(left.label, right.label, facts, ground)).length,
		);
		return { right: each.reduce((product, count) => product * count, 1), keyed: 1 };
	}
	return { right: 1, keyed: 1 };
}
