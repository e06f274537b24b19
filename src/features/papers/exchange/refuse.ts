import { InputError } from '../../../../shared/error/index.ts';
import { errorText } from '../../../wording/index.ts';
import type { Refused } from './types.ts';

/** Longest path that is shown. */
const LONGEST_PATH = 60;

/** Codes of what a schema or the parts of a paper refuse: where a shape is off, the place says more than the schema would. */
const OFF = /^(handed\.shape|paper\.(recipe|answers|seed)|profile\.|sheet\.|event\.|log\.)/;

/** An error as whoever handed the thing in is told of it. */
export function handedError(error: InputError): InputError {
	const { code, path } = error;
	if (!OFF.test(code) || ('trouble' in error.facts && error.facts.trouble === 'no-list')) return error;
	const place = path.length > LONGEST_PATH ? `${path.slice(0, LONGEST_PATH)}…` : path;
	const what = code === 'paper.answers' ? 'answers' : code === 'handed.shape' ? '' : 'paper';
	const where = [what, place].filter(Boolean).join(', ');
	return new InputError<InputError['code']>('handed.altered', path, { trouble: 'altered', code, where });
}

/** What could not be read, told plainly. */
export const refusedFor = (from: string, error: InputError): Refused => ({
	from,
	code: error.code,
	sentence: errorText(handedError(error)),
});
