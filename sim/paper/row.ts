import { oncePer } from '../../shared/memo/index.ts';
import { modeOf, type Profile, type Settings, type SomeSettings } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { type LookInWords, seenOf, tellsApart } from './seen.ts';
import { deskWith, idAt, levelsOf, lineThrough, nameAt, sheetFor, stand } from './stage.ts';

/** How one fixture of a row is set. */
export type RowFixtureSettings = Pick<Settings, 'work' | 'lead' | 'mode' | 'held' | 'address'>;

/** Like fixtures side by side, in one line or more. */
export interface FixtureRow {
	readonly profile: Profile;
	readonly mode: string;
	/** Places of the row, from 0, line by line: a desk feeds the first line, where there is one. */
	readonly lines: readonly (readonly number[])[];
	readonly desk: { readonly address: number; readonly held: string } | null;
}

/** What a part says of a fixture. With switches, what stands alone has no address of its own, and who follows no colour. */
function settingsOf({ panel }: Profile, { work, lead, mode, held, address }: RowFixtureSettings): SomeSettings {
	if (panel.kind !== 'dip') return { work, lead, mode, held, address };
	if (work === 'line') return { work, mode, address };
	return work === 'held' ? { work, lead, mode, held } : { work, lead, mode };
}

/** The row as a sheet; null where switches cannot say one of its parts. */
export function rowSheet(
	{ profile, mode, lines, desk }: FixtureRow,
	parts: readonly RowFixtureSettings[],
): RigSheet | null {
	const fixtures = parts.flatMap((part, i) => stand(profile, i + 1, settingsOf(profile, part)) ?? []);
	if (fixtures.length < parts.length) return null;
	const wired = lines.map((line, i) =>
		lineThrough(
			desk && i === 0 ? 'desk:a' : null,
			line.map((at) => idAt(profile, at + 1)),
		),
	);
	const patched = desk ? (lines[0] ?? []) : [];
	return sheetFor(profile.name, [profile], {
		fixtures,
		desk:
			desk &&
			deskWith(
				patched.map((at) => ({ fixture: idAt(profile, at + 1), universe: 1, address: desk.address, mode })),
				levelsOf(profile, mode, desk.address, desk.held),
			),
		cables: wired.flatMap(({ cables }) => cables),
		terminators: wired.flatMap(({ terminators }) => terminators),
	});
}

/** What each fixture of a sheet shows; null where one of them shows what is not told in a few words. */
export function seenAlong(sheet: RigSheet): readonly LookInWords[] | null {
	const rig = openUnharmed(sheet);
	const seen = sheet.fixtures.flatMap(({ id }) => seenOf(rig, id) ?? []);
	return seen.length === sheet.fixtures.length ? seen : null;
}

/** Whether two rows show the same, place by place. */
export const looksAlike = (a: readonly LookInWords[] | null, b: readonly LookInWords[] | null): boolean =>
	a !== null && b !== null && a.length === b.length && a.every((seen, i) => !tellsApart(seen, b[i] as LookInWords));

/** Held colours of a fixture that a leader's row shows alike, each plainly another than the rest; and the mode it shows them in. */
export interface LedColours {
	readonly profile: Profile;
	readonly mode: string;
	readonly colours: readonly string[];
}

/** The modes in which this fixture leads and follows at its own panel, with at least three colours. Found on the rig, once. */
export const ledModes = oncePer((profile: Profile): readonly LedColours[] =>
	canLead(profile) ? profile.modes.flatMap(({ id }) => ledIn(profile, id) ?? []) : [],
);

/** Whether its panel can say both who leads and who follows. */
function canLead({ panel }: Profile): boolean {
	if (panel.kind === 'dip') {
		const sets = panel.fields.flatMap(({ choices }) => choices.map((choice) => choice.sets));
		return sets.some(({ work }) => work === 'follow') && sets.some(({ lead }) => lead === 'on');
	}
	const leaves = panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
	const says = (setting: string, value: string): boolean =>
		leaves.some((item) => setting === 'work' && 'work' in item && item.work === value) ||
		leaves.some(
			(item) => item.kind === 'choice' && item.setting === setting && item.options.some((it) => it.value === value),
		);
	return says('work', 'follow') && says('work', 'held') && says('lead', 'on');
}

function ledIn(profile: Profile, mode: string): LedColours | null {
	const row: FixtureRow = { profile, mode, lines: [[0, 1]], desk: null };
	const told: { held: string; seen: LookInWords }[] = [];
	for (const { id: held } of profile.held) {
		const sheet = rowSheet(row, [leading(profile, mode, held), following(profile, mode, held)]);
		const [leader, follower] = (sheet && seenAlong(sheet)) ?? [];
		if (!leader || !follower || tellsApart(leader, follower) || leader.runs.every(({ percent }) => percent === 0))
			continue;
		if (told.every(({ seen }) => tellsApart(seen, leader))) told.push({ held, seen: leader });
	}
	return told.length >= 3 ? { profile, mode, colours: told.map(({ held }) => held) } : null;
}

/** Where a fixture of the row reads when it follows, and where it is left when that has no say: far from slot one. */
export const followsAt = (profile: Profile): number => (profile.follows === 'own-address' ? 1 : AWAY);
const AWAY = 201;

export const leading = (profile: Profile, mode: string, held: string): RowFixtureSettings => ({
	work: 'held',
	lead: 'on',
	mode,
	held,
	address: followsAt(profile),
});

export const following = (profile: Profile, mode: string, held: string): RowFixtureSettings => ({
	...leading(profile, mode, held),
	work: 'follow',
	lead: 'off',
});

/**
 * The row as a fact, fixture by fixture: its name, who decides its light, whether it leads, its mode, its own colour, and its start
 * address (0 where its switches say none).
 */
export function rowFacts({ profile }: FixtureRow, parts: readonly RowFixtureSettings[]): (string | number)[] {
	return parts.flatMap(({ work, lead, mode, held, address }, i) => [
		nameAt(profile, i + 1),
		work,
		lead,
		modeOf(profile, mode).name,
		staticName(profile, held),
		profile.panel.kind === 'dip' && work !== 'line' ? 0 : address,
	]);
}

export const staticName = ({ held }: Profile, id: string): string => held.find((each) => each.id === id)?.name ?? id;
