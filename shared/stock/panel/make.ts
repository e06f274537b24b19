import type { KeyedPanel, MenuItem, Panel, PanelKey, Profile, Settings, SettingValue } from '../../profile/index.ts';
import { KEYS_OF, type PanelEntry } from './entry.ts';
import { type Chosen, Ground } from './ground.ts';
import { ItemMaker } from './items.ts';
import { readLines } from './lines.ts';
import { type Asked, hasOf, lawFor, questionsFor, settled, TIMES } from './questions.ts';
import { SwitchMaker } from './switches.ts';
import { type ItemSense, PANEL_STOPS, type PanelMark, PanelMarks, type PanelWords } from './types.ts';

/** Columns of a display of text: a label of 16, and the arrow before a value that is being set. */
const COLUMNS = 18;

/** What a person's words on their panel come to. */
export interface OwnPanel {
	/** Null where there is none yet: see the marks that stop it. */
	readonly panel: Panel | null;
	/** The fixture's colours and programmes, with those that only its menu names. */
	readonly held: Profile['held'];
	readonly programmes: Profile['programmes'];
	readonly marks: readonly PanelMark[];
	readonly asked: readonly Asked[];
	/** Items that do nothing here. */
	readonly idle: readonly string[];
}

/** Reads a panel as its crew wrote it, for a fixture with these modes, colours and programmes. Never throws. */
export function makePanel(entry: PanelEntry, fixture: Chosen, words: PanelWords): OwnPanel {
	const marks = new PanelMarks();
	const ground = new Ground(fixture);
	const lines = readLines(entry.menu, marks);
	const first = { line: 1, column: 1, length: 1 };
	if (entry.way === 'switches') {
		const asked = questionsFor(entry, hasOf(entry, []));
		const panel = new SwitchMaker(ground, words, marks).panel(lines, settled(asked));
		return { panel, ...chosenOf(ground), marks: inOrder(marks), asked, idle: [] };
	}
	if (lines.length === 0) marks.add('no-items', first, {});
	checkKeys(entry, marks);
	const shape = entry.way === 'flat' ? 'flat' : 'tree';
	const { display } = entry;
	const maker = new ItemMaker(ground, words, marks, { display, shape, wraps: entry.answers.ends === 'round' });
	const menu = maker.menu(lines);
	const has = hasOf(entry, menu);
	const asked = questionsFor(entry, has);
	if (lines.length > 0)
		for (const sense of ['address', ...(shape === 'tree' ? (['work'] as const) : [])] as const)
			if (!has.settings.has(sense)) marks.add('missing', first, { sense: sense satisfies ItemSense });
	const isStopped = marks.all.some(({ code }) => PANEL_STOPS.has(code));
	const printed = Object.fromEntries(
		entry.keys.flatMap(({ key, name }) => (name.trim() === '' ? [] : [[key, name.trim()]])),
	) as Partial<Record<PanelKey, string>>;
	const own = {
		keys: entry.keys.map(({ key }) => key),
		...(Object.keys(printed).length > 0 ? { printed: printed as NonNullable<KeyedPanel['printed']> } : {}),
		law: lawFor(entry, settled(asked)),
		...saidOf(asked),
		...TIMES,
		menu,
	};
	const panel: KeyedPanel =
		display === 'code' ? { kind: 'code', columns: 4, ...own } : { kind: 'text', columns: COLUMNS, ...own };
	return { panel: isStopped ? null : panel, ...chosenOf(ground), marks: inOrder(marks), asked, idle: maker.idle };
}

/** Whether scrolling acts, where somebody said so: what is only assumed is no word on a running show. */
function saidOf(asked: readonly Asked[]): Pick<KeyedPanel, 'scrolling'> {
	const given = asked.find(({ id }) => id === 'acts')?.given;
	return given ? { scrolling: given === 'scrolling' ? 'acts' : 'still' } : {};
}

const chosenOf = ({ held, programmes }: Ground) => ({ held: [...held], programmes: [...programmes] });

const inOrder = ({ all }: PanelMarks): PanelMark[] =>
	all.toSorted((a, b) => a.place.line - b.place.line || a.place.column - b.place.column);

function checkKeys({ way, keys }: PanelEntry, marks: PanelMarks): void {
	const at = { line: 1, column: 1, length: 1 };
	for (const [i, { key }] of keys.entries())
		if (keys.findIndex((each) => each.key === key) < i) marks.add('key-twice', at, { key });
	const may: readonly PanelKey[] = KEYS_OF[way];
	// a long press of the key that goes in leaves where no key does
	for (const key of may)
		if (key !== 'back' && !keys.some((each) => each.key === key)) marks.add('key-missing', at, { key });
}

/** What a fixture comes set to, where its panel can show that; else the nearest that it can. */
export function defaultsWithin(panel: Panel, defaults: Settings): Settings {
	if (panel.kind === 'dip') return defaults;
	const items = panel.menu.flatMap((item): readonly MenuItem[] => (item.kind === 'menu' ? item.items : [item]));
	const changed: Record<string, SettingValue> = {};
	for (const item of items) {
		if (item.kind === 'number') {
			const at = Number(defaults[item.setting]);
			changed[item.setting] = Math.min(item.most, Math.max(item.least, at));
		} else if (item.kind === 'choice' && item.options.every(({ value }) => value !== defaults[item.setting]))
			changed[item.setting] = item.options[0]?.value as SettingValue;
	}
	const works = items.flatMap((item) => ('work' in item && item.work ? [item.work] : []));
	// a row of functions stands at one of its own
	if (works.length > 0 && !works.includes(defaults.work)) changed['work'] = works[0] as SettingValue;
	return { ...defaults, ...changed } as Settings;
}
