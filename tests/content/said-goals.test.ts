import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../src/features/lessons/index.ts';
import { lessonFiles } from './lessons.ts';

type Case = Extract<Lesson['tasks'][number], { says: string }>;
type Goal = Case['goal'][number];

const casesOf = (lesson: Lesson): Case[] => lesson.tasks.flatMap((task) => ('says' in task ? [task] : []));
const lessons = lessonFiles().map(({ lesson }) => lesson);
const called = (id: string): Case[] => casesOf(lessons.find((lesson) => lesson.id === id) as Lesson);

const ORDINALS = ['one plug at the wall', 'a second', 'a third'];
const MORE = ['', 'one more circuit', 'two more circuits', 'three more circuits'];

/** Who is fed from which plug at the wall, in the words of the task: read off its goals. */
function feedsSaid(goals: readonly Goal[]): { parts: string; more: string } {
	const groups: number[][] = [];
	for (const [i, goal] of goals.entries()) {
		if (goal.is !== 'fed') throw new Error('another goal');
		expect(goal.fixture).toBe(`bar-${i + 1}`);
		if (goal.from === 'wall') groups.push([]);
		else expect(goal.from).toBe(`bar-${i}`);
		groups.at(-1)?.push(i + 1);
	}
	const last = groups.length - 1;
	const parts = groups.map(([first = 0, ...rest], i) => {
		const to = rest.at(-1);
		const bars = to === undefined ? `Bar ${first}` : `Bars ${first} ${rest.length === 1 ? 'and' : 'to'} ${to}`;
		const from = i > 0 && groups.length === 2 ? 'another' : ORDINALS[i];
		return `${i > 0 && i === last ? 'and ' : ''}${bars} from ${from}`;
	});
	return { parts: parts.join(', '), more: MORE[last] ?? '' };
}

describe('what a lesson’s task says beside its goals', () => {
	it('asks for one thing, on one rig, where no word is filled from its goals', () => {
		for (const lesson of lessons) {
			const goalOf = new Map<string, string>();
			for (const { goal, ...said } of casesOf(lesson)) {
				const asked = JSON.stringify(goal);
				// what stands in braces is filled from the goals themselves
				if (said.says.includes('{')) continue;
				const key = JSON.stringify(said);
				expect([lesson.id, said.says, goalOf.get(key) ?? asked]).toEqual([lesson.id, said.says, asked]);
				goalOf.set(key, asked);
			}
		}
	});

	it('of circuits is who is fed from where, as the goals have it', () => {
		const cases = called('circuits-and-distribution');
		expect(cases.length).toBeGreaterThan(10);
		for (const { says, goal } of cases) {
			const { parts, more } = feedsSaid(goal);
			expect(says).toContain(`given you ${more},`);
			expect(says).toContain(`Feed ${parts}.`);
		}
	});

	it('of lost data asks for what the goals have, and of all four alike', () => {
		const SAID = { hold: 'none of them should notice', dark: 'you want to see it at once, and no light should move' };
		const cases = called('when-data-goes');
		expect(cases.length).toBeGreaterThan(10);
		for (const { says, goal } of cases) {
			const values = new Set(goal.map((each) => each.is === 'setting' && each.key === 'loss' && each.value));
			expect(values.size).toBe(1);
			const [value] = values as Set<keyof typeof SAID>;
			expect(says).toContain(SAID[value as keyof typeof SAID]);
			expect(says).toMatch(/Set all four alike/);
		}
	});
});
