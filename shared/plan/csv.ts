import type { Profile } from '../profile/index.ts';
import { profileOf } from './make.ts';
import { marked } from './marks.ts';
import { type Field, modeNamed, profileNamed, type TableWords } from './table.ts';
import type { Plan, PlanRow } from './types.ts';

/** Columns of a patch that is written, in their order. */
const WRITTEN = Object.freeze([
	'name',
	'type',
	'mode',
	'universe',
	'address',
	'place',
	'circuit',
] as const satisfies readonly Field[]);

/**
 * The patch of a plan as comma-separated values (RFC 4180), every cell in quotes, with a mark at the front by which spreadsheets
 * know UTF-8. Pasted in again with `profiles`, it gives the same rows, but for spaces around a name; nothing in it is a formula.
 * @param headers what stands over each column
 * @param profiles fixtures that its reader will know
 */
export function patchTable(
	plan: Plan,
	headers: Readonly<Record<Field, string>>,
	words: TableWords,
	profiles: readonly Profile[],
): string {
	const cells = ({ name, profile: id, mode, universe, address, place, circuit }: PlanRow): string[] => {
		const profile = profileOf(plan, id);
		const title = profile && profileNamed(profile.name, profiles, {})?.id === id ? profile.name : id;
		const modeTitle = profile?.modes.find((each) => each.id === mode)?.name ?? mode;
		return [
			name,
			title,
			profile && modeNamed(modeTitle, profile, words) === mode ? modeTitle : mode,
			String(universe),
			String(address),
			String(Number(place.x.toFixed(3))),
			circuit,
		];
	};
	const lines = [WRITTEN.map((field) => headers[field]), ...plan.rows.map(cells)];
	const quoted = (cell: string): string => `"${marked(cell.trim()).replaceAll('"', '""')}"`;
	return `\uFEFF${lines.map((line) => line.map(quoted).join(',')).join('\r\n')}\r\n`;
}
