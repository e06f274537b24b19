import { LAST_SLOT, TOP_LEVEL } from '../dmx/index.ts';
import type { RigSheet } from '../sheet/index.ts';
import { evenlyDrawn, MOST_DRAWN } from './even.ts';
import type { MistakeId } from './ids.ts';
import { canonical } from './json.ts';
import type {
	Answer,
	Chance,
	Item,
	ItemDraft,
	ItemFacts,
	KnownMistake,
	NumberUnit,
	Option,
	QuestionGround,
	Say,
} from './types.ts';

/** Something to say, and what fills it. */
export const say = (id: string, facts: ItemFacts = {}): Say => ({ say: id, facts });

/** `a`, `b`, `c` ... for a place from 0 on. */
const letter = (place: number): string => String.fromCharCode(97 + place);

/** Options in a new order, lettered by where they land: an id tells nothing of what is right. */
export function lettered<T>(
	chance: Chance,
	things: readonly T[],
	label: (thing: T) => Say,
): { readonly options: Option[]; idOf(thing: T): string; readonly inOrder: readonly T[] } {
	const inOrder = chance.shuffle(things);
	return {
		inOrder,
		options: inOrder.map((thing, place) => ({ id: letter(place), label: label(thing) })),
		idOf: (thing) => letter(inOrder.indexOf(thing)),
	};
}

/** Options as they stand, lettered in turn: where their order is given by what they are. */
export const inTurn = <T>(
	things: readonly T[],
	label: (thing: T) => Say,
): { options: Option[]; idOf(thing: T): string } => ({
	options: things.map((thing, place) => ({ id: letter(place), label: label(thing) })),
	idOf: (thing) => letter(things.indexOf(thing)),
});

/** What a draft is, beside its asking. */
export interface DraftParts {
	readonly facts: ItemFacts;
	readonly bench?: RigSheet | null;
}

/** A wrong option or number, and the mistake behind it. */
export type WrongAnswer<T> = readonly [mistake: MistakeId, wrong: T];

/** Most wrong options beside the right one. */
const WRONG_OPTIONS = 3;

/** How two labels are told apart: what is equal here would read the same. */
const read = (label: Say): string => canonical(label).toLowerCase();

/** The first few wrong labels that differ from the right one and from each other, for `one`. */
function wrongLabels(right: Say, wrongs: readonly WrongAnswer<Say>[], most: number): WrongAnswer<Say>[] {
	const seen = new Set([read(right)]);
	const kept: WrongAnswer<Say>[] = [];
	for (const wrong of wrongs) {
		const text = read(wrong[1]);
		if (seen.has(text) || kept.length === most) continue;
		seen.add(text);
		kept.push(wrong);
	}
	return kept;
}

/**
 * One right among up to four: the likeliest mistakes come first in `wrongs`; labels that read alike are left out. Papers of version 1
 * have the likeliest; later ones so that the look of the options does not tell the right one.
 */
export function oneOf(
	chance: Chance,
	about: DraftParts,
	right: Say,
	wrongs: readonly WrongAnswer<Say>[],
	{ version }: Pick<QuestionGround, 'version'> = {},
): ItemDraft {
	const kept =
		version === 1
			? wrongLabels(right, wrongs, WRONG_OPTIONS)
			: evenlyDrawn(chance, right, wrongLabels(right, wrongs, MOST_DRAWN), {
					size: WRONG_OPTIONS,
					label: ([, label]) => label,
				});
	const { options, idOf } = lettered(chance, [right, ...kept.map(([, label]) => label)], (label) => label);
	return draft(about, {
		ask: { form: 'one', options },
		key: { form: 'one', right: idOf(right) },
		mistakes: kept.map(([mistake, label]) => ({ mistake, answer: { form: 'one', chose: idOf(label) } })),
	});
}

/** What a typed number counts, and how far typing goes: wide enough for wrong answers. */
export interface NumberEntry {
	readonly unit: NumberUnit;
	readonly base?: 10 | 16;
}

const TYPED_TO: Readonly<Record<NumberUnit, number>> = {
	value: 999,
	percent: 999,
	slot: 9999,
	address: 9999,
	slots: 9999,
	fixtures: 999,
	word: 99999,
	hours: 9999,
	amps: 9999,
	lux: 999_999,
	centimetres: 99999,
};

/** A whole number to be typed; `rights` are all that are right. */
export function numberOf(
	about: DraftParts,
	typed: NumberEntry,
	rights: readonly number[],
	wrongs: readonly WrongAnswer<number>[],
): ItemDraft {
	const base = typed.base ?? 10;
	const most = base === 16 ? 0xfff : TYPED_TO[typed.unit];
	const seen = new Set(rights);
	const mistakes: KnownMistake[] = [];
	for (const [mistake, value] of wrongs) {
		if (seen.has(value) || !Number.isInteger(value) || value < 0 || value > most) continue;
		seen.add(value);
		mistakes.push({ mistake, answer: { form: 'number', value } });
	}
	return draft(about, {
		ask: { form: 'number', least: 0, most, base, unit: typed.unit },
		key: { form: 'number', within: ranges(rights) },
		mistakes,
	});
}

/** Whole numbers as runs, both ends included. */
function ranges(numbers: readonly number[]): { from: number; to: number }[] {
	const runs: { from: number; to: number }[] = [];
	for (const n of [...numbers].sort((a, b) => a - b)) {
		const run = runs.at(-1);
		if (run && n <= run.to + 1) run.to = n;
		else runs.push({ from: n, to: n });
	}
	return runs;
}

/** Several of many; each mistake is the things it would choose. Empty choices, the right set and repeats are left out. */
export function severalOf<T>(
	chance: Chance,
	about: DraftParts,
	things: readonly T[],
	told: {
		readonly label: (thing: T) => Say;
		readonly isRight: (thing: T) => boolean;
		readonly wrongs: readonly WrongAnswer<readonly T[]>[];
	},
): ItemDraft {
	const { label, isRight, wrongs } = told;
	const { options, idOf } = lettered(chance, things, label);
	const ids = (chosen: readonly T[]): string[] => chosen.map(idOf).sort();
	const right = ids(things.filter(isRight));
	const answers = wrongs.map(([mistake, chosen]) => ({
		mistake,
		answer: { form: 'several' as const, chose: ids(chosen) },
	}));
	return draft(about, {
		ask: { form: 'several', options },
		key: { form: 'several', right },
		mistakes: fresh(answers, ({ chose }) => chose.join(' '), right.join(' ')).filter(
			({ answer }) => answer.chose.length > 0,
		),
	});
}

/** Mistakes whose answers are neither the right one nor given before. */
export function fresh<A extends Answer>(
	mistakes: readonly { readonly mistake: MistakeId; readonly answer: A }[],
	text: (answer: A) => string,
	right: string,
): { readonly mistake: MistakeId; readonly answer: A }[] {
	const seen = new Set([right]);
	return mistakes.filter(({ answer }) => {
		const own = text(answer);
		if (seen.has(own)) return false;
		seen.add(own);
		return true;
	});
}

/** The whole draft. */
export function draft(
	{ facts, bench = null }: DraftParts,
	rest: Pick<ItemDraft, 'ask' | 'key' | 'mistakes'>,
): ItemDraft {
	return { facts, ...rest, bench };
}

/** Whole numbers, both ends included. */
export interface CountRange {
	readonly least: number;
	readonly most: number;
}

/** The highest value of a coarse and a fine slot together, 16 bits. */
const TOP_WORD = 65_535;

/** What may be asked for, by what is counted. Slots and start addresses run 1 to 512, values 0 to 255 (ANSI E1.11). */
const SPANS: Readonly<Record<string, CountRange>> = Object.freeze({
	value: { least: 0, most: TOP_LEVEL },
	percent: { least: 0, most: 100 },
	slot: { least: 1, most: LAST_SLOT },
	address: { least: 1, most: LAST_SLOT },
	// as many as a universe has slots, were each to take one
	fixtures: { least: 0, most: LAST_SLOT },
	word: { least: 0, most: TOP_WORD },
	// wide enough for any answer that is near: 4 days of hours, more amperes than any row, a light brighter than day, a wall of 100 m
	hours: { least: 0, most: 999 },
	amps: { least: 0, most: 999 },
	lux: { least: 0, most: 100_000 },
	centimetres: { least: 0, most: 9999 },
});

/**
 * The range that a number question asks for: that of whatever is counted, whichever number is right. `Ask.least` and `Ask.most` say
 * what may be stored, and stay as they are: ids of questions and marks of papers hang on them.
 * @returns the item's own least and most where its unit is not known
 */
export function asksFor({ ask, facts }: Item): CountRange {
	if (ask.form !== 'number') return { least: 0, most: 0 };
	if (ask.unit === 'slots') return { least: 1, most: LAST_SLOT * fixturesOf(facts) };
	return SPANS[ask.unit] ?? { least: ask.least, most: ask.most };
}

/** How many fixtures a question names, each of which can take a whole universe; 1 where it does not say. */
function fixturesOf({ count, more }: Item['facts']): number {
	const all = Number(count ?? 1) + Number(more ?? 0);
	return Number.isInteger(all) && all > 0 ? all : 1;
}
