import { type Band, type Effect, footprintOf, type Mode, type Slot } from '../profile/index.ts';
import type { Random } from '../random/index.ts';
import type { InventedLight } from './light.ts';
import type { InventLevel, Making } from './types.ts';
import type { Wordbook } from './wordbook.ts';

/** What a mode has, from plain to rich; each has all of those before it. */
const PARTS = ['colours', 'intensity', 'shutter', 'function', 'static'] as const;

/** How many modes a fixture may have, and how rich the richest may be. */
const MODES: Readonly<Record<InventLevel, { readonly least: number; readonly most: number; readonly parts: number }>> =
	Object.freeze({
		easy: { least: 1, most: 2, parts: 3 },
		middle: { least: 2, most: 3, parts: 4 },
		hard: { least: 3, most: 5, parts: 5 },
	});

/** Fewest values of a band: a fader can still be set to it by hand. */
const LEAST_BAND = 6;

/** How the cells of a fixture are driven in a mode: as one, as two halves, or each by itself. */
type Split = 'whole' | 'halves' | 'cells';

/** One slot to be, before it has its number. */
interface Part {
	readonly fine: boolean;
	readonly make: (at: number, fine: number | undefined) => Slot;
}

/** The modes of an invented fixture: 1 to 5, no two of one footprint, with bands of irregular edges and, at the hard level, gaps. */
export function inventModes(making: Making, words: Wordbook, light: InventedLight, cells: number): Mode[] {
	const { level, random, names } = making;
	const { least, most, parts } = MODES[level];
	const wanted = random.int(least, most);
	const splits: readonly Split[] =
		cells === 1 ? ['whole'] : cells % 2 === 0 ? ['whole', 'halves', 'cells'] : ['whole', 'cells'];
	const kinds = splits.flatMap((split) =>
		Array.from({ length: parts }, (_, rich) => ({ split, rich })).filter(
			// what has one slot at all is no chart to learn from, and cells by themselves need not be rich
			({ rich }) => (split === 'whole' || rich < 3) && (wanted > 1 || rich > 0),
		),
	);
	const modes: Mode[] = [];
	for (const { split, rich } of random.shuffle(kinds)) {
		if (modes.length === wanted) break;
		const maker = new ModeMaker(making, words, light, random.fork(`${split} ${rich}`));
		const slots = maker.slots(rich, split, cells);
		const footprint = footprintOf({ id: 'new', name: '', slots });
		if (modes.some((mode) => footprintOf(mode) === footprint)) continue;
		modes.push({ id: `slots-${footprint}`, name: names.channels(footprint), slots });
	}
	return level === 'hard' ? modes : modes.toSorted((a, b) => footprintOf(a) - footprintOf(b));
}

class ModeMaker {
	private readonly making: Making;
	private readonly words: Wordbook;
	private readonly light: InventedLight;
	private readonly random: Random;

	constructor(making: Making, words: Wordbook, light: InventedLight, random: Random) {
		this.making = making;
		this.words = words;
		this.light = light;
		this.random = random;
	}

	slots(rich: number, split: Split, cells: number): Slot[] {
		const { level } = this.making;
		const has = new Set<string>(PARTS.slice(0, rich + 1));
		const { random } = this;
		const isFine = (chance: number): boolean =>
			level !== 'easy' && random.chance(level === 'hard' ? chance : chance / 2);
		const fineColours = rich > 2 && split === 'whole' && isFine(0.35);
		const blocks: Part[][] = [this.colours(split, cells, fineColours)];
		if (has.has('intensity')) blocks.push([this.plain('intensity', isFine(0.6))]);
		if (has.has('shutter')) blocks.push([this.shutter()]);
		if (has.has('function')) blocks.push([this.functions(), this.plain('speed', false)]);
		if (has.has('static')) blocks.push([this.statics()]);
		if (level === 'hard' && random.chance(0.3)) blocks.push([this.unused()]);
		const [colours = [], ...others] = blocks;
		const ordered =
			level === 'easy'
				? random.pick([
						[colours, ...others],
						[...others, colours],
					])
				: random.shuffle(blocks.flatMap((block) => (random.chance(0.5) ? [block] : block.map((part) => [part]))));
		return numbered(ordered.flat(), level === 'hard' && random.chance(0.4));
	}

	/** A slot for each emitter, in an order of its own, again for each stretch of cells. */
	private colours(split: Split, cells: number, fine: boolean): Part[] {
		const { names, level } = this.making;
		const { emitters } = this.light;
		const order = level === 'easy' ? emitters : this.random.shuffle(emitters);
		const half = cells / 2;
		const all = Array.from({ length: cells }, (_, i) => i + 1);
		const stretches: readonly { readonly cells: number[] | null; readonly called: (name: string) => string }[] =
			split === 'whole'
				? [{ cells: null, called: (name) => name }]
				: split === 'halves'
					? [
							{ cells: all.slice(0, half), called: (name) => names.half(name, 0) },
							{ cells: all.slice(half), called: (name) => names.half(name, 1) },
						]
					: all.map((cell) => ({ cells: [cell], called: (name) => names.cell(name, cell) }));
		return stretches.flatMap(({ cells: some, called }) =>
			order.map(({ id, name }) => ({
				fine,
				make: (at, fineAt) => ({
					id: some ? `${id}-${some[0]}-${some.at(-1)}` : id,
					name: called(name),
					at,
					...(fineAt === undefined ? {} : { fine: fineAt }),
					drives: { kind: 'emitter', emitter: id },
					...(some ? { cells: some } : {}),
				}),
			})),
		);
	}

	private plain(kind: 'intensity' | 'speed', fine: boolean): Part {
		const name = this.words.chart(`slot.${kind}`);
		return {
			fine,
			make: (at, fineAt) => ({
				id: kind,
				name,
				at,
				...(fineAt === undefined ? {} : { fine: fineAt }),
				drives: { kind },
			}),
		};
	}

	private shutter(): Part {
		const { random, words } = this;
		const slow = random.pick([0.5, 0.8, 1, 1.5]);
		const open = { name: words.chart('band.open'), effect: { do: 'open' } } as const;
		const closed = { name: words.chart('band.closed'), effect: { do: 'dark' } } as const;
		const strobe = {
			name: words.chart('band.strobe'),
			effect: { do: 'strobe', slow, fast: random.int(10, 22) },
		} as const;
		const order = random.pick([
			[open, strobe],
			[open, closed, strobe, open],
			[closed, open, strobe],
			[closed, strobe, open],
			[open, strobe, open],
			[closed, open, strobe, open],
		]);
		return this.banded('shutter', words.chart('slot.shutter'), this.withGaps(order));
	}

	private functions(): Part {
		const { random, words, light } = this;
		const programmes = random
			.shuffle(light.programmes)
			.map(({ id, name }): NamedEffect => ({ name, effect: { do: 'programme', programme: id } }));
		return this.banded('function', words.chart('slot.function'), this.withGaps(this.besideColours(programmes)));
	}

	private statics(): Part {
		const { random, words, light } = this;
		const some = random.shuffle(light.held).slice(0, random.int(3, 8));
		const bands = some.map(({ id, name }): NamedEffect => ({ name: capital(name), effect: { do: 'held', held: id } }));
		return this.banded('static', words.chart('slot.colours'), this.withGaps(this.besideColours(bands)));
	}

	/** A slot that nothing is done with. */
	private unused(): Part {
		const name = this.words.chart('slot.unused');
		return this.banded('unused', name, [{ name: this.words.chart('band.unused'), effect: { do: 'nothing' } }]);
	}

	/** The band in which the colour slots decide: first of all, and at the hard level now and then last. */
	private besideColours(bands: readonly NamedEffect[]): readonly NamedEffect[] {
		const plain: NamedEffect = { name: this.words.chart('band.colours'), effect: { do: 'nothing' } };
		return this.making.level === 'hard' && this.random.chance(0.3) ? [...bands, plain] : [plain, ...bands];
	}

	/** With bands of no function between, at the hard level. */
	private withGaps(bands: readonly NamedEffect[]): readonly NamedEffect[] {
		if (this.making.level !== 'hard') return bands;
		const gap: NamedEffect = { name: this.words.chart('band.unused'), effect: { do: 'nothing' } };
		return bands.flatMap((band, i) => (i > 0 && this.random.chance(0.25) ? [gap, band] : [band]));
	}

	private banded(id: string, name: string, parts: readonly NamedEffect[]): Part {
		const edges = irregular(this.random, parts.length);
		const bands = parts.map((part, i): Band => {
			const isAgain = parts.slice(0, i).some((other) => other.name === part.name);
			return {
				id: `band-${i + 1}`,
				name: isAgain && part.effect.do !== 'nothing' ? this.making.names.again(part.name) : part.name,
				from: i === 0 ? 0 : (edges[i - 1] as number) + 1,
				to: edges[i] as number,
				effect: part.effect,
			};
		});
		return { fine: false, make: (at) => ({ id, name, at, drives: { kind: 'bands', bands } }) };
	}
}

interface NamedEffect {
	readonly name: string;
	readonly effect: Effect;
}

const capital = (name: string): string => name.slice(0, 1).toUpperCase() + name.slice(1);

/** The last values of so many bands from 0 to 255, none as wide as the next by design. */
function irregular(random: Random, count: number): number[] {
	const weights = Array.from({ length: count }, () => 0.35 + random.next() * (random.chance(0.2) ? 3 : 1));
	const whole = weights.reduce((sum, weight) => sum + weight, 0);
	const spare = 256 - LEAST_BAND * count;
	let sum = 0;
	return weights.map((weight, i) => {
		sum += weight;
		return i === count - 1 ? 255 : LEAST_BAND * (i + 1) + Math.floor((spare * sum) / whole) - 1;
	});
}

/** Slots with their numbers; fine halves each after its own, or all of them at the end. */
function numbered(parts: readonly Part[], isFineLast: boolean): Slot[] {
	let next = 1;
	const coarse = parts.map((part) => {
		const at = next++;
		return { part, at, fine: part.fine && !isFineLast ? next++ : undefined };
	});
	return coarse.map(({ part, at, fine }) => part.make(at, fine ?? (part.fine ? next++ : undefined)));
}
