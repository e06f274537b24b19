import type { KeyedPanel, Profile } from '../../../shared/profile/index.ts';
import {
	direction,
	doesRepeat,
	type FixtureState,
	type HeldKey,
	itemAt,
	pathBeside,
	stepSize,
	stepValue,
} from '../../fixture/index.ts';
import type { Wish } from '../wish.ts';
import { cuesOf, landingOf } from './hold.ts';
import { panelWay, type View, viewOf } from './panel.ts';

/** How a key that is still held is best let go. */
export interface HeldWay {
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
export function heldWay(profile: Profile, state: FixtureState, wish: Wish): HeldWay {
	const panel = profile.panel as KeyedPanel;
	const view = viewOf(state);
	const { held } = state.context;
	const now: HeldWay = {
		presses: panelWay(profile, view, wish).presses,
		cue: held?.repeats ?? 0,
		ends: held?.repeats ?? 0,
	};
	if (!held || now.presses === 0) return now;
	if (view.panel === 'locked' && held.key === 'set') {
		const { presses } = panelWay(profile, { ...view, panel: 'browsing' }, wish);
		return presses < now.presses ? { presses, cue: null, ends: 0 } : now;
	}
	// a key held so long that the panel takes it as stuck repeats no more
	if (!doesRepeat(held.key) || held.nextAt === Number.MAX_SAFE_INTEGER) return now;
	if (view.panel !== 'browsing' && view.panel !== 'editing') return now;
	const later = view.panel === 'editing' ? cuesOf(panel).filter((cue) => cue > held.repeats) : [];
	return [held.repeats, ...later]
		.map((cue) => worstAt(profile, view, wish, held, cue))
		.reduce((best, way) => (way.presses < best.presses ? way : best));
}

/** What is needed at the worst where a hold is let go at a cue. */
function worstAt(profile: Profile, view: View, wish: Wish, held: HeldKey, cue: number): HeldWay {
	const panel = profile.panel as KeyedPanel;
	const item = itemAt(panel, view.path);
	const { least, most } = landingOf(panel, cue);
	let { path, draft } = view;
	let worst: HeldWay = { presses: -1, cue, ends: cue };
	const key = held.key === 'up' ? 'up' : 'down';
	for (let repeats = held.repeats; repeats <= most; repeats++) {
		if (repeats > held.repeats) {
			if (draft === null) path = pathBeside(panel, path, key === 'up' ? -1 : 1);
			else if (item.kind === 'choice' || item.kind === 'number')
				draft = stepValue(item, draft, direction(key), stepSize(panel, repeats));
		}
		if (repeats < least) continue;
		const { presses } = panelWay(profile, { ...view, path, draft }, wish);
		if (presses > worst.presses) worst = { presses, cue, ends: repeats };
	}
	return worst;
}
