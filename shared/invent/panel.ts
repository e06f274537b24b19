import type { KeyedPanel, LeafItem, MenuItem, PanelKey, PanelLaw, Profile } from '../profile/index.ts';
import { type Fixture, Items } from './items.ts';
import { type Leaf, leavesOf, placesOf } from './menu.ts';
import type { Making, PanelConcept } from './types.ts';
import type { Label, Wordbook } from './wordbook.ts';

type Of = Fixture & Pick<Profile, 'sensor' | 'microphone' | 'power'>;

/** Orders in which four keys may stand, and three where a long press leaves. */
const FOUR: readonly PanelKey[][] = [
	['back', 'down', 'up', 'set'],
	['back', 'up', 'down', 'set'],
	['up', 'down', 'set', 'back'],
	['set', 'up', 'down', 'back'],
	['down', 'up', 'back', 'set'],
	['set', 'back', 'down', 'up'],
];
const THREE: readonly PanelKey[][] = [
	['down', 'up', 'set'],
	['up', 'down', 'set'],
	['set', 'up', 'down'],
];

/** A panel with keys, by its law. */
export function inventPanel(making: Making, words: Wordbook, of: Of): KeyedPanel {
	return making.law === 'flat' ? flatPanel(making, words, of) : treePanel(making, words, of);
}

/** What every panel with keys has, whatever its law: how long, how quick. */
function timing({ random }: Making): Pick<KeyedPanel, 'repeat' | 'unlockHold' | 'lockAfter'> {
	const some = random.fork('timing');
	return {
		repeat: {
			after: 50 * some.int(7, 12),
			every: 10 * some.int(8, 15),
			quickAfter: some.int(6, 12),
			bigStep: some.pick([5, 10, 10, 20]),
		},
		unlockHold: 500 * some.int(3, 8),
		lockAfter: 5000 * some.int(2, 8),
	};
}

function treePanel(making: Making, words: Wordbook, of: Of): KeyedPanel {
	const { law, level, random } = making;
	const kind = law === 'tree-code' ? 'code' : 'text';
	const columns = kind === 'code' ? 4 : random.pick([16, 18, 20]);
	const look = { kind, width: kind === 'code' ? 4 : columns - 2, byNumber: false } as const;
	const items = new Items(making, words, of, look);
	const taken = new Set<string>();
	const label = (concept: PanelConcept): Label => words.label(concept, kind, look.width, taken);
	const leaf = (each: Leaf): LeafItem => items.item(each, label(each));
	const leaves = leavesOf(random.fork('leaves'), level, of);
	const menu = placesOf(random.fork('places'), level, leaves).map((place): MenuItem => {
		if (typeof place === 'string') return leaf(place);
		return {
			kind: 'menu',
			id: `menu-${place.menu}`,
			...label(`menu.${place.menu}`),
			items: place.leaves.map(leaf),
		};
	});
	const some = random.fork('law');
	const isKnob = law === 'knob';
	const isLong = isKnob ? some.chance(0.6) : level === 'hard' && some.chance(0.3);
	const keys = isKnob ? (['left', 'right', 'set'] as PanelKey[]) : some.pick(isLong ? THREE : FOUR);
	const panelLaw: PanelLaw = {
		shape: 'tree',
		acts: 'stored',
		stores: 'enter',
		unstored: kind === 'code' ? 'value' : 'arrow',
		rests:
			level !== 'easy' && some.chance(0.4)
				? { on: some.pick(of.modes.length > 1 ? ['address', 'mode'] : ['address']), after: 1000 * some.int(10, 40) }
				: null,
		long: isLong ? { key: 'set', after: 100 * some.int(6, 12), does: 'back' } : null,
		opens: isKnob ? 'set' : some.pick(keys.filter((key) => key === 'set' || key === 'up' || key === 'down')),
	};
	const shown = {
		keys: isKnob && !isLong ? [...keys, 'back' as const] : [...keys],
		law: panelLaw,
		...timing(making),
		menu,
	};
	return kind === 'code' ? { kind, columns: 4, ...shown } : { kind, columns, ...shown };
}

/** Functions of a flat panel, by who decides the light while it stands at one. */
const PAGES: readonly (readonly [work: Profile['defaults']['work'], leaves: readonly (Leaf | 'follow')[]])[] = [
	['line', ['address', 'mode', 'loss', 'curve']],
	['follow', ['follow']],
	['held', ['held', 'lead', 'level', 'strobe']],
	['programme', ['programme', 'speed', 'hearing']],
];

function flatPanel(making: Making, words: Wordbook, of: Of): KeyedPanel {
	const { level, random } = making;
	const some = random.fork('law');
	const isText = some.chance(0.3);
	const kind = isText ? 'text' : 'code';
	const columns = some.pick([16, 18, 20]);
	// on four characters one is its function's letter
	const look = { kind, width: isText ? columns - 2 : 3, byNumber: !isText } as const;
	const items = new Items(making, words, of, look);
	const taken = new Set<string>();
	const label = (concept: PanelConcept): Label =>
		isText ? words.label(concept, 'text', columns, taken) : words.letter(concept, taken);
	const leaves = new Set<Leaf | 'follow'>([...leavesOf(random.fork('leaves'), level, of), 'follow']);
	const page = (work: Profile['defaults']['work'], leaf: Leaf | 'follow'): LeafItem => {
		if (leaf === 'follow') return { kind: 'info', id: 'follow', ...label('follow'), shows: 'signal', work };
		const item = items.item(leaf, label(leaf));
		return item.kind === 'action' ? item : { ...item, work };
	};
	const order = random.fork('places');
	const blocks = PAGES.map(([work, all]) => {
		const here = all.filter((leaf) => leaves.has(leaf)).map((leaf) => [work, leaf] as const);
		return level === 'easy' ? here : order.shuffle(here);
	});
	const rows = order.shuffle(blocks);
	const menu = (level === 'hard' && order.chance(0.5) ? order.shuffle(rows.flat()) : rows.flat()).map(([work, leaf]) =>
		page(work, leaf),
	);
	const shown = {
		keys: some.pick<PanelKey[]>([
			['page', 'down', 'up'],
			['page', 'up', 'down'],
			['up', 'down', 'page'],
			['down', 'page', 'up'],
		]),
		law: {
			shape: 'flat',
			acts: 'scrolling',
			stores: { after: 1000 * some.int(2, 10) },
			unstored: 'blink',
			rests: null,
			long: null,
			opens: 'page',
		} satisfies PanelLaw,
		...timing(making),
		menu,
	};
	return isText ? { kind: 'text', columns, ...shown } : { kind: 'code', columns: 4, ...shown };
}
