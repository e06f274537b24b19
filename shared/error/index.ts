/**
 * The one error of the house. A door given nonsense throws `InputError`: a code for programs, a path
 * into what was given, and a sentence that tells a person what was expected, what was found and what to do.
 */
export { InputError, isInputError } from './input-error.ts';
