/**
 * The one error of the house. A door given nonsense throws `InputError`: a code for programs, a path
 * into what was given, and a sentence that tells a person what was expected, what was found and what to do.
 * `NotFetched` is its neighbour for what comes by `import()` and does not come.
 * `requireWhole` and `requireNumber` hold a number to its limits and word that sentence the same way everywhere.
 * What can never be, whatever anybody gives, is no input error: `assert` says so under `if (CHECKED)`, which what ships leaves out.
 */
export { assert, CHECKED } from './assert.ts';
export { InputError, isInputError } from './input-error.ts';
export { fetched, NotFetched } from './not-fetched.ts';
export { type Limits, requireNumber, requireWhole, shown } from './require.ts';
