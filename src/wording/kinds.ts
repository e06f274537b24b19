import { locale } from '#words/locale/index.ts';
import {
	amounts,
	curveBends,
	curves,
	howBright,
	keyNames,
	listWords,
	programmeKinds,
	type Says,
	settingTitles,
	settingValues,
	startCodes,
	wires,
} from '#words/rig/index.ts';
import { formatLevel, LAST_SLOT, startCodeOf } from '../../shared/dmx/index.ts';
import type { MenuItem, PanelKey, Profile, SettingKey, SettingValue } from '../../shared/profile/index.ts';
import { fill } from './fill.ts';
import { modeName } from './names.ts';

/** Longest list said in full; of a longer one the first few, and how many more. */
const LONGEST = 6;

/** Things strung together: 'a, b and c'. Where one of them has a comma in it, semicolons part them. */
export function listed(things: readonly string[]): string {
	const { comma, more } = listWords;
	const said =
		things.length > LONGEST
			? [...things.slice(0, LONGEST - 1), fill(more, { count: things.length - LONGEST + 1 })]
			: things;
	return said.some((it) => it.includes(comma)) ? locale.longList(said) : locale.list(said);
}

/** Whole numbers with their runs drawn together: '1 to 4 and 9'. */
export function numbersText(numbers: readonly number[]): string {
	const runs: [number, number][] = [];
	for (const n of [...numbers].sort((a, b) => a - b)) {
		const run = runs.at(-1);
		if (run && n <= run[1] + 1) run[1] = n;
		else runs.push([n, n]);
	}
	return listed(
		runs.map(([a, b]) => {
			const ends = [locale.number(a), locale.number(b)];
			return a === b ? locale.number(a) : b === a + 1 ? listed(ends) : ends.join(listWords.to);
		}),
	);
}

const tenths = (n: number): number => Math.round(n * 10) / 10;
const percent = (n: number): string => fill(amounts.percent, { n });
const some = (n: number): string => (n < 0.5 ? amounts.hardly : percent(Math.round(n)));

/** A stretch of time, ms: '300 milliseconds', '1.5 seconds', '2 minutes and 5 seconds'. */
function timeText(ms: number): string {
	if (ms < 1000) return fill(amounts.milliseconds, { n: Math.round(ms) });
	if (ms < 60_000) return fill(amounts.seconds, { n: tenths(ms / 1000) });
	const minutes = Math.floor(ms / 60_000);
	const [big, small, bigWords, smallWords] =
		minutes < 60
			? [minutes, Math.floor((ms % 60_000) / 1000), amounts.minutes, amounts.seconds]
			: [Math.floor(minutes / 60), minutes % 60, amounts.hours, amounts.minutes];
	return listed([fill(bigWords, { n: big }), ...(small > 0 ? [fill(smallWords, { n: small })] : [])]);
}

/** Kinds that need nothing but the value. */
export const plainKinds = {
	level: (n: number) => formatLevel(n),
	percent,
	/** 0..1; what is there never rounds to nothing. */
	share: (n: number) => (n > 0 ? some(n * 100) : percent(0)),
	/** How bright a light looks whose strongest emitter is up so many percent, with its comma. */
	bright: (n: number) => howBright.find(({ from }) => Math.round(n) >= from)?.says ?? '',
	rate: (n: number) => fill(amounts.rate, { n: tenths(n) }),
	metres: (n: number) => fill(amounts.metres, { n: tenths(n) }),
	time: timeText,
	list: listed,
	numbers: numbersText,
	slot: (n: number) => (n > LAST_SLOT ? fill(amounts.pastEnd, { n }) : locale.number(n)),
	wire: (id: keyof typeof wires) => wires[id],
	curve: (id: keyof typeof curves) => curves[id],
	bends: (id: keyof typeof curveBends) => curveBends[id],
	does: (id: keyof typeof programmeKinds) => programmeKinds[id],
	key: (key: PanelKey) => keyNames[key],
	startCode: (code: number) => startCodeWords(code),
};

/** What a start code is for; empty where it has no name of its own. */
export function startCodeWords(code: number): string {
	const known = startCodeOf(code);
	return known ? startCodes[known.id] : '';
}

const named = (things: readonly { readonly id: string; readonly name: string }[], id: string): string =>
	things.find((each) => each.id === id)?.name ?? id;

/** What a key is called: by what is printed on it, where its panel says that, or by what it does. */
export const keyName = (panel: Profile['panel'] | undefined, key: PanelKey): string =>
	(panel && panel.kind !== 'dip' && panel.printed?.[key]) || keyNames[key];

/** Kinds whose ids are a profile's own. */
export function profileKinds(profile: Profile) {
	return {
		key: (key: PanelKey) => keyName(profile.panel, key),
		mode: (id: string) => modeName(profile, id),
		held: (id: string) => named(profile.held, id),
		programme: (id: string) => named(profile.programmes, id),
		emitters: (ids: readonly string[]) => listed(ids.map((id) => named(profile.emitters, id).toLowerCase())),
	};
}

const titles: Readonly<Record<SettingKey, string>> = settingTitles;
const values: Readonly<Record<SettingKey, Says>> = settingValues;

/** What a setting is called, whatever a panel calls it: 'Start address'. */
export function settingTitle(key: SettingKey): string {
	return titles[key];
}

/** What an item of a menu is called, whatever the panel calls it: a setting by our word for it, any other by its profile's. */
export function itemTitle(item: MenuItem): string {
	return 'setting' in item ? settingTitle(item.setting) : item.title;
}

/** A value of a setting in words: 'data on the line', '80 %', '30 seconds'. */
export function settingValueText(profile: Profile, key: SettingKey, value: SettingValue): string {
	return fill(values[key], { value }, { ...plainKinds, ...profileKinds(profile) });
}
