import type { Key, KeyedPanel, Profile } from '../../../shared/profile/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { type FixtureEvent, type FixtureState, holdFor, nextDeadline, stepFixture } from '../../fixture/index.ts';
import type { Wish } from '../wish.ts';
import { type HeldWay, heldWay } from './held.ts';
import { heldMs, landingOf } from './hold.ts';
import { type Press, panelWay, viewOf } from './panel.ts';

/** Events of one fixture, each so many ms after the way begins. */
export interface Script {
	readonly presses: number;
	/** A key still held from before is let go at `at`, on its own. */
	readonly release: Timed | null;
	/** What follows, from 0 ms on. */
	readonly steps: readonly Timed[];
	/** From the first step to the last, ms. */
	readonly length: number;
	/** How long the panel would stay as it is if nobody touched it, ms; Infinity where it would for good. */
	readonly patience: number;
}

export interface Timed {
	readonly at: number;
	readonly event: RigEvent;
	/** With a hold's `key.down`, or the `key.up` of a key held before: ms until the display shows what it is let go at; null for a lock, held until it opens. */
	readonly letGoMs?: number | null;
}

/**
 * A surest way for one fixture with keys, walked on the machine itself: each press is the first of `panelWay`, each hold
 * ends at its worst, and the machine must then need one fewer.
 * @param now the rig's clock, ms
 */
export function panelScript(profile: Profile, fixture: string, start: FixtureState, now: number, wish: Wish): Script {
	const hand = new Hand(profile, fixture, start, now);
	let release: Timed | null = null;
	const { held } = start.context;
	if (held) {
		const panel = profile.panel as KeyedPanel;
		const best = heldWay(profile, hand.state, wish);
		const letGoMs = best.cue === null ? null : onward(panel, hand.state, { ...best, ends: best.cue });
		hand.wait(onward(panel, hand.state, best));
		release = { at: hand.at, event: { type: 'key.up', fixture, key: held.key }, letGoMs };
		hand.tell({ type: 'key.up', key: held.key });
	}
	const patience = patienceOf(profile, hand.state);
	const begun = hand.at;
	let { presses, first } = panelWay(profile, viewOf(hand.state), wish);
	const total = presses;
	while (first) {
		hand.press(first, wish);
		const next = panelWay(profile, viewOf(hand.state), wish);
		if (next.presses !== presses - 1)
			throw new Error(`the way of ${profile.id} is off: after ${JSON.stringify(first)} ${next.presses} of ${presses}`);
		({ presses, first } = next);
	}
	const steps = hand.done.map((timed) => ({ ...timed, at: timed.at - begun }));
	return { presses: total, release, steps, length: hand.at - begun, patience };
}

/** Milliseconds until a held key has come to where its way lets it end, or (Set on a locked panel) has opened it. */
function onward(panel: KeyedPanel, state: FixtureState, { cue, ends }: HeldWay): number {
	const { held, now } = state.context;
	if (!held) return 0;
	if (cue === null) return held.since + panel.unlockHold - now;
	const repeats = ends - held.repeats;
	return repeats <= 0 ? 0 : held.nextAt + (repeats - 1) * panel.repeat.every - now;
}

/** Milliseconds until an untouched panel sleeps or locks by itself. */
function patienceOf(profile: Profile, state: FixtureState): number {
	const next = nextDeadline(profile, state);
	return next === null ? Number.POSITIVE_INFINITY : next - state.context.now;
}

/** One hand at one fixture: presses, and what it wrote down. */
class Hand {
	readonly done: Timed[] = [];
	state: FixtureState;
	/** Milliseconds since the way began. */
	at = 0;
	readonly #profile: Profile;
	readonly #fixture: string;
	readonly #now: number;

	constructor(profile: Profile, fixture: string, state: FixtureState, now: number) {
		this.#profile = profile;
		this.#fixture = fixture;
		this.#now = now;
		this.state = state;
		if (state.context.now < now) this.tell({ type: 'clock.advance', now });
	}

	tell(event: FixtureEvent): void {
		this.state = stepFixture(this.#profile, this.state, event);
	}

	wait(ms: number): void {
		if (ms <= 0) return;
		this.at += ms;
		this.tell({ type: 'clock.advance', now: this.#now + this.at });
	}

	press(press: Press, wish: Wish): void {
		const fixture = this.#fixture;
		if (press.do === 'on') {
			this.#write({ type: 'power.switch', fixture, on: true });
			this.tell({ type: 'power.switch', on: true });
			return;
		}
		const panel = this.#profile.panel as KeyedPanel;
		const key: Key = press.do === 'unlock' ? 'set' : press.key;
		const ms = press.do === 'unlock' ? panel.unlockHold : this.#worstMs(press, wish);
		if (ms === 0) this.#write({ type: 'key.tap', fixture, key });
		else this.#write({ type: 'key.down', fixture, key }, press.do === 'unlock' ? null : holdFor(panel, press.cue));
		this.tell({ type: 'key.down', key });
		this.wait(ms);
		if (ms > 0) this.#write({ type: 'key.up', fixture, key });
		this.tell({ type: 'key.up', key });
	}

	/** How long a press is held where it ends at its worst, ms. */
	#worstMs({ key, cue }: Extract<Press, { readonly do: 'key' }>, wish: Wish): number {
		if (cue === 0) return 0;
		const panel = this.#profile.panel as KeyedPanel;
		const { least, most } = landingOf(panel, cue);
		const down = stepFixture(this.#profile, this.state, { type: 'key.down', key });
		let worst = { presses: -1, ms: 0 };
		for (let repeats = least; repeats <= most; repeats++) {
			const ms = heldMs(panel, cue, repeats);
			const then = stepFixture(this.#profile, down, { type: 'clock.advance', now: this.#now + this.at + ms });
			const { presses } = panelWay(this.#profile, viewOf(then), wish);
			if (presses > worst.presses) worst = { presses, ms };
		}
		return worst.ms;
	}

	#write(event: RigEvent, letGoMs?: number | null): void {
		this.done.push({ at: this.at, event, ...(letGoMs === undefined ? {} : { letGoMs }) });
	}
}
