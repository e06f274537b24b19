import { errors, joints, kindsFound, measures, parts, rules } from '#words/errors/index.ts';
import { listWords, type Says } from '#words/rig/index.ts';
import type { ErrorCode, InputError } from '../../shared/error/index.ts';
import { type FactWords, fill, sentence, type TemplateFacts } from './fill.ts';

// a code without words fails here
const words: Readonly<Record<ErrorCode, Says>> = errors;

/** What a person is told of an error: what was expected, what was found, what to do. */
export function errorText({ code, path, facts }: Pick<InputError, 'code' | 'path' | 'facts'>): string {
	// a wording is picked by facts that not all errors of its code carry
	const all: TemplateFacts = { expected: null, trouble: null, of: null, ...facts, path };
	return sentence(words[code], all, { ...kinds, rule: (id: string) => fill(ruleOf(id), all, kinds) });
}

const kinds: FactWords = {
	found: (text: string) => (kindsFound as Readonly<Record<string, string>>)[text] ?? text,
	measure: (of: keyof typeof measures) => measures[of],
	part: (of: keyof typeof parts) => parts[of],
	place: (path: string) => path || joints.top,
	list: (known: readonly string[]) => shortened(known).join(joints.comma) || joints.none,
	either: (known: readonly string[]) => known.slice(0, -1).join(joints.comma) + joints.or + known.at(-1),
};

/** Longest list said in full: of a longer one nobody reads the rest. */
const LONGEST = 40;

const shortened = (known: readonly string[]): readonly string[] =>
	known.length <= LONGEST
		? known
		: [...known.slice(0, LONGEST), fill(listWords.more, { count: known.length - LONGEST })];

const ruleOf = (id: string): string => (rules as Readonly<Record<string, string>>)[id] ?? rules.other;
