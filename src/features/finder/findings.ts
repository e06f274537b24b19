import { repairTriedBy } from '../../../sim/finder/index.ts';
import type { AskRoute } from '../../engine/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { found, keepWalk } from './keep.ts';
import type { FinderRecord, FinderWalk, WalkFound } from './walk.ts';

/** What a walk that began from a plan came to. */
export interface Finding extends WalkFound {
	/** The fixture that did wrong. */
	readonly fixture: string;
	/** When the walk began, ms since 1970: what it is known by. */
	readonly began: number;
	/** The repair that helped, by its id of `sim/fault`, and where it was done; null where none was. */
	readonly done: { readonly repair: string; readonly place: string } | null;
}

/** The repair that a walk's last step tried, where it helped. */
function doneBy({ steps, found: told }: FinderWalk): Finding['done'] {
	const tried = repairTriedBy(steps.at(-1)?.check ?? '');
	return told?.repair == null || tried === null ? null : { repair: tried.id, place: tried.place };
}

// read in the worker, which has the schemas for it
const read = async (store: BrowserStore, ask: AskRoute): Promise<FinderRecord | null> => {
	const walk = found(store, 'walk');
	return walk && !walk.isNewer ? (await ask('finder.open', { walk: walk.text, counts: null })).kept : null;
};

/** What the kept walk found on a plan, by its id on the device; null where it found nothing, or is of another. @throws CannotRun */
export async function findingOf(store: BrowserStore, ask: AskRoute, plan: string): Promise<Finding | null> {
	const walk = (await read(store, ask))?.walk;
	if (!walk?.found || walk.plan !== plan || walk.fixture === null) return null;
	return { ...walk.found, fixture: walk.fixture, began: walk.began, done: doneBy(walk) };
}

/** Has the kept walk say no more to the plan it began from: that has taken it, or will not. @throws CannotRun */
export async function closeFinding(store: BrowserStore, ask: AskRoute, began: number): Promise<void> {
	const kept = await read(store, ask);
	if (kept?.walk?.began !== began) return;
	const { plan, found: told, ...walk }: FinderWalk = kept.walk;
	keepWalk(store, { ...kept, walk });
}
