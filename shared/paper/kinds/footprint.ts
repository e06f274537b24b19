import { footprintOf, type Mode } from '../../profile/index.ts';
import { benchWith } from '../bench.ts';
import { entriesOf, type ModeAt, modesWhere, otherModes, slotNamesOf } from '../chart.ts';
import { numberOf, type Wrong } from '../draft.ts';
import { KIND_TOPICS, LEVELS } from '../ids.ts';
import type { Kind } from '../types.ts';

/** How many slots: easy: one fixture, counted off its chart; middle: several of them; hard: and as many of another mode besides. */
export const footprintKind: Kind = {
	id: 'footprint',
	topic: KIND_TOPICS.footprint,
	forms: ['number'],
	levels: LEVELS,
	fits: () => true,
	make(ground, chance, level) {
		const all = modesWhere(ground, () => true);
		const { profile, mode } = chance.pick(all);
		const each = footprintOf(mode);
		const count = level === 'easy' ? 1 : chance.int(2, 6);
		const second = level === 'hard' ? other(all, mode, (rest) => chance.pick(rest)) : null;
		const more = second ? chance.int(1, 4) : 0;
		const moreEach = second ? footprintOf(second.mode) : 0;
		const right = count * each + more * moreEach;
		const entries = (from: Mode): number => entriesOf(from).length;
		const wrongs: Wrong<number>[] = [
			['fine-ignored', count * entries(mode) + more * (second ? entries(second.mode) : 0)],
			...otherModes(profile, mode).map(
				(from) => ['other-modes-chart', count * footprintOf(from) + more * moreEach] as const,
			),
			...(level === 'easy' ? [] : [['footprint-not-added', each] as const]),
			...(second ? [['footprint-not-added', count * each] as const] : []),
			['one-fixture-too-few', right - each],
			['one-fixture-too-many', right + each],
			['first-counted-as-zero', right - 1],
			['off-by-one-high', right + 1],
		];
		return numberOf(
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					each,
					entries: entries(mode),
					pairs: each - entries(mode),
					count,
					product: count * each,
					more,
					moreFixture: second?.profile.name ?? null,
					moreMode: second?.mode.name ?? null,
					moreEach,
					moreProduct: more * moreEach,
					right,
					slotNames: slotNamesOf(mode),
				},
				bench: count === 1 ? benchWith({ profile, mode, address: 1 }) : null,
			},
			{ unit: 'slots' },
			[right],
			wrongs.filter(([, value]) => value > 0),
		);
	},
};

function other(all: readonly ModeAt[], mode: Mode, pick: (rest: readonly ModeAt[]) => ModeAt): ModeAt | null {
	const rest = all.filter((each) => each.mode !== mode);
	return rest.length > 0 ? pick(rest) : null;
}
