import type { Case } from '#words/lessons/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import { finderOn, hiddenRig, makeFaultDrill, openBench } from '../../../sim/finder/index.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';
import { checkTitle, complaintText, faultName, outcomeText } from '../../wording/index.ts';

/** A case solved by the finder, in words, as it would go for somebody who does as it says. */
export interface Solved {
	readonly rig: string;
	readonly complaint: string;
	readonly steps: readonly { readonly title: string; readonly seen: string }[];
	readonly seconds: number;
	/** What was hidden, by name. */
	readonly was: readonly string[];
	readonly shownHref: string;
	readonly ownHref: string;
}

/** Most checks before a walk counts as lost. */
const MOST = 30;

const linkTo = ({ rig, seed }: Case['shown']): string => `/finder/practise/#rig=${rig}&seed=${seed}&count=1`;

/**
 * A case walked by the finder on the rig that really has the fault in it, until the complaint is gone: worked out when the page is built.
 * @throws InputError `case.lost` where the finder does not get there
 */
export function solve({ id, shown, own }: Case): Solved {
	const drill = makeFaultDrill(shown.rig, shown.seed);
	const { sheet, complaint, faults } = drill;
	const finder = finderOn(openBench(sheet, complaint));
	const broken = hiddenRig(drill);
	const meant = openUnharmed(sheet);
	const steps: { title: string; seen: string }[] = [];
	let cleared = false;
	while (!cleared && steps.length < MOST) {
		const mend = finder.next() === null ? finder.verdict()?.mends[0]?.check : undefined;
		const check = finder.next()?.check ?? (mend === undefined ? undefined : finder.check(mend));
		if (!check) break;
		const outcome = check.read(broken);
		finder.answer(check.id, outcome);
		steps.push({ title: checkTitle(sheet, meant, check), seen: outcomeText(sheet, meant, check, outcome) });
		cleared = check.id.startsWith('mend-') && outcome === 'cleared';
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
