import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { findingsOf, shortestWay } from '../../../../sim/drill/index.ts';
import { openRig, why } from '../../../../sim/rig/index.ts';
import { practiceOf } from '../../../../src/features/lessons/index.ts';
import { sheetOf } from '../../../../src/features/lessons/open.ts';
import { fixtureSections } from '../../../../src/features/reference/fixtures.ts';
import { lessonFiles, taskFrom } from '../../../content/lessons.ts';

const lessons = lessonFiles().map(({ lesson }) => lesson);

describe('the bench of a lesson', () => {
	it('stands in the middle of a wall as wide as it is told, and where it is told', () => {
		const quick = { count: 3, linked: 'alone', profile: 'tallow-6' } as const;
		const xs = (sheet: ReturnType<typeof sheetOf>) => sheet.fixtures.map(({ place }) => place.x);
		const plain = sheetOf({ quick, change: {}, log: [] });
		const wide = sheetOf({ quick, wide: plain.hall.width + 6, change: { 'wash-1': { place: { x: 1 } } }, log: [] });
		expect(wide.hall).toEqual({ ...plain.hall, width: plain.hall.width + 6 });
		expect(xs(wide)).toEqual(xs(plain).map((x, i) => (i === 0 ? 1 : x + 3)));
	});

	it('can lead to the chart of every fixture on it, and of every fixture of the task', () => {
		const charts = fixtureSections().map(({ id, heading }) => ({ name: heading, href: `/reference/fixtures/#${id}` }));
		for (const lesson of lessons) {
			const { sheet, manuals } = practiceOf(lesson);
			for (const { name, href } of manuals) expect(charts).toContainEqual({ name, href });
			const { task } = taskFrom(lesson, 7);
			// one that nobody has seen has no chart to lead to
			const made = task.sheet.profiles.map(({ id }) => id);
			for (const { profile } of [sheet, task.sheet].flatMap(({ fixtures }) => fixtures))
				if (!made.includes(profile)) expect(manuals.map(({ id }) => id)).toContain(profile);
		}
	});

	it('folds only the cautions that stand on its page', () => {
		for (const lesson of lessons)
			expect(practiceOf(lesson).said).toEqual(lesson.cautions.map((id) => cautions[id].title));
	});
});

describe('a goal that follows from the rig', () => {
	const lessonOf = (id: string) => {
		const found = lessons.find((each) => each.id === id);
		if (!found) throw new Error(id);
		return taskFrom(found, 7);
	};

	// symptom: 'the light is out', said beside four bars that shone
	it('finds the light out at load-out where its words say so', () => {
		const { says, task } = lessonOf('cool-coil-charge-log');
		expect(says).toContain('the light is out');
		const rig = openRig(task.sheet);
		rig.wait(1);
		for (const { id } of task.sheet.fixtures) expect(rig.look(id).light.whole.brightness, id).toBe(0);
	});

	// symptom: 'look at the wall, name your suspects', with nothing said of what the desk asks for
	it('says what the desk asks of each before a wall is read', () => {
		const { says, task } = lessonOf('ten-cases');
		for (const { name } of task.sheet.fixtures)
			expect(says).toMatch(new RegExp(`It asks for this: [^.]*${name}: (?!dark)\\w`));
	});

	it('of a patched fixture is the mode and the address of the desk’s patch, for every fixture', () => {
		const { task } = lessonOf('patch-sheet-and-plot');
		for (const { fixture, mode, address } of task.sheet.desk?.patch ?? []) {
			expect(task.goal).toContainEqual({ is: 'setting', fixture, key: 'mode', value: mode });
			expect(task.goal).toContainEqual({ is: 'setting', fixture, key: 'address', value: address });
		}
		const wrong = findingsOf(task, openRig(task.sheet)).map(({ place }) => place);
		expect(new Set(wrong).size).toBe(2);
	});

	it('of one as bright as another follows from the two throws: half the throw, a quarter of the brightness', () => {
		const { task, says } = lessonOf('focus-aim-spill-glare');
		const [near, far] = task.sheet.fixtures.map(({ place }) => place.throw);
		expect(says).toContain(`${near} metres from the wall, Wash 2 ${far} metres`);
		const goal = task.goal.find((it) => it.is === 'setting-within');
		const wanted = 100 * ((near ?? 0) / (far ?? 1)) ** 2;
		expect(goal?.is === 'setting-within' && goal.within).toEqual([
			{ from: Math.ceil(0.9 * wanted), to: Math.floor(1.1 * wanted) },
		]);
	});

	it('of a splitter stands with the splitter on the bench, and each branch is ended', () => {
		const { task } = lessonOf('splitters-and-branches');
		expect(task.sheet.splitters.map(({ id }) => id)).toEqual(['split']);
		const rig = openRig(task.sheet);
		for (const event of shortestWay(task)) event.type === 'clock.wait' ? rig.wait(event.ms) : rig.send(event);
		for (const { id } of task.sheet.fixtures)
			expect(
				why(rig, id).some(({ effect }) => effect === 'stops'),
				id,
			).toBe(false);
		expect(rig.gear.terminators).toEqual(expect.arrayContaining(['wash-2:out', 'wash-4:out']));
	});
});
