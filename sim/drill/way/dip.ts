import type { DipPanel, Profile, SomeSettings } from '../../../shared/profile/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { ALL_DOWN, settingsFromDip } from '../../fixture/index.ts';
import { allows, type Wish } from '../wish.ts';

/** All 1024 ways the ten switches can stand, as bits, switch 1 lowest; with what they set, whatever the slides say. */
interface SwitchTable {
	readonly sets: readonly SomeSettings[];
}

/** Every way the slides can stand. */
type Slides = readonly number[];

const tables = new WeakMap<Profile, SwitchTable>();

const switchesOf = (bits: number): boolean[] => ALL_DOWN.map((_, i) => (bits & (1 << i)) !== 0);
const bitsOf = (switches: readonly boolean[]): number => switches.reduce((sum, up, i) => sum + (up ? 1 << i : 0), 0);

/**
 * The fewest flips and slide moves that bring a fixture with DIP switches to a wish: all 1024 ways the switches can stand are
 * tried, each with every way the slides can. Of equals, the one that flips the lowest switches.
 * @returns null where no way of standing meets the wish
 */
export function dipWay(
	profile: Profile,
	fixture: string,
	switches: readonly boolean[],
	slides: readonly number[],
	wish: Wish,
): RigEvent[] | null {
	const panel = profile.panel as DipPanel;
	const from = bitsOf(switches);
	const { sets } = tableOf(profile, panel);
	const stands = waysOfSlides(panel).map((to) => ({ to, moves: to.filter((at, i) => at !== slides[i]).length }));
	let best: { readonly bits: number; readonly slides: Slides; readonly presses: number } | null = null;
	for (let bits = 0; bits < sets.length; bits++) {
		const flips = onesIn(bits ^ from);
		if (best && flips > best.presses) continue;
		const set = sets[bits] ?? {};
		if (![...wish].every(([key, allowed]) => set[key] === undefined || allows(allowed, set[key]))) continue;
		for (const { to, moves } of stands) {
			const presses = flips + moves;
			const closer =
				!best || presses < best.presses || (presses === best.presses && (bits ^ from) < (best.bits ^ from));
			if (closer && meets(profile, panel, set, to, wish)) best = { bits, slides: to, presses };
		}
	}
	return best && eventsTo(panel, fixture, switches, slides, best);
}

/** What is left to the slides and the defaults meets the wish too. */
function meets(profile: Profile, panel: DipPanel, set: SomeSettings, slides: Slides, wish: Wish): boolean {
	const slid = slideSets(panel, slides);
	return [...wish].every(([key, allowed]) => allows(allowed, set[key] ?? slid[key] ?? profile.defaults[key]));
}

function slideSets(panel: DipPanel, slides: Slides): SomeSettings {
	return Object.assign({}, ...panel.slides.map((slide, i) => slide.positions[slides[i] ?? 0]?.sets));
}

function eventsTo(
	panel: DipPanel,
	fixture: string,
	switches: readonly boolean[],
	slides: readonly number[],
	to: { readonly bits: number; readonly slides: Slides },
): RigEvent[] {
	const flips = switchesOf(to.bits).flatMap((up, i): RigEvent[] =>
		up === switches[i] ? [] : [{ type: 'switch.flip', fixture, switch: i + 1, up }],
	);
	const moves = panel.slides.flatMap((slide, i): RigEvent[] => {
		const at = to.slides[i] ?? 0;
		return at === slides[i] ? [] : [{ type: 'slide.move', fixture, slide: slide.id, to: at }];
	});
	return [...flips, ...moves];
}

/** What the switches decide, found by asking the fixture's own rule twice: what a slide or a default gave is left out. */
function tableOf(profile: Profile, panel: DipPanel): SwitchTable {
	let table = tables.get(profile);
	if (!table) {
		const gate = 1 << 9;
		const sets = Array.from({ length: 1024 }, (_, bits): SomeSettings => {
			const all = settingsFromDip(profile, panel, switchesOf(bits), []);
			const keys = bits & gate ? fieldKeys(panel, bits) : (['work', 'address'] as const);
			return Object.fromEntries(keys.map((key) => [key, all[key]]));
		});
		table = { sets };
		tables.set(profile, table);
	}
	return table;
}

function fieldKeys(panel: DipPanel, bits: number): (keyof SomeSettings)[] {
	return panel.fields.flatMap((field) => {
		const value = field.switches.reduce((sum, number, i) => sum + (bits & (1 << (number - 1)) ? 2 ** i : 0), 0);
		return Object.keys(field.choices[value]?.sets ?? {}) as (keyof SomeSettings)[];
	});
}

function waysOfSlides(panel: DipPanel): Slides[] {
	return panel.slides.reduce<number[][]>(
		(ways, { positions }) => ways.flatMap((way) => positions.map((_, at) => [...way, at])),
		[[]],
	);
}

function onesIn(bits: number): number {
	let count = 0;
	for (let left = bits; left > 0; left &= left - 1) count++;
	return count;
}
