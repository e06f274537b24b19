/**
 * What a person is told when something is refused, by the error's code: what was expected, what was found, what to do. The codes and
 * the facts of each are in `shared/error`; the grammar is that of `content/en/rig`. A template may also ask for `path`, the place.
 */
import { gdtfErrors } from './gdtf.ts';
import { inputErrors } from './input.ts';
import { mvrErrors } from './mvr.ts';
import { rigErrors } from './rig.ts';
import { siteErrors } from './site.ts';

export { joints, kindsFound, measures, parts, rules } from './parts.ts';

/** By code. */
export const errors = { ...inputErrors, ...gdtfErrors, ...mvrErrors, ...rigErrors, ...siteErrors } as const;
