import type { InputError } from '../../../../shared/error/index.ts';
import type { Refused } from './types.ts';

/** Longest path that is shown. */
const LONGEST_PATH = 60;

/** What could not be read, told plainly: where a shape is off, the place says more than the schema would. */
export function refusedFor(from: string, { code, path, message }: InputError): Refused {
	if (!/^(handed\.shape|paper\.(recipe|answers|seed)|profile\.|sheet\.|event\.|log\.)/.test(code))
		return { from, code, sentence: message };
	const place = path.length > LONGEST_PATH ? `${path.slice(0, LONGEST_PATH)}…` : path;
	const what = code === 'paper.answers' ? 'answers' : code === 'handed.shape' ? '' : 'paper';
	const where = [what, place].filter(Boolean).join(', ');
	return {
		from,
		code,
		sentence: `It is not as Prep Bay writes it${where && ` (at ${where})`}, so it was changed or damaged on its way. Ask for it again.`,
	};
}
