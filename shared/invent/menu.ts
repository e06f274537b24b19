import type { Profile, SettingKey } from '../profile/index.ts';
import type { Random } from '../random/index.ts';
import type { InventLevel, MenuConcept } from './types.ts';

/** An item of a panel's menu that holds no others. */
export type Leaf = SettingKey | 'defaults' | `info.${'charge' | 'hours' | 'signal' | 'footprint'}`;

/** A place on top of a menu: a leaf, or a menu of leaves. */
export type Place = Leaf | { readonly menu: MenuConcept; readonly leaves: readonly Leaf[] };

type Scheme = readonly (readonly [menu: MenuConcept | null, leaves: readonly Leaf[]])[];

const UPKEEP: readonly Leaf[] = [
	'info.charge',
	'info.hours',
	'info.footprint',
	'curve',
	'limit',
	'sleep',
	'lock',
	'defaults',
];
const REMOTE: readonly Leaf[] = ['sensor', 'code'];
const OWN: readonly Leaf[] = ['held', 'level', 'strobe', 'programme', 'speed', 'hearing'];
const COLOUR: readonly Leaf[] = ['held', 'level', 'strobe'];
const PROGRAMMES: readonly Leaf[] = ['programme', 'speed', 'hearing'];

/** Ways to gather items into menus; null: on top. Ours, by what belongs together. */
const SCHEMES: readonly Scheme[] = [
	[
		['source', ['work', 'lead']],
		['data', ['address', 'mode', 'loss', 'info.signal']],
		['own', OWN],
		['remote', REMOTE],
		['upkeep', UPKEEP],
	],
	[
		[null, ['address', 'mode']],
		['source', ['work', 'lead', 'loss', 'info.signal']],
		['own', OWN],
		['upkeep', [...REMOTE, ...UPKEEP]],
	],
	[
		['data', ['work', 'address', 'mode', 'loss', 'info.signal', 'lead']],
		['colour', COLOUR],
		['programmes', PROGRAMMES],
		['remote', REMOTE],
		['upkeep', UPKEEP],
	],
	[
		[null, ['work', 'address']],
		['data', ['mode', 'loss', 'lead', 'info.signal']],
		['colour', COLOUR],
		['programmes', PROGRAMMES],
		['upkeep', [...UPKEEP, ...REMOTE]],
	],
	[
		[null, ['work']],
		['data', ['address', 'mode', 'info.signal', 'loss', 'lead']],
		[null, ['held', 'level']],
		['programmes', ['programme', 'speed', 'strobe', 'hearing']],
		['upkeep', [...REMOTE, ...UPKEEP]],
	],
];

/** Most items that a menu of one level may have. */
const MOST_ON_TOP = 13;

/** Items that every panel with a menu has, if there is anything to choose between. */
const ALWAYS: readonly Leaf[] = ['work', 'lead', 'address', 'held', 'level', 'programme', 'speed'];

/** How likely a panel has an item that not all have, plain panels and others. */
const SOMETIMES: readonly (readonly [leaf: Leaf, easy: number, others: number])[] = [
	['loss', 0.4, 1],
	['strobe', 0, 0.7],
	['lock', 0.5, 0.8],
	['sleep', 0.2, 0.7],
	['curve', 0, 0.6],
	['limit', 0, 0.4],
	['info.signal', 0, 0.4],
	['info.footprint', 0, 0.4],
	['defaults', 0.6, 0.85],
];

type Has = Pick<Profile, 'modes' | 'sensor' | 'microphone' | 'power'>;

/** What is on a panel, by what its fixture has. */
export function leavesOf(random: Random, level: InventLevel, { modes, sensor, microphone, power }: Has): Set<Leaf> {
	const leaves = new Set<Leaf>(ALWAYS);
	if (modes.length > 1) leaves.add('mode');
	if (microphone) leaves.add('hearing');
	if (sensor) for (const leaf of REMOTE) leaves.add(leaf);
	if (power.battery)
		for (const leaf of ['info.charge', 'info.hours'] as const) if (random.chance(0.75)) leaves.add(leaf);
	for (const [leaf, easy, others] of SOMETIMES) if (random.chance(level === 'easy' ? easy : others)) leaves.add(leaf);
	return leaves;
}

/** A menu of one level or two, in an order of its own: a menu with only one thing in it is none. */
export function placesOf(random: Random, level: InventLevel, leaves: ReadonlySet<Leaf>): Place[] {
	if (leaves.size <= MOST_ON_TOP && random.chance(level === 'easy' ? 0.5 : 0.2)) return random.shuffle([...leaves]);
	const places = random.pick(SCHEMES).flatMap(([menu, all]): Place[] => {
		const here = all.filter((leaf) => leaves.has(leaf));
		const ordered = level === 'easy' ? here : random.shuffle(here);
		return menu === null || ordered.length < 2 ? ordered : [{ menu, leaves: ordered }];
	});
	return random.shuffle(places);
}
