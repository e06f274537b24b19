import { describe, expect, it } from 'vitest';
import { findings, hints } from '#words/drills/index.ts';
import { DRILL_IDS, type Drill, type Finding, hintOn, markDrill, shortestWay } from '../../../sim/drill/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { conditionText, drillTask, findingText, harmText, hintText } from '../../../src/wording/index.ts';
import { makeDrill } from '../../sim/drill/made.ts';
import { isShort, readsWell } from './wording.ts';

const SEEDS = 30;

type Kind = (typeof DRILL_IDS)[number];
const made = new Map<Kind, readonly { readonly drill: Drill; readonly way: readonly RigEvent[] }[]>();

/** The drills of a kind, each with its shortest way: looked for once, for all that is asked of them. */
function drillsOf(kind: Kind) {
	const before = made.get(kind);
	if (before) return before;
	const drills = Array.from({ length: SEEDS }, (_, seed) => {
		const drill = makeDrill(kind, seed);
		return { drill, way: shortestWay(drill) };
	});
	made.set(kind, drills);
	return drills;
}

/** Ids that a reader must never meet. */
const hasNoIds = (drill: Drill, text: string) => {
	for (const { id } of [...drill.sheet.fixtures, ...drill.sheet.cables]) expect(text, text).not.toContain(id);
};

describe('a drill in words', () => {
	it.each(DRILL_IDS)('%s: task, conditions, findings and every hint of its way read well', (kind) => {
		for (const { drill, way } of drillsOf(kind)) {
			const task = drillTask(drill);
			readsWell(task);
			isShort(task, 3);
			hasNoIds(drill, task);
			for (const condition of drill.goal) {
				readsWell(conditionText(drill, condition));
				hasNoIds(drill, conditionText(drill, condition));
			}
			const { wrong } = markDrill(drill, []);
			expect(wrong.length).toBeGreaterThan(0);
			for (const finding of wrong) {
				readsWell(findingText(drill, finding));
				hasNoIds(drill, findingText(drill, finding));
			}
			const rig = openRig(drill.sheet);
			for (const next of way) {
				const said = hintText(rig, hintOn(drill, rig)) ?? '';
				readsWell(said.replace(/“[^”]*”/g, 'it'));
				hasNoIds(drill, said);
				if (next.type === 'clock.wait') rig.wait(next.ms);
				else rig.send(next);
			}
			expect(hintText(rig, hintOn(drill, rig))).toBeNull();
		}
	});

	it('the task of a drill names what its goal asks: an address, a mode, a colour', () => {
		for (const kind of ['address-keys', 'mode-address', 'locked-address', 'address-dip'] as const)
			for (const { drill } of drillsOf(kind)) expect(drillTask(drill)).toContain(`${drill.facts['address']}`);
	});

	it('a finding says what is and what is wanted', () => {
		const drill = makeDrill('address-keys', 3);
		const [finding] = markDrill(drill, []).wrong;
		if (!finding) throw new Error('nothing is wrong');
		expect(findingText(drill, finding)).toBe('Wash 1, start address: 61; wanted: 484.');
	});

	it('every kind of finding has words that differ with what was found', () => {
		const drill = makeDrill('cable-missing', 3);
		const base = { at: 0, condition: { is: 'on', fixture: 'wash-1' } } as const;
		const all: readonly (Omit<Finding, 'at' | 'condition'> & { says: string })[] = [
			{ place: 'wash-1', what: 'power', found: 'off', wanted: 'on', says: 'Wash 1 is off.' },
			{
				place: 'wash-1',
				what: 'mains',
				found: 'none',
				wanted: 'wash-2',
				says: 'The mains lead of Wash 1 is in nothing, and it should be in the mains link of Wash 2.',
			},
			{
				place: 'wash-2',
				what: 'isolated',
				found: 'wash-1',
				wanted: 'none',
				says: 'Wash 2 was linked while the wall plug of Wash 1 was in. Pull that plug first, then unplug this link and make it again. That plug goes in last.',
			},
			{ place: 'wash-1', what: 'light', found: 'flashes', wanted: 'steady', says: 'Wash 1 still flashes.' },
			{ place: 'wash-1', what: 'light', found: 'dark', wanted: 'lit', says: 'Wash 1 gives no light.' },
			{
				place: 'wash-1',
				what: 'data',
				found: 'collision',
				wanted: 'universe 2',
				says: 'Wash 1 hears two sources at once, and it should hear the desk, universe 2.',
			},
			{
				place: 'wash-1:out',
				what: 'cable',
				found: 'loose',
				wanted: 'wash-2:in',
				says: 'Wash 1, data out is joined to a cable whose other end hangs loose, and it should be joined to Wash 2, data in.',
			},
			{
				place: 'wash-1:out',
				what: 'cable',
				found: 'unfit',
				wanted: 'wash-2:in',
				says: 'The cable from Wash 1, data out to Wash 2, data in won’t do: wrong kind, too long, or faulty.',
			},
			{
				place: 'wash-1:out',
				what: 'terminator',
				found: 'fitted',
				wanted: 'none',
				says: 'There’s a terminator in Wash 1, data out, and there should be none.',
			},
			{
				place: 'desk:a',
				what: 'universe',
				found: 2,
				wanted: 1,
				says: 'Desk, output A carries universe 2, and it should carry universe 1.',
			},
			{
				place: 'desk:a',
				what: 'output',
				found: 'off',
				wanted: 'on',
				says: 'Desk, output A sends nothing, and it should be sending.',
			},
			{
				place: 'desk',
				what: 'master',
				found: 0,
				wanted: 255,
				says: 'The desk’s master is at 0 (0 %), and it should be at 255 (100 %).',
			},
			{
				place: 'desk',
				what: 'slot 12',
				found: 3,
				wanted: [0, 0, 10, 20],
				says: 'Channel 12 of universe 1: 3 (1 %); wanted: 0 (0 %), or anything from 10 (4 %) to 20 (8 %).',
			},
		];
		for (const { says, ...finding } of all) expect(findingText(drill, { ...base, ...finding })).toBe(says);
		const told = new Set(all.map(({ what }) => (what.startsWith('slot') ? 'slot' : what)));
		expect([...told, 'setting'].sort()).toEqual(Object.keys(findings).sort());
	});

	it('a link moved live is told, and every hint of a row says that its supply is off', () => {
		const drill = makeDrill('mains-row', 5);
		const log: RigEvent[] = [
			{ type: 'mains.plug', fixture: 'bar-2', into: 'bar-1' },
			{ type: 'mains.plug', fixture: 'bar-2', into: 'none' },
		];
		expect(markDrill(drill, log).harm.map((harm) => harmText(drill, harm))).toEqual([
			'You linked Bar 2 to Bar 1 while the wall plug of Bar 1 was in, so that link was live.',
			'You pulled Bar 2 off Bar 1 while the wall plug of Bar 1 was in, so that link was live.',
		]);
		const rig = openRig(drill.sheet);
		const said: string[] = [];
		for (const event of shortestWay(drill)) {
			if (event.type === 'mains.plug') said.push(hintText(rig, hintOn(drill, rig)) ?? '');
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		}
		expect(said[0]).toBe('Isolate first: pull the mains lead of Bar 1 out of the wall.');
		expect(said.at(-1)).toBe('With all links made, plug the mains lead of Bar 1 into the wall, last of all.');
		for (const hint of said.slice(1, -1)) expect(hint).toMatch(/^With the supply (still )?off, /);
	});

	it('a hold is told whole, with what the display reads when it is let go', () => {
		const drill = makeDrill('locked-address', 3);
		const rig = openRig(drill.sheet);
		expect(hintText(rig, hintOn(drill, rig))).toBe(
			'Hold Set on Wash 1 for about 2 seconds, until its display reads SRCE, and let go.',
		);
	});

	/** What is said of a drill once one of its items is open for editing. */
	function whileEditing(drill: Drill): string {
		const rig = openRig(drill.sheet);
		for (const event of shortestWay(drill)) {
			const words = hintText(rig, hintOn(drill, rig)) ?? '';
			if (words.startsWith('Hold')) return words;
			if (event.type === 'clock.wait') rig.wait(event.ms);
			else rig.send(event);
		}
		return '';
	}

	// Symptom: 'hold for about 13.4 seconds, until its display reads 276': nobody can. Cause: a hold was let go exactly in time.
	it('a hold on a number goes near it, and the words say what comes after', () => {
		const said = Array.from({ length: 12 }, (_, seed) => whileEditing(makeDrill('address-keys', seed)));
		const far = said.filter((words) => words !== '');
		expect(far.length).toBeGreaterThan(6);
		for (const words of far)
			expect(words).toMatch(
				/^Hold (Up|Down) on \w+ 1 until close to \d+ and let go; it runs on a little\. Then (tap to \d+|come to \d+ with a shorter hold and taps)\.$/,
			);
		expect(said).toMatchInlineSnapshot(`
			[
			  "Hold Up on Wash 1 until close to 50 and let go; it runs on a little. Then tap to 57.",
			  "Hold Down on Bar 1 until close to 400 and let go; it runs on a little. Then tap to 387.",
			  "Hold Up on Bar 1 until close to 172 and let go; it runs on a little. Then come to 186 with a shorter hold and taps.",
			  "Hold Down on Wash 1 until close to 504 and let go; it runs on a little. Then come to 484 with a shorter hold and taps.",
			  "Hold Down on Wash 1 until close to 260 and let go; it runs on a little. Then come to 251 with a shorter hold and taps.",
			  "Hold Up on Wash 1 until close to 445 and let go; it runs on a little. Then come to 471 with a shorter hold and taps.",
			  "Hold Up on Bar 1 until close to 431 and let go; it runs on a little. Then come to 450 with a shorter hold and taps.",
			  "Hold Up on Bar 1 until close to 150 and let go; it runs on a little. Then come to 423 with a shorter hold and taps.",
			  "Hold Up on Wash 1 until close to 270 and let go; it runs on a little. Then come to 278 with a shorter hold and taps.",
			  "Hold Down on Wash 1 until close to 34 and let go; it runs on a little. Then come to 9 with a shorter hold and taps.",
			  "Hold Up on Wash 1 until close to 80 and let go; it runs on a little. Then come to 88 with a shorter hold and taps.",
			  "Hold Up on Bar 1 until close to 316 and let go; it runs on a little. Then come to 338 with a shorter hold and taps.",
			]
		`);
	});

	it('a key that is still held is to be let go, at once or at a sight', () => {
		const drill = makeDrill('address-keys', 0);
		const rig = openRig(drill.sheet);
		for (const event of shortestWay(drill)) {
			if (event.type === 'clock.wait') break;
			rig.send(event);
		}
		expect(hintText(rig, hintOn(drill, rig))).toMatch(
			/^Let go of (Up|Down) on \w+ 1 when its display reads close to \d+\.$/,
		);
		rig.wait(20_000);
		expect(hintText(rig, hintOn(drill, rig))).toMatch(/^Let go of (Up|Down) on \w+ 1\.$/);
	});

	it('every hint is met on some way of some drill, or is a step back that a learner may need', () => {
		const met = new Set(DRILL_IDS.flatMap((kind) => drillsOf(kind).flatMap(({ way }) => way.map((e) => e.type))));
		for (const type of met) expect(Object.keys(hints)).toContain(type);
		const back = Object.keys(hints).filter((type) => !met.has(type as keyof typeof hints));
		expect(back.sort()).toEqual(['cable.unplug', 'desk.master', 'desk.output']);
	});
});
