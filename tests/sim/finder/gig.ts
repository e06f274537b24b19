import type { PlacedFault } from '../../../sim/event/index.ts';
import {
	type Finder,
	type FinderOptions,
	finderOn,
	type RigOutcomes,
	repairEvents,
	repairTriedBy,
	type Verdict,
	type Witness,
	witness,
} from '../../../sim/finder/index.ts';

/** How one walk went. */
export interface Walked {
	readonly verdict: Verdict | null;
	readonly spent: number;
	/** Seconds of it that went on looks, tries and swaps, walks to them included: the rest went on repairs. */
	readonly looking: number;
	readonly asked: number;
	/** Repairs done on the rig that is really broken, `id@place`. */
	readonly mended: readonly string[];
	readonly cleared: boolean;
}

/** Most questions a walk may ask before it counts as lost. */
const MOST = 80;

/**
 * A tech who answers as the broken rig shows, and does what the verdict says until the complaint is gone.
 * @param slip the number of the one answer that is wrong (from 0): the next of the outcomes instead
 */
export function walkGig(bench: RigOutcomes, broken: Witness, options: FinderOptions = {}, slip = -1): Walked {
	const finder = finderOn(bench, options);
	let rig = broken;
	let asked = 0;
	let looking = 0;
	const mended: string[] = [];
	const answer = (id: string): void => {
		const check = finder.check(id);
		if (!check) throw new Error(`no check ${id}`);
		let outcome = check.read(rig);
		const repair = repairTriedBy(id);
		if (repair) {
			mended.push(`${repair.id}@${repair.place}`);
			const events = repairEvents(bench.sheet, rig.rig, repair);
			rig = witness(rig.after(`mended ${mended.length}`, () => events));
		} else if (asked === slip) {
			const all = known(finder, id, bench);
			outcome = all[(all.indexOf(outcome) + 1) % all.length] ?? outcome;
		}
		asked++;
		const before = finder.spent;
		finder.answer(id, fitting(finder, id, bench, outcome));
		if (!repair) looking += finder.spent - before;
	};
	for (;;) {
		const next = finder.next();
		if (asked > MOST) break;
		if (next) {
			answer(next.check.id);
			continue;
		}
		const verdict = finder.verdict();
		const repair = verdict?.confirmed ? undefined : verdict?.repairs[0];
		if (!repair) break;
		answer(repair.check);
	}
	const verdict = finder.verdict();
	return { verdict, spent: finder.spent, looking, asked, mended, cleared: verdict?.confirmed ?? false };
}

/** The outcomes a check is offered with. */
function known(finder: Finder, id: string, bench: RigOutcomes): string[] {
	const next = finder.next();
	if (next?.check.id === id) return next.outcomes.map((outcome) => outcome.id);
	return [...new Set(bench.outcomes[bench.checks.findIndex((check) => check.id === id)])];
}

/** What a tech answers who sees something no button names: the button that is nearest, here the first. */
function fitting(finder: Finder, id: string, bench: RigOutcomes, outcome: string): string {
	const all = repairTriedBy(id) ? ['still', 'cleared'] : known(finder, id, bench);
	return all.includes(outcome) ? outcome : (all[0] ?? outcome);
}

export const textOf = (faults: readonly PlacedFault[]): string =>
	faults.map(({ fault, place, detail }) => `${fault}@${place}${detail ? `:${detail}` : ''}`).join('+');
