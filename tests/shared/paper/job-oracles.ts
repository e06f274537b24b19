import type { KindId } from '../../../shared/paper/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import {
	alike,
	doesOf,
	fixtureOf,
	modeOf,
	num,
	type Oracle,
	readSwitches,
	rows,
	setAs,
	typedAs,
	VALUES,
} from './walk.ts';

/** Kinds on what a desk shows, on power, lines, light and bonds, worked out a second way: counted up step by step from what the question says. */

const PERCENTS = Array.from({ length: 101 }, (_, percent) => percent);

/** Every whole number from 0 on that a test holds for, up to a bound. */
const wholesTo = (most: number, holds: (n: number) => boolean): number[] =>
	Array.from({ length: most + 1 }, (_, n) => n).filter(holds);

/** The most there are room for, one more at a time; in whole numbers alone, so that no rounding has a say. */
function countUp(room: number, each: number): number {
	let count = 0;
	for (let left = room; left >= each; left -= each) count++;
	return count;
}

/** Watts a fixture may take, added up from its profile. */
function fullDraw({ power, emitters }: Profile): number {
	let watts = power.idleWatts + (power.battery?.chargeWatts ?? 0);
	for (const emitter of emitters) watts += emitter.watts;
	return watts;
}

const near = (n: number, exact: number): boolean => (n >= exact * 0.98 && n <= exact * 1.02) || Math.abs(n - exact) < 1;

/** Which values a made-up chart gives a function: one by one, line by line. */
function charted(flat: unknown): boolean[] {
	const does = VALUES.map(() => false);
	for (const [from, to, name] of rows(flat, 3)) {
		if (name === '') continue;
		for (let value = Number(from); value <= Number(to); value++) does[value] = true;
	}
	return does;
}

export const jobOracles: Readonly<Partial<Record<KindId, Oracle>>> = {
	'band-of-percent': {
		option({ facts: { name } }, facts, ground) {
			const does = doesOf(ground, facts);
			return setAs(num(facts, 'percent')).every((value) => alike(does[value], name));
		},
	},
	'percent-in-band': {
		numbers(facts, ground) {
			const does = doesOf(ground, facts);
			return PERCENTS.filter((percent) => typedAs(percent).every((value) => alike(does[value], facts['name'])));
		},
	},
	'park-value': {
		numbers(facts, ground) {
			const slot = modeOf(ground, facts).slots.find(({ at }) => at === facts['n']);
			const bands = slot?.drives.kind === 'bands' ? slot.drives.bands : [];
			return VALUES.filter((value) =>
				bands.some(({ from, to, effect }) => from <= value && value <= to && /^(nothing|open)$/.test(effect.do)),
			);
		},
	},
	'fader-passes': {
		option({ facts: { name } }, facts, ground) {
			const does = doesOf(ground, facts);
			const met: string[] = [];
			for (let value = num(facts, 'from'); value <= num(facts, 'to'); value++) met.push(does[value] ?? '');
			return met.some((each) => alike(each, name));
		},
	},
	'gap-values': { option: ({ facts: label }, facts) => !charted(facts['chart'])[num(label, 'value')] },
	'hours-left': {
		numbers(facts, ground) {
			const { power, emitters } = fixtureOf(ground, facts['fixture']);
			let milliwatts = Math.round(1000 * num(facts, 'watts'));
			if (facts['adds']) {
				let watts = power.idleWatts;
				for (const [name] of rows(facts['draws'], 2))
					watts += ((emitters.find((each) => each.name === name)?.watts ?? 0) * num(facts, 'percent')) / 100;
				milliwatts = Math.round(1000 * watts);
			}
			// in thousandths of watts and hundredths of both shares
			const energy = Math.round((power.battery?.wattHours ?? 0) * 1000 * num(facts, 'charge') * 80);
			return [countUp(energy, milliwatts * 10_000)];
		},
	},
	'fit-on-circuit': {
		numbers(facts, ground) {
			const watts = fullDraw(fixtureOf(ground, facts['fixture']));
			const hundredths = Math.round(100 * num(facts, 'factor'));
			const room = num(facts, 'amperes') * num(facts, 'volts') * hundredths * num(facts, 'planOn');
			return [countUp(room, Math.round(watts * 10_000))];
		},
	},
	'row-amps': {
		numbers(facts, ground) {
			let watts = 0;
			for (let i = 0; i < num(facts, 'count'); i++) watts += fullDraw(fixtureOf(ground, facts['fixture']));
			const perAmp = num(facts, 'volts') * Math.round(100 * num(facts, 'factor'));
			const below = countUp(Math.round(watts * 100), perAmp);
			return [below * perAmp === Math.round(watts * 100) ? below : below + 1];
		},
	},
	'splitter-after': {
		numbers(facts) {
			// in eighths of a unit load
			let left = 32 * 8 - (facts['hasSplitter'] ? 8 : 0);
			let count = 0;
			for (;;) {
				const draws = count < num(facts, 'whole') ? 8 : 8 / num(facts, 'per');
				if (draws > left) return [count];
				left -= draws;
				count++;
			}
		},
	},
	'terminator-place': {
		option({ facts: { name } }, facts) {
			const cables = rows(facts['cables'], 2);
			return cables.some(([, to]) => to === name) && !cables.some(([from]) => from === name);
		},
	},
	'lux-at-throw': {
		numbers(facts) {
			const exact =
				(num(facts, 'lux') * num(facts, 'near') * num(facts, 'near')) / num(facts, 'far') / num(facts, 'far');
			return wholesTo(Math.ceil(exact * 1.1) + 2, (n) => near(n, exact));
		},
	},
	'pool-at-throw': {
		numbers(facts) {
			const exact = (num(facts, 'pool') * num(facts, 'far')) / num(facts, 'near');
			return wholesTo(Math.ceil(exact * 1.1) + 2, (n) => near(n, exact));
		},
	},
	'row-spacing': {
		numbers(facts) {
			const pool = facts['scaled'] ? (num(facts, 'pool') / num(facts, 'near')) * num(facts, 'far') : num(facts, 'pool');
			const exact = pool - (pool * num(facts, 'overlap')) / 100;
			return wholesTo(Math.ceil(exact * 1.1) + 2, (n) => near(n, exact));
		},
	},
	'bond-check': {
		option({ facts: bond }, facts) {
			const isFit =
				['pipe', 'truss-chord'].includes(String(bond['around'])) &&
				bond['to'] === 'makers-point' &&
				num(bond, 'slack') <= num(facts, 'slack') &&
				num(bond, 'rated') >= num(facts, 'kilograms') &&
				bond['closed'] === true &&
				bond['state'] === 'good';
			return !isFit;
		},
	},
	'patch-against-panel': {
		option({ facts: { name } }, facts, ground) {
			const row = rows(facts['patched'], 6).find(([each]) => each === name) ?? [];
			const [, address, mode, shown, label] = row;
			const { panel } = fixtureOf(ground, facts['fixture']);
			const read =
				panel.kind === 'dip'
					? readSwitches(String(shown).split(' ').map(Number), panel.wiring)
					: Number.parseInt(String(shown), 10);
			const named = rows(facts['modeNames'], 2).find(([, each]) => each === label)?.[0];
			return read !== address || named !== mode;
		},
	},
};
