import {
	KIND_TOPICS,
	LEVELS,
	type MistakeId,
	oneOf,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	type Say,
	say,
} from '../../../shared/paper/index.ts';
import { modeOf } from '../../../shared/profile/index.ts';
import {
	type FixtureRow,
	following,
	followsAt,
	type LedColours,
	leading,
	ledModes,
	type RowFixtureSettings,
	rowFacts,
	rowSheet,
	seenAlong,
	staticName,
} from '../row.ts';
import { type LookInWords, tellsApart } from '../seen.ts';
import { nameAt } from '../stage.ts';

/** One setting of one fixture, and what it becomes. */
interface SettingChange {
	/** Place in the row, from 0: the leader is first. */
	readonly at: number;
	readonly key: keyof RowFixtureSettings;
	readonly value: string | number;
}

const LEADER = 0;
const MOST_WRONG = 3;
/** Wrong ones to draw from, where their look must not tell. */
const MOST_FOUND = 8;
/** Draws before a row is held to have nothing that can go astray; with the bundled fixtures the first or the second will do. */
const DRAWS = 200;

/**
 * One follower does not follow: which one setting makes it? Easy: it minds something else than a leader; middle: its mode, or its
 * address where that has a say; hard: the same in a longer row. Which change helps is found by trying each on the rig.
 */
export const followSetting: QuestionKind = {
	id: 'follow-setting',
	topic: KIND_TOPICS['follow-setting'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => grounds(ground).length > 0,
	make(ground, chance, level) {
		for (let n = 0; n < DRAWS; n++) {
			const led = chance.pick(grounds(ground));
			const { profile, mode } = led;
			const count = level === 'hard' ? 4 : 3;
			const row: FixtureRow = { profile, mode, lines: [Array.from({ length: count }, (_, i) => i)], desk: null };
			const [shown, own, ...more] = chance.shuffle(led.colours) as [string, string, ...string[]];
			const parts = row.lines
				.flat()
				.map((at) => (at === LEADER ? leading : following)(profile, mode, at === LEADER ? shown : own));
			const stray = chance.int(1, count - 1);
			const amiss = chance.pick(strayings(led, parts[stray] as RowFixtureSettings, level));
			const found = changed(parts, { at: stray, ...amiss });
			const repair: SettingChange = {
				at: stray,
				key: amiss.key,
				value: (parts[stray] as RowFixtureSettings)[amiss.key],
			};
			const colours = [shown, more[0] ?? own];
			const doesMove = (change: SettingChange): boolean => movesAsOne(row, changed(found, change), colours);
			if (movesAsOne(row, found, colours) || !doesMove(repair)) continue;
			const offers = chance
				.shuffle(changesOf(led, found, stray, level === 'hard' || ground.version !== 1))
				.filter((it) => !isSame(it, repair));
			// one that says what the panel cannot is no setting, and one that helps too is no wrong one
			const wrongs: SettingChange[] = [];
			for (const it of offers) {
				if (wrongs.length === (ground.version === 1 ? MOST_WRONG : MOST_FOUND)) break;
				if (rowSheet(row, changed(found, it)) && !doesMove(it)) wrongs.push(it);
			}
			if (wrongs.length < 2) continue;
			const labels = (it: SettingChange): Say => labelOf(led, it);
			return oneOf(
				chance,
				{
					facts: {
						fixture: profile.name,
						profile: profile.id,
						leader: nameAt(profile, LEADER + 1),
						stray: nameAt(profile, stray + 1),
						row: rowFacts(row, found),
						key: repair.key,
						reads: profile.follows,
						mode: modeOf(profile, mode).name,
					},
					bench: rowSheet(row, found),
				},
				labels(repair),
				wrongs.map((it) => [mistakeOf(it), labels(it)] as const),
				ground,
			);
		}
		throw new RangeError('no setting of these rows goes astray by itself');
	},
};

const grounds = ({ profiles }: QuestionGround): readonly LedColours[] =>
	profiles.flatMap((profile) => ledModes(profile));

const isSame = (a: SettingChange, b: SettingChange): boolean => a.at === b.at && a.key === b.key && a.value === b.value;

const changed = (parts: readonly RowFixtureSettings[], { at, key, value }: SettingChange): RowFixtureSettings[] =>
	parts.map((part, i) => (i === at ? { ...part, [key]: value } : part));

/** What can have gone astray in a follower, so that one setting alone puts it right. */
function strayings(
	{ profile, mode }: LedColours,
	{ held }: RowFixtureSettings,
	level: PaperLevel,
): Pick<SettingChange, 'key' | 'value'>[] {
	const works: Pick<SettingChange, 'key' | 'value'>[] = [{ key: 'work', value: 'held' }];
	if (followsAt(profile) !== 1) works.push({ key: 'work', value: 'line' });
	if (level === 'easy') return works;
	const modes = ledModes(profile).filter((each) => each.mode !== mode);
	const others = modes.map((each) => ({ key: 'mode' as const, value: each.mode }));
	const reads = profile.follows === 'own-address' && profile.panel.kind !== 'dip';
	const addresses = reads ? [2, 11, 101].map((value) => ({ key: 'address' as const, value })) : [];
	const all = [...others, ...addresses];
	return all.length > 0 && held !== '' ? all : works;
}

/** Whether the whole row shows its leader's colour, and goes with it to another. */
function movesAsOne(row: FixtureRow, parts: readonly RowFixtureSettings[], colours: readonly string[]): boolean {
	const shown: LookInWords[] = [];
	for (const held of colours) {
		const sheet = rowSheet(row, changed(parts, { at: LEADER, key: 'held', value: held }));
		const [leader, ...rest] = (sheet && seenAlong(sheet)) ?? [];
		if (!leader || rest.length < parts.length - 1 || rest.some((each) => tellsApart(leader, each))) return false;
		shown.push(leader);
	}
	return shown.every((seen, i) => i === 0 || tellsApart(shown[i - 1] as LookInWords, seen));
}

/** Settings to offer: those of the fixture that strays, and those of its leader too: in papers of version 1 with hard alone. */
function changesOf(
	{ profile, mode }: LedColours,
	parts: readonly RowFixtureSettings[],
	stray: number,
	leadersToo: boolean,
): SettingChange[] {
	const found = parts[stray] as RowFixtureSettings;
	const isDip = profile.panel.kind === 'dip';
	const modes = profile.modes.map(({ id }) => id);
	const own: SettingChange[] = [
		// with switches, to obey the line is to have some address: one of them follows as well
		...(['line', 'held', 'follow'] as const)
			.filter((value) => value !== 'line' || !isDip)
			.map((value) => ({ at: stray, key: 'work' as const, value })),
		{ at: stray, key: 'lead', value: 'on' },
		...modes.map((value) => ({ at: stray, key: 'mode' as const, value })),
		...(isDip && found.work !== 'line'
			? []
			: [1, 10, 101].map((value) => ({ at: stray, key: 'address' as const, value }))),
		...(isDip && found.work !== 'held'
			? []
			: [{ at: stray, key: 'held' as const, value: (parts[LEADER] as RowFixtureSettings).held }]),
	];
	const leaders: SettingChange[] = [
		{ at: LEADER, key: 'lead', value: 'off' },
		{ at: LEADER, key: 'work', value: 'follow' },
		...modes
			.filter((value) => value === found.mode || value === mode)
			.map((value) => ({ at: LEADER, key: 'mode' as const, value })),
	];
	return (leadersToo ? [...leaders, ...own] : own).filter(({ at, key, value }) => parts[at]?.[key] !== value);
}

function labelOf({ profile }: LedColours, { at, key, value }: SettingChange): Say {
	const fixture = nameAt(profile, at + 1);
	const told =
		key === 'mode' ? modeOf(profile, String(value)).name : key === 'held' ? staticName(profile, String(value)) : value;
	return say('set', { fixture, key, value: told });
}

const mistakeOf = ({ key }: SettingChange): MistakeId =>
	key === 'work' || key === 'lead' ? 'other-role' : 'other-setting';
