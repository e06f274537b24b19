import { amps, batteryHours, CAUTIOUS_SHARE, mainsWatts, mostOnChain, wattsAt } from '../../power/index.ts';
import type { Profile } from '../../profile/index.ts';
import { numberOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Chance, QuestionGround, QuestionKind } from '../types.ts';

type Battery = NonNullable<Profile['power']['battery']>;

const batteriesIn = ({ profiles }: QuestionGround): { profile: Profile; battery: Battery }[] =>
	profiles.flatMap((profile) => (profile.power.battery ? [{ profile, battery: profile.power.battery }] : []));

/** Whole percents that emitters stand at, and of charge that is left. */
const PERCENTS: Readonly<Record<PaperLevel, readonly number[]>> = { easy: [100], middle: [100], hard: [25, 50, 75] };
const CHARGES: Readonly<Record<PaperLevel, readonly number[]>> = {
	easy: [100],
	middle: [40, 50, 60, 70, 75, 80, 90],
	hard: [50, 60, 70, 80, 90],
};
const PLAN_ON = Math.round(100 * CAUTIOUS_SHARE);
/**
 * Percent of a circuit's amperes to plan on for a load that stays on for hours: a rule of the US (NFPA 70, from memory). It is a battery's
 * `PLAN_ON` by chance alone.
 */
const CIRCUIT_PLAN_ON = 80;

/** Whole hours: rounded down, whatever the last bit of a division says. */
const wholeHours = (hours: number): number => Math.floor(hours + 1e-9);
const toTenth = (watts: number): number => Math.round(10 * watts) / 10;
/** As fine as what is told of a battery and its colours: a sum of them loses nothing by it. */
const toThousandth = (watts: number): number => Math.round(1000 * watts) / 1000;

/**
 * Whole hours that a battery lasts at a look, on a share of what is left. Easy: full, and the watts are told; middle: part of its charge
 * is left; hard: the watts are added up from what is up, and how far.
 */
export const hoursLeft: QuestionKind = {
	id: 'hours-left',
	topic: KIND_TOPICS['hours-left'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => batteriesIn(ground).length > 0,
	make(ground, chance, level) {
		const { profile, battery } = chance.pick(batteriesIn(ground));
		const percent = chance.pick(PERCENTS[level]);
		const charge = chance.pick(CHARGES[level]);
		const up = chance.shuffle(profile.emitters).slice(0, chance.int(1, Math.min(3, profile.emitters.length)));
		const at = (share: number): number => wattsAt(profile, Object.fromEntries(up.map(({ id }) => [id, share])));
		const watts = toThousandth(at(percent / 100));
		const { idleWatts } = profile.power;
		const energy = (battery.wattHours * charge) / 100;
		const hours = (wattHours: number, drawn: number, share: number): number =>
			drawn > 0 ? wholeHours(batteryHours(wattHours, drawn, share)) : -1;
		const right = hours(energy, watts, CAUTIOUS_SHARE);
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					wattHours: battery.wattHours,
					charge,
					planOn: PLAN_ON,
					percent,
					idle: idleWatts,
					draws: level === 'hard' ? up.flatMap(({ name, watts: full }) => [name, full]) : [],
					lit: toThousandth(watts - idleWatts),
					adds: level === 'hard',
					isFull: charge === 100,
					watts,
					energy: toThousandth(energy),
					counted: toThousandth(energy * CAUTIOUS_SHARE),
					right,
				},
			},
			{ unit: 'hours' },
			[right],
			[
				['reserve-forgotten', hours(energy, watts, 1)],
				['charge-forgotten', hours(battery.wattHours, watts, CAUTIOUS_SHARE)],
				...(level === 'hard'
					? ([
							['level-forgotten', hours(energy, toThousandth(at(1)), CAUTIOUS_SHARE)],
							['idle-forgotten', hours(energy, toThousandth(watts - idleWatts), CAUTIOUS_SHARE)],
						] as const)
					: []),
				['off-by-one-high', right + 1],
				['off-by-one-low', right - 1],
			],
		);
	},
};

/** Supplies as they are told on site: volts, and amperes that somebody in charge of them gives. */
const SUPPLIES: readonly (readonly [volts: number, amperes: readonly number[]])[] = [
	[230, [6, 10, 13, 16]],
	[120, [10, 12, 15, 16, 20]],
];
/** Power factors in hundredths; 100 where none is told. */
const FACTORS: Readonly<Record<PaperLevel, readonly number[]>> = {
	easy: [100],
	middle: [85, 90, 95],
	hard: [85, 90, 95],
};

interface Supply {
	readonly volts: number;
	readonly amperes: number;
	/** Hundredths. */
	readonly factor: number;
	/** Percent of the amperes that may be planned on. */
	readonly planOn: number;
}

function supplyFor(chance: Chance, level: PaperLevel): Supply {
	const [volts, amperes] = chance.pick(SUPPLIES);
	return {
		volts,
		amperes: chance.pick(amperes),
		factor: chance.pick(FACTORS[level]),
		planOn: level === 'hard' ? CIRCUIT_PLAN_ON : 100,
	};
}

const supplyFacts = (profile: Profile, { volts, amperes, factor, planOn }: Supply) => ({
	fixture: profile.name,
	watts: mainsWatts(profile),
	volts,
	amperes,
	factor: factor / 100,
	told: factor < 100,
	planOn,
});

/** How many of a fixture stay within so many amperes. Easy: no power factor told; middle: one told; hard: and part of the amperes kept back. */
export const fitOnCircuit: QuestionKind = {
	id: 'fit-on-circuit',
	topic: KIND_TOPICS['fit-on-circuit'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => poweredIn(ground).length > 0,
	make(ground, chance, level) {
		const profile = chance.pick(poweredIn(ground));
		const supply = supplyFor(chance, level);
		const { volts, amperes, factor, planOn } = supply;
		const watts = mainsWatts(profile);
		const within = (most: number, at: number, share: number): number => mostOnChain(watts, most, at, share / 100);
		const usable = (amperes * planOn) / 100;
		const right = within(usable, volts, factor);
		return numberOf(
			{ facts: { ...supplyFacts(profile, supply), usable, most: toTenth((usable * volts * factor) / 100), right } },
			{ unit: 'fixtures' },
			[right],
			[
				['power-factor-forgotten', within(usable, volts, 100)],
				['reserve-forgotten', within(amperes, volts, factor)],
				['other-voltage', within(usable, volts === 230 ? 120 : 230, factor)],
				['one-fixture-too-many', right + 1],
				['one-fixture-too-few', right - 1],
			],
		);
	},
};

/** Least watts of a fixture that supplies are worked out for: what draws next to nothing fits beyond counting. */
const LEAST_WATTS = 20;
const poweredIn = ({ profiles }: QuestionGround): Profile[] =>
	profiles.filter((profile) => mainsWatts(profile) >= LEAST_WATTS);

/** Whole amperes, rounded up, whatever the last bit of a division says. */
const roundedUp = (amperes: number): number => Math.ceil(amperes - 1e-9);

/** What a row draws, in whole amperes, rounded up: never down, where somebody goes by it. Easy: no power factor told; middle and hard: one, and more fixtures. */
export const rowAmps: QuestionKind = {
	id: 'row-amps',
	topic: KIND_TOPICS['row-amps'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => poweredIn(ground).length > 0,
	make(ground, chance, level) {
		const profile = chance.pick(poweredIn(ground));
		const supply = { ...supplyFor(chance, level), planOn: 100 };
		const { volts, factor } = supply;
		const watts = mainsWatts(profile);
		const count = level === 'hard' ? chance.int(9, 20) : chance.int(4, 8);
		const drawn = amps(count * watts, volts, factor / 100);
		const wrongs: WrongAnswer<number>[] = [
			['power-factor-forgotten', roundedUp(amps(count * watts, volts))],
			['other-voltage', roundedUp(amps(count * watts, volts === 230 ? 120 : 230, factor / 100))],
			['one-of-the-row', roundedUp(amps(watts, volts, factor / 100))],
			['one-fixture-too-many', roundedUp(amps((count + 1) * watts, volts, factor / 100))],
			['one-fixture-too-few', roundedUp(amps((count - 1) * watts, volts, factor / 100))],
			['watts-for-amps', count * watts],
			['rounded-down', Math.floor(drawn)],
		];
		return numberOf(
			{
				facts: {
					...supplyFacts(profile, supply),
					count,
					all: count * watts,
					// up, or a little over 9 would be called 9
					drawn: roundedUp(100 * drawn) / 100,
					right: roundedUp(drawn),
				},
			},
			{ unit: 'amps' },
			[roundedUp(drawn)],
			wrongs,
		);
	},
};
