import { type KeyedPanel, lawOf, type PanelKey, type Profile } from '../../../shared/profile/index.ts';
import type { RigEvent } from '../../event/index.ts';
import {
	alongBy,
	direction,
	doesRepeat,
	type FixtureEvent,
	type FixtureState,
	type HeldKey,
	holdFor,
	itemAt,
	nextDeadline,
	panelOf,
	pathBeside,
	stepFixture,
	stepSize,
	stepValue,
} from '../../fixture/index.ts';
import type { Wish } from '../wish.ts';
import { panelWay, type View, viewOf } from './panel.ts';
import type { WayPress } from './press.ts';
import { cuesOf, heldMs, landingOf } from './values.ts';

/** Events of one fixture, each so many ms after the way begins. */
export interface Script {
	readonly presses: number;
	/** A key still held from before is let go at `at`, on its own. */
	readonly release: TimedEvent | null;
	/** What follows, from 0 ms on. */
	readonly steps: readonly TimedEvent[];
	/** From the first step to the last, ms. */
	readonly length: number;
	/** How long the panel would stay as it is if nobody touched it, ms; Infinity where it would for good. */
	readonly patience: number;
}

export interface TimedEvent {
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
	let release: TimedEvent | null = null;
	const { held } = start.context;
	if (held) {
		const panel = profile.panel as KeyedPanel;
		const best = staticWay(profile, hand.state, wish);
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
function onward(panel: KeyedPanel, state: FixtureState, { cue, ends }: StaticWay): number {
	const { held, now } = state.context;
	if (!held) return 0;
	if (cue === null) return held.since + panel.unlockHold - now;
	const repeats = ends - held.repeats;
	return repeats <= 0 ? 0 : held.nextAt + (repeats - 1) * panel.repeat.every - now;
}

/** Milliseconds until an untouched panel sleeps or locks by itself. */
function patienceOf(profile: Profile, state: FixtureState): number {
	const { now } = state.context;
	let at = state;
	// what a panel stores by itself changes nothing for the hand
	for (let next = nextDeadline(profile, at); next !== null; next = nextDeadline(profile, at)) {
		const was = panelOf(at);
		at = stepFixture(profile, at, { type: 'clock.advance', now: next });
		if (was !== 'scrolling' || panelOf(at) !== 'browsing') return next - now;
	}
	return Number.POSITIVE_INFINITY;
}

/** One hand at one fixture: presses, and what it wrote down. */
export class Hand {
	readonly done: TimedEvent[] = [];
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

	press(press: WayPress, wish: Wish): void {
		const fixture = this.#fixture;
		if (press.do === 'on') {
			this.#write({ type: 'power.switch', fixture, on: true });
			this.tell({ type: 'power.switch', on: true });
			return;
		}
		const panel = this.#profile.panel as KeyedPanel;
		const { long, opens } = lawOf(panel);
		const key: PanelKey = press.do === 'unlock' ? opens : press.key;
		const ms =
			press.do === 'key' ? this.#worstMs(press, wish) : press.do === 'long' ? (long?.after ?? 0) : panel.unlockHold;
		if (ms === 0) this.#write({ type: 'key.tap', fixture, key });
		else this.#write({ type: 'key.down', fixture, key }, press.do === 'key' ? holdFor(panel, press.cue) : null);
		this.tell({ type: 'key.down', key });
		this.wait(ms);
		if (ms > 0) this.#write({ type: 'key.up', fixture, key });
		this.tell({ type: 'key.up', key });
	}

	/** How long a press is held where it ends at its worst, ms. */
	#worstMs({ key, cue }: Extract<WayPress, { readonly do: 'key' }>, wish: Wish): number {
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

/** How a key that is still held is best let go. */
export interface StaticWay {
	/** Presses that are sure to do after that. */
	readonly presses: number;
	/** The repeat of this hold at whose sight it is let go; as many as there were where that is at once, and null where it must be held until the lock opens. */
	readonly cue: number | null;
	/** Repeats it then ends on, at the worst. */
	readonly ends: number;
}

/**
 * A key still held when the learner stops goes on moving what it moves, for no further press: let go at once, or at a later sight
 * that a person could be asked to wait for.
 */
export function staticWay(profile: Profile, state: FixtureState, wish: Wish): StaticWay {
	const panel = profile.panel as KeyedPanel;
	const view = viewOf(state);
	const { held } = state.context;
	const now: StaticWay = {
		presses: panelWay(profile, view, wish).presses,
		cue: held?.repeats ?? 0,
		ends: held?.repeats ?? 0,
	};
	if (!held || now.presses === 0) return now;
	if (view.panel === 'locked' && held.key === lawOf(panel).opens) {
		const { presses } = panelWay(profile, { ...view, panel: 'browsing' }, wish);
		return presses < now.presses ? { presses, cue: null, ends: 0 } : now;
	}
	// a key held so long that the panel takes it as stuck repeats no more
	if (!doesRepeat(held.key) || held.nextAt === Number.MAX_SAFE_INTEGER) return now;
	if (view.panel !== 'browsing' && view.panel !== 'editing' && view.panel !== 'scrolling') return now;
	const later = view.panel !== 'browsing' ? cuesOf(panel).filter((cue) => cue > held.repeats) : [];
	return [held.repeats, ...later]
		.map((cue) => worstAt(profile, view, wish, held, cue))
		.reduce((best, way) => (way.presses < best.presses ? way : best));
}

/** What is needed at the worst where a hold is let go at a cue. */
function worstAt(profile: Profile, view: View, wish: Wish, held: HeldKey, cue: number): StaticWay {
	const panel = profile.panel as KeyedPanel;
	const item = itemAt(panel, view.path);
	const { least, most } = landingOf(panel, cue);
	const isFlat = lawOf(panel).shape === 'flat';
	let { path, draft, settings } = view;
	let worst: StaticWay = { presses: -1, cue, ends: cue };
	if (!doesRepeat(held.key)) return worst;
	const { key } = held;
	for (let repeats = held.repeats; repeats <= most; repeats++) {
		if (repeats > held.repeats) {
			if (isFlat && (item.kind === 'choice' || item.kind === 'number'))
				settings = {
					...settings,
					[item.setting]: stepValue(item, settings[item.setting], direction(key), stepSize(panel, repeats)),
				};
			else if (draft === null) path = pathBeside(panel, path, alongBy(key));
			else if (item.kind === 'choice' || item.kind === 'number')
				draft = stepValue(item, draft, direction(key), stepSize(panel, repeats));
		}
		if (repeats < least) continue;
		const { presses } = panelWay(profile, { ...view, path, draft, settings }, wish);
		if (presses > worst.presses) worst = { presses, cue, ends: repeats };
	}
	return worst;
}
