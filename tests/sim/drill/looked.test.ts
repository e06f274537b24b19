import { describe, expect, it } from 'vitest';
import type { KeyedPanel } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import {
	type BundledKind,
	type Drill,
	makeDrill,
	markDrill,
	pressesOf,
	shortestWay,
} from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { anyEvent, play, wandered } from './wander.ts';

// Symptom: who reads the whole menu first, as the lesson tells, and then goes the best way scored 36 presses of 6. Cause: every
// press of a key counted as a fault, though it changed neither a setting nor the light.

const KINDS = ['address-keys', 'mode-address', 'held-colour', 'loss-setting', 'programme-speed', 'defaults'] as const;
const SEEDS = runs(8, 300);

/** Drills of a kind on fixtures with keys. */
function* keyed(kind: BundledKind): Generator<Drill> {
	for (let seed = 0, found = 0; found < SEEDS; seed++) {
		const drill = makeDrill(kind, seed);
		if (drill.facts['profile'] === 'cobble') continue;
		found++;
		yield drill;
	}
}

/** Every item of a panel's menu read once, each menu entered and left, and back to where it began. */
function readAll(drill: Drill): RigEvent[] {
	const fixture = drill.facts['fixture'] as string;
	const panel = openRig(drill.sheet).gear.units.get(fixture)?.profile.panel as KeyedPanel;
	const tap = (key: 'back' | 'down' | 'set'): RigEvent => ({ type: 'key.tap', fixture, key });
	return panel.menu.flatMap((item) => [
		...(item.kind === 'menu' ? [tap('set'), ...item.items.map(() => tap('down')), tap('back')] : []),
		tap('down'),
	]);
}

describe('a mark', () => {
	it.each(KINDS)('%s: reading the whole menu first costs nothing, and is told', (kind: BundledKind) => {
		for (const drill of keyed(kind)) {
			const read = readAll(drill);
			const mark = markDrill(drill, [...read, ...shortestWay(drill, read)]);
			const at = `seed ${drill.seed}`;
			expect(mark.done, at).toBe(true);
			expect([mark.presses, mark.looked], at).toEqual([mark.fewest, read.length]);
		}
	});

	it('a value looked at and left as it was costs nothing; one that is kept by mistake and put right does', () => {
		const drill = makeDrill('loss-setting', 15);
		const fixture = drill.facts['fixture'] as string;
		const tap = (key: 'back' | 'up' | 'set'): RigEvent => ({ type: 'key.tap', fixture, key });
		const way = shortestWay(drill);
		const opened = way.findLastIndex((event) => event.type === 'key.tap' && event.key === 'set');
		const open = way.findIndex(
			(event, i) => i < opened && event.type === 'key.tap' && event.key === 'set' && way[i + 1] !== undefined && i > 0,
		);
		const before = way.slice(0, Math.max(0, open) + 1);
		const dropped = [...before, tap('up'), tap('back')];
		const mark = markDrill(drill, [...dropped, ...shortestWay(drill, dropped)]);
		expect(mark.done).toBe(true);
		expect(mark.presses).toBeLessThanOrEqual(mark.fewest);
		expect(mark.looked).toBeGreaterThan(0);
		const done = [...way];
		// once it is right, another value is kept, and the right one again
		const spoilt: RigEvent[] = [...done, tap('set'), tap('up'), tap('set')];
		const mended = markDrill(drill, [...spoilt, ...shortestWay(drill, spoilt)]);
		expect(mended.done).toBe(true);
		expect(mended.presses).toBeGreaterThan(mended.fewest + 3);
	});

	it('steps past the value and back, in an edit that is kept, count', () => {
		const drill = makeDrill('loss-setting', 15);
		const fixture = drill.facts['fixture'] as string;
		const way = shortestWay(drill);
		const last = way.findLastIndex((event) => event.type === 'key.tap' && event.key === 'set');
		const dithering = way.toSpliced(
			last,
			0,
			{ type: 'key.tap', fixture, key: 'up' },
			{ type: 'key.tap', fixture, key: 'down' },
		);
		const mark = markDrill(drill, dithering);
		expect([mark.done, mark.presses, mark.looked]).toEqual([true, mark.fewest + 2, 0]);
	});

	it('reading between two settings costs nothing either', () => {
		for (const drill of keyed('mode-address')) {
			const way = shortestWay(drill);
			const first = way.findIndex((_, i) => {
				const mark = markDrill(drill, way.slice(0, i + 1));
				return mark.wrong.length < markDrill(drill, []).wrong.length;
			});
			const begun = [...way.slice(0, first + 1), ...readAll(drill)];
			const mark = markDrill(drill, [...begun, ...shortestWay(drill, begun)]);
			expect(mark.done, `seed ${drill.seed}`).toBe(true);
			expect(mark.presses, `seed ${drill.seed}`).toBeLessThanOrEqual(mark.fewest);
			expect(mark.looked, `seed ${drill.seed}`).toBeGreaterThan(10);
		}
	});

	it('presses and looks are all the presses there were; a press that changes a setting is never a look', () => {
		for (let seed = 0; seed < runs(40, 2000); seed++) {
			const random = makeRandom(seed).fork('looked');
			const drill = makeDrill(random.pick(KINDS), seed);
			const rig = wandered(random, drill, random.int(0, 20));
			const fixture = drill.facts['fixture'] as string;
			const settings = () => rig.gear.units.get(fixture)?.state.context.settings;
			let last = markDrill(drill, rig.log);
			for (let n = 0; n < 8; n++) {
				const before = settings();
				const event = anyEvent(random, drill, rig);
				if (!play(rig, event)) continue;
				const mark = markDrill(drill, rig.log);
				expect(mark.presses + mark.looked, `seed ${seed}`).toBe(pressesOf(rig.log));
				if (settings() !== before && pressesOf([event]) === 1)
					expect(mark.presses, `seed ${seed}`).toBeGreaterThan(last.presses);
				last = mark;
			}
		}
	});
});
