import {
	type KeyedPanel,
	lawOf,
	type Meaning,
	type Profile,
	type SettingKey,
	type Settings,
	type SettingValue,
} from '../../../shared/profile/index.ts';
import { draftOf, type FixtureState, isSwitchedOn, itemAt, type PanelState, panelOf } from '../../fixture/index.ts';
import { allows, unmetKeys, type Wish } from '../wish.ts';
import { flatWay } from './flat.ts';
import { DONE, type PanelWay, pressFor, STUCK, valuePress, type WayPress } from './press.ts';
import { type Browse, type MenuMap, menuMap, tour, type Visit } from './tour.ts';
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

/** What is to be done at a panel, whatever it stands on. */
interface PanelTask {
	readonly panel: KeyedPanel;
	readonly map: MenuMap;
	readonly defaults: Settings;
	readonly wish: Wish;
}

/**
 * The fewest presses that are sure to bring a fixture with keys to a wish, by a person's hand
 * (`hold.ts`): taps along the menu, edits by taps and holds, an edit in progress finished or backed out of, all set back to
 * defaults where that is shorter, a panel woken, a lock opened. Luck may need fewer: a hold that happens to end on the value.
 *
 * Exact: 0 only where the wish is met; no tap, no hold at its worst and no wait brings it down by more than it counts (the tests
 * hold it to that, and to plain search over a whole small menu), so nothing surer exists; and each `first` brings it down by
 * one at least. Waiting on purpose for sleep or lock saves nothing: either drops an edit as Back does, and costs a press to
 * undo. Left out on purpose: switching a fixture off to get about its menu, which nobody should learn. Left out besides:
 * hands on plugs and remotes, which no drill gives together with panels; and menus in which two items edit one
 * setting (the first is taken).
 */
export function panelWay(profile: Profile, view: View, wish: Wish): PanelWay {
	const panel = profile.panel as KeyedPanel;
	const task: PanelTask = { panel, map: menuMap(panel), defaults: profile.defaults, wish };
	const { path, settings } = view;
	const unmet = unmetKeys(wish, settings);
	const isFlat = lawOf(panel).shape === 'flat';
	if (!view.on) return after({ do: 'on' }, unmet.length === 0 ? 0 : fromStart(task, isFlat ? path : [0], settings));
	if (unmet.length === 0) return DONE;
	if (view.panel === 'unlit' || view.panel === 'switches') return STUCK;

	const here = () => browsing(task, path, settings);
	const press = (meaning: 'enter' | 'back') => pressFor(panel, meaning);
	switch (view.panel) {
		case 'asleep':
			return after(press('back'), (settings.lock === 'on' ? 1 : 0) + here().presses);
		case 'resting':
			return after(press('back'), browsing(task, [0], settings).presses);
		case 'locked':
			return after({ do: 'unlock' }, here().presses);
		case 'confirming':
			return least(
				after(press('enter'), browsing(task, path, profile.defaults).presses),
				after(press('back'), here().presses),
			);
		case 'editing':
			return least(editing(task, view), after(press('back'), here().presses));
		case 'browsing':
		case 'scrolling':
			return here();
	}
}

/** As {@link panelWay}, from where the fixture stands, its keys let go. */
export const viewOf = (state: FixtureState): View => ({
	panel: panelOf(state),
	path: state.context.path,
	draft: draftOf(state),
	settings: state.context.settings,
	on: isSwitchedOn(state),
});

const after = (first: WayPress, rest: number): PanelWay =>
	rest === Number.POSITIVE_INFINITY ? STUCK : { presses: 1 + rest, first };
/** The fewest presses; of equals the first. */
const least = (...ways: PanelWay[]): PanelWay => ways.reduce((a, b) => (b.presses < a.presses ? b : a));

/** Presses once it has just been switched on. */
function fromStart(task: PanelTask, path: readonly number[], settings: Settings): number {
	return (settings.lock === 'on' ? 1 : 0) + browsing(task, path, settings).presses;
}

function browsing(task: PanelTask, path: readonly number[], settings: Settings): PanelWay {
	if (lawOf(task.panel).shape === 'flat') return flatWay(task.panel, path, settings, task.wish);
	return least(byEdits(task, path, settings), byDefaults(task, path));
}

/** Each unmet setting edited at its item. */
function byEdits(
	{ panel, map, wish }: PanelTask,
	path: readonly number[],
	settings: Settings,
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
	return ofTour(panel, tour(map, path, visits));
}

/** Everything set back first, and then what the defaults leave unmet. Edits before that would be lost. */
function byDefaults(task: PanelTask, path: readonly number[]): PanelWay {
	const { panel, map, defaults } = task;
	if (!map.defaults) return STUCK;
	const there = ofTour(panel, tour(map, path, [{ path: map.defaults.path, presses: 2 }]));
	const rest = byEdits(task, map.defaults.path, defaults);
	return { presses: there.presses + rest.presses, first: there.first };
}

const ofTour = (panel: KeyedPanel, { presses, first }: { presses: number; first: Browse | null }): PanelWay => ({
	presses,
	first: first && pressFor(panel, meaningOf(first)),
});

function meaningOf(browse: Browse): Meaning {
	if (browse.do === 'move') return browse.key === 'down' ? 'next' : 'previous';
	return browse.do === 'set' ? 'enter' : 'back';
}

/** The edit in progress finished: its value brought to an allowed one, and kept. */
function editing(task: PanelTask, view: View): PanelWay {
	const { panel, wish } = task;
	const item = itemAt(panel, view.path);
	if (view.draft === null || (item.kind !== 'choice' && item.kind !== 'number')) return STUCK;
	const allowed = wish.get(item.setting);
	// an edit of a setting nobody minds may end on any value
	const way = allowed ? valueWay(panel, item, view.draft, allowed) : { presses: 0, first: null };
	if (!way) return STUCK;
	const rest = least(byEdits(task, view.path, view.settings, item.setting), byDefaults(task, view.path));
	const first: WayPress = way.first ? valuePress(panel, way.first) : pressFor(panel, 'enter');
	return after(first, way.presses + rest.presses);
}
