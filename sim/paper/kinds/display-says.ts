import {
	type Chance,
	type ItemDraft,
	KIND_TOPICS,
	LEVELS,
	oneOf,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	type Say,
	say,
	type WrongAnswer,
} from '../../../shared/paper/index.ts';
import {
	type DipPanel,
	type KeyedPanel,
	type LeafItem,
	lawOf,
	type MenuItem,
	type PanelKey,
	type Profile,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { valueText } from '../../fixture/index.ts';
import { openUnharmed } from '../../rig/trusted.ts';
import { nameAt, sheetFor, stand } from '../stage.ts';

/**
 * What does the display say? Easy: a few steps along a menu; middle: into a menu, or a value stepped on; hard: all the way to a
 * value that is being set. Of a fixture with switches: which are up, for one, two or all of what its fields say. Read off the rig
 * after the same presses, or with the same switches.
 */
export const displaySays: QuestionKind = {
	id: 'display-says',
	topic: KIND_TOPICS['display-says'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => panels(ground).length > 0,
	make(ground, chance, level) {
		const profile = chance.pick(panels(ground));
		return profile.panel.kind === 'dip'
			? askSwitches(profile, profile.panel, chance, level, ground)
			: askKeys(profile, profile.panel, chance, level, ground);
	},
};

const panels = ({ profiles }: QuestionGround): Profile[] =>
	profiles.filter((profile) => isKeyed(profile) || hasFields(profile));

/** One key, pressed so many times in a row. */
export interface KeyPresses {
	readonly key: PanelKey;
	readonly times: number;
}

/** Most steps that a value is moved. */
const MOST_STEPS = 5;

/** Draws before a menu is held to be too short. */
const DRAWS = 200;

type Editable = Extract<LeafItem, { kind: 'choice' | 'number' }>;
type Menu = Extract<MenuItem, { kind: 'menu' }>;

/** Keys that questions press: a knob has none of them, and is not asked about. */
const PRESSED: Readonly<Record<'tree' | 'flat', readonly PanelKey[]>> = {
	tree: ['down', 'up', 'set'],
	flat: ['page', 'down', 'up'],
};

/** Whether it has a display, the keys that are pressed, and a menu long enough to ask about. */
const isKeyed = ({ panel }: Profile): boolean =>
	panel.kind !== 'dip' &&
	PRESSED[lawOf(panel).shape === 'flat' ? 'flat' : 'tree'].every((key) => panel.keys.includes(key)) &&
	panel.menu.length > 1 &&
	editables(panel).length > 0;

/** Everything that can be set, with the menu it is in; null for one at the top. */
const editables = ({ menu }: KeyedPanel): { readonly menu: Menu | null; readonly item: Editable }[] =>
	menu.flatMap((top) =>
		(top.kind === 'menu' ? top.items : [top]).flatMap((item) =>
			item.kind === 'choice' || item.kind === 'number' ? [{ menu: top.kind === 'menu' ? top : null, item }] : [],
		),
	);

/** What a display says after some presses, from its first item on. */
function askKeys(
	profile: Profile,
	panel: KeyedPanel,
	chance: Chance,
	level: PaperLevel,
	ground: QuestionGround,
): ItemDraft {
	for (let n = 0; n < DRAWS; n++) {
		const { menu, item } = chance.pick(editables(panel));
		const isFlat = lawOf(panel).shape === 'flat';
		const presses = isFlat ? pressesOnFlat(panel, chance, level, item) : pressesFor(panel, chance, level, menu, item);
		const settings = startAt(chance, item);
		const placed = stand(profile, 1, settings);
		if (!placed) continue;
		const sheet = sheetFor(nameAt(profile, 1), [profile], { fixtures: [placed] });
		const shownAfter = panelOf(sheet);
		const right = shownAfter(presses);
		const asked = isFlat
			? null
			: presses.filter(({ key }) => key === 'set').length > (menu ? 1 : 0)
				? item.label
				: null;
		// a second line that the question does not tell is no ground to call an option wrong
		const isTold = ground.version === 1 || panel.kind === 'code' || right[0] === asked;
		const slipped = isFlat
			? slipsOnFlat(presses)
			: [...slips(presses), ...(ground.version === 1 ? [] : moreSlips(presses))];
		const wrongs = slipped
			.map(([mistake, slip]) => [mistake, shownAfter(slip)] as const)
			.filter(([, shown]) => isTold || isFlat || shown[0] !== right[0])
			.map(([mistake, shown]): WrongAnswer<Say> => [mistake, label(shown)]);
		const draft = oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					profile: profile.id,
					panel: isFlat ? 'flat' : panel.kind,
					shown: shownAfter([]),
					presses: presses.flatMap(({ key, times }) => [key, times]),
					top: panel.menu.map((each) => each.label),
					menu: presses.some(({ key }) => key === 'set') && menu ? menu.label : null,
					inside: presses.some(({ key }) => key === 'set') && menu ? menu.items.map((each) => each.label) : [],
					item: asked,
					options: item.kind === 'choice' ? item.options.map((each) => each.label) : [],
					value: valueText(item, placed.settings[item.setting] ?? profile.defaults[item.setting]),
					steps: stepsOf(shownAfter, presses),
				},
				bench: sheet,
			},
			label(right),
			wrongs,
			ground,
		);
		// fewer wrong ones than two: the menu is too short for these presses
		if (draft.mistakes.length >= 2) return draft;
	}
	throw new RangeError(`the menu of ${profile.id} is too short to ask about`);
}

const label = (lines: readonly string[]): Say =>
	lines.length > 1
		? say('two-lines', { first: lines[0] ?? '', second: lines[1] ?? '' })
		: say('one-line', { line: lines[0] ?? '' });

/** What a panel shows after some presses: its lines without the blanks around them. */
type PanelAfter = (presses: readonly KeyPresses[]) => string[];

/** The panel of a sheet's one fixture. Its rig is opened once, and each row of presses goes to a fork: forks share what they pass. */
function panelOf(sheet: RigSheet): PanelAfter {
	const opened = openUnharmed(sheet);
	const fixture = sheet.fixtures[0]?.id ?? '';
	return (presses) => {
		const rig = opened.fork();
		for (const { key, times } of presses) for (let n = 0; n < times; n++) rig.send({ type: 'key.tap', fixture, key });
		const { display } = rig.look(fixture);
		return display.kind === 'keyed' ? display.lines.map((line) => line.trim()) : [];
	};
}

/** What is shown after each key, as a fact: the key, how often it is pressed, and two lines. */
const stepsOf = (shownAfter: PanelAfter, presses: readonly KeyPresses[]): (string | number)[] =>
	presses.flatMap(({ key, times }, i) => {
		const [first = '', second = ''] = shownAfter(presses.slice(0, i + 1));
		return [key, times, first, second];
	});

/** The way to an item, as far as the level goes. */
function pressesFor(
	panel: KeyedPanel,
	chance: Chance,
	level: PaperLevel,
	menu: Menu | null,
	item: Editable,
): KeyPresses[] {
	const along = (places: number, count: number): KeyPresses[] => {
		const up = count - places;
		return places === 0
			? []
			: up < places && chance.chance(0.7)
				? [{ key: 'up', times: up }]
				: [{ key: 'down', times: places }];
	};
	const set: KeyPresses = { key: 'set', times: 1 };
	const atTop = panel.menu.findIndex((each) => each === (menu ?? item));
	const toTop = along(atTop, panel.menu.length);
	if (level === 'easy')
		return toTop.length > 0 ? toTop : [{ key: 'down', times: chance.int(1, panel.menu.length - 1) }];
	const inside = menu ? [set, ...along(menu.items.indexOf(item), menu.items.length)] : [];
	const step: KeyPresses = {
		key: chance.pick(['up', 'down']),
		times: chance.int(1, item.kind === 'number' ? MOST_STEPS : 3),
	};
	if (level === 'middle' && menu && chance.chance(0.5)) return [...toTop, ...inside];
	const end: KeyPresses[] =
		level === 'hard' && panel.kind === 'text' && chance.chance(0.4)
			? [{ key: chance.pick(['set', 'back']), times: 1 }]
			: [];
	return [...toTop, ...inside, set, step, ...end];
}

/** The way to a function of a flat panel, a value of it, and on to another, as far as the level goes. */
function pressesOnFlat(panel: KeyedPanel, chance: Chance, level: PaperLevel, item: Editable): KeyPresses[] {
	const count = panel.menu.length;
	const at = panel.menu.indexOf(item);
	const page = (times: number): KeyPresses => ({ key: 'page', times });
	const to = page(at === 0 ? count : at);
	if (level === 'easy') return [to];
	const step: KeyPresses = { key: chance.pick(['up', 'down']), times: chance.int(1, MOST_STEPS) };
	if (level === 'middle') return [to, step];
	// once round, and back to what was set
	return [to, step, page(count)];
}

/** The presses as they go wrong on a flat panel. */
function slipsOnFlat(presses: readonly KeyPresses[]): WrongAnswer<readonly KeyPresses[]>[] {
	const stepAt = presses.findIndex(({ key }) => key !== 'page');
	const last = stepAt < 0 ? presses.length - 1 : stepAt;
	const moved = presses[last];
	if (!moved) return [];
	const put = (press: KeyPresses): KeyPresses[] => presses.map((each, i) => (i === last ? press : each));
	const other = moved.key === 'up' ? 'down' : 'up';
	return [
		['off-by-one-low', put({ ...moved, times: moved.times - 1 })],
		['off-by-one-high', put({ ...moved, times: moved.times + 1 })],
		['wrong-order', put({ key: other, times: moved.times })],
		['off-by-one-high', put({ ...moved, times: moved.times + 2 })],
		['other-setting', presses.slice(0, last)],
		['other-setting', [...presses, { key: 'page', times: 1 }]],
		['other-setting', [{ key: 'page', times: 1 }, ...presses]],
	];
}

/** What the item stands at: a value well inside its range, or one of its options. */
function startAt(chance: Chance, item: Editable): SomeSettings {
	// a panel that locks or sleeps says something else
	if (item.setting === 'lock' || item.setting === 'sleep') return {};
	if (item.kind === 'choice') return { [item.setting]: chance.pick(item.options).value };
	const room = item.most - item.least > 2 * MOST_STEPS ? MOST_STEPS : 0;
	return { [item.setting]: chance.int(item.least + room, item.most - room) };
}

/** The presses as they go wrong. */
function slips(presses: readonly KeyPresses[]): WrongAnswer<readonly KeyPresses[]>[] {
	const last = presses.findLastIndex(({ key }) => key === 'up' || key === 'down');
	const lastSet = presses.findLastIndex(({ key }) => key === 'set');
	const put = (at: number, press: KeyPresses): KeyPresses[] => presses.map((each, i) => (i === at ? press : each));
	const moved = presses[last];
	const without = (at: number): KeyPresses[] => presses.filter((_, i) => i !== at);
	return [
		...(moved
			? ([
					['off-by-one-low', put(last, { ...moved, times: moved.times - 1 })],
					['off-by-one-high', put(last, { ...moved, times: moved.times + 1 })],
					['wrong-order', put(last, { ...moved, key: moved.key === 'up' ? 'down' : 'up' })],
				] as const)
			: []),
		...(lastSet >= 0 ? ([['other-setting', without(lastSet)]] as const) : []),
		['other-setting', [...presses, { key: 'set', times: 1 }]],
		['other-setting', [...presses, { key: 'down', times: 2 }]],
		['other-setting', [{ key: 'down', times: 1 }, ...presses]],
	];
}

/** Two steps off, and a slip on top of another: so that the right display is not the one that all the others are a slip from. */
function moreSlips(presses: readonly KeyPresses[]): WrongAnswer<readonly KeyPresses[]>[] {
	const last = presses.findLastIndex(({ key }) => key === 'up' || key === 'down');
	const moved = presses[last];
	if (!moved) return [];
	const put = (press: KeyPresses): KeyPresses[] => presses.map((each, i) => (i === last ? press : each));
	const other = moved.key === 'up' ? 'down' : 'up';
	return [
		['off-by-one-high', put({ ...moved, times: moved.times + 2 })],
		['wrong-order', put({ key: other, times: moved.times + 1 })],
		['wrong-order', put({ key: other, times: moved.times - 1 })],
	];
}

type Field = DipPanel['fields'][number];

/** One field and which of its choices is meant, from 0. */
interface MeantChoice {
	readonly field: Field;
	readonly at: number;
}

const GATE = 10;

/** Whether its switches say more than an address. */
export const hasFields = ({ panel }: Profile): boolean =>
	panel.kind === 'dip' && panel.fields.some(({ choices }) => choices.length > 3);

/** Which switches are up for what one field says, or two, or all. Easy, middle and hard. */
function askSwitches(
	profile: Profile,
	panel: DipPanel,
	chance: Chance,
	level: PaperLevel,
	ground: QuestionGround,
): ItemDraft {
	const [wide, ...rest] = [...panel.fields].sort((a, b) => b.choices.length - a.choices.length) as [Field, ...Field[]];
	const more = level === 'easy' ? [] : level === 'middle' ? chance.shuffle(rest).slice(0, 1) : rest;
	const meant: MeantChoice[] = [wide, ...more].map((field) => ({ field, at: chance.int(1, field.choices.length - 1) }));
	const right = upFor(meant);
	const sheet = sheetUp(profile, right);
	const means = settingsOf(sheet);
	const wrongs = switchSlips(meant, right)
		// other switches that come to the same are no wrong ones
		.filter(([, up]) => settingsOf(sheetUp(profile, up)) !== means)
		.map(
			([mistake, up]): WrongAnswer<ReturnType<typeof switchLabel>> => [
				mistake,
				switchLabel(upOn(sheetUp(profile, up))),
			],
		);
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
		switchLabel(upOn(sheet)),
		wrongs,
		ground,
	);
}

const switchLabel = (up: readonly number[]) => say('switches-up', { up, none: up.length === 0 });

const rising = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/** The switches of a field that make a number: the first listed is worth 1, each next twice as much. */
const bitsFor = ({ switches }: Field, at: number): number[] => switches.filter((_, bit) => (at & (2 ** bit)) !== 0);

const upFor = (meant: readonly MeantChoice[]): number[] =>
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

function switchSlips(meant: readonly MeantChoice[], right: readonly number[]): WrongAnswer<readonly number[]>[] {
	const [wide, ...rest] = meant as [MeantChoice, ...MeantChoice[]];
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
		['off-by-one-high', withAt(Math.min(wide.at + 1, choices.length - 1)).filter((number) => number !== GATE)],
		['switches-reversed', rising([...backwards, ...others])],
	];
}
