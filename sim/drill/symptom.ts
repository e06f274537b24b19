import type { Rig } from '../rig/index.ts';
import type { Task } from './types.ts';
import { wayOn } from './way/index.ts';

/** Long enough for data to come or go and for a damaged line to show, ms. */
const MOMENT_MS = 2000;
/** Least change of brightness that is seen, as lightness 0..1. Ours, no source: some steps more than an eye can just tell. */
const SEEN = 0.02;

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
	const looks = along(right);
	return along(rig.fork()).some((look, i) => looksOther(look, looks[i] as Look));
}

interface Look {
	/** All but how bright each cell is, which no eye sees to a hair. */
	readonly plain: string;
	readonly brightness: readonly number[];
}

function along(rig: Rig): Look[] {
	rig.wait(MOMENT_MS);
	return [...rig.gear.units.keys()].map((id) => {
		const { light, lamps } = rig.look(id);
		const cells = light.cells.map(({ words, ultraviolet }) => [words, ultraviolet > 0]);
		const plain = JSON.stringify([cells, light.flashes, light.flicker, light.moving, lamps]);
		return { plain, brightness: light.cells.map(({ brightness }) => brightness) };
	});
}

const looksOther = (a: Look, b: Look): boolean =>
	a.plain !== b.plain || a.brightness.some((bright, i) => Math.abs(bright - (b.brightness[i] ?? 0)) >= SEEN);
