import type { SheetSplitter } from '../../shared/sheet/index.ts';
import { byText, sortedBy } from './order.ts';
import type { Drive, Plant } from './parts.ts';
import { hearsSomething, reach } from './reach.ts';
import type { Talker, Wiring } from './types.ts';
import { root } from './wires.ts';

export interface Drives {
	/** What sends, sorted by socket. */
	readonly active: readonly Drive[];
	/** Splitter outputs that do not: no power, or nothing at the input. Sorted by socket. */
	readonly idle: readonly Drive[];
}

/**
 * Settles who sends, and marks the wires each one drives. A splitter with power sends on every output once its input hears
 * something, be it spoiled; so this goes round until no more splitters wake. More drives never silence an input, so the end
 * is the same whatever the order.
 */
export function settle(plant: Plant, wiring: Wiring): Drives {
	const active: Drive[] = [];
	for (const talker of wiring.talkers) {
		const tap = plant.taps.get(talker.kind === 'leader' ? talker.fixture : talker.port);
		if (tap !== undefined) active.push(wake({ port: talker.port, tap, talker, splitter: null, input: null }));
	}
	const idle: Drive[] = [];
	let asleep: SheetSplitter[] = [];
	const outputs = new Map<SheetSplitter, Drive[]>();
	for (const splitter of wiring.splitters) {
		const own = outputsOf(plant, splitter);
		if (splitter.on && plant.taps.has(`${splitter.id}:in`)) {
			asleep.push(splitter);
			outputs.set(splitter, own);
		} else idle.push(...own);
	}
	let woke = true;
	while (woke) {
		woke = false;
		const still: SheetSplitter[] = [];
		for (const splitter of asleep) {
			const input = plant.taps.get(`${splitter.id}:in`);
			if (input === undefined || !hearsSomething(input)) {
				still.push(splitter);
				continue;
			}
			for (const drive of outputs.get(splitter) ?? []) active.push(wake(drive));
			woke = true;
		}
		asleep = still;
	}
	for (const splitter of asleep) idle.push(...(outputs.get(splitter) ?? []));
	const byPort = (a: Drive, b: Drive) => byText(a.port, b.port);
	return { active: active.sort(byPort), idle: idle.sort(byPort) };
}

/** A splitter's outputs that have a plug in them. */
function outputsOf(plant: Plant, splitter: SheetSplitter): Drive[] {
	const found: Drive[] = [];
	for (let i = 1; i <= splitter.outputs; i++) {
		const port = `${splitter.id}:${i}`;
		const tap = plant.taps.get(port);
		if (tap !== undefined) {
			found.push({ port, tap, talker: null, splitter, input: plant.taps.get(`${splitter.id}:in`) ?? null });
		}
	}
	return found;
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

/** Whose frames come out of these drives in the end, through any splitters, sorted by socket. */
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
