import type { Learnt } from '../../../sim/finder/index.ts';
import type { ComplaintView, LaidView, Stage, WalkView } from './view.ts';
import { ALLOWS_ALL, type Allows, type FinderWalk } from './walk.ts';

/** What is said of a walk that was handed on: `aside` where the one that stood here before was set aside. */
export type HandedNote = 'taken' | 'aside';

/** All that is on the page. */
export interface FinderScene {
	readonly phase: 'opening' | 'rig' | 'fixture' | 'complaint' | 'walk';
	readonly allows: Allows;
	readonly walk: FinderWalk | null;
	readonly laid: LaidView | null;
	readonly complaints: readonly ComplaintView[] | null;
	readonly view: WalkView | null;
	/** What the worker is at, while the page waits for it. */
	readonly stage: Stage | null;
	/** A sentence about what went wrong, until it is dismissed or something else is done. */
	readonly trouble: string | null;
	/** A link to a walk that there was no room for, while what went wrong with it stands. */
	readonly untaken: string | null;
	/** What is to be read before anything is touched, until it is dismissed or this walk is given up. */
	readonly note: HandedNote | null;
	/** How often either was told: the same once more is read once more. */
	readonly troubleTold: number;
	readonly noteTold: number;
	/** Whether the device keeps the walk. */
	readonly kept: boolean;
	/** Where it does not: whether only room is wanting. */
	readonly full: boolean;
	readonly learnt: Learnt;
	/** Goes up with each screen, so that the page can begin it at its top. */
	readonly turn: number;
}

/** Before anything is known. */
const START: FinderScene = {
	phase: 'opening',
	allows: ALLOWS_ALL,
	walk: null,
	laid: null,
	complaints: null,
	view: null,
	stage: null,
	trouble: null,
	untaken: null,
	note: null,
	troubleTold: 0,
	noteTold: 0,
	kept: true,
	full: false,
	learnt: {},
	turn: 0,
};

/** What the page shows, and those who are told when it changes. */
export interface HeldScene {
	readonly scene: FinderScene;
	set(change: Partial<FinderScene>): void;
	/** As `set`, and the person stands before something new. */
	arrive(change: Partial<FinderScene>): void;
	subscribe(listener: () => void): () => void;
}

export function holdScene(): HeldScene {
	let scene = START;
	const listeners = new Set<() => void>();
	const set = (change: Partial<FinderScene>): void => {
		scene = {
			...scene,
			...(change.trouble === null ? { untaken: null } : {}),
			...change,
			troubleTold: scene.troubleTold + Number(Boolean(change.trouble)),
			noteTold: scene.noteTold + Number(Boolean(change.note)),
		};
		for (const listener of [...listeners]) listener();
	};
	return {
		get scene() {
			return scene;
		},
		set,
		arrive: (change) => set({ ...change, stage: null, turn: scene.turn + 1 }),
		subscribe(listener) {
			listeners.add(listener);
			return () => listeners.delete(listener);
		},
	};
}
