import type { KeyedPanel, Profile, SettingKey, Settings, SettingValue } from '../../../shared/profile/index.ts';
import {
	direction,
	doesRepeat,
	type FixtureState,
	itemAt,
	type PanelState,
	panelOf,
	pathBeside,
	stepSize,
	stepValue,
} from '../../fixture/index.ts';
import { allows, unmetKeys, type Wish } from '../wish.ts';
import { type MenuMap, menuMap } from './menu.ts';
import { type Browse, tour, type Visit } from './tour.ts';
import { valueWay } from './values.ts';

/** All that the presses still needed hang on, with no key held. */
export interface View {
	readonly panel: PanelState;
	readonly path: readonly number[];
	readonly draft: SettingValue | null;
	readonly settings: Settings;
	/** Its own power switch. */
	readonly on: boolean;
}

/** One press: a key tapped (0 repeats) or held for so many, Set held until a lock opens, or the power switch. */
export type Press =
	| { readonly do: 'key'; readonly key: 'back' | 'down' | 'up' | 'set'; readonly repeats: number }
	| { readonly do: 'unlock' }
	| { readonly do: 'power'; readonly on: boolean };

export interface PanelWay {
	/** Fewest presses still needed; Infinity where hands on this fixture cannot do it. */
	readonly presses: number;
	/** A press after which one fewer is needed; null at 0 or Infinity. */
	readonly first: Press | null;
}

const DONE: PanelWay = Object.freeze({ presses: 0, first: null });
const STUCK: PanelWay = Object.freeze({ presses: Number.POSITIVE_INFINITY, first: null });

/**
 * The fewest presses that bring a fixture with keys to a wish, over the machine itself: menu moves, edits by taps and holds,
 * an edit in progress finished or backed out of, all set back to defaults where that is shorter, a panel woken, a lock opened,
 * and the fixture switched off and on where that is the quickest way out of a menu.
 *
 * Exact: 0 only where the wish is met, and no press brings it down by more than one, nor any wait at all (the tests hold it to
 * both, and to plain search over a whole small menu), so no shorter way exists; and each `first` brings it down by one. Waiting
 * on purpose for sleep or lock saves nothing: either drops an edit as Back does, and costs a press to undo. Left out: hands on
 * plugs and remotes, which no drill gives together with panels; and menus in which two items edit one setting (the first is
 * taken).
 */
export function panelWay(profile: Profile, view: View, wish: Wish): PanelWay {
	const panel = profile.panel as KeyedPanel;
	const map = menuMap(panel);
	const { path, settings } = view;
	const unmet = unmetKeys(wish, settings);
	if (!view.on) return after(DO_ON, unmet.length === 0 ? 0 : fromStart(panel, map, profile, settings, wish));
	if (unmet.length === 0) return DONE;
	if (view.panel === 'unlit' || view.panel === 'switches') return STUCK;

	const here = () => browsing(panel, map, profile, path, settings, wish);
	const offAndOn = after(DO_OFF, 1 + fromStart(panel, map, profile, settings, wish));
	switch (view.panel) {
		case 'asleep':
			return least(after(key('back'), (settings.lock === 'on' ? 1 : 0) + here().presses), offAndOn);
		case 'locked':
			return least(after({ do: 'unlock' }, here().presses), offAndOn);
		case 'confirming':
			return least(
				after(key('set'), browsing(panel, map, profile, path, profile.defaults, wish).presses),
				after(key('back'), here().presses),
				offAndOn,
			);
		case 'editing':
			return least(editing(panel, map, profile, view, wish), after(key('back'), here().presses), offAndOn);
		case 'browsing':
			return here();
	}
}

/** As {@link panelWay}, from where the fixture stands, its keys let go. */
export const viewOf = (state: FixtureState): View => ({
	panel: panelOf(state),
	path: state.context.path,
	draft: state.context.draft,
	settings: state.context.settings,
	on: state.context.on,
});

const key = (name: 'back' | 'down' | 'up' | 'set', repeats = 0): Press => ({ do: 'key', key: name, repeats });
const DO_ON: Press = Object.freeze({ do: 'power', on: true });
const DO_OFF: Press = Object.freeze({ do: 'power', on: false });
const after = (first: Press, rest: number): PanelWay =>
	rest === Number.POSITIVE_INFINITY ? STUCK : { presses: 1 + rest, first };
/** The fewest presses; of equals the first. */
const least = (...ways: PanelWay[]): PanelWay => ways.reduce((a, b) => (b.presses < a.presses ? b : a));

/** Presses once it has just been switched on. */
function fromStart(panel: KeyedPanel, map: MenuMap, profile: Profile, settings: Settings, wish: Wish): number {
	return (settings.lock === 'on' ? 1 : 0) + browsing(panel, map, profile, [0], settings, wish).presses;
}

function browsing(
	panel: KeyedPanel,
	map: MenuMap,
	profile: Profile,
	path: readonly number[],
	settings: Settings,
	wish: Wish,
): PanelWay {
	return least(byEdits(panel, map, path, settings, wish), byDefaults(panel, map, profile, path, wish));
}

/** Each unmet setting edited at its item. */
function byEdits(
	panel: KeyedPanel,
	map: MenuMap,
	path: readonly number[],
	settings: Settings,
	wish: Wish,
	met?: SettingKey,
): PanelWay {
	const visits: Visit[] = [];
	for (const [setting, allowed] of wish) {
		if (setting === met || allows(allowed, settings[setting])) continue;
		const place = map.bySetting.get(setting);
		const way = place ? valueWay(panel, place.item, settings[setting], allowed) : null;
		if (!place || !way) return STUCK;
		// Set opens the edit, and Set keeps it
		visits.push({ path: place.path, presses: 2 + way.presses });
	}
	return ofTour(tour(map, path, visits));
}

/** Everything set back first, and then what the defaults leave unmet. Edits before that would be lost. */
function byDefaults(panel: KeyedPanel, map: MenuMap, profile: Profile, path: readonly number[], wish: Wish): PanelWay {
	if (!map.defaults) return STUCK;
	const there = ofTour(tour(map, path, [{ path: map.defaults.path, presses: 2 }]));
	const rest = byEdits(panel, map, map.defaults.path, profile.defaults, wish);
	return { presses: there.presses + rest.presses, first: there.first };
}

const ofTour = ({ presses, first }: { presses: number; first: Browse | null }): PanelWay => ({
	presses,
	first: first && (first.do === 'move' ? key(first.key, first.repeats) : key(first.do)),
});

/** The edit in progress finished: its value brought to an allowed one, and kept. */
function editing(panel: KeyedPanel, map: MenuMap, profile: Profile, view: View, wish: Wish): PanelWay {
	const item = itemAt(panel, view.path);
	if (view.draft === null || (item.kind !== 'choice' && item.kind !== 'number')) return STUCK;
	const allowed = wish.get(item.setting);
	// an edit of a setting nobody minds may end on any value
	const way = allowed ? valueWay(panel, item, view.draft, allowed) : { presses: 0, first: null };
	if (!way) return STUCK;
	const rest = least(
		byEdits(panel, map, view.path, view.settings, wish, item.setting),
		byDefaults(panel, map, profile, view.path, wish),
	);
	const first: Press = way.first ? { do: 'key', ...way.first } : key('set');
	return after(first, way.presses + rest.presses);
}

/**
 * A key still held when the learner stops goes on moving what it moves for no further press. How many repeats more are best,
 * and the presses needed then.
 */
export function heldWay(profile: Profile, state: FixtureState, wish: Wish): { presses: number; repeats: number } {
	const panel = profile.panel as KeyedPanel;
	const view = viewOf(state);
	const { held } = state.context;
	const best = { presses: panelWay(profile, view, wish).presses, repeats: 0 };
	if (!held) return best;
	if (view.panel === 'locked' && held.key === 'set') {
		const { presses } = panelWay(profile, { ...view, panel: 'browsing' }, wish);
		return presses < best.presses ? { presses, repeats: 1 } : best;
	}
	const by = held.key;
	// a key held so long that the panel takes it as stuck repeats no more
	if (!doesRepeat(by) || held.nextAt === Number.MAX_SAFE_INTEGER) return best;
	if (view.panel !== 'browsing' && view.panel !== 'editing') return best;
	const item = itemAt(panel, view.path);
	let { path, draft } = view;
	const seen = new Set<string>();
	for (let repeats = 1; best.presses > 0; repeats++) {
		const nth = held.repeats + repeats;
		if (draft === null) path = pathBeside(panel, path, by === 'up' ? -1 : 1);
		else if (item.kind === 'choice' || item.kind === 'number')
			draft = stepValue(item, draft, direction(by), stepSize(panel, nth));
		const mark = `${path} ${draft}`;
		if (nth > panel.repeat.quickAfter && seen.has(mark)) break;
		if (nth > panel.repeat.quickAfter) seen.add(mark);
		const { presses } = panelWay(profile, { ...view, path, draft }, wish);
		if (presses < best.presses) {
			best.presses = presses;
			best.repeats = repeats;
		}
	}
	return best;
}
