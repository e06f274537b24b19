import { locale } from '#words/locale/index.ts';
import { exportWords } from '#words/papers/index.ts';
import type { Answer, AnswerKey, Item, ItemMark, Paper } from '../../../../shared/paper/index.ts';
import { kindName } from '../../../wording/index.ts';
import { askedLines, switchId, type WordedChoice, wordedOptions, wordedSwitches } from './asked.ts';
import type { ClassRow, ClassTable } from './sort.ts';

/**
 * Whose accounts the names are, where the trainer says nothing else. It leads nowhere (RFC 2606: `.invalid` never does): nobody's
 * mail address is made up.
 */
const HOME_PAGE = 'https://prep-bay.invalid/crew';
const ACTIVITIES = 'https://prep-bay.invalid/papers';
const VERBS = 'http://adlnet.gov/expapi/verbs';
const TYPES = 'http://adlnet.gov/expapi/activities';

type Json = { readonly [key: string]: unknown };

/**
 * A class table as xAPI statements (IEEE 9274.1.1), for a record store of the trainer's own: for each attempt one `answered` for
 * each question that was, one `scored` for each that was not, and one `passed` or `failed` (`completed` where the paper asks for
 * no share to pass). The same attempt always gives the same statements, ids and all. Nothing is sent.
 *
 * The published vocabulary (adlnet.gov/expapi, read) has no verb for leaving a question open. Its `answered` and `responded` would
 * say that something was replied, `attempted` and `experienced` that it was gone to, which nobody knows; `scored`, 0 of 1 and
 * not completed, with no response, says what is so.
 * @param homePage an address of the trainer's own, under which names are accounts
 */
export function statementsOf({ paper, rows }: ClassTable, homePage = HOME_PAGE): readonly Json[] {
	const asked = paper.items.map(activityOf);
	return rows.flatMap((row) => [
		...row.mark.items.flatMap((mark, i): Json | readonly Json[] => {
			const item = paper.items[i];
			const answer = item && row.taken.result.answers[item.id];
			if (!item) return [];
			return answer && mark.answered
				? answeredBy(row, paper, homePage, { item, answer, mark, object: asked[i] })
				: leftOpenBy(row, paper, homePage, { item, object: asked[i] });
		}),
		satBy(row, paper, homePage),
	]);
}

/** The statements as a file: a list, as a record store takes it. */
export const xapiFile = (table: ClassTable, homePage = HOME_PAGE): string =>
	`${JSON.stringify(statementsOf(table, homePage))}\n`;

function answeredBy(
	row: ClassRow,
	paper: Paper,
	homePage: string,
	of: { readonly item: Item; readonly answer: Answer; readonly mark: ItemMark; readonly object: Json | undefined },
): Json {
	const { item, answer, mark, object } = of;
	const { attempt } = row.taken.result;
	return {
		...statement(row, homePage, `answered ${attempt} ${item.id}`, 'answered'),
		object,
		result: {
			score: { scaled: mark.share, raw: mark.share, min: 0, max: 1 },
			success: mark.right,
			completion: true,
			response: responseOf(answer, mark),
		},
		context: withinPaper(attempt, paper),
	};
}

function leftOpenBy(
	row: ClassRow,
	paper: Paper,
	homePage: string,
	{ item, object }: { readonly item: Item; readonly object: Json | undefined },
): Json {
	const { attempt } = row.taken.result;
	return {
		...statement(row, homePage, `left open ${attempt} ${item.id}`, 'scored'),
		object,
		result: { score: { scaled: 0, raw: 0, min: 0, max: 1 }, success: false, completion: false },
		context: withinPaper(attempt, paper),
	};
}

function satBy(row: ClassRow, paper: Paper, homePage: string): Json {
	const { score, of, percent, passed } = row.mark;
	const { attempt } = row.taken.result;
	const { title, pass } = paper.recipe;
	const verb = pass === 0 ? 'completed' : passed ? 'passed' : 'failed';
	return {
		...statement(row, homePage, `sat ${attempt}`, verb),
		object: {
			objectType: 'Activity',
			id: paperIri(paper),
			definition: { type: `${TYPES}/assessment`, name: { [locale.tag]: title } },
		},
		result: {
			score: { scaled: of === 0 ? 0 : score / of, raw: score, min: 0, max: of },
			...(pass === 0 ? {} : { success: passed }),
			completion: true,
			response: `${percent} %`,
			...(row.milliseconds === null ? {} : { duration: `PT${(row.milliseconds / 1000).toFixed(2)}S` }),
		},
		context: contextOf(attempt),
	};
}

function statement({ name, taken }: ClassRow, homePage: string, id: string, verb: string): Json {
	const { attempt, ended } = taken.result;
	return {
		id: uuidOf(id),
		actor: {
			objectType: 'Agent',
			...(name === '' ? {} : { name }),
			account: { homePage, name: name === '' ? attempt : name },
		},
		verb: { id: `${VERBS}/${verb}`, display: { [locale.tag]: verb } },
		...(ended === null ? {} : { timestamp: new Date(ended).toISOString() }),
	};
}

const contextOf = (attempt: string): Json => ({
	registration: uuidOf(`attempt ${attempt}`),
	platform: exportWords.platform,
	language: locale.tag,
});

const withinPaper = (attempt: string, paper: Paper): Json => ({
	...contextOf(attempt),
	contextActivities: { parent: [{ objectType: 'Activity', id: paperIri(paper) }] },
});

const paperIri = ({ mark }: Paper): string => `${ACTIVITIES}/${mark}`;

function activityOf(item: Item): Json {
	const { ask, key } = item;
	return {
		objectType: 'Activity',
		id: `${ACTIVITIES}/questions/${item.id}`,
		definition: {
			type: `${TYPES}/cmi.interaction`,
			name: { [locale.tag]: kindName(item.kind) },
			description: { [locale.tag]: askedLines(item).join('\n') },
			...interactionOf(item),
			...(ask.form === 'practical' ? {} : { correctResponsesPattern: patternsOf(item, key) }),
		},
	};
}

function interactionOf(item: Item): Json {
	const { ask } = item;
	switch (ask.form) {
		case 'one':
		case 'several':
			return { interactionType: 'choice', choices: components(wordedOptions(item, ask.options)) };
		case 'switches':
			return { interactionType: 'choice', choices: components(wordedSwitches(ask)) };
		case 'order':
			return { interactionType: 'sequencing', choices: components(wordedOptions(item, ask.options)) };
		case 'match':
			return {
				interactionType: 'matching',
				source: components(wordedOptions(item, ask.left)),
				target: components(wordedOptions(item, ask.right)),
			};
		case 'number':
			return { interactionType: 'numeric' };
		default:
			return { interactionType: 'other' };
	}
}

const components = (worded: readonly WordedChoice[]): readonly Json[] =>
	worded.map(({ id, text }) => ({ id, description: { [locale.tag]: text } }));

/** How a response is written (IEEE 9274.1.1, response patterns): `[,]` between things, `[.]` within a pair, `[:]` within a range. */
function patternsOf(item: Item, key: AnswerKey): readonly string[] {
	if (key.form === 'number') return key.within.map(({ from, to }) => (from === to ? String(from) : `${from}[:]${to}`));
	return key.form === 'practical' ? [] : [listed(key.form === 'one' ? [key.right] : idsOf(key, item))];
}

function idsOf(key: Exclude<AnswerKey, { form: 'one' | 'number' | 'practical' }>, item: Item): readonly string[] {
	if (key.form === 'switches') return key.up.map(switchId);
	if (key.form === 'match')
		return item.ask.form === 'match' ? item.ask.left.map(({ id }) => `${id}[.]${key.right[id]}`) : [];
	return key.right;
}

function responseOf(answer: Answer, mark: ItemMark): string {
	switch (answer.form) {
		case 'one':
			return answer.chose;
		case 'several':
			return listed([...answer.chose].sort());
		case 'order':
			return listed(answer.order);
		case 'switches':
			return listed([...answer.up].sort((a, b) => a - b).map(switchId));
		case 'match':
			return listed(Object.entries(answer.pairs).map(([from, to]) => `${from}[.]${to}`));
		case 'number':
			return String(answer.value);
		default:
			return mark.right ? 'done' : 'not done';
	}
}

const listed = (ids: readonly string[]): string => ids.join('[,]');

/** The namespace of our own ids: drawn once by chance, and never changed. */
const OURS = '18387bce-e796-4837-a710-896e6ec99d53';

/** A UUID, version 5 (RFC 9562): the same name always gives the same, so that a record store knows a statement sent twice. */
export function uuidOf(name: string, namespace = OURS): string {
	const space = Uint8Array.from(namespace.replaceAll('-', '').match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
	const bytes = sha1(Uint8Array.of(...space, ...new TextEncoder().encode(name))).slice(0, 16);
	bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
	bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
	const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
	return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

const left = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/**
 * SHA-1 (RFC 3174), 20 bytes. Our own, since a browser has it only on a secure page, and a hall's own server may be none. It keeps
 * no secret here.
 */
export function sha1(message: Uint8Array): Uint8Array {
	const blocks = ((message.length + 8) >> 6) + 1;
	const padded = new DataView(new ArrayBuffer(blocks * 64));
	for (const [at, byte] of message.entries()) padded.setUint8(at, byte);
	padded.setUint8(message.length, 0x80);
	padded.setUint32(blocks * 64 - 4, message.length * 8);
	const hash = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0];
	const words = new Int32Array(80);
	for (let block = 0; block < blocks; block++) {
		for (let t = 0; t < 80; t++) {
			const at = (back: number): number => words[t - back] ?? 0;
			words[t] = t < 16 ? padded.getInt32(block * 64 + t * 4) : left(at(3) ^ at(8) ^ at(14) ^ at(16), 1);
		}
		let [a = 0, b = 0, c = 0, d = 0, e = 0] = hash;
		for (let t = 0; t < 80; t++) {
			const [mixed, constant] = round(t, b, c, d);
			const next = (left(a, 5) + mixed + e + (words[t] ?? 0) + constant) | 0;
			[e, d, c, b, a] = [d, c, left(b, 30), a, next];
		}
		[a, b, c, d, e].forEach((word, i) => {
			hash[i] = ((hash[i] ?? 0) + word) | 0;
		});
	}
	const out = new DataView(new ArrayBuffer(20));
	for (const [i, word] of hash.entries()) out.setInt32(i * 4, word);
	return new Uint8Array(out.buffer);
}

/** What a step mixes of three words, and its constant. */
function round(t: number, b: number, c: number, d: number): readonly [number, number] {
	if (t < 20) return [(b & c) | (~b & d), 0x5a827999];
	if (t < 40) return [b ^ c ^ d, 0x6ed9eba1];
	if (t < 60) return [(b & c) | (b & d) | (c & d), 0x8f1bbcdc];
	return [b ^ c ^ d, 0xca62c1d6];
}
