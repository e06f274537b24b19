import { expect, test } from 'vitest';
import type { Answers, PaperRecipeInput } from '../../../../shared/paper/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';
import { papersWork as work } from '../../../../src/features/papers/routes.ts';
import { linkOf } from '../../../../src/features/rig/index.ts';
import { saidBy, saidOf } from '../../../shared/thrown.ts';
import { rightAnswer } from './rightAnswer.ts';

const recipe: PaperRecipeInput = { version: 2, title: 'Wednesday', count: 60 };
const page = 'https://hall.example/papers/sit/';

/** Every text in a view, however deep. */
function textsIn(view: unknown): string[] {
	if (typeof view === 'string') return [view];
	return typeof view === 'object' && view !== null ? Object.values(view).flatMap(textsIn) : [];
}

test('a paper of every kind is asked, keyed and marked in words, with no hole left in any', async () => {
	const opened = await work.set({ recipe, seed: 1 });
	const { items } = await work.paper({ recipe, seed: 1 });
	const { questions } = opened.view;
	expect(questions).toHaveLength(60);
	expect(new Set(questions.map(({ kind }) => kind)).size).toBe(44); // all but the two of hexadecimal, which are asked for by name
	const keys = await work.keys(opened);
	const onBench = items.filter(({ ask }) => ask.form === 'practical');
	const answers: Answers = Object.fromEntries(
		items.filter((item) => !onBench.includes(item)).map((item) => [item.id, rightAnswer(item)]),
	);
	const marked = await work.mark({ ...opened, answers });
	expect(marked.score).toBe(60 - onBench.length);
	for (const text of [
		...textsIn(opened.view),
		...textsIn(keys),
		...textsIn(marked.items.map(({ bench: _, ...rest }) => rest)),
	])
		expect(text).not.toMatch(/undefined|\[object|\{\w+/);
	for (const question of questions) {
		expect(question.text.length).toBeGreaterThan(10);
		if ('options' in question.ask) {
			const texts = question.ask.options.map(({ text }) => text);
			expect(new Set(texts).size, question.text).toBe(texts.length);
		}
	}
	// what is asked does not tell what is right
	expect(questions.flatMap((question) => Object.keys(question))).not.toContain('key');
});

test('a known mistake is told as what it looks like; nothing answered is told as that', async () => {
	const ref = await work.set({
		recipe: { ...recipe, count: 12, kinds: ['percent-of-value', 'band-edge', 'dip-to-address'] },
		seed: 4,
	});
	for (const item of (await work.paper(ref)).items) {
		const [known] = item.mistakes;
		if (!known) throw new Error('no mistake known');
		const one = await work.markOne({ ...ref, answers: { [item.id]: known.answer }, item: item.id });
		expect(one).toMatchObject({ answered: true, right: false, item: item.id });
		expect(one.looksLike).toMatch(/^[A-Z].*\.$/s);
		expect(one.gave).not.toBe('');
		expect(await work.markOne({ ...ref, answers: {}, item: item.id })).toMatchObject({
			answered: false,
			gave: '',
			looksLike: null,
		});
	}
	await expect(work.markOne({ ...ref, answers: {}, item: 'band-edge-00000000' })).rejects.toMatchObject({
		code: 'papers.no-item',
	});
});

test('a paper goes out by link and file and comes in the same', async () => {
	const ref = await work.set({ recipe, seed: 9 });
	const { link, fileText, fileName, fitsQr } = await work.handPaper({ ...ref, page });
	expect(link.startsWith(`${page}#paper=`)).toBe(true);
	expect(fitsQr).toBe(true);
	expect(fileName).toBe('prep-bay-wednesday.json');
	for (const text of [link, link.slice(link.indexOf('#')), fileText]) expect(await work.open({ text })).toEqual(ref);
	for (const text of ['', 'milk', '{"prepBay":"paper"}', '#paper=1.xx'])
		expect(await saidOf(work.open({ text }))).toMatch(/^[A-Z].*\.$/s);
});

test('what fits is offered, and a rig is taken from a sheet or a link to a bench', async () => {
	const all = await work.offer({ recipe });
	expect(all.kinds).toHaveLength(46);
	expect(all.kinds.filter(({ ofAll }) => !ofAll).map(({ id }) => id)).toEqual(['hex-of-value', 'value-of-hex']);
	expect(all.topics.every(({ fits }) => fits)).toBe(true);
	const switches = await work.offer({ recipe: { ...recipe, topics: ['switches'] } });
	expect(switches.kinds.every(({ topic, ofAll }) => topic === 'switches' && ofAll)).toBe(true);
	const none = await work.offer({ recipe: { ...recipe, profiles: ['tallow-6'] } });
	expect(none.topics.find(({ id }) => id === 'switches')?.fits).toBe(false);

	const sheet = bundledRig('four-in-line');
	const from = { sheet, name: sheet.name, fixtures: 4 };
	expect(await work.pasted({ text: JSON.stringify(sheet) })).toEqual(from);
	expect(await work.pasted({ text: `https://hall.example/bench/${await linkOf({ sheet, log: [] })}` })).toEqual(from);
	// and of a bench what it has become, with nothing broken in it
	const log: RigEvent[] = [
		{ type: 'desk.master', level: 128 },
		{ type: 'cable.become', cable: 'cable-1', change: { minus: 'open' } },
	];
	const desk = sheet.desk && { ...sheet.desk, master: 128 };
	expect((await work.pasted({ text: await linkOf({ sheet, log }) })).sheet).toEqual({ ...sheet, desk });
	for (const text of ['', ' ', '{', '[]', JSON.stringify({ ...sheet, fixtures: [] }), '#rig=1.%'])
		expect(await saidOf(work.pasted({ text }))).toMatch(/^[A-Z].*\.$/s);
});

// each made a row of its own: the page stood still over 20,000 of them
test('a file of 20,000 bad records is told in a line, and read in the worker', async () => {
	const results = Array.from({ length: 20_000 }, (_, i) => ({ version: 1, result: { bad: i }, whole: true, kept: 1 }));
	const text = JSON.stringify({ prepBay: 'papers', version: 1, papers: [], results, names: [], counts: [] });
	const taken = await work.takeIn({ handed: await work.readText({ text, from: 'all.json' }) });
	expect(taken.refused).toMatchObject({
		count: 20_000,
		lines: [{ from: 'all.json, result 1', more: 19_999 }],
		left: 0,
	});
});

test('a sitting comes back as it was kept, or is called damaged', async () => {
	const kept = {
		version: 1,
		paper: '0123456789abcdef',
		attempt: 'fedcba9876543210',
		started: 5,
		ended: null,
		at: 3,
		answers: { 'band-edge-0a0b0c0d': { form: 'number', value: 3 } },
		flagged: ['band-edge-0a0b0c0d'],
		told: [],
		name: '',
	};
	expect(work.sitting({ text: JSON.stringify(kept) })).toEqual(kept);
	for (const wrong of [
		{ at: -1 },
		{ paper: 'x' },
		{ answers: [] },
		{ answers: { __proto__x: 1 } },
		{ version: 2 },
		{ more: 1 },
	])
		expect(() => work.sitting({ text: JSON.stringify({ ...kept, ...wrong }) })).toThrow();
	expect(saidBy(() => work.sitting({ text: '{' }))).toMatch(/damaged/);
});
