import * as v from 'valibot';
import { type ErrorCode, type ErrorFacts, InputError, type Shape, shown } from '../error/index.ts';

/** Codes of what does not have the shape it should. */
export type ShapeCode = { [Code in ErrorCode]: Shape extends ErrorFacts[Code] ? Code : never }[ErrorCode];

/**
 * What came from outside, held to a schema. A schema's own messages are ids of rules, never words: `content/en/errors` words them.
 * @param code what the error is called
 * @returns the input as the schema has it, optional parts filled in
 * @throws InputError with that code, and as its path the first place that is off (dots and brackets: `modes[0].slots[2].at`).
 */
export function readShape<Schema extends v.GenericSchema>(
	schema: Schema,
	input: unknown,
	code: ShapeCode,
): v.InferOutput<Schema> {
	const read = v.safeParse(schema, input, { message: () => '' });
	if (read.success) return read.output;
	const [issue] = read.issues;
	throw new InputError<ShapeCode>(code, placeOf(issue), factsOf(issue));
}

/** The rule that an issue breaks: the schema's own id for it, or the kind of check. */
function factsOf(issue: v.BaseIssue<unknown>): Shape {
	const { type, expected, requirement, received, input, message } = issue;
	const rule = { expected: 'shape', known: [], limit: null, found: shown(input) } as const;
	if (message !== '') return { ...rule, rule: message };
	if (expected === 'never') return { ...rule, rule: 'unknown-name', found: shown(received.slice(1, -1)) };
	if (/^"/.test(expected ?? '') && issue.kind === 'schema' && type.endsWith('object'))
		return { ...rule, rule: 'missing', limit: (expected as string).slice(1, -1) };
	if (/length|size|items/.test(type)) return { ...rule, rule: type, limit: Number(requirement), found: received };
	if (typeof requirement === 'number') return { ...rule, rule: type, limit: requirement };
	if (['picklist', 'literal', 'variant', 'union'].includes(type)) {
		const known = (expected ?? '').replaceAll(/^\(|\)$/g, '').split(' | ');
		return known.length > 1
			? { ...rule, rule: 'one-of', known }
			: { ...rule, rule: 'exactly', limit: known[0] ?? null };
	}
	return { ...rule, rule: type };
}

/** Where an issue is, with dots and brackets as every `InputError` has it; empty for the whole input. */
function placeOf(issue: v.BaseIssue<unknown>): string {
	return (issue.path ?? [])
		.map(({ key }, i) => (typeof key === 'number' ? `[${key}]` : `${i === 0 ? '' : '.'}${String(key)}`))
		.join('');
}
