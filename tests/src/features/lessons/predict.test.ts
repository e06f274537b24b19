import { describe, expect, it } from 'vitest';
import { openRig } from '../../../../sim/rig/index.ts';
import { sheetOf } from '../../../../src/features/lessons/open.ts';
import { predictionOf } from '../../../../src/features/lessons/predict.ts';
import { describePanel, fixtureLight } from '../../../../src/wording/index.ts';
import { lessonFiles } from '../../../content/lessons.ts';
import { saidBy } from '../../../shared/thrown.ts';

const lessons = lessonFiles().map(({ lesson }) => lesson);
const asked = lessons.flatMap(({ id, bench, predict = [] }) => predict.map((each) => ({ id, bench, each })));

// symptom: what was to be tried was told, and what came of it was typed, or nobody asked
describe('a prediction', () => {
	it('is asked in most lessons', () => {
		expect(new Set(asked.map(({ id }) => id)).size).toBeGreaterThanOrEqual(25);
	});

	it.each(asked)(
		'of $id: the right answer is what the rig shows once it is done, and no other is',
		({ bench, each }) => {
			const { options, right, done } = predictionOf(bench, each);
			const rig = openRig(sheetOf(bench));
			for (const event of [...bench.log, ...done]) event.type === 'clock.wait' ? rig.wait(event.ms) : rig.send(event);
			const shown = {
				light: fixtureLight(rig, each.watch),
				display: describePanel(rig, each.watch),
				data: rig.look(each.watch).lamps.data as string,
			}[each.see];
			expect(options[right]).toBe(shown);
			expect(options.length).toBeGreaterThanOrEqual(3);
			expect(new Set(options).size).toBe(options.length);
		},
	);

	it('has its right answer now here, now there', () => {
		const places = asked.map(({ bench, each }) => predictionOf(bench, each).right);
		for (const place of [0, 1, 2]) expect(places.filter((each) => each === place).length).toBeGreaterThanOrEqual(3);
		expect(Math.max(...[0, 1, 2, 3].map((at) => places.filter((each) => each === at).length))).toBeLessThan(
			0.6 * places.length,
		);
	});

	it('that the rig cannot answer wrongly is refused', () => {
		const bench = { quick: { count: 1, linked: 'alone', profile: 'tallow-6' }, change: {}, log: [] } as const;
		const spec = { ask: 'What now?', done: [], watch: 'wash-1', see: 'light', mistakes: [] } as const;
		expect(saidBy(() => predictionOf({ ...bench, log: [] }, { ...spec, done: [], mistakes: [] }))).toMatch(
			/What now\?/,
		);
	});
});
