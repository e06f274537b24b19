import { describe, expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { placedFaults } from '../../../sim/fault/index.ts';
import { CHECK_KINDS, type Complaint, ELSE, finderOn, offeredBy, openOutcomes } from '../../../sim/finder/index.ts';
import { textOf } from './gig.ts';

// The numbers by which the finder decides, a second time: what a check costs and how often it is answered wrong, what a suspect weighs before
// and after an answer, and how far it is from here to there. All are common practice or ours, no source. Change both, or neither.

const SCENES = [
	['four-in-line', { kind: 'dark', fixture: 'wash-3' }],
	['leader-and-three', { kind: 'follower-silent', fixture: 'wash-2' }],
	['one-wash', { kind: 'strobing', fixture: 'wash-1' }],
	['mixed-panels', { kind: 'no-answer', fixture: 'old-1' }],
] as const satisfies readonly (readonly [string, Complaint])[];

/** Kind: sort, seconds, chance of a wrong answer, whether it disturbs a show | needs | cautions. On the floor, where no ladder comes in. */
const COSTS = `
	lit: look 3 0.02 false | |
	ultraviolet: look 10 0.02 false | | ultraviolet staring
	colour: look 4 0.02 false | |
	brightness: look 5 0.02 false | |
	flashing: look 3 0.02 false | | flashing
	moving: look 8 0.02 false | |
	jumping: look 6 0.02 false | |
	power-lamp: look 4 0.02 false | |
	data-lamp: look 4 0.02 false | |
	battery-lamp: look 4 0.02 false | |
	sensor-lamp: look 4 0.02 false | |
	display: look 6 0.02 false | |
	power-switch: look 5 0.02 false | |
	socket-in: look 8 0.02 false | |
	socket-out: look 8 0.02 false | |
	lens: look 6 0.02 false | | staring hot
	heat: look 8 0.08 false | | hot
	sight-line: look 5 0.02 false | |
	sensor-window: look 6 0.02 false | | staring
	panel-address: look 15 0.02 false | |
	panel-mode: look 15 0.02 false | |
	panel-work: look 15 0.02 false | |
	panel-lead: look 15 0.02 false | |
	panel-limit: look 20 0.02 false | |
	panel-curve: look 20 0.02 false | |
	panel-loss: look 20 0.02 false | |
	panel-sensor: look 15 0.02 false | |
	panel-code: look 20 0.02 false | |
	desk-strips: try 15 0.03 true | desk |
	desk-colours: try 30 0.03 true | desk |
	desk-restart: try 40 0.03 true | desk |
	held-at-panel: try 30 0.03 true | |
	power-cycle: try 20 0.03 true | |
	remote-close: try 15 0.03 true | |
	charger: try 20 0.03 true | | batteries mains
	terminator: look 8 0.02 false | |
	row-right: look 8 0.04 false | |
	neighbour-strips: try 15 0.03 true | desk |
	line-ended: try 40 0.03 true | terminator |
	line-straight: swap 90 0.03 true | spare-cable |
	cable-ends: look 12 0.02 false | |
	cable-kind: look 12 0.02 false | |
	cable-length: look 15 0.05 false | |
	cable-place: look 12 0.02 false | |
	desk-output: look 5 0.02 false | desk |
	desk-universe: look 15 0.02 false | desk |
	desk-master: look 4 0.02 false | desk |
	desk-live: try 4 0.02 true | desk |
	desk-sends: look 15 0.02 false | desk |
	desk-patch: look 20 0.02 false | desk |
	desk-intensity: look 6 0.02 false | desk |
	desk-functions: look 8 0.02 false | desk |
	desk-colour-strips: look 10 0.02 false | desk |
	hall-power: look 6 0.02 false | |
	remote-lamp: look 4 0.02 false | |
	remote-code: look 8 0.02 false | |
	leader-change: try 30 0.03 true | |
	mains-plug: look 10 0.02 false | | mains
	panel-held: look 15 0.02 false | |
	panel-level: look 15 0.02 false | |
	panel-strobe: look 15 0.02 false | |
	socket-live: try 30 0.03 true | | mains
	breakers: look 40 0.02 false | | mains
	switches: look 15 0.02 false | |
	slides: look 8 0.02 false | |`;

test('each check costs what the table says', () => {
	const costs = new Map<string, string>();
	for (const [rig, complaint] of SCENES) {
		for (const check of offeredBy(openOutcomes(bundledRig(rig), complaint))) {
			if (check.kind.startsWith('mend-') || check.needs.includes('ladder')) continue;
			const { sort, seconds, error, disturbs, needs, cautions } = check;
			const text = `${sort} ${seconds} ${error} ${disturbs} | ${needs.join(' ')} | ${cautions.join(' ')}`;
			const known = costs.get(check.kind) ?? text;
			expect(text, check.id).toBe(known);
			costs.set(check.kind, known);
		}
	}
	expect([...costs].map(([kind, text]) => `${kind}: ${text}`.replace(/ +/g, ' ').trim())).toEqual(
		COSTS.trim()
			.split('\n')
			.map((line) => line.trim()),
	);
	const rest = CHECK_KINDS.filter((kind) => !kind.startsWith('mend-') && !costs.has(kind));
	expect(rest).toEqual(['panel-programme', 'panel-hearing', 'clap', 'box-lamp']);
});

/** Repair: sort, seconds, whether it disturbs a show | needs | cautions. One that hangs needs a ladder, one on the mains is told to be. */
const MENDING = `
	mend-switch-on@wash-3: mend 5 false | |
	mend-fresh-battery@wash-3: swap 90 true | spare-battery | batteries
	mend-restore-hall@rig: mend 120 false | | mains
	mend-set-panel@wash-3: mend 25 false | |
	mend-plug-cable@cable-3: mend 15 false | |
	mend-replace-cable@cable-3: swap 75 true | spare-cable |
	mend-swap-fixture@wash-3: swap 300 true | spare-fixture | hanging lifting hot
	mend-output-on@a: mend 10 false | desk |
	mend-raise-master@desk: mend 5 false | desk |
	mend-set-universe@a: mend 30 true | desk |
	mend-set-patch@wash-3: mend 45 true | desk |
	mend-set-levels@wash-3: mend 15 false | desk |
	mend-clear-lens@wash-3: mend 15 false | | staring hot
	mend-plug-mains@old-1: mend 20 false | | mains
	mend-set-switches@old-1: mend 25 false | |
	mend-set-panel@bar-1: mend 25 false | ladder | height hanging
	mend-plug-cable@cable-2: mend 15 false | ladder | height hanging
	mend-replace-cable@cable-2: swap 75 true | spare-cable ladder | height hanging
	mend-swap-fixture@bar-1: swap 300 true | spare-fixture ladder | hanging lifting hot height mains
	mend-swap-fixture@old-1: swap 300 true | spare-fixture | hanging lifting hot mains
	mend-swap-fixture@wash-1: swap 300 true | spare-fixture | hanging lifting hot
	mend-clear-lens@old-1: mend 15 false | | staring hot
	mend-other-socket@old-1: swap 60 true | | mains
	mend-replace-lead@old-1: swap 90 true | | mains
	mend-ask-breaker@rig: mend 180 false | | mains`;

test.each(
	MENDING.trim()
		.split('\n')
		.map((line) => line.trim().split(': ') as [string, string]),
)('doing %s costs %s', (id, costs) => {
	// up on the second rig hangs what stands on the first
	const scenes = /old-|bar-|cable-2|wash-1|breaker/.test(id) ? [SCENES[3]] : [SCENES[0]];
	for (const [rig, complaint] of scenes) {
		const check = offeredBy(openOutcomes(bundledRig(rig), complaint)).find((each) => each.id === id);
		const { sort, seconds, disturbs, needs, cautions } = check ?? { needs: [], cautions: [] };
		const text = `${sort} ${seconds} ${disturbs} | ${needs.join(' ')} | ${cautions.join(' ')}`;
		expect(text.replace(/ +/g, ' ').trim()).toBe(costs);
	}
});

describe.each(SCENES)('weights on %s', (rig, complaint) => {
	const sheet = bundledRig(rig);
	const bench = openOutcomes(sheet, complaint);
	const weightOf = new Map(placedFaults(sheet).map(({ placed, weight }) => [textOf([placed]), weight]));
	/** What is not known weighs so much against all that is known, and at a check shows something of its own so often. */
	const UNKNOWN = 0.03;
	const OWN_WAY = 0.25;

	/** Shares by the rule of Bayes, reckoned from the answers given; what is not known comes last. */
	function reckoned(answers: readonly (readonly [check: string, said: string])[]): Map<string, number> {
		const raw = bench.candidates.map(
			({ faults, came }) => (weightOf.get(textOf(faults)) ?? 0) / (came === 'either' ? 1 : 2),
		);
		const all = raw.reduce((sum, each) => sum + each, 0);
		let known = raw.map((each) => each / all);
		let odd = known.map((each) => each * UNKNOWN);
		for (const [id, said] of answers) {
			const row = bench.outcomes[bench.checks.findIndex((check) => check.id === id)] ?? [];
			const error = bench.checks.find((check) => check.id === id)?.error ?? 0;
			const count = new Set(row).size;
			known = known.map((each, at) => each * (row[at] === said ? 1 - error : error / Math.max(1, count - 1)));
			const any = OWN_WAY / (count + 1);
			odd = odd.map((each, at) => each * (row[at] === said ? 1 - OWN_WAY + any : any));
		}
		const [sure, unsure] = [known, odd].map((each) => each.reduce((sum, one) => sum + one, 0)) as [number, number];
		const unknown = Math.max(0.01, unsure / (sure + unsure));
		const shares = new Map([['unknown', unknown]]);
		for (const [at, { faults }] of bench.candidates.entries()) {
			const id = textOf(faults);
			shares.set(id, (shares.get(id) ?? 0) + ((known[at] ?? 0) / sure) * (1 - unknown));
		}
		return shares;
	}

	const looks = bench.checks.filter(({ sort }) => sort === 'look' || sort === 'try');

	test.each([
		['before anything is asked', 0, 0],
		['after one answer', 1, 0],
		['after one answer that another would give', 1, 3],
		['after two', 2, 1],
		['after three, of different suspects', 3, 2],
	])('%s', (_, count, of) => {
		const finder = finderOn(bench);
		const answers = looks
			.filter((_check, at) => at % 3 === 1)
			.slice(0, count)
			.map(({ id }, at): [string, string] => {
				const row = bench.outcomes[bench.checks.findIndex((check) => check.id === id)] ?? [];
				return [id, row[(of * (at + 1)) % row.length] ?? ''];
			});
		for (const [id, said] of answers) finder.answer(id, said);
		const shares = reckoned(answers);
		const suspects = finder.suspects();
		expect(suspects.map(({ id }) => id).sort()).toEqual([...shares.keys()].sort());
		for (const { id, weight } of suspects) expect(weight, id).toBeCloseTo(shares.get(id) ?? 0, 9);
		const weights = suspects.map(({ weight }) => weight);
		expect(weights.slice(0, -1)).toEqual(weights.slice(0, -1).sort((a, b) => b - a));
	});

	test('an answer that no button names speaks for what is not known', () => {
		const finder = finderOn(bench);
		const before = finder.suspects().find(({ id }) => id === 'unknown')?.weight ?? 0;
		finder.answer(looks[0]?.id ?? '', ELSE);
		expect(finder.suspects().find(({ id }) => id === 'unknown')?.weight ?? 0).toBeGreaterThan(before);
	});
});

describe('the way to a check', () => {
	// 2 s to set off and one for each metre; the desk stands 10 m from the wall, in the middle; a climb is 60 s
	test.each([
		['four-in-line', 'data-lamp@wash-3', 'desk', 'wash-3'],
		['four-in-line', 'data-lamp@wash-3', 'wash-1', 'wash-3'],
		['four-in-line', 'desk-master@desk', 'wash-3', 'desk'],
	] as const)('%s: %s from %s', (rig, id, here, there) => {
		const sheet = bundledRig(rig);
		const spot = (at: string): [number, number] => {
			if (at === 'desk') return [sheet.hall.width / 2, 10];
			const placed = sheet.fixtures.find((each) => each.id === at)?.place;
			return [placed?.x ?? 0, placed?.throw ?? 0];
		};
		const [[x1, y1], [x2, y2]] = [spot(here), spot(there)];
		const bench = openOutcomes(sheet, { kind: 'dark', fixture: 'wash-3' });
		const finder = finderOn(bench, { here });
		const check = finder.check(id);
		finder.answer(id, bench.outcomes[bench.checks.findIndex((each) => each.id === id)]?.[0] ?? '');
		expect(finder.spent).toBeCloseTo(2 + Math.hypot(x1 - x2, y1 - y2) + (check?.seconds ?? 0), 9);
	});

	test('costs nothing where one stands already, nor to what is in the hand', () => {
		const bench = openOutcomes(bundledRig('four-in-line'), { kind: 'ignores-remote', fixture: 'wash-3' });
		const finder = finderOn(bench, { here: 'wash-3' });
		finder.answer('sensor-lamp@wash-3', 'lit');
		expect(finder.spent).toBe(4);
		finder.answer('remote-lamp@remote', 'blinks');
		expect(finder.spent).toBe(8);
	});
});
