import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../../shared/random/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { mainsRecord } from '../../../sim/drill/harm.ts';
import {
	DRILL_KINDS,
	type Drill,
	type DrillKind,
	findingsOf,
	markDrill,
	pressesOf,
	shortestWay,
} from '../../../sim/drill/index.ts';
import { fewestPresses } from '../../../sim/drill/way/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, type Rig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { saidBy } from '../../shared/thrown.ts';
import { makeDrill } from './made.ts';
import { anyEvent, play, wandered } from './wander.ts';

const kinds = DRILL_KINDS.map(({ id }) => id);
const SEEDS = runs(60, 2000);
/** Seeds on which a whole wandering is tried. */
const WANDERINGS = runs(12, 2000);

const noPress = ({ type }: RigEvent): boolean => type === 'key.up' || type === 'clock.wait';

/** A hold, a step on the way (which a detour may have made better), or a menu left by switching off. */
const isLucky = (event: RigEvent): boolean =>
	event.type === 'key.down' ||
	(event.type === 'key.tap' && (event.key === 'up' || event.key === 'down')) ||
	(event.type === 'power.switch' && !event.on);
const holdsKey = (rig: Rig): boolean => [...rig.gear.units.values()].some(({ state }) => state.context.held !== null);

/** Where an event lays a hand, as findings name places. */
function placesOf(event: RigEvent): string[] {
	if ('fixture' in event) return [event.fixture];
	if (event.type === 'desk.level' || event.type === 'desk.master') return ['desk'];
	if ('output' in event) return [`desk:${event.output}`];
	if (event.type === 'cable.plug' || event.type === 'terminator.fit') return [event.port];
	if (event.type === 'cable.lay') return [event.cable.from, event.cable.to].filter((port) => port !== null);
	return [];
}

describe.each(kinds)('%s', (kind) => {
	it(`is done by its shortest way and by no shorter part of it: ${SEEDS} seeds`, () => {
		for (let seed = 0; seed < SEEDS; seed++) {
			const drill = makeDrill(kind, seed);
			const at = `seed ${seed}`;
			const start = markDrill(drill, []);
			expect(start.done, at).toBe(false);
			expect(start.wrong.length, at).toBeGreaterThan(0);

			const way = shortestWay(drill);
			const mark = markDrill(drill, way);
			expect(mark.wrong, at).toEqual([]);
			expect(mark.done, at).toBe(true);
			expect(mark.right, at).toHaveLength(drill.goal.length);
			expect(mark.presses, at).toBe(pressesOf(way));
			expect(mark.presses, at).toBe(mark.fewest);
			expect(shortestWay(drill, way), at).toEqual([]);

			leftOut(drill, way, makeRandom(seed).int(0, way.length - 1), at);
			expect(JSON.parse(JSON.stringify(drill)), at).toEqual(drill);
			expect(readSheet(JSON.parse(JSON.stringify(drill.sheet))), at).toEqual(drill.sheet);
		}
	});

	it('leads on from wherever a learner has wandered', () => {
		for (let seed = 0; seed < WANDERINGS; seed++) {
			const drill = makeDrill(kind, seed);
			const random = makeRandom(seed).fork('wander');
			const rig = wandered(random, drill, random.int(1, 25));
			const way = shortestWay(drill, rig.log);
			const at = `seed ${seed}`;
			expect(pressesOf(way), at).toBe(fewestPresses(drill, rig));
			const mark = markDrill(drill, [...rig.log, ...way]);
			expect(mark.wrong, at).toEqual([]);
			expect(mark.presses + mark.looked, at).toBe(pressesOf(rig.log) + pressesOf(way));
			// luck may need fewer than a hand can be sure of
			if (!rig.log.some(isLucky)) expect(mark.presses, at).toBeGreaterThanOrEqual(mark.fewest);
		}
	});

	// as for a panel by itself: a count that falls by no more than the presses of any event cannot be beaten but by luck
	it('needs fewer presses by no more than what any event counts, holds aside', () => {
		for (let seed = 0; seed < WANDERINGS; seed++) {
			const drill = makeDrill(kind, seed);
			const random = makeRandom(seed).fork('beat');
			const rig = wandered(random, drill, random.int(0, 10));
			let before = fewestPresses(drill, rig);
			let isHolding = holdsKey(rig);
			for (let n = 0; n < 12; n++) {
				const event = anyEvent(random, drill, rig);
				const { harm } = mainsRecord(drill.sheet, rig.log);
				if (!play(rig, event)) continue;
				const after = fewestPresses(drill, rig);
				const at = `seed ${seed}, ${JSON.stringify(event)}`;
				// what holds come to is the business of panel-way.test.ts; a link pulled live saves the press that makes it dead: no way
				// that is counted does that
				const isHarm = mainsRecord(drill.sheet, rig.log).harm.length > harm.length;
				if (!isHolding && !isLucky(event) && !isHarm)
					expect(after + pressesOf([event]), at).toBeGreaterThanOrEqual(before);
				isHolding = holdsKey(rig);
				expect(after === 0, at).toBe(findingsOf(drill, rig).length === 0);
				before = after;
			}
		}
	});

	it('is the same for the same seed, and differs between seeds', () => {
		expect(makeDrill(kind, 5)).toEqual(makeDrill(kind, 5));
		const different = new Set([0, 1, 2, 3, 4, 5, 6, 7].map((seed) => JSON.stringify(makeDrill(kind, seed).sheet)));
		expect(different.size).toBeGreaterThan(4);
	});

	it('gives the facts its words need', () => {
		const facts = DRILL_KINDS.find(({ id }) => id === kind)?.facts ?? [];
		const always = facts.filter((name) => !name.startsWith('?'));
		const known = facts.map((name) => name.replace('?', ''));
		const given = new Set<string>();
		for (let seed = 0; seed < 30; seed++) {
			const names = Object.keys(makeDrill(kind, seed).facts);
			expect(names).toEqual(expect.arrayContaining(always));
			for (const name of names) given.add(name);
		}
		expect([...given].sort()).toEqual(known.sort());
	});
});

/** With one event left out the way is no way any more; or, where that event was no press, it is no shorter. */
function leftOut(drill: Drill, way: readonly RigEvent[], index: number, at: string): void {
	const event = way[index] as RigEvent;
	if (noPress(event)) return;
	const without = way.filter((_, i) => i !== index);
	const rig = openRig(drill.sheet);
	// what the event was to make ready may be missing for those after it
	const fits = without.every((each) => play(rig, each));
	const wrong = findingsOf(drill, rig);
	expect(wrong.length, `${at} without event ${index}`).toBeGreaterThan(0);
	if (!fits) return;
	// a cable is named by the socket at either end, a link made live by the plug in the wall too
	const named = wrong.flatMap(({ place, what, found, wanted }) =>
		what === 'cable' ? [place, wanted] : what === 'isolated' ? [place, found] : [place],
	);
	expect(named, `${at} without ${JSON.stringify(event)}`).toEqual(expect.arrayContaining(placesOf(event)));
}

describe('the kinds', () => {
	it('keep their ids: saved progress and links are keyed by them', () => {
		expect(kinds.toSorted()).toMatchInlineSnapshot(`
			[
			  "address-dip",
			  "address-keys",
			  "cable-missing",
			  "defaults",
			  "desk-band",
			  "desk-percent",
			  "dip-colour",
			  "followers-mode",
			  "held-colour",
			  "leader-left-on",
			  "leader-three",
			  "line-longer",
			  "locked-address",
			  "loss-setting",
			  "mains-row",
			  "mode-address",
			  "other-law-address",
			  "other-law-colour",
			  "other-law-handover",
			  "panel-unseen",
			  "past-512",
			  "programme-speed",
			  "remote-three",
			  "row-as-one",
			  "row-back-to-back",
			  "sensors-audience",
			  "strobe-left-on",
			  "two-universes",
			]
		`);
	});

	it('stand in an order to learn in, easy before hard', () => {
		const levels = { easy: 0, middle: 1, hard: 2 };
		const steps = DRILL_KINDS.map(({ level }) => levels[level]);
		expect(steps).toEqual(steps.toSorted());
		expect(new Set(DRILL_KINDS.map(({ order }) => order)).size).toBe(DRILL_KINDS.length);
	});

	it('are refused by a name that is none, and by a seed that is none', () => {
		expect(saidBy(() => makeDrill('nothing' as DrillKind, 1))).toMatch(
			/There’s no drill "nothing"\. The kinds are address-keys/,
		);
		expect(saidBy(() => makeDrill('defaults', -1))).toMatch(/A seed is a whole number/);
	});
});
