/**
 * The one error of the house. A door given nonsense throws `InputError`: a code for programs, a path into what was given, and the
 * facts: what was expected, what was found. Words for a person are in `content/en/errors`, by the code, and filled by `errorText`
 * of `src/wording`; nothing here or in `sim/` words an error but by one general pattern, for programs and logs.
 * `NotFetched` is its neighbour for what comes by `import()` and does not come.
 * `requireWhole` and `requireNumber` hold a number to its limits.
 * What can never be, whatever anybody gives, is no input error: `assert` says so under `if (CHECKED)`, which what ships leaves out.
 */

export type {
	ArchiveTrouble,
	BandTrouble,
	ErrorCode,
	ErrorFacts,
	From0,
	Length,
	NoIndex,
	NotAList,
	NotAmong,
	NotPlain,
	OutOfLimits,
	PartOfFixture,
	Shape,
} from './codes.ts';
export { fetched, InputError, isInputError, messageOf, NotFetched } from './input-error.ts';
export { assert, CHECKED, type Limits, requireNumber, requireWhole, shown } from './require.ts';
