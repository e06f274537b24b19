/** What is said of a number out of its limits. */
export const span = [
	{
		when: { expected: 'whole' },
		says: '{of as measure} is a whole number from {lo} to {hi}; found {found as found}.',
	},
	{ says: '{of as measure} is a number from {lo} to {hi}; found {found as found}.' },
] as const;

/**
 * What is said where a schema does not take a place.
 * @param what the whole that was read, as a sentence begins
 * @param fix what to do about it, a sentence of its own
 */
export const misshapen = <const What extends string, const Fix extends string>(what: What, fix: Fix) =>
	({
		when: { expected: 'shape' },
		says: `${what} doesn’t fit at {path as place}: expected {rule as rule}, found {found as found}. ${fix}`,
	}) as const;

/** What is said of what is no plain JSON of modest size. */
export const notPlain = <const What extends string>(what: What) =>
	[
		{
			when: { trouble: 'too-many-values' },
			says: `${what} is plain JSON of modest size; found more than {limit} values. Ask for the file or link again.`,
		},
		{
			when: { trouble: 'too-deep' },
			says: `${what} is plain JSON of modest size; found things {limit} deep within each other. Ask for the file or link again.`,
		},
		{
			when: { trouble: 'text-too-long' },
			says: `${what} is plain JSON of modest size; found a text of {length} characters. Ask for the file or link again.`,
		},
		{
			when: { trouble: 'not-finite' },
			says: `${what} is plain JSON of modest size; found {found as found}. Ask for the file or link again.`,
		},
		{
			when: { trouble: 'barred-name' },
			says: `${what} is plain JSON of modest size; found the name {found as found}. Ask for the file or link again.`,
		},
	] as const;

/** What is said of a setting that cannot be so. */
export const unfit = [
	{
		when: { trouble: 'no-such-value' },
		says: "'{key}' can’t be {value}. Give a value the setting takes.",
	},
	{
		when: { trouble: 'not-of-the-fixture' },
		says: "'{id}' isn’t {of as part} of this fixture. Known: {known as list}.",
	},
] as const;

/** What is said of a mode that a fixture does not have. */
export const noMode = {
	when: { trouble: 'no-such-mode' },
	says: "{profile} has no mode '{id}'. Its modes: {known as list}.",
} as const;
