/** What papers do in the worker: setting, marking, reading what came in, and looking for codes in pictures. */

import * as v from 'valibot';
import { topicNames } from '#words/papers/index.ts';
import { type ErrorFacts, fetched, InputError } from '../../../shared/error/index.ts';
import {
	groundOf,
	isOfAll,
	kindsFor,
	type Paper,
	RIG_KIND_IDS,
	readAnswers,
	readRecipe,
	TOPIC_IDS,
} from '../../../shared/paper/index.ts';
import { readShape } from '../../../shared/profile/index.ts';
import { loadSheet, type RigSheet } from '../../../shared/sheet/index.ts';
import { KEPT, MOST_READ, readJson } from '../../storage/index.ts';
import { kindName } from '../../wording/index.ts';
import { holdsRig, MOST, readBenchSheet } from '../rig/index.ts';
import { fileNameOf, markAny, rigSources, setAny } from './engine.ts';
import { paperFile, paperFragment, readHandedIn, resultFile, resultFragment } from './exchange/index.ts';
import type { PictureLook } from './exchange/qrLook.ts';
import type { Sitting } from './learner/sitting.ts';
import type { PaperRef, PapersWork, WaysToHand } from './protocol.ts';
import { showKeys, showMark, showMarks, showPaper } from './shown.ts';
import type { TrainerWork } from './trainer/work.ts';

/** Bytes of one QR code at the least correction: what a link that still fits has, since it is plain ASCII. */
const MOST_QR = 2953;

const setOf = async ({ recipe, seed }: PaperRef): Promise<Paper> => setAny(recipe, seed);

/** Fetched with the first thing that only a trainer asks: a learner's phone need not carry it. */
const trainers =
	<N extends keyof TrainerWork>(name: N) =>
	async (asks: Parameters<TrainerWork[N]>[0]): Promise<Awaited<ReturnType<TrainerWork[N]>>> => {
		const { trainerWork } = await import('./trainer/work.ts');
		const act = trainerWork[name] as (asks: unknown) => Promise<Awaited<ReturnType<TrainerWork[N]>>>;
		return act(asks);
	};

/** Everything the pages can ask, done with no page at hand: the same under test as in the worker. */
export const papersWork: PapersWork = {
	readText: trainers('readText'),
	takeIn: trainers('takeIn'),
	hold: trainers('hold'),
	classOf: trainers('classOf'),
	keepPaper: trainers('keepPaper'),
	keptPaper: trainers('keptPaper'),
	rename: trainers('rename'),
	count: trainers('count'),
	removeResult: trainers('removeResult'),
	removePaper: trainers('removePaper'),
	removeAll: trainers('removeAll'),
	exportAll: trainers('exportAll'),
	exportClass: trainers('exportClass'),
	async offer({ recipe: input }) {
		const recipe = readRecipe(input);
		const all = kindsFor(groundOf(recipe), await rigSources());
		const about = new Set(all.map(({ topic }) => topic));
		return {
			topics: TOPIC_IDS.map((id) => ({ id, name: topicNames[id], fits: about.has(id) })),
			kinds: all
				.filter(({ topic }) => recipe.topics.length === 0 || recipe.topics.includes(topic))
				.map(({ id, topic }) => ({
					id,
					topic,
					name: kindName(id),
					rig: (RIG_KIND_IDS as readonly string[]).includes(id),
					ofAll: isOfAll(id, recipe.version),
				})),
		};
	},
	async pasted({ text }) {
		const sheet = await readPasted(text.trim());
		return { sheet, name: sheet.name, fixtures: sheet.fixtures.length };
	},
	async set({ recipe: input, seed }) {
		const recipe = readRecipe(input);
		return { recipe, seed, view: showPaper(await setAny(recipe, seed)) };
	},
	paper: async ({ recipe, seed }) => setAny(recipe, seed),
	keys: async (ref) => showKeys(await setOf(ref)),
	async open({ text }) {
		const found = await readHandedIn(text, setAny);
		const slip = found.find((each) => each.is === 'paper');
		if (slip) {
			const { recipe, seed } = slip;
			return { recipe, seed, view: showPaper(await setAny(recipe, seed)) };
		}
		const refused = found.find((each) => each.is === 'refused');
		throw refused ? refused.error : new InputError('papers.not-paper', '', { trouble: 'a-result' });
	},
	async handPaper({ recipe, seed, page }) {
		return handing(page + (await paperFragment({ recipe, seed })), recipe.title, paperFile({ recipe, seed }));
	},
	async mark({ answers, ...ref }) {
		const paper = await setOf(ref);
		return showMarks(paper, await markAny(paper, answers), answers);
	},
	async markOne({ answers, item: id, ...ref }) {
		const paper = await setOf(ref);
		const item = paper.items.find((each) => each.id === id);
		const answer = answers[id];
		const mark = await markAny(paper, answer ? { [id]: answer } : {});
		const one = mark.items.find((each) => each.item === id);
		if (!item || !one) throw new InputError('papers.no-item', id, { trouble: 'no-such-question' });
		return showMark(item, one, answers);
	},
	sitting: ({ text }) => readSitting(text),
	async handResult({ sitting, page, ...ref }) {
		const paper = await setOf(ref);
		const { score } = await markAny(paper, sitting.answers);
		const { name, answers, attempt, started, ended } = sitting;
		const result = {
			...ref,
			version: 1 as const,
			paper: paper.mark,
			name,
			answers,
			claimed: score,
			started,
			ended,
			attempt,
		};
		return handing(
			page + (await resultFragment(result, paper)),
			[paper.recipe.title, name].filter(Boolean).join(' '),
			resultFile(result),
		);
	},
};

const handing = (link: string, title: string, fileText: string): WaysToHand => ({
	link,
	fileName: fileNameOf(title),
	fileText,
	fitsQr: link.length <= MOST_QR,
});

/** @throws InputError `papers.sheet`, and what `loadSheet` and `readBenchSheet` throw */
async function readPasted(text: string): ReturnType<typeof readOwn> {
	const wrong = (trouble: ErrorFacts['papers.sheet']['trouble']) => new InputError('papers.sheet', 'rig', { trouble });
	if (text === '') throw wrong('empty');
	if (text.length > MOST_READ.sheet) throw wrong('too-long');
	return readOwn(text, wrong);
}

async function readOwn(text: string, wrong: (trouble: ErrorFacts['papers.sheet']['trouble']) => InputError) {
	const fragment = text.slice(Math.max(0, text.indexOf('#')));
	if (holdsRig(fragment)) return held(await readBenchSheet(fragment));
	const read = readJson(text);
	if (typeof read === 'string') throw wrong(read === 'damaged' ? 'damaged' : 'too-long');
	const found = read.value;
	const count = (found as { fixtures?: { length?: unknown } } | null)?.fixtures?.length;
	// counted first: thousands would take long only to be refused
	if (typeof count === 'number' && count > MOST.fixtures) throw wrong('too-long');
	return held(await loadSheet(found));

	function held(sheet: RigSheet) {
		if (sheet.fixtures.length === 0) throw wrong('no-fixtures');
		return sheet;
	}
}

export const routes = {
	...papersWork,
	/** The text of the QR code in a picture; null where none is found. What reads codes is fetched with the first picture. */
	code: async (look: PictureLook): Promise<string | null> =>
		(await fetched(import('./exchange/qrLook.ts'))).qrInLook(look),
};

const ids = v.pipe(v.array(v.pipe(v.string(), v.maxLength(80))), v.maxLength(100));
const time = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

const sittingSchema = v.strictObject({
	version: v.literal(1),
	paper: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/)),
	attempt: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/)),
	started: time,
	ended: v.nullable(time),
	at: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(99)),
	answers: v.unknown(),
	flagged: ids,
	told: ids,
	name: v.pipe(v.string(), v.maxLength(80)),
});

/** A sitting as it was kept, from text. @throws InputError `sitting.damaged`, and what `readAnswers` throws */
export function readSitting(text: string): Sitting {
	const found = readJson(text, KEPT.sitting.bounds);
	if (typeof found === 'string') throw new InputError('sitting.damaged', '', { trouble: 'damaged' });
	const shape = readShape(sittingSchema, found.value, 'sitting.damaged');
	return { ...shape, answers: readAnswers(shape.answers) };
}
