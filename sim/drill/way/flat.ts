import type { KeyedPanel, Settings } from '../../../shared/profile/index.ts';
import { pageFor } from '../../fixture/index.ts';
import { allows, type Wish } from '../wish.ts';
import { DONE, type PanelWay, STUCK, valuePress } from './press.ts';
import { menuMap } from './tour.ts';
import { valueWay } from './values.ts';

/**
 * The fewest presses on a flat panel. Its key goes on from function to function, round and round, and never back, so every one that has
 * a value to set is come by in the order they stand in, each value is set as it is come by, and the hand stops at the first function
 * after the last of them that gives the light asked for. Exact: no press but the one that goes on changes the function.
 */
export function flatWay(panel: KeyedPanel, path: readonly number[], settings: Settings, wish: Wish): PanelWay {
	const count = panel.menu.length;
	const at = pageFor(panel, path, settings)[0] ?? 0;
	const ahead = (page: number): number => (page - at + count) % count;
	const { bySetting } = menuMap(panel);
	let presses = 0;
	let furthest = 0;
	let here: PanelWay['first'] = null;
	for (const [setting, allowed] of wish) {
		if (setting === 'work' || allows(allowed, settings[setting])) continue;
		const place = bySetting.get(setting);
		const way = place ? valueWay(panel, place.item, settings[setting], allowed) : null;
		if (!place || !way) return STUCK;
		const turns = ahead(place.path[0] ?? 0);
		presses += way.presses;
		furthest = Math.max(furthest, turns);
		if (turns === 0 && way.first && !here) here = valuePress(panel, way.first);
	}
	const work = wish.get('work');
	const isEnd = (turns: number): boolean => {
		const item = panel.menu[(at + turns) % count];
		return !work || (item !== undefined && 'work' in item && item.work !== undefined && allows(work, item.work));
	};
	let turns = furthest;
	while (!isEnd(turns)) {
		turns++;
		if (turns >= furthest + count) return STUCK;
	}
	presses += turns;
	return presses === 0 ? DONE : { presses, first: here ?? { do: 'key', key: 'page', cue: 0 } };
}
