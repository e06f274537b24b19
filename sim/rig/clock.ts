import { assert, CHECKED } from '../../shared/error/index.ts';
import { repeatsAt } from '../fixture/index.ts';
import type { Gear } from './gear.ts';
import { settleDraw } from './power.ts';
import { leadersOf, settle } from './settle.ts';
import { tell } from './step.ts';

/** Moves the clock to `target`, stopping wherever something happens by itself: a panel sleeps, data is lost, a battery ends. */
export function advance(gear: Gear, target: number): void {
	if (CHECKED) assert(target >= gear.now, 'a clock that goes back', target - gear.now);
	for (;;) {
		settleDraw(gear);
		const next = nextOf(gear);
		if (next === null || next > target) break;
		if (CHECKED) assert(next >= gear.now, 'something due in the past', next - gear.now);
		const before = leadersOf(gear);
		gear.now = next;
		for (const [id, unit] of gear.units)
			if (unit.deadline !== null && unit.deadline <= next) tell(gear, id, { type: 'clock.advance', now: next });
		settle(gear, before);
	}
	gear.now = target;
	// even where no repeat is due yet: where the clock stood last must not hang on how a wait was cut
	for (const [id, { state }] of gear.units) {
		if (repeatsAt(state) !== null) tell(gear, id, { type: 'clock.advance', now: target });
	}
}

function nextOf(gear: Gear): number | null {
	let next: number | null = null;
	for (const { deadline } of gear.units.values())
		if (deadline !== null && (next === null || deadline < next)) next = deadline;
	return next;
}
