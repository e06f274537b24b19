import { murmur3Text } from '../random/index.ts';
import { type DataLink, linksOf } from './line.ts';
import { rowFootprint } from './pack.ts';
import { askedOf, settingsOf } from './sheet.ts';
import type { Plan, PlanRow } from './types.ts';

/** Signs of a mark: no letter that passes for a digit (Crockford's base 32, from memory). */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Signs of a mark: of a million sheets that differ, some thirty have the mark of a given one. */
export const MARK_LENGTH = 5;

/** A short mark of what a sheet says: another mark, another sheet. */
function markOf(content: unknown): string {
	let bits = murmur3Text(JSON.stringify(content), 0);
	let mark = '';
	for (let n = 0; n < MARK_LENGTH; n++) {
		mark += SIGNS[bits & 31];
		bits >>>= 5;
	}
	return mark;
}

/** A mark as a person types it: letters that pass for digits are read as those; null where it is none. */
export function readMark(text: string): string | null {
	const signs = text.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1');
	return signs.length === MARK_LENGTH && [...signs].every((sign) => SIGNS.includes(sign)) ? signs : null;
}

/** What a slip's presses begin from: a fixture at its defaults, what its panel shows, or the plan it was set by before. */
export type SlipFrom = 'defaults' | 'shown' | 'before';

/** A printed sheet that tells something of the plan. */
export interface SheetMark {
	readonly sheet: 'slip' | 'label' | 'patch' | 'whole';
	/** Row id; null for a sheet of all. */
	readonly row: string | null;
	readonly mark: string;
}

/** Marks of the sheets of a plan. */
export interface PlanMarks {
	/** @param before the plan that the lights were set by, for slips that begin from that */
	slip(row: PlanRow, from: SlipFrom, before?: Plan | null): string;
	label(row: PlanRow): string;
	readonly patch: string;
	/** Of all that the slips say together. */
	readonly whole: string;
}

/**
 * The marks of a plan's sheets. They hang on what each sheet tells a crew, so a sheet that is still right keeps its mark. A row's
 * number in the list is told apart (`changesOf`): it changes with any fixture before it.
 */
export function marksOf(plan: Plan): PlanMarks {
	const links = linksOf(plan);
	const names = new Map(plan.rows.map(({ id, name }) => [id, name]));
	const own = new Map(plan.profiles.map((profile) => [profile.id, murmur3Text(JSON.stringify(profile), 0)]));
	const end = (id: string | null | undefined): string | null => (id == null ? null : (names.get(id) ?? id));
	const slip = (row: PlanRow): unknown => {
		const link: DataLink | undefined = links.get(row.id);
		const { overhead } = row.place;
		const wires = [end(link?.from), link?.split ?? false, end(link?.to)];
		return [
			row.name,
			row.profile,
			own.get(row.profile) ?? 0,
			askedOf(plan, row),
			row.universe,
			row.circuit,
			overhead,
			wires,
		];
	};
	const label = (row: PlanRow): unknown => [row.name, row.profile, row.mode, row.universe, row.address];
	return {
		slip(row, from, before = null) {
			const was = from === 'before' ? before?.rows.find(({ id }) => id === row.id) : undefined;
			const start = from === 'shown' ? row.shows : before && was ? settingsOf(before, was) : null;
			return markOf(['slip', slip(row), start]);
		},
		label: (row) => markOf(['label', label(row)]),
		patch: markOf(['patch', plan.rows.map((row) => [label(row), rowFootprint(plan, row), row.place.x, row.circuit])]),
		whole: markOf(['whole', plan.rows.map(slip)]),
	};
}

/** All sheets of a plan with their marks. @param before the plan that the lights were set by */
export function sheetMarks(plan: Plan, before: Plan | null): SheetMark[] {
	const marks = marksOf(plan);
	return [
		{ sheet: 'whole', row: null, mark: marks.whole },
		{ sheet: 'patch', row: null, mark: marks.patch },
		...plan.rows.flatMap((row): SheetMark[] => [
			...(['defaults', 'shown', 'before'] as const).map(
				(from): SheetMark => ({ sheet: 'slip', row: row.id, mark: marks.slip(row, from, before) }),
			),
			{ sheet: 'label', row: row.id, mark: marks.label(row) },
		]),
	];
}

/** What a mark on a sheet in the hand says of it: `current` as the plan stands; `old` as it stood before; or neither, which is old too, or of another rig. */
export type MarkVerdict =
	| { readonly is: 'current' | 'old'; readonly of: SheetMark }
	| { readonly is: 'unknown'; readonly of: null };

/** @param mark as `readMark` gives it @param before the plan that sheets were printed from */
export function verdictOn(mark: string, plan: Plan, before: Plan | null): MarkVerdict {
	const current = sheetMarks(plan, before).find((each) => each.mark === mark);
	if (current) return { is: 'current', of: current };
	const old = before && sheetMarks(before, null).find((each) => each.mark === mark);
	return old ? { is: 'old', of: old } : { is: 'unknown', of: null };
}
