import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import type { HandsOn as Touch } from '../../../sim/drill/index.ts';
import { laterWith } from '../../ui/index.ts';
import { type OnFrame, type RigStore, useWatched } from '../rig/index.ts';
import type { InHand } from './hand.ts';

/** A tool of the bench, beside the wall, the row and the panel. */
export type Tool = 'desk' | 'cables' | 'remote' | 'sound' | 'breaker' | 'clock' | 'log';

/** What is up where the bench has room for one thing at a time below its row: the panel in hand, the faders, or the open tool. */
export type Sheet = 'panel' | 'desk' | 'tools';

/**
 * What a person looks at and holds, beside the rig itself: one object for as long as the bench stands, which always reads as
 * things are now. What a component draws of it goes through `useSeen`.
 */
export interface BenchView {
	readonly store: RigStore;
	/** Calls back when the rig or anything here may have changed. Returns the way to stop. */
	subscribe(listener: () => void): () => void;
	/** The fixture in hand; null on an empty bench. */
	readonly selected: string | null;
	/** Selects a fixture, and brings its panel into sight, or its faders where they are up. */
	select(fixture: string): void;
	/** Goes up each time a fixture is selected. */
	readonly shown: number;
	/** What is up where one thing has room. */
	readonly sheet: Sheet;
	/** The tool that is open beside the faders, of which one is open at a time. */
	readonly tool: Tool | null;
	/** Brings the panel or a tool up; null closes the tool. */
	bring(part: 'panel' | Tool | null): void;
	/** The cable end in hand, waiting for a socket. */
	readonly hand: InHand | null;
	hold(hand: InHand | null): void;
	/** Calls back at once and then with each frame, after the rig's clock has moved. Returns the way to stop. */
	onFrame(listener: OnFrame): () => void;
	/** Opens a fixture's reason trail; null where what is done here is marked, and the rig is not to give it away. */
	readonly why: ((fixture: string) => void) | null;
	/** Whether hands may go there: all may on a free bench, those of a drill on a drill's. */
	can(touch: Touch): boolean;
	/** Whether everything may be done, also what no drill leaves to a hand: the patch, the remote's code, what hides a fixture. */
	readonly free: boolean;
	/** Words for the screen reader alone. */
	tell(words: string): void;
	/** Kind and length of the next cable laid by pressing sockets. */
	readonly next: { readonly kind: 'data' | 'microphone'; readonly length: number };
	setNext(next: BenchView['next']): void;
}

export const BenchContext = createContext<BenchView | null>(null);

/** The bench a component stands on. */
export function useBench(): BenchView {
	const view = useContext(BenchContext);
	if (!view) throw new Error('a part of the bench was drawn outside of one');
	return view;
}

/** What a component reads of the bench: it is drawn again only when any of it has changed (see `useWatched`). */
export function useSeen<const T extends readonly unknown[]>(read: (bench: BenchView) => T): T {
	const bench = useBench();
	return useWatched(bench, () => read(bench));
}

/** A part of the bench whose script is fetched when it is first drawn. */
export const later = laterWith(benchWords, 'coming');
