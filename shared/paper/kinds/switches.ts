import {
	addressOf,
	DIP_REACH,
	DIP_WEIGHTS,
	type DipWiring,
	switchesFor,
	switchesUp,
	upSwitches,
} from '../../dmx/index.ts';
import type { DipPanel, Profile } from '../../profile/index.ts';
import type { RigSheet } from '../../sheet/index.ts';
import { benchWith } from '../bench.ts';
import { draft, fresh, numberOf, type WrongAnswer } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import type { Answer, Chance, QuestionGround, QuestionKind } from '../types.ts';

/** Which address do these switches set? Easy: one or two up; middle: three; hard: four or more. */
export const dipToAddress: QuestionKind = {
	id: 'dip-to-address',
	topic: KIND_TOPICS['dip-to-address'],
	forms: ['number'],
	levels: LEVELS,
	fits: (ground) => dipsOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, panel } = chance.pick(dipsOf(ground));
		const { wiring } = panel;
		const address = addressFor(chance, level, wiring);
		const up = upSwitches(switchesFor(address, wiring));
		const weights = weightsOf(up);
		const sum = weights.reduce((total, weight) => total + weight, 0);
		const reversed = switchesUp(up.map((n) => DIP_WEIGHTS.length + 1 - n));
		return numberOf(
			{
				facts: { fixture: profile.name, wiring, up, weights, sum, address, single: up.length === 1 },
				bench: dipBench(profile, address),
			},
			{ unit: 'address' },
			[address],
			[
				['other-wiring', addressOf(switchesUp(up), wiring === 'sum' ? 'sum-plus-one' : 'sum')],
				['switches-reversed', addressOf(reversed, wiring)],
				['switch-number-for-weight', up.reduce((total, n) => total + n, 0)],
				['off-by-one-low', address - 1],
				['off-by-one-high', address + 1],
			],
		);
	},
};

/** Set these switches to an address. Easy: one or two up; middle: three; hard: four or more. */
export const addressToDip: QuestionKind = {
	id: 'address-to-dip',
	topic: KIND_TOPICS['address-to-dip'],
	forms: ['switches'],
	levels: LEVELS,
	fits: (ground) => dipsOf(ground).length > 0,
	make(ground, chance, level) {
		const { profile, panel } = chance.pick(dipsOf(ground));
		const { wiring } = panel;
		const address = addressFor(chance, level, wiring);
		const up = upSwitches(switchesFor(address, wiring));
		const other = wiring === 'sum' ? 'sum-plus-one' : 'sum';
		const wrongs: WrongAnswer<readonly number[]>[] = [
			['switches-reversed', up.map((n) => DIP_WEIGHTS.length + 1 - n)],
			...(address > DIP_REACH[other].highest
				? []
				: [['other-wiring', upSwitches(switchesFor(address, other))] as const]),
		];
		const text = (numbers: readonly number[]): string => [...numbers].sort((a, b) => a - b).join(' ');
		const mistakes = wrongs.map(([mistake, chosen]) => ({
			mistake,
			answer: { form: 'switches' as const, up: [...chosen].sort((a, b) => a - b) },
		}));
		return draft(
			{
				facts: {
					fixture: profile.name,
					address,
					wiring,
					up,
					weights: weightsOf(up).reverse(),
					single: up.length === 1,
					sum: address - (wiring === 'sum' ? 0 : 1),
				},
				bench: dipBench(profile),
			},
			{
				ask: { form: 'switches', count: DIP_WEIGHTS.length },
				key: { form: 'switches', up },
				mistakes: fresh<Extract<Answer, { form: 'switches' }>>(mistakes, (answer) => text(answer.up), text(up)),
			},
		);
	},
};

/** Fixtures whose address is set by switches. */
const dipsOf = ({ profiles }: QuestionGround): { profile: Profile; panel: DipPanel }[] =>
	profiles.flatMap((profile) => (profile.panel.kind === 'dip' ? [{ profile, panel: profile.panel }] : []));

/** Which of nine switches are up, so many that adding them is easy or not. */
const UP_COUNTS: Readonly<Record<PaperLevel, readonly [least: number, most: number]>> = {
	easy: [1, 2],
	middle: [3, 3],
	hard: [4, 6],
};

/**
 * An address that so many switches set. Never 1: by the plain sum all down and switch 1 alone both read as it, so that two
 * settings would be right.
 */
function addressFor(chance: Chance, level: PaperLevel, wiring: DipWiring): number {
	const [least, most] = UP_COUNTS[level];
	const weights = chance.shuffle(DIP_WEIGHTS).slice(0, chance.int(least, most));
	const sum = weights.reduce((total, weight) => total + weight, 0);
	return Math.max(2, Math.min(DIP_REACH[wiring].highest, wiring === 'sum' ? sum : sum + 1));
}

/** What switches are worth, by number. */
const weightsOf = (up: readonly number[]): number[] => up.map((n) => DIP_WEIGHTS[n - 1] ?? 0);

/** A bench with that fixture, in the first mode its slides reach, at an address to change. */
function dipBench(profile: Profile, address = 1): RigSheet | null {
	for (const mode of profile.modes) {
		const bench = benchWith({ profile, mode, address });
		if (bench) return bench;
	}
	return null;
}
