import { useEffect, useRef, useState } from 'preact/hooks';
import { letGo, type Plan } from '../../../shared/plan/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { type RigHold, type RigKept, rigKeeper } from './keep.ts';

/** Changes that can be undone at most. */
const MOST_UNDONE = 100;
/** Quiet after a change before it is kept, ms: typing is not written letter by letter. */
const SOON_MS = 300;

/** A plan on the page: what is done to it is one change at a time, and each can be undone. */
export interface PlanStore {
	/** The rig's id on the device. */
	readonly id: string;
	readonly plan: Plan;
	/** The plan that sheets were printed from and lights set by; null where nothing was yet. */
	readonly before: Plan | null;
	readonly kept: RigKept;
	readonly canUndo: boolean;
	/** Ids of rows that a change let go of what feeds them, until that is undone or said again. */
	readonly loose: readonly string[];
	/** The loose ones were told. */
	told(): void;
	change(how: (plan: Plan) => Plan): void;
	undo(): void;
	/** Sheets are printed from the plan as it stands, or lights set by it: what changes from here on is a change. */
	begin(): void;
	/** Writes at once what is not on the device yet. */
	keep(): void;
	/** Deletes the rig from the device. */
	forget(): void;
}

/**
 * @param from where it stands on the device already; null for one that is new there
 * @param startBefore the plan that sheets were printed from, where that is known
 */
export function usePlan(start: Plan, from: RigHold | null, startBefore: Plan | null = null): PlanStore {
	const [plan, setPlan] = useState(start);
	const [before, setBefore] = useState(startBefore);
	const [past, setPast] = useState<readonly Plan[]>([]);
	const [kept, setKept] = useState<RigKept>('kept');
	const [loose, setLoose] = useState<ReadonlySet<string>>(new Set());
	const [keeper] = useState(() => rigKeeper(DEVICE, start, from, startBefore ?? undefined));
	const latest = useRef(plan);
	const latestBefore = useRef(before);
	const show = (next: Plan): void => {
		latest.current = next;
		setPlan(next);
	};
	const keep = (): void => {
		const came = keeper.save(latest.current, Date.now(), latestBefore.current ?? undefined);
		if (came !== null) setKept((was) => (came === 'kept' && was === 'copy' ? 'copy' : came));
	};
	useEffect(() => {
		const timer = setTimeout(keep, SOON_MS);
		return () => clearTimeout(timer);
	}, [plan, before]);
	useEffect(() => {
		const leave = (): void => {
			if (document.visibilityState === 'hidden') keep();
		};
		document.addEventListener('visibilitychange', leave);
		return () => {
			document.removeEventListener('visibilitychange', leave);
			keep();
		};
	}, []);
	return {
		id: keeper.id(),
		plan,
		before,
		kept,
		canUndo: past.length > 0,
		loose: plan.rows.flatMap(({ id, after }) => (after === undefined && loose.has(id) ? [id] : [])),
		told: () => setLoose(new Set()),
		change(how) {
			const was = latest.current;
			const next = how(was);
			if (next === was) return;
			const gone = letGo(was, next);
			if (gone.length > 0) setLoose((all) => new Set([...all, ...gone]));
			setPast((all) => [...all, was].slice(-MOST_UNDONE));
			show(next);
		},
		undo() {
			const was = past.at(-1);
			if (!was) return;
			setPast(past.slice(0, -1));
			show(was);
		},
		begin() {
			latestBefore.current = latest.current;
			setBefore(latest.current);
		},
		keep,
		forget: keeper.forget,
	};
}
