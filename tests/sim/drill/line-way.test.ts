import { describe, expect, it } from 'vitest';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { portsOf, type RigSheet } from '../../../shared/sheet/index.ts';
import { type Drill, findingsOf, makeDrill } from '../../../sim/drill/index.ts';
import { lineWay } from '../../../sim/drill/way/line.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { isLineEvent, lineEvent } from '../../../sim/rig/wiring.ts';
import { runs } from '../../runs.ts';

// The line by itself: plugs are moved by the rig's own rules, and what the lamps make of it is left out, so that every move
// from a state can be tried.

type Cable = RigSheet['cables'][number];
const SOUND = { common: 'sound', minus: 'sound', plus: 'sound', swapped: false } as const;

const only = (drill: Drill): Drill => ({
	...drill,
	goal: drill.goal.filter(({ is }) => is === 'joined' || is === 'terminators'),
});

/** A rig of which only the line is moved. */
function lineOf(rig: Rig): Rig {
	return { ...rig, gear: { ...rig.gear } };
}

function moved(rig: Rig, event: RigEvent): Rig {
	const to = lineOf(rig);
	if (!isLineEvent(event)) throw new Error(event.type);
	lineEvent(to.gear, event);
	return to;
}

/** Every single thing a hand can do to the line; cables laid are sound and short, or a microphone's, or too long. */
function movesOf(drill: Drill, rig: Rig): RigEvent[] {
	const { cables, terminators } = rig.gear;
	const taken = new Set([...cables.flatMap(({ from, to }) => [from, to]), ...terminators]);
	const free = portsOf(drill.sheet).filter((port) => !taken.has(port));
	const ends = [null, ...free];
	const makes: Pick<Cable, 'kind' | 'length'>[] = [
		{ kind: 'data', length: 10 },
		{ kind: 'microphone', length: 10 },
		{ kind: 'data', length: 80 },
	];
	return [
		...makes.flatMap((make) =>
			ends.flatMap((from) =>
				ends
					.filter((to) => from === null || from !== to)
					.map((to): RigEvent => ({ type: 'cable.lay', cable: { id: 'mine', from, to, ...make, ...SOUND } })),
			),
		),
		...cables.map(({ id }): RigEvent => ({ type: 'cable.lift', cable: id })),
		...cables.flatMap((cable) =>
			(['from', 'to'] as const).flatMap((end): RigEvent[] =>
				cable[end] === null
					? free.map((port): RigEvent => ({ type: 'cable.plug', cable: cable.id, end, port }))
					: [{ type: 'cable.unplug', cable: cable.id, end }],
			),
		),
		...free.map((port): RigEvent => ({ type: 'terminator.fit', port })),
		...terminators.map((port): RigEvent => ({ type: 'terminator.remove', port })),
	];
}

function anyLine(random: Random, drill: Drill): Rig {
	let rig = lineOf(openRig(drill.sheet));
	for (let n = random.int(0, 10); n > 0; n--) {
		const event = random.pick(movesOf(drill, rig));
		rig = moved(rig, event.type === 'cable.lay' ? { ...event, cable: { ...event.cable, id: `mine-${n}` } } : event);
	}
	return rig;
}

describe('the presses a line still needs', () => {
	const each = (count: number, check: (drill: Drill, rig: Rig, seed: number) => void): void => {
		for (let seed = 0; seed < count; seed++) {
			const random = makeRandom(seed).fork('line');
			const drill = only(makeDrill(random.pick(['cable-missing', 'line-longer']), seed));
			check(drill, anyLine(random, drill), seed);
		}
	};

	it('are none exactly where it is as asked, and fall by no more than one by any move', () => {
		each(runs(40, 3000), (drill, rig, seed) => {
			const before = lineWay(drill, rig).length;
			expect(before === 0, `seed ${seed}`).toBe(findingsOf(drill, rig).length === 0);
			for (const event of movesOf(drill, rig)) {
				const after = lineWay(drill, moved(rig, event)).length;
				expect(after + 1, `seed ${seed}, ${JSON.stringify(event)}`).toBeGreaterThanOrEqual(before);
			}
		});
	});

	it('are those of its way, each of which the sockets take', () => {
		each(runs(100, 5000), (drill, rig, seed) => {
			let at = rig;
			let left = lineWay(drill, rig);
			for (const event of left) {
				at = moved(at, event);
				const next = lineWay(drill, at);
				expect(next.length, `seed ${seed}, ${JSON.stringify(event)}`).toBe(left.length - 1);
				left = next;
			}
			expect(findingsOf(drill, at), `seed ${seed}`).toEqual([]);
		});
	});
});
