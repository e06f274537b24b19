import { drillWords } from '#words/drills/index.ts';
import { locale } from '#words/locale/index.ts';
import { isInHand, type Task } from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { type RigStore, rigStore } from './store.ts';

/** The hands of a drill in words: 'panels and power switches'. */
export function handsText({ hands }: Pick<Task, 'hands'>): string {
	return locale.list(hands.map((hand) => drillWords.handWords[hand]));
}

/**
 * A drill's rig as the learner finds it, in a store that takes nothing but what the drill leaves to a hand: the rest becomes a
 * sentence, so that its log can always be marked.
 * @param log what was done before, played back first
 * @throws InputError where that log does not fit
 */
export function drillStore(drill: Task, log: readonly RigEvent[] = []): RigStore {
	const store = rigStore(drill.sheet, log);
	const guarded = (send: (event: RigEvent) => boolean) => (event: RigEvent) => {
		if (isInHand(drill, event)) return send(event);
		store.say(drillWords.notInHand(handsText(drill)));
		return false;
	};
	return Object.create(store, {
		send: { value: guarded(store.send) },
		slide: { value: guarded(store.slide) },
	}) as RigStore;
}
