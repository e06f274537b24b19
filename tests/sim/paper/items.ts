import {
	type Item,
	LEVELS,
	type PaperLevel,
	type QuestionGround,
	type RigKindId,
} from '../../../shared/paper/index.ts';
import {
	BUNDLED,
	type DipPanel,
	type Profile,
	type Settings,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { settingsFromDip } from '../../../sim/fixture/index.ts';
import { RIG_SOURCES } from '../../../sim/paper/index.ts';
import { openRig, type Rig, type Sight } from '../../../sim/rig/index.ts';
import { throughJson } from '../../shared/json.ts';
import { unseenGround } from '../../shared/paper/grounds.ts';

/** All bundled fixtures, then each alone. */
const GROUNDS: readonly QuestionGround[] = [BUNDLED, ...BUNDLED.map((profile) => [profile])].map((profiles) => ({
	profiles,
	sheet: null,
}));

/** An item of a kind, from a number: grounds and levels come in turn unless they are given. */
export function itemOf(
	id: RigKindId,
	number: number,
	ground = GROUNDS[Math.floor(number / 3) % GROUNDS.length] as QuestionGround,
	level = LEVELS[number % LEVELS.length] as PaperLevel,
): Item {
	const kind = RIG_SOURCES.kinds.find((each) => each.id === id);
	if (!kind?.fits(ground)) throw new Error(`'${id}' doesn’t fit`);
	const draft = kind.make(ground, makeRandom(number).fork(id), level);
	return { id: `${id}-00000000`, kind: id, topic: kind.topic, level, ...draft };
}

export const itemsOf = (id: RigKindId, count: number): Item[] => Array.from({ length: count }, (_, i) => itemOf(id, i));

/** The same, each on a fixture of its own that nobody has seen. */
export const unseenItemsOf = (id: RigKindId, count: number): Item[] => {
	const fits = RIG_SOURCES.kinds.find((each) => each.id === id)?.fits;
	const items: Item[] = [];
	for (let seed = 0; items.length < count; seed++) {
		const ground = unseenGround(seed);
		if (fits?.(ground)) items.push(itemOf(id, seed, ground));
	}
	return items;
};

export const profileOf = (item: Item): Profile => {
	const known = [...BUNDLED, ...(item.bench?.profiles ?? [])];
	const profile = known.find(({ id }) => id === item.facts['profile']);
	if (!profile) throw new Error('the item names no fixture that is known or on its bench');
	return profile;
};

/** The item's bench, as a file would bring it, read and opened anew. */
export const freshRig = ({ bench }: Item): Rig => openRig(readSheet(throughJson(bench)));

/** The fact as a table. */
export function table(item: Item, fact: string, width: number): (string | number)[][] {
	const flat = item.facts[fact] as readonly (string | number)[];
	return Array.from({ length: flat.length / width }, (_, i) => flat.slice(i * width, (i + 1) * width));
}

/** Sets a fixture of a rig as a hand would leave it: with switches, by trying all that they can say. */
export function setTo(rig: Rig, fixture: string, change: SomeSettings): void {
	const unit = rig.gear.units.get(fixture);
	if (!unit) throw new Error(`no ${fixture}`);
	const { panel } = unit.profile;
	if (panel.kind !== 'dip') {
		rig.send({ type: 'settings.become', fixture, change });
		return;
	}
	const { switches, slides, settings } = unit.state.context;
	const mode = panel.slides.findIndex(({ id }) => id === 'mode');
	const to =
		change.mode === undefined
			? slides
			: slides.map((at, i) => (i === mode ? positionOf(panel, mode, change.mode ?? '') : at));
	const kept = { work: settings.work, lead: settings.lead, mode: settings.mode, ...change };
	const up = standing(unit.profile, to, kept) ?? standing(unit.profile, to, change);
	if (!up) throw new Error(`no switches for ${JSON.stringify(change)}`);
	for (const [i, isUp] of up.entries())
		if (isUp !== switches[i]) rig.send({ type: 'switch.flip', fixture, switch: i + 1, up: isUp });
	for (const [i, at] of to.entries())
		if (at !== slides[i]) rig.send({ type: 'slide.move', fixture, slide: panel.slides[i]?.id ?? '', to: at });
}

const found = new Map<string, readonly boolean[] | null>();

/** The first of all 1024 ways the switches can stand that says this, with the slides so; the same for the same question. */
function standing(profile: Profile, slides: readonly number[], asked: SomeSettings): readonly boolean[] | null {
	const name = JSON.stringify([profile.id, slides, asked]);
	const known = found.get(name);
	if (known !== undefined) return known;
	const ways = Array.from({ length: 1024 }, (_, code) => Array.from({ length: 10 }, (_, i) => (code & (2 ** i)) !== 0));
	const way = ways.find((up) => {
		const made: Settings = settingsFromDip(profile, profile.panel as DipPanel, up, slides);
		return Object.entries(asked).every(([key, value]) => made[key as keyof Settings] === value);
	});
	found.set(name, way ?? null);
	return way ?? null;
}

function positionOf(panel: DipPanel, slide: number, mode: string): number {
	return panel.slides[slide]?.positions.findIndex(({ sets }) => sets.mode === mode) ?? -1;
}

/** What is seen of a light in one text: words, output to a tenth, flashes and movement. */
export function lightText({ light }: Sight): string {
	const cells = light.cells.map(({ words, levels }) => `${words} ${Math.round(10 * Math.max(...levels))}`);
	return `${cells.join(',')} ${light.flashes.toFixed(1)} ${light.moving} ${light.flicker}`;
}
