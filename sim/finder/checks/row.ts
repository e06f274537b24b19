import { brightnessAgainst, looksLit, sameColour, type Witness } from '../witness.ts';
import { type Check, check, type KeyOf } from './types.ts';

/** Seconds to look along a row (common practice, no source). */
const GLANCE = 8;

/** Of several lights at once one is more easily missed than of a single one (ours, no source). */
const MISSED = 0.04;

/** Whether a fixture is as it should be to an eye on the floor: lit or not, colour, brightness, and that it moves, jumps or flashes or doesn't. */
function isRight(w: Witness, meant: Witness, fixture: string): boolean {
	const [now, wanted] = [w.rest(fixture), meant.rest(fixture)];
	if (looksLit(now) !== looksLit(wanted)) return false;
	if (now.light.flicker !== wanted.light.flicker || now.light.moving !== wanted.light.moving) return false;
	if (now.light.flashes > 0 !== wanted.light.flashes > 0) return false;
	return !looksLit(now) || (sameColour(now, wanted) && brightnessAgainst(now, wanted) === 'as-meant');
}

/**
 * The other lights of a line, looked along at once from the floor: whether all of them are right, none is, all past the one
 * complained of are wrong and no other, or some here and there.
 * @param row fixtures of the line from its source on, the one complained of among them
 * @param keyOf as of a check on one fixture
 * @returns none for one that stands alone
 */
export function rowChecks(
	meant: Witness,
	fixture: string,
	row: readonly string[],
	keyOf: (fixture: string) => KeyOf,
): Check[] {
	const here = row.indexOf(fixture);
	const others = row.filter((id) => id !== fixture);
	if (others.length === 0) return [];
	const keys = others.map(keyOf);
	const read = (w: Witness): string => {
		const wrong = others.filter((id) => !isRight(w, meant, id));
		if (wrong.length === 0) return 'all';
		if (wrong.length === others.length) return 'none';
		const past = row.slice(here + 1);
		return here > 0 && wrong.length === past.length && wrong.every((id) => past.includes(id)) ? 'beyond' : 'some';
	};
	return [
		check(
			{ kind: 'row-right', since: 3, sort: 'look', seconds: GLANCE, place: fixture, at: fixture, error: MISSED },
			read,
			(w) => keys.map((key) => key(w)).join(),
		),
	];
}
