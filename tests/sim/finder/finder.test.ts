import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bundledRig, RIG_IDS } from '../../../shared/sheet/index.ts';
import { FAULTS, placedFaults } from '../../../sim/fault/index.ts';
import {
	CHECK_KINDS,
	COMPLAINT_KINDS,
	type Complaint,
	complaintsOf,
	type Finder,
	faultyWitness,
	finderOn,
	learn,
	meantWitness,
	offeredBy,
	openFinder,
	openOutcomes,
	openPart,
	type RigOutcomes,
	together,
} from '../../../sim/finder/index.ts';
import { why } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { textOf, walkGig } from './gig.ts';

const benches = new Map<string, RigOutcomes>();

/** A table worked out once for all tests. */
function benchOf(rig: (typeof RIG_IDS)[number], kind: Complaint['kind'], fixture: string): RigOutcomes {
	const key = `${rig} ${kind} ${fixture}`;
	let bench = benches.get(key);
	if (!bench) {
		bench = openOutcomes(bundledRig(rig), { kind, fixture });
		benches.set(key, bench);
	}
	return bench;
}

const SCENES = [
	['one-wash', 'dark', 'wash-1'],
	['four-in-line', 'dark', 'wash-3'],
	['leader-and-three', 'follower-silent', 'wash-2'],
	['two-universes', 'no-answer', 'bar-2'],
	['mixed-panels', 'dead-beyond', 'bar-1'],
] as const;

/** A walk by numbers: each picks one of the answers offered, or sets the check aside. */
function stray(finder: Finder, picks: readonly number[]): void {
	for (const pick of picks) {
		const next = finder.next();
		if (!next) return;
		const outcome = next.outcomes[pick % (next.outcomes.length + 1)];
		if (outcome) finder.answer(next.check.id, outcome.id);
		else finder.cannot(next.check.id);
	}
}

const picks = fc.array(fc.nat(6), { maxLength: 8 });
const weightsOf = (finder: Finder): readonly (readonly [string, number])[] =>
	finder.suspects().map(({ id, weight }) => [id, weight] as const);

describe('the catalogue', () => {
	test('holds as many kinds as it must, each once', () => {
		expect(FAULTS.length).toBeGreaterThanOrEqual(45);
		expect(COMPLAINT_KINDS.length).toBeGreaterThanOrEqual(16);
		expect(CHECK_KINDS.length).toBeGreaterThanOrEqual(60);
		for (const ids of [FAULTS.map(({ id }) => id), COMPLAINT_KINDS, CHECK_KINDS])
			expect(new Set(ids).size).toBe(ids.length);
	});

	test('every complaint can be made of some bundled rig, and some fault on it shows it', () => {
		const caused = new Set<string>();
		for (const id of RIG_IDS.filter((rig) => rig !== 'long-line')) {
			const sheet = bundledRig(id);
			const meant = meantWitness(sheet);
			for (const complaint of complaintsOf(meant, sheet)) {
				if (caused.has(complaint.kind)) continue;
				if (openOutcomes(sheet, complaint).candidates.length > 0) caused.add(complaint.kind);
			}
		}
		expect([...caused].sort()).toEqual([...COMPLAINT_KINDS].sort());
	});

	test('nothing complained of holds on a rig as its sheet has it', () => {
		for (const id of RIG_IDS) {
			const sheet = bundledRig(id);
			const meant = meantWitness(sheet);
			for (const { fixture } of complaintsOf(meant, sheet).slice(0, 40)) {
				const trail = why(meant.rig, fixture);
				expect(
					trail.some(({ effect }) => effect === 'stops'),
					`${id} ${fixture}`,
				).toBe(false);
			}
		}
	});
});

describe.each(SCENES)('a walk on %s, %s at %s', (rig, kind, fixture) => {
	const bench = benchOf(rig, kind, fixture);

	test('weights sum to one, and none is ever nothing', () => {
		fc.assert(
			fc.property(picks, (list) => {
				const finder = finderOn(bench);
				stray(finder, list);
				const weights = finder.suspects().map(({ weight }) => weight);
				expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
				for (const weight of weights) expect(weight).toBeGreaterThan(0);
			}),
			{ numRuns: runs(12) },
		);
	});

	test('undo restores what was, to the last bit', () => {
		fc.assert(
			fc.property(picks, fc.nat(6), (list, last) => {
				const finder = finderOn(bench);
				stray(finder, list);
				const before = JSON.stringify([weightsOf(finder), finder.next()?.check.id, finder.spent, finder.steps]);
				const steps = finder.steps.length;
				stray(finder, [last]);
				if (finder.steps.length > steps) finder.undo();
				expect(JSON.stringify([weightsOf(finder), finder.next()?.check.id, finder.spent, finder.steps])).toBe(before);
			}),
			{ numRuns: runs(10) },
		);
	});

	test('what is set aside or answered is not asked again, and a verdict comes', () => {
		fc.assert(
			fc.property(fc.infiniteStream(fc.nat(6)), (stream) => {
				const finder = finderOn(bench);
				const asked = new Set<string>();
				for (const pick of stream) {
					const next = finder.next();
					if (!next) break;
					expect(asked.has(next.check.id)).toBe(false);
					asked.add(next.check.id);
					stray(finder, [pick]);
				}
				expect(finder.verdict()).not.toBeNull();
			}),
			{ numRuns: runs(6) },
		);
	});

	test('the order of two answers to looks does not matter', () => {
		const looks = bench.checks.filter(({ sort }) => sort === 'look').slice(0, 6);
		for (const [i, one] of looks.entries()) {
			for (const two of looks.slice(i + 1)) {
				const answer = (id: string) => bench.outcomes[bench.checks.findIndex((check) => check.id === id)]?.[0] ?? '';
				const [a, b] = [finderOn(bench), finderOn(bench)];
				a.answer(one.id, answer(one.id));
				a.answer(two.id, answer(two.id));
				b.answer(two.id, answer(two.id));
				b.answer(one.id, answer(one.id));
				const other = new Map(weightsOf(b));
				for (const [id, weight] of weightsOf(a)) expect(other.get(id)).toBeCloseTo(weight, 12);
			}
		}
	});

	test('rigs that a check takes for alike are alike to it', () => {
		const meant = meantWitness(bench.sheet);
		// of all that are offered: one that takes all for alike parts nobody, and would not stand in the table
		for (const check of offeredBy(bench)) {
			const known = new Map<string, string>();
			for (const { faults, came } of bench.candidates) {
				const w = faultyWitness(meant, faults, came === 'warm' ? 'warm' : 'cold');
				const key = check.key(w);
				if (key === null) continue;
				const read = check.read(w);
				expect(known.get(key) ?? read, check.id).toBe(read);
				known.set(key, read);
			}
		}
	});

	test('every fault is found and mended when answers are what the rig shows', () => {
		for (const { faults, came } of bench.candidates) {
			const walked = walkGig(bench, faultyWitness(bench.meant, faults, came === 'warm' ? 'warm' : 'cold'));
			expect(walked.cleared, textOf(faults)).toBe(true);
			expect(
				walked.verdict?.suspects.map(({ id }) => id),
				textOf(faults),
			).toContain(textOf(faults));
		}
	});
});

describe('part of a table', () => {
	const sheet = bundledRig('long-line');

	test('is for large rigs alone', () => {
		for (const id of RIG_IDS.filter((rig) => rig !== 'long-line')) {
			const small = bundledRig(id);
			const [complaint] = complaintsOf(meantWitness(small), small);
			if (!complaint) throw new Error(`nothing to complain of on ${id}`);
			expect(openPart(small, complaint), id).toBeNull();
		}
	});

	test.each([
		['no-answer', 'bar-12'],
		['dark', 'bar-1'],
		['flicker', 'bar-24'],
		['dead-beyond', 'bar-6'],
	] as const)('holds nothing that the whole does not, of %s at %s', (kind, fixture) => {
		const part = openPart(sheet, { kind, fixture });
		const whole = openOutcomes(sheet, { kind, fixture });
		if (!part) throw new Error('this rig was to be large');
		const at = new Map(whole.candidates.map(({ faults, came }, i) => [`${came} ${textOf(faults)}`, i]));
		const rows = new Map(whole.checks.map(({ id }, i) => [id, whole.outcomes[i] ?? []]));
		// the common faults everywhere, and all of the fixture's own; by all checks but those that take long to answer
		const few = new Set(
			placedFaults(sheet)
				.filter(({ placed: { place }, weight }) => weight >= 4 || place.split(':')[0] === fixture)
				.map(({ placed }) => textOf([placed])),
		);
		const idsOf = ({ candidates }: RigOutcomes): string[] =>
			candidates.map(({ faults, came }) => `${came} ${textOf(faults)}`);
		expect(idsOf(part)).toEqual(idsOf(whole).filter((id) => few.has(id.slice(id.indexOf(' ') + 1))));
		expect(part.candidates.length).toBeLessThan(whole.candidates.length);
		const kinds = new Set(part.checks.map((check) => check.kind));
		for (const slow of ['line-ended', 'line-straight', 'neighbour-strips', 'desk-restart', 'leader-change'] as const)
			expect(kinds.has(slow), slow).toBe(false);
		for (const [row, { id }] of part.checks.entries()) {
			for (const [i, { faults, came }] of part.candidates.entries())
				expect(rows.get(id)?.[at.get(`${came} ${textOf(faults)}`) ?? -1], `${id} ${textOf(faults)}`).toBe(
					part.outcomes[row]?.[i],
				);
		}
	});

	test('gives a check to begin with, and every fault is found from there', () => {
		const complaint = { kind: 'dark', fixture: 'bar-12' } as const;
		const part = openPart(sheet, complaint);
		const first = part && finderOn(part).next()?.check.id;
		if (!first) throw new Error('there was to be a first check');
		const bench = benchOf('long-line', 'dark', 'bar-12');
		const finder = finderOn(bench, { first });
		expect(finder.next()?.check.id).toBe(first);
		finder.cannot(first);
		expect(finder.next()?.check.id).not.toBe(first);
		finder.undo();
		expect(finder.next()?.check.id).toBe(first);
		for (const { faults, came } of bench.candidates.filter((_, at) => at % 7 === 0)) {
			const walked = walkGig(bench, faultyWitness(bench.meant, faults, came === 'warm' ? 'warm' : 'cold'), { first });
			expect(walked.cleared, textOf(faults)).toBe(true);
		}
	});
});

describe('what a gig does not allow', () => {
	test('a running show is not disturbed, and what is not there is not asked for', () => {
		const bench = benchOf('four-in-line', 'dark', 'wash-3');
		for (const { faults } of bench.candidates) {
			const finder = finderOn(bench, { showRunning: true, without: ['ladder', 'spare-cable', 'spare-fixture'] });
			const broken = faultyWitness(bench.meant, faults);
			for (let next = finder.next(); next; next = finder.next()) {
				expect(next.check.disturbs, next.check.id).toBe(false);
				for (const need of next.check.needs) expect(['ladder', 'spare-cable', 'spare-fixture']).not.toContain(need);
				const outcome = next.check.read(broken);
				finder.answer(
					next.check.id,
					next.outcomes.some(({ id }) => id === outcome) ? outcome : (next.outcomes[0]?.id ?? ''),
				);
			}
			expect(
				finder.verdict()?.suspects.map(({ id }) => id),
				textOf(faults),
			).toContain(textOf(faults));
		}
	});

	test('two faults at once are both mended', () => {
		const bench = benchOf('four-in-line', 'dark', 'wash-3');
		const [one, two] = ['switched-off', 'levels-down'].map((fault) =>
			bench.candidates.find(({ faults }) => faults[0]?.fault === fault),
		);
		if (!one || !two) throw new Error('the scene has lost its faults');
		const broken = together(bench.meant, [...one.faults, ...two.faults]);
		if (!broken) throw new Error('the two cannot stand together');
		const walked = walkGig(bench, broken);
		expect(walked.cleared).toBe(true);
		// of each, some repair that was made clears it where it is alone: of the second the levels, or the patch set anew
		for (const fault of [one, two]) {
			const column = bench.candidates.indexOf(fault);
			const clears = (repair: string): boolean =>
				bench.checks.some(({ id }, row) => id === `mend-${repair}` && bench.outcomes[row]?.[column] === 'cleared');
			expect(walked.mended.filter(clears), textOf(fault.faults)).not.toEqual([]);
			expect(walked.mended.some((repair) => !clears(repair))).toBe(true);
		}
	});
});

describe('doors', () => {
	test('nonsense is refused with a sentence', () => {
		const sheet = bundledRig('one-wash');
		expect(thrownBy(() => openFinder(sheet, { kind: 'no-answer', fixture: 'wash-1' })).code).toBe('finder.complaint');
		expect(thrownBy(() => openFinder(sheet, { kind: 'dark', fixture: 'nobody' })).code).toBe('finder.complaint');
		const finder = openFinder(sheet, { kind: 'dark', fixture: 'wash-1' });
		expect(thrownBy(() => finder.answer('nothing@nowhere', 'x')).code).toBe('finder.check');
		const next = finder.next();
		expect(thrownBy(() => finder.answer(next?.check.id ?? '', 'purple')).code).toBe('finder.outcome');
		expect(finder.steps).toEqual([]);
	});

	test('verdicts of this device move weights, and take nobody away', () => {
		const sheet = bundledRig('one-wash');
		const complaint = { kind: 'dark', fixture: 'wash-1' } as const;
		const plain = openFinder(sheet, complaint).suspects();
		const rare = plain.filter(({ faults }) => faults.length === 1).at(-1);
		if (!rare) throw new Error('nobody to learn of');
		let learnt = {};
		for (let i = 0; i < 12; i++) learnt = learn(learnt, rare.faults);
		const taught = openFinder(sheet, complaint, { learnt }).suspects();
		expect(taught.map(({ id }) => id).sort()).toEqual(plain.map(({ id }) => id).sort());
		expect(taught.find(({ id }) => id === rare.id)?.weight).toBeGreaterThan(rare.weight);
	});
});
