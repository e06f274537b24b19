import { footprintOf, idMaker, type Profile, type Programme, type StaticColour, titleOf } from '../../profile/index.ts';
import { PROGRAMME_WORDS } from '../effects.ts';
import { mixFor } from '../emitters.ts';
import { plain } from './senses.ts';

/** What a fixture has that a menu can choose between. */
export type Chosen = Pick<Profile, 'modes' | 'held' | 'programmes' | 'emitters'>;

/** Kinds of programme by the words for them, flashes besides those of a chart. */
const KINDS = [['strobe', /\bstrob|\bflash/i], ...PROGRAMME_WORDS] as const;

/** Stands for what would be made. */
const NEW = 'new';

/** Most static colours and programmes that a list by number is given. */
const MOST_BY_NUMBER = 128;

/**
 * A fixture's modes, static colours and programmes as a menu names them. A colour or programme that its chart does not have is made:
 * the mix and the pace are ours.
 */
export class Ground {
	readonly held: StaticColour[];
	readonly programmes: Programme[];
	readonly modes: Profile['modes'];
	readonly #emitters: Profile['emitters'];
	readonly #id = idMaker();
	readonly #taken = new Set<string>();

	constructor({ modes, held, programmes, emitters }: Chosen) {
		this.modes = modes;
		this.held = [...held];
		this.programmes = [...programmes];
		this.#emitters = emitters;
		for (const { id } of [...held, ...programmes]) this.#id(id, id);
	}

	/** The mode that words or a number of channels name; null where none, or several of as many channels. */
	mode(words: string): string | null {
		const named = this.modes.find(({ name }) => plain(name) === plain(words));
		if (named) return named.id;
		const count = Number(/\d+/.exec(words)?.[0] ?? Number.NaN);
		const [first, second] = this.modes.filter((mode) => footprintOf(mode) === count);
		return first && !second ? first.id : null;
	}

	/** The static colour that words name; null where they name none. One that the emitters can make and the chart has not is made if it `isMade`, and is `NEW` else. */
	colour(words: string, isMade: boolean): string | null {
		const own = calledSo(this.held, words);
		if (own) return own.id;
		const mix = mixFor(
			words,
			this.#emitters.map(({ id }) => id),
		);
		if (!mix) return null;
		const same = this.held.find(({ levels }) => JSON.stringify(levels) === JSON.stringify(mix));
		if (same && !this.#taken.has(same.id)) return same.id;
		return isMade ? this.#newColour(words, { ...mix }) : NEW;
	}

	/** The programme that words name, as `colour` the colour. */
	programme(words: string, isMade: boolean): string | null {
		const own = calledSo(this.programmes, words);
		if (own) return own.id;
		const [kind] = KINDS.find(([, pattern]) => pattern.test(words)) ?? [];
		if (!kind) return null;
		const like = this.programmes.find((each) => each.kind === kind && !this.#taken.has(each.id));
		if (like) return like.id;
		return isMade ? this.#newProgramme(words, kind) : NEW;
	}

	/** As many as a list by number has: those of the chart first, then ones of our own. */
	byNumber(of: 'modes' | 'held' | 'programmes', count: number): string[] {
		const most = Math.min(count, MOST_BY_NUMBER);
		if (of === 'held') for (let n = this.held.length; n < most; n++) this.#newColour(`${n + 1}`, this.#mixed(n));
		if (of === 'programmes')
			for (let n = this.programmes.length; n < most; n++)
				this.#newProgramme(`${n + 1}`, n % 2 === 0 ? 'change' : 'fade');
		return this[of].slice(0, most).map(({ id }) => id);
	}

	/** Takes a colour or programme: another word for it is another one. */
	take(id: string): void {
		this.#taken.add(id);
	}

	/** Two emitters together, another two each time; past those at other levels. */
	#mixed(n: number): Record<string, number> {
		const ids = this.#emitters.filter(({ ultraviolet }) => !ultraviolet).map(({ id }) => id);
		const from = ids.length > 0 ? ids : this.#emitters.map(({ id }) => id);
		const first = from[n % from.length] as string;
		const second = from[(n + 1 + Math.floor(n / from.length)) % from.length] as string;
		return { [second]: 255 - ((n * 37) % 200), [first]: 255 };
	}

	#newColour(words: string, levels: Record<string, number>): string {
		const id = this.#id(words, 'colour');
		this.held.push({ id, name: titleOf(words.toLowerCase(), id), levels });
		return id;
	}

	#newProgramme(words: string, kind: Programme['kind']): string {
		const id = this.#id(words, 'programme');
		this.programmes.push({
			id,
			name: titleOf(words, id),
			kind,
			...(kind === 'sound' ? { answer: 'step' as const } : {}),
			colours: this.held.slice(0, Math.max(1, this.#emitters.length)).map((each) => each.id),
			slowest: kind === 'strobe' ? 1 : 30,
			fastest: kind === 'strobe' ? 0.1 : 0.5,
		});
		return id;
	}
}

/** The thing of that name, or else of that id: one may have the name that is another's id. */
function calledSo<Thing extends { readonly id: string; readonly name: string }>(
	things: readonly Thing[],
	words: string,
): Thing | undefined {
	const said = plain(words);
	return things.find(({ name }) => plain(name) === said) ?? things.find(({ id }) => plain(id) === said);
}
