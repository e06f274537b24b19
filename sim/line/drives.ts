import { byText, sortedBy } from './order.ts';
import type { Drive, Plant } from './parts.ts';
import { hearsSomething, reach } from './reach.ts';
import type { Box, Talker, Wiring } from './types.ts';
import { root } from './wires.ts';

export interface Drives {
	/** What sends, sorted by socket. */
	readonly active: readonly Drive[];
	/** Outputs of boxes that do not: no power, or nothing at the input. Sorted by socket. */
	readonly idle: readonly Drive[];
}

/**
 * Settles who sends, and marks the wires each one drives. A box that is on sends on at an output once the input behind it hears
 * something, be it spoiled; so this goes round until no more outputs wake. More drives never silence an input, so the end is the
 * same whatever the order.
 */
export function settle(plant: Plant, wiring: Wiring): Drives {
	const active: Drive[] = [];
	for (const talker of wiring.talkers) {
		const tap = plant.taps.get(talker.kind === 'leader' ? talker.fixture : talker.port);
		if (tap !== undefined) active.push(wake({ port: talker.port, tap, talker, box: null, input: null }));
	}
	let asleep = wiring.boxes.flatMap((box) => outputsOf(plant, box));
	let woke = true;
	while (woke) {
		const still: Drive[] = [];
		for (const drive of asleep) {
			if (drive.box?.on && drive.input !== null && hearsSomething(drive.input)) active.push(wake(drive));
			else still.push(drive);
		}
		woke = still.length < asleep.length;
		asleep = still;
	}
	const byPort = (a: Drive, b: Drive) => byText(a.port, b.port);
	return { active: active.sort(byPort), idle: asleep.sort(byPort) };
}

/** A box's outputs that have a plug in them. */
function outputsOf(plant: Plant, box: Box): Drive[] {
	return box.outputs.flatMap(({ port, from }) => {
		const tap = plant.taps.get(port);
		return tap === undefined ? [] : [{ port, tap, talker: null, box, input: plant.taps.get(from) ?? null }];
	});
}

function wake(drive: Drive): Drive {
	const minus = root(drive.tap.minus);
	const plus = root(drive.tap.plus);
	for (const wire of minus === plus ? [minus] : [minus, plus]) {
		wire.drives ??= [];
		wire.drives.push(drive);
	}
	return drive;
}

/** Whose frames come out of these drives in the end, through any boxes, sorted by socket. */
export function talkersBehind(drives: readonly Drive[]): Talker[] {
	const seen = new Set<Drive>();
	const talkers = new Set<Talker>();
	const left = [...drives];
	for (let drive = left.pop(); drive !== undefined; drive = left.pop()) {
		if (seen.has(drive)) continue;
		seen.add(drive);
		if (drive.talker !== null) talkers.add(drive.talker);
		if (drive.input === null) continue;
		const feed = reach(drive.input);
		if (feed.kind === 'many') left.push(...feed.drives);
		if (feed.kind === 'one') left.push(feed.drive);
	}
	return sortedBy(talkers, (talker) => talker.port);
}
