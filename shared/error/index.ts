/**
 * The one error of the house. A door given nonsense throws `InputError`: a code for programs, a path
 * into what was given, and a sentence that tells a person what was expected, what was found and what to do.
 * `requireWhole` and `requireNumber` hold a number to its limits and word that sentence the same way everywhere.
 */
export { InputError, isInputError } from './input-error.ts';
export { type Limits, requireNumber, requireWhole, shown } from './require.ts';
