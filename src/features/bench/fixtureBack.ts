import { backWords, rowWords } from '#words/bench/index.ts';
import type { CautionId } from '#words/cautions/index.ts';
import type { PanelKey } from '../../../shared/profile/index.ts';
import { hasMains, powerOf } from '../../../sim/fixture/index.ts';
import type { Rig, Sight } from '../../../sim/rig/index.ts';
import { askedText, describeLight } from '../../wording/index.ts';

/** One lamp on a fixture's back: what it is called, how it is drawn, and its state in words. */
export interface IndicatorView {
	readonly id: 'power' | 'data' | 'battery' | 'sensor';
	readonly name: string;
	readonly state: string;
	readonly look: 'out' | 'lit' | 'blinking' | 'flickering';
	/** Bars of four, for the battery alone. */
	readonly bars?: number;
}

/** The lamps a fixture has, as they are now. */
export function indicatorsOf({ lamps }: Sight): IndicatorView[] {
	const { power, data, battery, sensor } = backWords;
	const views: IndicatorView[] = [
		{ id: 'power', name: power.name, state: power[lamps.power], look: lamps.power },
		{ id: 'data', name: data.name, state: data[lamps.data], look: lamps.data === 'steady' ? 'lit' : lamps.data },
	];
	if (lamps.battery) {
		const { bars, charging } = lamps.battery;
		views.push({
			id: 'battery',
			name: battery.name,
			state: charging ? `${battery.bars(bars)}, ${battery.charging}` : battery.bars(bars),
			look: bars > 0 ? 'lit' : 'out',
			bars,
		});
	}
	if (lamps.sensor) views.push({ id: 'sensor', name: sensor.name, state: sensor[lamps.sensor], look: lamps.sensor });
	return views;
}

/** Where a mains lead can go: nowhere, the wall, or another's link socket that does not lead back here. */
export function mainsChoices(rig: Rig, fixture: string): { readonly value: string; readonly words: string }[] {
	const { units } = rig.gear;
	const leadsHere = (id: string): boolean => {
		for (let at = id, hops = 0; hops <= units.size; hops++) {
			if (at === fixture) return true;
			at = units.get(at)?.plug ?? 'none';
		}
		return false;
	};
	return [
		{ value: 'none', words: backWords.nowhere },
		{ value: 'wall', words: backWords.wall },
		...[...units]
			.filter(([id, unit]) => unit.profile.power.link && !leadsHere(id))
			.map(([id, unit]) => ({ value: id, words: backWords.linkOf(unit.placed.name) })),
	];
}

/** Names of the fixtures fed from this one's link socket; null where it has none. */
export function linkFeeds(rig: Rig, fixture: string): string[] | null {
	const { units } = rig.gear;
	if (!units.get(fixture)?.profile.power.link) return null;
	return [...units.values()].filter(({ plug }) => plug === fixture).map(({ placed }) => placed.name);
}

/** The panel key a keyboard's key stands for while the display has the focus. */
export function keyFor(pressed: string, keys: readonly PanelKey[]): PanelKey | null {
	return KEYBOARD[pressed]?.find((key) => keys.includes(key)) ?? null;
}

/** What each key of the keyboard is on a panel: the first of these that the panel has. */
const KEYBOARD: Readonly<Record<string, readonly PanelKey[]>> = {
	ArrowUp: ['up', 'left'],
	ArrowDown: ['down', 'right'],
	ArrowLeft: ['left'],
	ArrowRight: ['right', 'page'],
	Enter: ['set', 'page'],
	Escape: ['back'],
	Backspace: ['back'],
};

/** Characters that a card in the row has room for. */
const ROOM = 64;

/** A light in words short enough for a card: where its cells make a long tale, all of them as one, and that they differ. */
export function briefLight(rig: Rig, fixture: string, light: Sight['light']): string {
	const seen = describeLight(light);
	const text = seen.length <= ROOM ? seen : rowWords.differ(describeLight({ ...light, cells: [light.whole] }));
	return [text, ...askedText(rig, fixture, light)].join(', ');
}

/** Cautions for what lamps give off now: ultraviolet, flashing. */
export function lightCautions(sights: readonly Sight[]): CautionId[] {
	return [
		...(sights.some(({ light }) => light.whole.ultraviolet > 0) ? (['ultraviolet'] as const) : []),
		...(sights.some(({ light }) => light.flashes > 0) ? (['flashing'] as const) : []),
	];
}

/** Cautions for hands at one fixture: hung overhead, its battery on charge, its mains. */
export function handCautions(rig: Rig, fixture: string): CautionId[] {
	const unit = rig.gear.units.get(fixture);
	if (!unit) return [];
	const { placed, plug, profile, state } = unit;
	const charges = powerOf(state) === 'charging' || (profile.power.battery !== null && hasMains(state));
	return [
		...(placed.place.overhead ? (['hanging'] as const) : []),
		...(charges ? (['batteries'] as const) : []),
		...(plug !== 'none' || profile.power.battery === null ? (['mains'] as const) : []),
	];
}
