import { type Chance, type Draft, type Level, oneOf, say, type Wrong } from '../../shared/paper/index.ts';
import type { DipPanel, Profile } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { nameAt, sheetFor, stand } from './stage.ts';

type Field = DipPanel['fields'][number];

/** One field and which of its choices is meant, from 0. */
interface Meant {
	readonly field: Field;
	readonly at: number;
}

const GATE = 10;

/** Whether its switches say more than an address. */
export const hasFields = ({ panel }: Profile): boolean =>
	panel.kind === 'dip' && panel.fields.some(({ choices }) => choices.length > 3);

/** Which switches are up for what one field says, or two, or all. Easy, middle and hard. */
export function askSwitches(profile: Profile, panel: DipPanel, chance: Chance, level: Level): Draft {
	const [wide, ...rest] = [...panel.fields].sort((a, b) => b.choices.length - a.choices.length) as [Field, ...Field[]];
	const more = level === 'easy' ? [] : level === 'middle' ? chance.shuffle(rest).slice(0, 1) : rest;
	const meant: Meant[] = [wide, ...more].map((field) => ({ field, at: chance.int(1, field.choices.length - 1) }));
	const right = upFor(meant);
	const sheet = sheetUp(profile, right);
	const means = settingsOf(sheet);
	const wrongs = slips(meant, right)
		// other switches that come to the same are no wrong ones
		.filter(([, up]) => settingsOf(sheetUp(profile, up)) !== means)
		.map(([mistake, up]): Wrong<ReturnType<typeof label>> => [mistake, label(upOn(sheetUp(profile, up)))]);
	return oneOf(
		chance,
		{
			facts: {
				fixture: profile.name,
				profile: profile.id,
				panel: 'dip',
				wants: meant.map(({ field, at }) => field.choices[at]?.title ?? ''),
				fields: meant.flatMap(({ field, at }) => [field.title, field.switches.join(' '), at]),
				choices: meant.flatMap(({ field }) => field.choices.flatMap(({ title }, at) => [field.title, at, title])),
				up: right,
			},
			bench: sheet,
		},
		label(upOn(sheet)),
		wrongs,
	);
}

const label = (up: readonly number[]) => say('switches-up', { up, none: up.length === 0 });

const rising = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** The switches of a field that make a number: the first listed is worth 1, each next twice as much. */
const bitsFor = ({ switches }: Field, at: number): number[] => switches.filter((_, bit) => (at & (2 ** bit)) !== 0);

const upFor = (meant: readonly Meant[]): number[] =>
	rising([...meant.flatMap(({ field, at }) => bitsFor(field, at)), GATE]);

function sheetUp(profile: Profile, up: readonly number[]): RigSheet {
	const placed = stand(profile, 1, {});
	if (!placed) throw new RangeError(`switches of ${profile.id} cannot stand at all`);
	const switches = Array.from({ length: GATE }, (_, i) => up.includes(i + 1));
	return sheetFor(nameAt(profile, 1), [profile], { fixtures: [{ ...placed, switches }] });
}

/** What the rig makes of a sheet's one fixture: all its settings as one text. */
function settingsOf(sheet: RigSheet): string {
	const [unit] = openUnharmed(sheet).gear.units.values();
	return JSON.stringify(unit?.state.context.settings);
}

/** The switches that are up, as they are seen. */
function upOn(sheet: RigSheet): number[] {
	const [placed] = sheet.fixtures;
	const display = placed && openUnharmed(sheet).look(placed.id).display;
	return display?.kind === 'switches' ? display.up.flatMap((isUp, i) => (isUp ? [i + 1] : [])) : [];
}

function slips(meant: readonly Meant[], right: readonly number[]): Wrong<readonly number[]>[] {
	const [wide, ...rest] = meant as [Meant, ...Meant[]];
	const withAt = (at: number): number[] => upFor([{ ...wide, at }, ...rest]);
	const others = rest.flatMap(({ field, at }) => bitsFor(field, at));
	const { switches, choices } = wide.field;
	const backwards = switches.filter((_, bit) => (wide.at & (2 ** (switches.length - 1 - bit))) !== 0);
	return [
		['switches-reversed', rising([...backwards, ...others, GATE])],
		['off-by-one-high', withAt(Math.min(wide.at + 1, choices.length - 1))],
		['off-by-one-low', withAt(wide.at - 1)],
		['switch-number-for-weight', rising([...switches.filter((_, i) => i + 1 === wide.at), ...others, GATE])],
		['other-setting', right.filter((number) => number !== GATE)],
		['some-missed', upFor([wide])],
	];
}
