import { useEffect, useState } from 'preact/hooks';
import { finderWords, quickWords } from '#words/finder/index.ts';
import { type ComplaintKind, learn } from '../../../sim/finder/index.ts';
import { type Ask, Refused, troubleText } from '../../engine/index.ts';
import type { Store } from '../../storage/index.ts';
import { countable, found, keepCounts, keepWalk, setAside, unlearn } from './keep.ts';
import { type Scene, START } from './scene.ts';
import type { LaidView, Stage, WalkView } from './view.ts';
import {
	type Allows,
	freshWalk,
	isSet,
	type RigChoice,
	type SetWalk,
	stepBack,
	type Walk,
	withAsides,
} from './walk.ts';

/** The finder as the page holds it: what is done goes in, the scene comes out. Nothing throws; trouble becomes a sentence. */
export interface FinderStore {
	readonly scene: Scene;
	subscribe(listener: () => void): () => void;
	/** Takes up the walk that is kept on the device, if any. */
	open(): Promise<void>;
	/** Has the worker fetched before it is needed. */
	warm(): void;
	choose(rig: RigChoice): Promise<void>;
	/** A sheet or a link to a bench, as text. */
	read(text: string): Promise<void>;
	pickFixture(fixture: string): Promise<void>;
	pickComplaint(complaint: ComplaintKind): Promise<void>;
	answer(check: string, outcome: string): Promise<void>;
	setAside(check: string, why: 'cannot' | 'unsure'): Promise<void>;
	back(): Promise<void>;
	/** Has everything asked again that was set aside. */
	bringBack(): Promise<void>;
	allow(allows: Allows): Promise<void>;
	/** The same fixture, another complaint. */
	otherComplaint(): Promise<void>;
	startAgain(): Promise<void>;
	forgetCounts(): void;
	/** Shows a sentence; null for none. */
	say(trouble: string | null): void;
}

export interface StoreParts {
	readonly ask: Ask;
	readonly storage: Store;
	/** Ms since 1970. */
	readonly clock: () => number;
}

/** What a rig of three answers is called; null for one whose sheet says it. */
const nameOf = (rig: RigChoice): string | null =>
	rig.kind === 'quick' ? quickWords.named(quickWords.countOne(rig.count), quickWords.links[rig.linked].name) : null;

export function finderStore({ ask, storage, clock }: StoreParts): FinderStore {
	let scene = START;
	let asked = 0;
	const listeners = new Set<() => void>();
	const set = (change: Partial<Scene>): void => {
		scene = { ...scene, ...change };
		for (const listener of [...listeners]) listener();
	};
	const onStage = (mine: number) => (stage: Stage) => {
		if (mine === asked) set({ stage });
	};
	/** Asks for what the page needs next, and lets it fall where something else was done meanwhile. */
	const fetch = async <T>(
		get: (stage: (stage: Stage) => void) => Promise<T>,
		use: (got: T) => void | Promise<void>,
	): Promise<void> => {
		const mine = ++asked;
		try {
			const got = await get(onStage(mine));
			if (mine === asked) await use(got);
		} catch (error) {
			if (mine !== asked) return;
			set({ stage: null, trouble: troubleText(error, finderWords.troubles) });
			if (error instanceof Refused) await fallBack();
		}
	};
	/** A walk that its own finder refuses: its steps go, and if it has none, what it asks about. */
	const fallBack = async (): Promise<void> => {
		const { walk } = scene;
		if (scene.phase !== 'walk' || !walk) return;
		setAside(storage, 'walk');
		const { trouble } = scene;
		const next = walk.steps.length > 0 ? { ...walk, steps: [], counted: [] } : { ...walk, complaint: null };
		await put(next, walk.steps.length > 0 ? finderWords.troubles.noFit : trouble);
	};
	const keep = (): void => {
		const came = keepWalk(storage, scene);
		const [kept, full] = [came === 'kept', came === 'full'];
		if (kept !== scene.kept || full !== scene.full) set({ kept, full });
	};
	/** Puts a walk on the page, keeps it, and asks for what shows it. */
	const put = (walk: Walk | null, trouble: string | null = null): Promise<void> => {
		set({ walk, trouble });
		keep();
		return show();
	};
	const arrive = (change: Partial<Scene>): void => set({ ...change, stage: null, turn: scene.turn + 1 });

	const show = async (): Promise<void> => {
		const { walk } = scene;
		if (!walk) {
			asked++;
			return arrive({ phase: 'rig', laid: null, complaints: null, view: null });
		}
		if (!scene.laid)
			return fetch(
				(onStage) => ask('finder.lay', { rig: walk.rig }, { onStage }),
				(laid) => place(walk, laid),
			);
		return showOn(walk, scene.laid);
	};
	const place = (walk: Walk, given: LaidView): Promise<void> => {
		const laid = { ...given, name: nameOf(walk.rig) ?? given.name };
		set({ laid });
		const only = laid.fixtures.length === 1 ? laid.fixtures[0] : undefined;
		return only && walk.fixture === null ? put({ ...walk, fixture: only.id }) : showOn(walk, laid);
	};
	const showOn = async (walk: Walk, laid: LaidView): Promise<void> => {
		if (isSet(walk)) {
			set({ phase: 'walk' });
			return look((view) => arrive({ view, laid }));
		}
		const { rig, fixture } = walk;
		if (fixture === null) {
			asked++;
			return arrive({ phase: 'fixture', complaints: null, view: null });
		}
		return fetch(
			(onStage) => ask('finder.complaints', { rig, fixture }, { onStage }),
			(complaints) => arrive({ phase: 'complaint', complaints, view: null }),
		);
	};
	const look = async (use: (view: WalkView) => void): Promise<void> => {
		const { walk, allows } = scene;
		if (!isSet(walk)) return;
		await fetch(
			(onStage) => ask('finder.look', { walk, allows, isPartEnough: true }, { onStage }),
			(view) => {
				use(view);
				count();
				return view.isPart && scene.walk === walk ? lookWhole(walk, allows) : undefined;
			},
		);
	};
	/** The same once the whole table is there. The page goes on meanwhile: what is answered by then is asked about anew. */
	const lookWhole = (walk: SetWalk, allows: Allows): Promise<void> =>
		fetch(
			() => ask('finder.look', { walk, allows, isPartEnough: false }),
			(view) => set({ view }),
		);
	/** A verdict that a mend has confirmed is counted once, and no longer counted when it is taken back. */
	const count = (): void => {
		const { walk, view, learnt } = scene;
		if (!walk) return;
		const faults = countable(view?.verdict ?? null);
		if (faults.length > 0 === walk.counted.length > 0) return;
		const next =
			faults.length > 0
				? learn(
						learnt,
						faults.map((fault) => ({ fault, place: '' })),
					)
				: unlearn(learnt, walk.counted);
		set({ learnt: next, walk: { ...walk, counted: faults } });
		keepCounts(storage, next);
		keep();
	};
	const step = (more: Walk['steps'][number]): Promise<void> =>
		scene.walk ? put({ ...scene.walk, steps: [...scene.walk.steps, more] }) : Promise.resolve();

	const store: FinderStore = {
		get scene() {
			return scene;
		},
		subscribe(listener) {
			listeners.add(listener);
			return () => listeners.delete(listener);
		},
		async open() {
			const [walk, counts] = [found(storage, 'walk'), found(storage, 'verdicts')];
			const textOf = (kept: typeof walk): string | null => (kept && !kept.isNewer ? kept.text : null);
			if (walk?.isNewer || counts?.isNewer) set({ trouble: finderWords.troubles.newer });
			if (textOf(walk) === null && textOf(counts) === null) return show();
			await fetch(
				(onStage) => ask('finder.open', { walk: textOf(walk), counts: textOf(counts) }, { onStage }),
				({ kept, learnt, damaged }) => {
					for (const what of damaged) setAside(storage, what === 'walk' ? 'walk' : 'verdicts');
					set({ learnt, ...(kept ?? {}) });
					if (damaged.length > 0)
						set({
							trouble: damaged.includes('walk') ? finderWords.troubles.damaged : finderWords.troubles.damagedCounts,
						});
					return show();
				},
			);
			if (scene.phase === 'opening' && scene.trouble !== null) set({ phase: 'rig' });
		},
		warm() {
			ask('finder.open', { walk: null, counts: null }).catch(() => undefined);
		},
		choose: (rig) => {
			set({ laid: null });
			return put(freshWalk(rig, scene.learnt, clock()));
		},
		async read(text) {
			await fetch(
				(onStage) => ask('finder.read', { text }, { onStage }),
				(rig) => store.choose(rig),
			);
		},
		pickFixture: (fixture) => (scene.walk ? put({ ...scene.walk, fixture }) : Promise.resolve()),
		pickComplaint: (complaint) => (scene.walk ? put({ ...scene.walk, complaint, steps: [] }) : Promise.resolve()),
		answer: (check, outcome) => step({ did: 'answer', check, outcome }),
		setAside: (check, why) => step({ did: why, check }),
		back() {
			const { walk, laid } = scene;
			if (!walk) return Promise.resolve();
			const isOnly = laid?.fixtures.length === 1 && walk.complaint === null;
			return put(isOnly ? null : stepBack(walk));
		},
		bringBack: () => (scene.walk ? put(withAsides(scene.walk)) : Promise.resolve()),
		allow(allows) {
			set({ allows });
			keep();
			// the person is still at the switches: what comes of them is no new screen
			return look((view) => set({ view, stage: null }));
		},
		otherComplaint: () =>
			scene.walk ? put({ ...scene.walk, complaint: null, steps: [], counted: [] }) : Promise.resolve(),
		startAgain() {
			set({ laid: null });
			return put(null);
		},
		forgetCounts() {
			set({ learnt: {} });
			keepCounts(storage, {});
		},
		say: (trouble) => set({ trouble }),
	};
	return store;
}

/** The scene, drawn again whenever it changes. */
export function useScene(store: FinderStore): Scene {
	const [, turn] = useState(0);
	useEffect(() => store.subscribe(() => turn((n) => n + 1)), [store]);
	return store.scene;
}
