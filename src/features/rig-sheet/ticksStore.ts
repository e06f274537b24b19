import { useEffect, useRef, useState } from 'preact/hooks';
import { mergedTicks, NO_TICKS, type RigTicks } from '../../../shared/plan/index.ts';
import { DEVICE, followKept } from '../../storage/index.ts';
import { type TicksKeeper, type TicksKept, ticksKeeper } from './ticksKeep.ts';

/** The ticks of a rig on the page, with what other tabs tick. */
export interface TicksStore {
	readonly ticks: RigTicks;
	readonly kept: TicksKept;
	change(how: (ticks: RigTicks) => RigTicks): RigTicks;
}

/** @param id the rig's id; where it changes, since another tab has the rig, what was ticked goes along */
export function useTicks(id: string): TicksStore {
	const keeper = useRef<{ id: string; its: TicksKeeper } | null>(null);
	const [ticks, show] = useState(NO_TICKS);
	const [kept, setKept] = useState<TicksKept>('kept');
	useEffect(() => {
		const its = ticksKeeper(DEVICE, id, Date.now);
		const before = keeper.current?.its.look() ?? NO_TICKS;
		keeper.current = { id, its };
		const look = (): void => {
			show(its.look());
			setKept(its.kept);
		};
		if (before !== NO_TICKS) its.change((all) => mergedTicks(all, before));
		look();
		return followKept(look);
	}, [id]);
	return {
		ticks,
		kept,
		change(how) {
			const its = keeper.current?.its;
			if (!its) return ticks;
			const next = its.change(how);
			show(next);
			setKept(its.kept);
			return next;
		},
	};
}
