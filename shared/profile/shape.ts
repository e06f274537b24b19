import * as v from 'valibot';
import { InputError } from '../error/index.ts';

/** What `readShape` says when a shape is off. */
type ShapeWords = {
	/** The error's code, e.g. `profile.shape`. */
	readonly code: string;
	/** The sentence's subject, e.g. `The profile`. */
	readonly what: string;
	/** What to do about it: the sentence's end, a sentence of its own. */
	readonly mend: string;
};

/**
 * What came from outside, held to a schema.
 * @returns the input as the schema has it, optional parts filled in
 * @throws InputError with the words' code, and as its path the first place that is off (dots and brackets: `modes[0].slots[2].at`).
 */
export function readShape<Schema extends v.GenericSchema>(
	schema: Schema,
	input: unknown,
	words: ShapeWords,
): v.InferOutput<Schema> {
	const read = v.safeParse(schema, input);
	if (read.success) return read.output;
	const issue = read.issues[0];
	const path = placeOf(issue);
	throw new InputError(
		words.code,
		path,
		`${words.what} does not fit at ${path || 'its top'}: ${issue.message}. ${words.mend}`,
	);
}

/** Where an issue is, with dots and brackets as every `InputError` has it; empty for the whole input. */
function placeOf(issue: v.BaseIssue<unknown>): string {
	return (issue.path ?? [])
		.map(({ key }, i) => (typeof key === 'number' ? `[${key}]` : `${i === 0 ? '' : '.'}${String(key)}`))
		.join('');
}
