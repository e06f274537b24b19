import { locale } from '#words/locale/index.ts';
import type { Says } from '#words/rig/index.ts';
import { InputError } from '../../shared/error/index.ts';

/** What a template is filled from. */
export type TemplateFacts = Readonly<Record<string, unknown>>;
/** How a fact is worded, by the kind of thing it is. */
export type FactWords = Readonly<Record<string, (value: never) => string>>;

/**
 * A template filled, by the grammar in `content/en/rig/index.ts`.
 * @throws InputError `words.fact` or `words.kind` where a template asks for what is not there
 */
export function fill(says: Says, facts: TemplateFacts, kinds: FactWords = {}): string {
	return filled(wordingFor(says, facts), facts, kinds, null);
}

/** The same as a sentence: a fact that opens one gets its capital. */
export function sentence(says: Says, facts: TemplateFacts, kinds: FactWords = {}): string {
	return filled(wordingFor(says, facts), facts, kinds, '');
}

/** Every fact and kind a template may ask for, over all its wordings. */
export function asked(says: Says): { readonly facts: readonly string[]; readonly kinds: readonly string[] } {
	const wordings = typeof says === 'string' ? [{ says }] : says;
	const holes = wordings.flatMap((each) => holesIn(each.says));
	const conditions = wordings.flatMap((each) => ('when' in each && each.when ? Object.keys(each.when) : []));
	return {
		facts: [...new Set([...holes.map((hole) => hole.fact), ...conditions])],
		kinds: [...new Set(holes.flatMap((hole) => hole.kind ?? []))],
	};
}

function wordingFor(says: Says, facts: TemplateFacts): string {
	if (typeof says === 'string') return says;
	const fits = says.find(({ when }) =>
		Object.entries(when ?? {}).every(([fact, value]) => take(facts, fact) === value),
	);
	return fits?.says ?? '';
}

/**
 * What a text hangs on beside the words: which of its wordings is taken, and the facts that fill it, each with its kind. Two texts
 * that have this in common say the same in every language.
 */
export function wordingOf(
	says: Says,
	facts: TemplateFacts,
): {
	readonly at: number;
	readonly filledBy: readonly { readonly value: unknown; readonly kind: string | undefined }[];
} {
	const wording = wordingFor(says, facts);
	return {
		at: typeof says === 'string' ? 0 : says.findIndex((each) => each.says === wording),
		filledBy: holesIn(wording).map(({ fact, kind }) => ({ value: take(facts, fact), kind })),
	};
}

const PARTS = /\[([^\]]*)\]|\{([^{}]*)\}/g;

/** @param before what stands in front, for capitals; null where none are wanted */
function filled(template: string, facts: TemplateFacts, kinds: FactWords, before: string | null): string {
	let out = '';
	let at = 0;
	for (const part of template.matchAll(PARTS)) {
		out += template.slice(at, part.index);
		at = part.index + part[0].length;
		const [, optional, hole] = part;
		const here = before === null ? null : before + out;
		if (optional !== undefined) {
			if (holesIn(optional).every(({ fact }) => !isEmpty(take(facts, fact))))
				out += filled(optional, facts, kinds, here);
		} else out += capital(word(readHole(hole ?? ''), facts, kinds), here);
	}
	return out + template.slice(at);
}

interface Hole {
	readonly fact: string;
	readonly kind?: string | undefined;
	readonly byCount?: readonly string[] | undefined;
}

function readHole(text: string): Hole {
	const [, fact = '', kind, byCount] = /^(\w+)(?: as (\w+)|\?(.*))?$/.exec(text) ?? [];
	return { fact, kind, byCount: byCount?.split('|') };
}

const holesIn = (template: string): Hole[] =>
	[...template.matchAll(/\{([^{}]*)\}/g)].map(([, hole = '']) => readHole(hole));

function word(hole: Hole, facts: TemplateFacts, kinds: FactWords): string {
	const value = take(facts, hole.fact);
	if (hole.byCount) return locale.plural(Array.isArray(value) ? value.length : Number(value), ...hole.byCount);
	if (hole.kind === undefined) return typeof value === 'number' ? locale.number(value) : String(value);
	const kind = kinds[hole.kind] as ((value: unknown) => string) | undefined;
	if (!kind) throw new InputError('words.kind', hole.fact, { trouble: 'no-such-kind', kind: hole.kind });
	return kind(value);
}

function take(facts: TemplateFacts, fact: string): unknown {
	if (!(fact in facts))
		throw new InputError('words.fact', fact, { trouble: 'no-such-fact', fact, known: Object.keys(facts) });
	return facts[fact];
}

const isEmpty = (value: unknown): boolean =>
	value === null || value === false || value === 0 || value === '' || (Array.isArray(value) && value.length === 0);

/** With a capital where a sentence begins. */
function capital(text: string, before: string | null): string {
	return before !== null && /(^|[.!?] )$/.test(before) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}
