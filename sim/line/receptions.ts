import { checkWiring } from './check.ts';
import { settle } from './drives.ts';
import { listen } from './hear.ts';
import { lay } from './plant.ts';
import { stretch } from './stretches.ts';
import type { Reception, Wiring } from './types.ts';

/**
 * What reaches each receiver, by fixture id, in the order of `wiring.receivers`. Pure; time grows with the number of cables
 * (and with the length of the paths it hands back).
 *
 * - `quality` is `clean` exactly when `causes` is empty; `rate` is then 0. A harmless wrong (a common open between two earthed
 *   fixtures, a short microphone cable, no terminator on a short line) is no cause and leaves no trace.
 * - `nothing`: no frame is taken in; `rate` is 1, and `talker` whose frames would come along `path`, if anyone's.
 * - `marginal` with `talker` null: a collision; every frame is garbage, though something is on the line.
 * - `causes` go from talker to receiver: what spoils a box's input comes before what is wrong on the line it feeds.
 *
 * @param of only these fixtures, for those who ask of many wirings; left out, all
 * @throws InputError `line.device-twice`, `line.cable-twice`, `line.talker-twice`, `line.leader-unknown`, `line.loads`, `line.length`.
 */
export function receptions(wiring: Wiring, of?: readonly string[]): ReadonlyMap<string, Reception> {
	checkWiring(wiring);
	const plant = lay(wiring);
	const drives = settle(plant, wiring);
	stretch(plant);
	const receive = listen(plant, drives);
	const all = new Map<string, Reception>();
	for (const receiver of wiring.receivers)
		if (!of || of.includes(receiver.fixture)) all.set(receiver.fixture, receive(receiver));
	return all;
}
