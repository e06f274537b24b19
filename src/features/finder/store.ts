import { useEffect, useState } from 'preact/hooks';
import { finderWords, handOnWords, quickWords } from '#words/finder/index.ts';
import type { ComplaintKind } from '../../../sim/finder/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { type Fetch, fetching } from './fetching.ts';
import { found, keepCounts, keepNote, keepWalk, keptNote, setAside, withCount, withFound } from './keep.ts';
import { type FinderScene, type HeldScene, holdScene } from './scene.ts';
import type { Asks, LaidView, MayBePlan, WalkView } from './view.ts';
import {
	type Allows,
	type FinderRecord,
	type FinderWalk,
	freshWalk,
	isSet,
	type RigChoice,
	type SetWalk,
	stepBack,
	withAsides,
} from './walk.ts';

/** The finder as the page holds it: what is done goes in, the scene comes out. Nothing throws; trouble becomes a sentence. */
export interface FinderStore {
	readonly scene: FinderScene;
	subscribe(listener: () => void): () => void;
	/** Takes up the walk that is kept on the device, if any. */
	open(): Promise<void>;
	/** Has the worker fetched before it is needed. */
	warm(): void;
	choose(rig: RigChoice): Promise<void>;
	/**
	 * A sheet, a link to a bench, or one to a walk that was handed on, as text. A walk that stands here is set aside for that one, and
	 * where it can't be, that one is not taken. @returns whether it was taken
	 */
	read(text: string): Promise<boolean>;
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
	/** Has the plan that the walk began from asked whether it changes, and not the light. */
	askPlan(cause: MayBePlan): void;
	/** Shows a sentence; null for none. */
	say(trouble: string | null): void;
	/** What is to be read before anything is touched has been read. */
	noted(): void;
}

export interface StoreParts {
	readonly ask: AskRoute;
	readonly storage: BrowserStore;
	/** Ms since 1970. */
	readonly clock: () => number;
}

/** What a rig of three answers is called; null for one whose sheet says it. */
const nameOf = (rig: RigChoice): string | null =>
	rig.kind === 'quick' ? quickWords.named(quickWords.countOne(rig.count), quickWords.links[rig.linked].name) : null;

const { troubles } = finderWords;

export function finderStore(parts: StoreParts): FinderStore {
	const { ask, storage, clock } = parts;
	const held = holdScene();
	const { fetch, keep, put, show, look } = walkOn(held, parts);
	/** The walk there is with a change to it; nothing where there is none. */
	const change = (how: (walk: FinderWalk) => Partial<FinderWalk>): Promise<void> => {
		const { walk } = held.scene;
		return walk ? put({ ...walk, ...how(walk) }) : Promise.resolve();
	};
	const step = (more: FinderWalk['steps'][number]): Promise<void> =>
		change(({ steps }) => ({ steps: [...steps, more] }));

	/** Whether the walk that stands here, if any, is out of the way of another, whole: one on the page alone is kept first. */
	const makeWay = (): boolean => {
		if (!held.scene.walk) return true;
		if (!held.scene.kept) keep();
		return held.scene.kept && setAside(storage, 'walk', 'link');
	};
	const takeOver = ({ allows, walk }: FinderRecord, stood: boolean): Promise<void> => {
		held.set({ laid: null, allows, note: stood ? 'aside' : 'taken' });
		return put(walk);
	};

	const store: FinderStore = {
		get scene() {
			return held.scene;
		},
		subscribe: held.subscribe,
		async open() {
			const [walk, counts] = [found(storage, 'walk'), found(storage, 'verdicts')];
			const textOf = (kept: typeof walk): string | null => (kept && !kept.isNewer ? kept.text : null);
			if (walk?.isNewer || counts?.isNewer) held.set({ trouble: troubles.newer });
			if (textOf(walk) === null && textOf(counts) === null) return show();
			await fetch(
				(onStage) => ask('finder.open', { walk: textOf(walk), counts: textOf(counts) }, { onStage }),
				({ kept, learnt, damaged }) => {
					for (const what of damaged) setAside(storage, what === 'walk' ? 'walk' : 'verdicts');
					held.set({ learnt, ...(kept ?? {}), note: keptNote(storage, kept?.walk ?? null) });
					if (damaged.length > 0)
						held.set({ trouble: damaged.includes('walk') ? troubles.damaged : troubles.damagedCounts });
					return show();
				},
			);
			if (held.scene.phase === 'opening' && held.scene.trouble !== null) held.set({ phase: 'rig' });
		},
		warm() {
			ask('finder.open', { walk: null, counts: null }).catch(() => undefined);
		},
		choose: (rig) => {
			held.set({ laid: null, note: null });
			return put(freshWalk(rig, held.scene.learnt, clock()));
		},
		async read(text) {
			let isTaken = false;
			const take = (got: Asks['read']['gives']): Promise<void> | void => {
				const stood = held.scene.walk !== null;
				if ('handed' in got && !makeWay()) return held.set({ stage: null, trouble: handOnWords.noRoom, untaken: text });
				isTaken = true;
				return 'rig' in got ? store.choose(got.rig) : takeOver(got.handed, stood);
			};
			await fetch((onStage) => ask('finder.read', { text }, { onStage }), take, false);
			return isTaken;
		},
		pickFixture: (fixture) => change(() => ({ fixture })),
		pickComplaint: (complaint) => change(() => ({ complaint, steps: [] })),
		answer: (check, outcome) => step({ did: 'answer', check, outcome }),
		setAside: (check, why) => step({ did: why, check }),
		back() {
			const { walk, laid } = held.scene;
			if (!walk) return Promise.resolve();
			const isOnly = laid?.fixtures.length === 1 && walk.complaint === null;
			return put(isOnly ? null : stepBack(walk));
		},
		bringBack: () => change(withAsides),
		allow(allows) {
			held.set({ allows });
			keep();
			// the person is still at the switches: what comes of them is no new screen
			return look((view) => held.set({ view, stage: null }));
		},
		otherComplaint: () => change(() => ({ complaint: null, steps: [], counted: [] })),
		startAgain() {
			held.set({ laid: null });
			// what had no room has some now
			return put(null, held.scene.untaken === null ? null : handOnWords.waits);
		},
		forgetCounts() {
			held.set({ learnt: {} });
			keepCounts(storage, {});
		},
		askPlan({ name, other }) {
			const { walk } = held.scene;
			if (!walk) return;
			held.set({ walk: { ...walk, found: { was: name, isSure: false, repair: null, other, at: clock() } } });
			keep();
		},
		say: (trouble) => held.set({ trouble }),
		noted() {
			held.set({ note: null });
			keep();
		},
	};
	return store;
}

/** The walk on the page: kept at every change, and what shows it asked for. */
interface WalkOn {
	readonly fetch: Fetch;
	keep(): void;
	/** Puts a walk on the page, keeps it, and asks for what shows it. */
	put(walk: FinderWalk | null, trouble?: string | null): Promise<void>;
	show(): Promise<void>;
	look(use: (view: WalkView) => void): Promise<void>;
}

function walkOn(held: HeldScene, { ask, storage, clock }: StoreParts): WalkOn {
	const { fetch, drop } = fetching(held, () => fallBack());
	/** A walk that its own finder refuses: its steps go, and if it has none, what it asks about. */
	const fallBack = async (): Promise<void> => {
		const { walk, phase, trouble } = held.scene;
		if (phase !== 'walk' || !walk) return;
		setAside(storage, 'walk');
		const next = walk.steps.length > 0 ? { ...walk, steps: [], counted: [] } : { ...walk, complaint: null };
		await put(next, walk.steps.length > 0 ? troubles.noFit : trouble);
	};
	const keep = (): void => {
		const { scene } = held;
		const came = [keepWalk(storage, scene), keepNote(storage, scene)];
		const [kept, full] = [came.every((each) => each === 'kept'), came.includes('full')];
		if (kept !== scene.kept || full !== scene.full) held.set({ kept, full });
	};
	const put: WalkOn['put'] = (walk, trouble = null) => {
		// one that stands is not told once more
		const told = trouble !== null && trouble === held.scene.trouble ? {} : { trouble };
		held.set({ walk, ...told, ...(walk ? {} : { note: null }) });
		keep();
		return show();
	};
	const look: WalkOn['look'] = async (use) => {
		const { walk, allows } = held.scene;
		if (!isSet(walk)) return;
		await fetch(
			(onStage) => ask('finder.look', { walk, allows, isPartEnough: true }, { onStage }),
			(view) => {
				use(view);
				count();
				tellPlan();
				return view.isPart && held.scene.walk === walk ? lookWhole(walk, allows) : undefined;
			},
		);
	};
	/** The same once the whole table is there. The page goes on meanwhile: what is answered by then is asked about anew. */
	const lookWhole = (walk: SetWalk, allows: Allows): Promise<void> =>
		fetch(
			() => ask('finder.look', { walk, allows, isPartEnough: false }),
			(view) => held.set({ view }),
		);
	const count = (): void => {
		const counted = withCount(held.scene);
		if (!counted) return;
		held.set(counted);
		keepCounts(storage, counted.learnt);
		keep();
	};
	const tellPlan = (): void => {
		const { walk, view } = held.scene;
		const next = walk && withFound(walk, view?.verdict ?? null, clock());
		if (next === walk) return;
		held.set({ walk: next });
		keep();
	};
	const show = showing(held, { ask, fetch, drop, put, look });
	return { fetch, keep, put, show, look };
}

/** What asks for the screen that comes next: the fixtures of a rig, complaints of one, or the walk. */
function showing(
	held: HeldScene,
	{ ask, fetch, drop, put, look }: Pick<WalkOn, 'fetch' | 'put' | 'look'> & { readonly ask: AskRoute; drop(): void },
): () => Promise<void> {
	const place = (walk: FinderWalk, given: LaidView): Promise<void> => {
		const laid = { ...given, name: nameOf(walk.rig) ?? given.name };
		held.set({ laid });
		const only = laid.fixtures.length === 1 ? laid.fixtures[0] : undefined;
		return only && walk.fixture === null ? put({ ...walk, fixture: only.id }) : showOn(walk, laid);
	};
	const showOn = async (walk: FinderWalk, laid: LaidView): Promise<void> => {
		if (isSet(walk)) {
			held.set({ phase: 'walk' });
			return look((view) => held.arrive({ view, laid }));
		}
		const { rig, fixture } = walk;
		if (fixture === null) {
			drop();
			return held.arrive({ phase: 'fixture', complaints: null, view: null });
		}
		return fetch(
			(onStage) => ask('finder.complaints', { rig, fixture }, { onStage }),
			(complaints) => held.arrive({ phase: 'complaint', complaints, view: null }),
		);
	};
	return async () => {
		const { walk, laid } = held.scene;
		if (!walk) {
			drop();
			return held.arrive({ phase: 'rig', laid: null, complaints: null, view: null });
		}
		if (laid) return showOn(walk, laid);
		return fetch(
			(onStage) => ask('finder.lay', { rig: walk.rig }, { onStage }),
			(given) => place(walk, given),
		);
	};
}

/** The scene, drawn again whenever it changes. */
export function useScene(store: FinderStore): FinderScene {
	const [, turn] = useState(0);
	useEffect(() => store.subscribe(() => turn((n) => n + 1)), [store]);
	return store.scene;
}
