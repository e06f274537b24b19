import { tellingWords } from '#words/bench/index.ts';
import type { Sight } from '../../../sim/rig/index.ts';
import { describeChange } from '../../wording/index.ts';

/** Lamps told one by one; of more only the number is said. */
const MOST_FIXTURES = 3;

/** What changed between two looks at the whole rig, in words; empty where a person would notice nothing. */
export function changesBetween(
	before: ReadonlyMap<string, Sight>,
	after: ReadonlyMap<string, Sight>,
	nameOf: (fixture: string) => string,
): string {
	const changes = [...after].flatMap(([fixture, sight]) => {
		const was = before.get(fixture);
		return (was && describeChange(was, sight, nameOf(fixture))) ?? [];
	});
	const rest = changes.length - MOST_FIXTURES;
	return [...changes.slice(0, MOST_FIXTURES), ...(rest > 0 ? [tellingWords.more(rest)] : [])].join(' ');
}
