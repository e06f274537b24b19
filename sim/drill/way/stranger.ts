import { type KeyedPanel, keysOf, lawOf, type Meaning, type Profile } from '../../../shared/profile/index.ts';
import { type FixtureState, isSwitchedOn, itemAt, itemsBeside, panelOf } from '../../fixture/index.ts';
import type { Rig } from '../../rig/index.ts';
import type { Task } from '../types.ts';
import { allows, unmetKeys, type Wish } from '../wish.ts';
import { panelParts } from './parts.ts';
import { pressFor, valuePress, type WayPress } from './press.ts';
import { Hand } from './script.ts';
import { valueWay } from './values.ts';

/** Which way somebody reads who has no reason for either. */
type Reading = 'forth' | 'back';

/** Presses of a careful stranger at one panel. */
export interface StrangerPresses {
	/** Reading on from item to item, and from value to value. */
	readonly forth: number;
	/** Reading back, where the panel goes back. */
	readonly back: number;
}

/**
 * What a careful stranger needs at a panel with keys: somebody who knows what its keys do, and nothing of what is where. They read item
 * after item from where it stands, go into each menu as they come by, and at the first title that fits what is still to do they
 * do it; a value of a list is looked for from one to the next, and a number is set as anybody would. They leave as soon as all is done.
 * Pressed on the machine itself, so it is a way there is: no fewer than the fewest.
 * @param start as the fixture stands, no key held
 * @param now the rig's clock, ms
 * @returns null where the panel has switches, whose meaning is read beside them and by no press, or where reading does not do it
 */
export function strangerWay(profile: Profile, start: FixtureState, now: number, wish: Wish): StrangerPresses | null {
	if (profile.panel.kind === 'dip') return null;
	const forth = new Stranger(profile, start, now, wish, 'forth').presses();
	const back = new Stranger(profile, start, now, wish, 'back').presses();
	return forth === null || back === null ? null : { forth, back };
}

/**
 * What a careful stranger needs from the start of a drill: presses at its panels, on the average of both ways of reading, rounded up. Never
 * fewer than the fewest at those panels; what is done elsewhere is not in it.
 * @returns null where a panel that is in hand has switches and something to be set by them, or reading alone does not do it
 */
export function strangerPresses(drill: Task, rig: Rig): number | null {
	let sum = 0;
	for (const { unit, wish } of panelParts(drill, rig)) {
		const { settings } = unit.state.context;
		if (unmetKeys(wish, settings).length === 0) continue;
		const read = strangerWay(unit.profile, unit.state, rig.now, wish);
		if (!read) return null;
		sum += (read.forth + read.back) / 2;
	}
	return Math.ceil(sum);
}

/** Rounds of a panel after which reading is given up: what is found on the first is done then, and its end may be behind. */
const ROUNDS = 3;

class Stranger {
	private readonly hand: Hand;
	private readonly panel: KeyedPanel;
	private readonly wish: Wish;
	private readonly reading: Reading;
	private count = 0;

	constructor(profile: Profile, start: FixtureState, now: number, wish: Wish, reading: Reading) {
		this.hand = new Hand(profile, 'read', start, now);
		this.panel = profile.panel as KeyedPanel;
		this.wish = wish;
		this.reading = reading;
	}

	/** Null where all was read and something is still to do. */
	presses(): number | null {
		if (!isSwitchedOn(this.hand.state)) this.press({ do: 'on' });
		if (this.isDone()) return this.count;
		this.wake();
		const isFlat = lawOf(this.panel).shape === 'flat';
		const isInside = !isFlat && this.path.length > 1;
		if (isInside) this.readMenu();
		const round = this.panel.menu.length * ROUNDS;
		for (let n = 0; n < round && !this.isDone(); n++) {
			// out of the menu it was in, it stands on that menu's entry, which is read
			if (n > 0 || isInside) this.goOn();
			this.readItem(isFlat);
		}
		return this.isDone() ? this.count : null;
	}

	private get path(): readonly number[] {
		return this.hand.state.context.path;
	}

	private isDone = (): boolean => unmetKeys(this.wish, this.hand.state.context.settings).length === 0;

	/** What shows no menu is brought to show it. */
	private wake(): void {
		if (panelOf(this.hand.state) === 'asleep') this.press(pressFor(this.panel, 'back'));
		if (panelOf(this.hand.state) === 'locked') this.press({ do: 'unlock' });
		const at = panelOf(this.hand.state);
		if (at === 'resting' || at === 'editing' || at === 'confirming') this.press(pressFor(this.panel, 'back'));
	}

	/** An item on top: a menu is gone through. */
	private readItem(isFlat: boolean): void {
		const item = itemAt(this.panel, this.path);
		if (item.kind === 'menu') {
			this.press(pressFor(this.panel, 'enter'));
			this.readMenu();
		} else this.change(isFlat);
	}

	/** From the item it stands on, all that are beside it; then out, unless nothing is left. */
	private readMenu(): void {
		const { length } = itemsBeside(this.panel, this.path);
		for (let n = 0; n < length && !this.isDone(); n++) {
			if (n > 0) this.goOn();
			this.change(false);
		}
		if (!this.isDone()) this.press(pressFor(this.panel, 'back'));
	}

	/** Does what is to be done at the item that is shown, if its title fits. */
	private change(isFlat: boolean): void {
		const item = itemAt(this.panel, this.path);
		if (item.kind !== 'choice' && item.kind !== 'number') return;
		const allowed = this.wish.get(item.setting);
		if (!allowed || allows(allowed, this.hand.state.context.settings[item.setting])) return;
		if (!isFlat) this.press(pressFor(this.panel, 'enter'));
		const shown = () => {
			const { draft, settings } = this.hand.state.context;
			return isFlat || draft === null ? settings[item.setting] : draft;
		};
		const most = item.kind === 'choice' ? item.options.length : item.most - item.least + 1;
		for (let n = 0; n <= most && !allows(allowed, shown()); n++) {
			const known = item.kind === 'number' ? valueWay(this.panel, item, shown(), allowed)?.first : null;
			this.press(valuePress(this.panel, known ?? { key: this.reading === 'forth' ? 'up' : 'down', cue: 0 }));
		}
		if (!isFlat) this.press(pressFor(this.panel, 'enter'));
	}

	/** To the item beside; a panel that only goes on is read that way. */
	private goOn(): void {
		const means: Meaning = this.reading === 'back' && keysOf(this.panel).previous ? 'previous' : 'next';
		this.press(pressFor(this.panel, means));
	}

	private press(press: WayPress): void {
		this.count++;
		this.hand.press(press, this.wish);
	}
}
