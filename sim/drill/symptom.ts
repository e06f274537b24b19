import type { Rig } from '../rig/index.ts';
import type { Task } from './types.ts';
import { wayOn } from './way/index.ts';

/** Long enough for data to come or go and for a damaged line to show, ms. */
const MOMENT_MS = 2000;

/**
 * Whether somebody who walks along the row would see that something is wrong: some fixture's light or indicators differ from
 * what they are once the task is done. A drill that says something is wrong must start like this.
 * @param rig the task's rig at its start; it stays as it is
 */
export function isSeen(task: Task, rig: Rig): boolean {
	const right = rig.fork();
	for (const event of wayOn(task, rig)) {
		if (event.type === 'clock.wait') right.wait(event.ms);
		else right.send(event);
	}
	const wrong = rig.fork();
	const looks = along(right);
	return along(wrong).some((look, i) => look !== looks[i]);
}

function along(rig: Rig): string[] {
	rig.wait(MOMENT_MS);
	return [...rig.gear.units.keys()].map((id) => {
		const { light, lamps } = rig.look(id);
		const cells = light.cells.map(({ words, brightness, ultraviolet }) => [words, brightness.toFixed(2), ultraviolet]);
		return JSON.stringify([cells, light.flashes, light.flicker, light.moving, lamps]);
	});
}
