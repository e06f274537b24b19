import { useEffect, useRef, useState } from 'preact/hooks';
import type { Plan } from '../../../shared/plan/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { type RigHold, type RigKept, rigKeeper } from './keep.ts';

/** Changes that can be undone at most. */
const MOST_UNDONE = 100;
/** Quiet after a change before it is kept, ms: typing is not written letter by letter. */
const SOON_MS = 300;

/** A plan on the page: what is done to it is one change at a time, and each can be undone. */
export interface PlanStore {
	readonly plan: Plan;
	readonly kept: RigKept;
	readonly canUndo: boolean;
	change(how: (plan: Plan) => Plan): void;
	undo(): void;
	/** Writes at once what is not on the device yet. */
	keep(): void;
	/** Deletes the rig from the device. */
	forget(): void;
}

/** @param from where it stands on the device already; null for one that is new there */
export function usePlan(start: Plan, from: RigHold | null): PlanStore {
	const [plan, setPlan] = useState(start);
	const [past, setPast] = useState<readonly Plan[]>([]);
	const [kept, setKept] = useState<RigKept>('kept');
	const [keeper] = useState(() => rigKeeper(DEVICE, start, from));
	const latest = useRef(plan);
	const show = (next: Plan): void => {
		latest.current = next;
		setPlan(next);
	};
	const keep = (): void => {
		const came = keeper.save(latest.current, Date.now());
		if (came !== null) setKept((before) => (came === 'kept' && before === 'copy' ? 'copy' : came));
	};
	useEffect(() => {
		const timer = setTimeout(keep, SOON_MS);
		return () => clearTimeout(timer);
	}, [plan]);
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
		plan,
		kept,
		canUndo: past.length > 0,
		change(how) {
			const before = latest.current;
			const next = how(before);
			if (next === before) return;
			setPast((all) => [...all, before].slice(-MOST_UNDONE));
			show(next);
		},
		undo() {
			const before = past.at(-1);
			if (!before) return;
			setPast(past.slice(0, -1));
			show(before);
		},
		keep,
		forget: keeper.forget,
	};
}
