import type { CheckSpot } from '#words/checks/index.ts';
import { bundledRig, type RigSheet } from '../../../shared/sheet/index.ts';
import {
	complaintsOf,
	type Finder,
	faultyWitness,
	finderOn,
	isRepair,
	meantWitness,
	openOutcomes,
	type RigOutcomes,
	type Witness,
} from '../../../sim/finder/index.ts';
import { answerDrawing } from '../../ui/index.ts';
import {
	checkTitle,
	complaintText,
	faultCause,
	outcomeText,
	repairConfirm,
	repairText,
	spotOf,
} from '../../wording/index.ts';

/** A light of the picture on the home page, as the rig shows it. */
export interface HuntLight {
	readonly id: string;
	readonly name: string;
	readonly address: number;
	/** sRGB `#rrggbb` of its pool: with the fault in, and once it is repaired. Null where it is dark. */
	readonly colour: string | null;
	readonly repaired: string | null;
}

/** A look that the finder asks for, with what is seen there. */
export interface HuntLook {
	readonly title: string;
	readonly spot: CheckSpot;
	/** What is seen, by the id of its answer. */
	readonly seen: string;
	readonly answers: readonly { readonly id: string; readonly says: string }[];
	/** How many causes fit once it is answered. */
	readonly left: number;
}

/** A hunt for a fault small enough for a first visit: a look or two that a drawing shows, then the repair that the finder tries first. */
export interface Hunt {
	readonly lights: readonly HuntLight[];
	/** The light that is dark. */
	readonly dark: string;
	readonly complaint: string;
	/** How many causes fit the complaint. */
	readonly causes: number;
	readonly looks: readonly HuntLook[];
	readonly cause: string;
	readonly repair: string;
	readonly confirm: string;
	/** What walk, looks and repair would take on the real rig, seconds. */
	readonly seconds: number;
}

/** Most looks that a hunt may have: what can be read in fifteen seconds. Ours. */
const MOST_LOOKS = 2;

/**
 * The hunt of the home page, worked out when the site is built: the third light of a bundled rig, and it alone, is dark by the likeliest
 * fault that the finder comes to by a look or two with a drawing each, and whose repair lights it.
 * @throws RangeError where no fault of the rig is found so
 */
export function makeHunt(sheet: RigSheet = bundledRig('four-in-line')): Hunt {
	const meant = meantWitness(sheet);
	const dark = sheet.fixtures[2]?.id ?? '';
	const complaint = complaintsOf(meant, sheet).find(({ kind, fixture }) => kind === 'dark' && fixture === dark);
	if (!complaint) throw new RangeError(`${dark} cannot be dark`);
	const table = openOutcomes(sheet, complaint);
	const likeliest = table.candidates
		.filter(({ faults, came }) => faults.length === 1 && came !== 'warm')
		.toSorted((a, b) => b.weight - a.weight);
	for (const { faults } of likeliest) {
		const broken = faultyWitness(meant, faults);
		const found = walk(table, meant, broken);
		const [fault] = faults;
		const lights = lightsOf(sheet, meant, broken);
		if (!found || !fault || lights.filter(({ colour }) => colour === null).length !== 1) continue;
		const { looks, repair, seconds } = found;
		const mended = repair.place;
		return {
			lights,
			dark,
			complaint: complaintText(sheet, complaint).says,
			causes: openCauses(finderOn(table)),
			looks,
			cause: faultCause(sheet, fault),
			repair: repairText(sheet, repair.id, mended),
			confirm: repairConfirm(sheet, repair.id, mended),
			seconds,
		};
	}
	throw new RangeError(`no fault of ${complaint.fixture} is found by ${MOST_LOOKS} looks`);
}

type Repair = ReturnType<Finder['suspects']>[number]['repairs'][number];

/** The finder's walk on a broken rig, where it is two drawn looks and the repair that clears it; null for any other. */
function walk(
	table: RigOutcomes,
	meant: Witness,
	broken: Witness,
): { looks: HuntLook[]; repair: Repair; seconds: number } | null {
	const { sheet } = table;
	const finder = finderOn(table);
	const looks: HuntLook[] = [];
	for (;;) {
		const next = finder.next();
		if (!next) return null;
		const { check, outcomes } = next;
		const seen = check.read(broken);
		finder.answer(check.id, seen);
		if (isRepair(check)) {
			const isOver = seen === 'cleared' && looks.length > 0;
			const repair = isOver ? finder.verdict()?.suspects[0]?.repairs[0] : undefined;
			return (repair && { looks, repair, seconds: Math.round(finder.spent) }) || null;
		}
		if (looks.length === MOST_LOOKS || answerDrawing(spotOf(check), seen) === null) return null;
		looks.push({
			title: checkTitle(sheet, meant.rig, check),
			spot: spotOf(check),
			seen,
			answers: outcomes.map(({ id }) => ({ id, says: outcomeText(sheet, meant.rig, check, id) })),
			left: openCauses(finder),
		});
	}
}

/** Causes against which no answer speaks, one for each fault: the unknown is none of them. */
const openCauses = (finder: Finder): number =>
	new Set(
		finder.suspects().flatMap(({ id, faults, against }) => (faults.length > 0 && against.length === 0 ? [id] : [])),
	).size;

const lightsOf = (sheet: RigSheet, meant: Witness, broken: Witness): HuntLight[] =>
	sheet.fixtures.map(({ id, name, settings }) => ({
		id,
		name,
		address: settings.address ?? 1,
		colour: colourOf(broken, id),
		repaired: colourOf(meant, id),
	}));

function colourOf(witness: Witness, id: string): string | null {
	const { brightness, colour } = witness.rest(id).light.whole;
	return brightness > 0 ? colour : null;
}
