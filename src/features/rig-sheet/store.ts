import { useEffect, useRef, useState } from 'preact/hooks';
import type { Plan } from '../../../shared/plan/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { freshRigId, keepRig, type RigHold, type RigKept } from './keep.ts';

/** Changes that can be undone at most. */
const MOST_UNDONE = 100;
/** Quiet after a change before it is kept, ms: typing is not written letter by letter. */
const SOON_MS = 300;

/** A plan on the page: what is done to it is one change at a time, and each can be undone. */
export interface PlanStore {
	readonly plan: Plan;
	readonly kept: RigKept;
	readonly id: string;
	readonly canUndo: boolean;
	change(how: (plan: Plan) => Plan): void;
	undo(): void;
}

/** @param from where it stands on the device already; null for one that is new there */
export function usePlan(start: Plan, from: RigHold | null): PlanStore {
	const [plan, setPlan] = useState(start);
	const [past, setPast] = useState<readonly Plan[]>([]);
	const [kept, setKept] = useState<RigKept>('kept');
	const hold = useRef<RigHold>(from ?? { id: freshRigId(), from: null });
	const latest = useRef(plan);
	latest.current = plan;
	const isFirst = useRef(from !== null);
	const save = (): void => {
		const { hold: next, came } = keepRig(DEVICE, hold.current, latest.current, Date.now());
		hold.current = next;
		setKept((before) => (came === 'kept' && before === 'copy' ? 'copy' : came));
	};
	useEffect(() => {
		// one that was read from the device stands there as it is
		if (isFirst.current) {
			isFirst.current = false;
			return;
		}
		const timer = setTimeout(save, SOON_MS);
		return () => clearTimeout(timer);
	}, [plan]);
	useEffect(() => {
		const leave = (): void => {
			if (document.visibilityState === 'hidden') save();
		};
		document.addEventListener('visibilitychange', leave);
		return () => document.removeEventListener('visibilitychange', leave);
	}, []);
	return {
		plan,
		kept,
		id: hold.current.id,
		canUndo: past.length > 0,
		change(how) {
			const next = how(plan);
			if (next === plan) return;
			setPast([...past, plan].slice(-MOST_UNDONE));
			setPlan(next);
		},
		undo() {
			const before = past.at(-1);
			if (!before) return;
			setPast(past.slice(0, -1));
			setPlan(before);
		},
	};
}
