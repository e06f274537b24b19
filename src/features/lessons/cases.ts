import type { Case } from '#words/lessons/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { finderOn, hiddenRig, isRepair, makeFaultDrill, openOutcomes } from '../../../sim/finder/index.ts';
import { type Rig, why } from '../../../sim/rig/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import {
	checkTitle,
	complaintText,
	faultName,
	fixtureLight,
	fixtureName,
	outcomeText,
	reasonText,
} from '../../wording/index.ts';
import { sheetOf } from './open.ts';
import type { Lesson } from './schema.ts';

/** A case solved by the finder, in words, as it would go for somebody who does as it says. */
export interface SolvedCase {
	readonly rig: string;
	readonly complaint: string;
	readonly steps: readonly { readonly title: string; readonly seen: string }[];
	readonly seconds: number;
	/** What was hidden, by name. */
	readonly was: readonly string[];
	readonly shownHref: string;
	readonly ownHref: string;
}

/** Wrong options of a question on a bench at most, and at least. */
const MOST_WRONG = 3;
const LEAST_WRONG = 2;

/**
 * What is right among what is wrong, in an order that tells nothing.
 * @param wrong the likeliest first; what is said twice, or is right, is left out
 * @returns null where fewer than two wrong ones are left
 */
export function choicesOf(
	right: string,
	wrong: readonly string[],
): { options: readonly string[]; right: number } | null {
	const others = [...new Set(wrong)].filter((text) => text !== right).slice(0, MOST_WRONG);
	if (others.length < LEAST_WRONG) return null;
	const options = [right, ...others].toSorted();
	return { options, right: options.indexOf(right) };
}

/** Most checks before a walk counts as lost. */
const MOST = 30;

const linkTo = ({ rig, seed }: Case['shown']): string => `/finder/practise/#rig=${rig}&seed=${seed}&count=1`;

/**
 * A case walked by the finder on the rig that really has the fault in it, until the complaint is gone: worked out when the page is built.
 * @throws InputError `case.lost` where the finder does not get there
 */
export function solve({ id, shown, own }: Case): SolvedCase {
	const drill = makeFaultDrill(shown.rig, shown.seed);
	const { sheet, complaint, faults } = drill;
	const finder = finderOn(openOutcomes(sheet, complaint));
	const broken = hiddenRig(drill);
	const meant = openUnharmed(sheet);
	const steps: { title: string; seen: string }[] = [];
	let cleared = false;
	while (!cleared && steps.length < MOST) {
		const repair = finder.next() === null ? finder.verdict()?.repairs[0]?.check : undefined;
		const check = finder.next()?.check ?? (repair === undefined ? undefined : finder.check(repair));
		if (!check) break;
		const outcome = check.read(broken);
		finder.answer(check.id, outcome);
		steps.push({ title: checkTitle(sheet, meant, check), seen: outcomeText(sheet, meant, check, outcome) });
		cleared = isRepair(check) && outcome === 'cleared';
	}
	if (!cleared) throw new InputError('case.lost', id, { trouble: 'no-end', id });
	return {
		rig: sheet.name,
		complaint: complaintText(sheet, complaint).says,
		steps,
		seconds: finder.spent,
		was: faults.map((fault) => faultName(sheet, fault)),
		shownHref: linkTo(shown),
		ownHref: linkTo(own),
	};
}

/** What a slip does to one lamp, as the rig shows it. */
export interface SlipEffect {
	readonly name: string;
	readonly before: string;
	readonly after: string;
	/** What stops its light; null where light comes out. */
	readonly why: string | null;
}

/** Has all of a log happen to a rig. */
export function play(rig: Rig, log: readonly RigEvent[]): void {
	for (const event of log) {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
	}
}

/** What is seen of the watched lamps before and after the slip, worked out on the lesson's bench. */
export function seenOf({ bench, slip }: Pick<Lesson, 'bench' | 'slip'>): SlipEffect[] {
	const rig = openUnharmed(sheetOf(bench));
	play(rig, bench.log);
	const light = (fixture: string): string => fixtureLight(rig, fixture);
	const before = slip.watch.map(light);
	play(rig, slip.log);
	return slip.watch.map((fixture, i) => {
		const stop = why(rig, fixture).find(({ effect }) => effect === 'stops');
		return {
			name: fixtureName(rig, fixture),
			before: before[i] ?? '',
			after: light(fixture),
			why: stop ? reasonText(rig, fixture, stop) : null,
		};
	});
}
