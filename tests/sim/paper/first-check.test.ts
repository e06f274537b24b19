import { describe, expect, it } from 'vitest';
import type { Item } from '../../../shared/paper/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { type Complaint, type ComplaintKind, type Finder, finderOn, openBench } from '../../../sim/finder/index.ts';
import { runs } from '../../runs.ts';
import { throughJson } from '../../shared/json.ts';
import { itemsOf } from './items.ts';

type Bench = ReturnType<typeof openBench>;

/** Seconds to the verdict when one suspect is the cause and answers are true, with this check first and the finder after it. */
function walked(bench: Bench, first: number, cause: number): number {
	const finder: Finder = finderOn(bench);
	const told = (at: number): string => bench.outcomes[at]?.[cause] ?? '';
	finder.answer(bench.checks[first]?.id ?? '', told(first));
	for (let steps = 0; steps < 40 && !finder.verdict(); steps++) {
		const next = finder.next();
		const at = bench.checks.findIndex(({ id }) => id === next?.check.id);
		if (!next || at < 0) break;
		finder.answer(next.check.id, told(at));
	}
	return finder.spent;
}

/** The mean of those, by the suspects' weights: every walk is played to its end. */
function played(bench: Bench, first: number): number {
	const total = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
	return bench.candidates.reduce((sum, { weight }, cause) => sum + (weight / total) * walked(bench, first, cause), 0);
}

function openingOf(item: Item): { bench: Bench; ofOption: (id: string) => number } {
	const sheet = readSheet(throughJson(item.bench));
	const fixture = sheet.fixtures.find(({ name }) => name === item.facts['fixture'])?.id ?? '';
	const complaint: Complaint = { kind: item.facts['complaint'] as ComplaintKind, fixture };
	const bench = openBench(sheet, complaint);
	const options = item.ask.form === 'one' ? item.ask.options : [];
	const named = (place: string): string => sheet.fixtures.find(({ id }) => id === place)?.name ?? place;
	return {
		bench,
		ofOption(id) {
			const label = options.find((each) => each.id === id)?.label;
			return bench.checks.findIndex(({ kind, place, other }) => {
				const [device = '', socket] = place.split(':');
				const at = socket === undefined ? named(place) : `${named(device)}:${socket}`;
				return (
					label?.say === `check-${kind}` &&
					label.facts['place'] === at &&
					label.facts['other'] === (other === undefined ? null : named(other))
				);
			});
		},
	};
}

/** By how much the doubt may shift a walk: ours, the most seen in 60 questions is 1.13. */
const MARGIN = 1.2;

describe('what to check first', () => {
	const items = itemsOf('first-check', runs(12, 300));

	it('is what a finder opened anew asks first', () => {
		for (const item of items) {
			if (item.key.form !== 'one') throw new Error('another form');
			const { bench, ofOption } = openingOf(item);
			expect(bench.checks[ofOption(item.key.right)]?.id).toBe(finderOn(bench).next()?.check.id);
		}
	});

	// the finder doubts every answer and looks again before it is sure, which the question leaves out: so a margin
	it('takes no clearly longer than any other that is offered when the finder walks on to its own verdict', () => {
		for (const item of items.slice(0, runs(1, 60))) {
			if (item.ask.form !== 'one' || item.key.form !== 'one') throw new Error('another form');
			const { right } = item.key;
			const { bench, ofOption } = openingOf(item);
			const best = played(bench, ofOption(right));
			for (const { id } of item.ask.options) {
				expect(ofOption(id)).toBeGreaterThanOrEqual(0);
				if (id !== right) expect(played(bench, ofOption(id)) * MARGIN).toBeGreaterThan(best);
			}
		}
	});
});
