import { inventNames } from '#words/invent/index.ts';
import { INVENT_LEVELS, type InventLevel } from '../../../shared/invent/index.ts';
import { type ChartSource, groundOf, type QuestionGround, readRecipe } from '../../../shared/paper/index.ts';
import { BUNDLED, bundledProfile, type Mode, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { RIG_IDS } from '../../../shared/sheet/index.ts';
import { invent } from '../../../src/features/invented/index.ts';

const NAMES = ['Open', 'Shut', 'Slow', 'Quick', 'Pale', 'Deep', 'open', 'Warm', 'Cold', 'Wide'];

/** Bands over 0 to 255, one wide or many, names at times twice. */
function bands(chance: Random): { id: string; name: string; from: number; to: number; effect: { do: 'nothing' } }[] {
	const count = chance.int(1, 9);
	const ends = new Set([255]);
	while (ends.size < count) ends.add(chance.chance(0.3) ? chance.int(0, 9) : chance.int(0, 254));
	let from = 0;
	return [...ends]
		.sort((a, b) => a - b)
		.map((to, i) => {
			const band = { id: `b-${i}`, name: chance.pick(NAMES), from, to, effect: { do: 'nothing' as const } };
			from = to + 1;
			return band;
		});
}

/** A mode whose slots stand in any order, pairs apart or together, names at times twice. */
function mode(chance: Random, i: number): unknown {
	const count = chance.int(1, 14);
	const places = chance.chance(0.5)
		? Array.from({ length: count }, (_, n) => n + 1)
		: chance.shuffle(Array.from({ length: count }, (_, n) => n + 1));
	const slots: unknown[] = [];
	while (places.length > 0) {
		const at = places.shift() as number;
		const base = { id: `s-${at}`, name: chance.pick(['Red', 'Green', 'Blue', 'Dimmer', 'Function', 'Shutter']), at };
		const what = chance.int(0, 3);
		if (what === 0 && places.length > 0) slots.push({ ...base, fine: places.shift(), drives: { kind: 'intensity' } });
		else if (what === 1)
			slots.push({ ...base, drives: { kind: 'emitter', emitter: chance.pick(['red', 'green', 'blue']) } });
		else if (what === 2) slots.push({ ...base, drives: { kind: 'speed' } });
		else slots.push({ ...base, drives: { kind: 'bands', bands: bands(chance) } });
	}
	return { id: `mode-${i}`, name: `Mode ${i + 1}`, slots };
}

/** A fixture of nobody's, sound by `readProfile`, to try kinds on what no bundled fixture has. */
export function oddProfile(seed: number): Profile {
	const chance = makeRandom(seed).fork('profile');
	const base = structuredClone(bundledProfile('cobble')) as Profile;
	if (base.panel.kind !== 'dip') throw new Error('the base has switches');
	const modes = Array.from({ length: chance.int(1, 3) }, (_, i) => mode(chance, i)) as Mode[];
	const positions = [...modes, ...modes.slice(0, 1)].map(({ id }, i) => ({ label: `${i}`, sets: { mode: id } }));
	return readProfile({
		...base,
		id: `odd-${seed}`,
		name: `Odd ${seed}`,
		modes,
		panel: {
			...base.panel,
			wiring: chance.pick(['sum', 'sum-plus-one']),
			slides: base.panel.slides.map((slide) => (slide.id === 'mode' ? { ...slide, positions } : slide)),
		},
		defaults: { ...base.defaults, mode: 'mode-0' },
	});
}

const made = new Map<number, QuestionGround>();
/** Different grounds in all: enough fixtures of nobody's, and few enough to keep. */
const GROUNDS = 600;

/** Grounds of every sort: all bundled fixtures, each alone, each rig, and fixtures of nobody's. */
export function groundFor(number: number): QuestionGround {
	const seed = number % GROUNDS;
	const ground = made.get(seed) ?? makeGround(seed);
	made.set(seed, ground);
	return ground;
}

function makeGround(seed: number): QuestionGround {
	const chance = makeRandom(seed).fork('ground');
	const recipe = { version: 2, title: 'x', count: 1 };
	const ground = (more: object): QuestionGround => groundOf(readRecipe({ ...recipe, ...more }));
	switch (chance.int(0, 4)) {
		case 0:
			return ground({});
		case 1:
			return ground({ profiles: [chance.pick(BUNDLED).id] });
		case 2:
			return ground({ rig: chance.pick(RIG_IDS) });
		case 3:
			return ground({ own: [oddProfile(seed)] });
		default:
			return ground({ own: [oddProfile(seed), oddProfile(seed + 1)], profiles: ['cobble'] });
	}
}

/** What makes up fixtures, in the words of the site. */
export const CHARTS: ChartSource = { list: inventNames.id, invent };

/** A fixture that nobody has seen, alone; levels in turn. */
export const unseenGround = (seed: number): QuestionGround => ({
	profiles: [invent(seed, INVENT_LEVELS[seed % INVENT_LEVELS.length] as InventLevel)],
	sheet: null,
	unseen: true,
});
