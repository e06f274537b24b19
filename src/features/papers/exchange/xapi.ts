import { locale } from '#words/locale/index.ts';
import { exportWords } from '#words/papers/index.ts';
import type { Answer, Item, ItemMark, Key, Paper } from '../../../../shared/paper/index.ts';
import { kindName } from '../../../wording/index.ts';
import { askedLines, switchId, type Worded, wordedOptions, wordedSwitches } from './asked.ts';
import type { ClassRow, ClassTable } from './sort.ts';
import { uuidOf } from './uuid.ts';

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

const components = (worded: readonly Worded[]): readonly Json[] =>
	worded.map(({ id, text }) => ({ id, description: { [locale.tag]: text } }));

/** How a response is written (IEEE 9274.1.1, response patterns): `[,]` between things, `[.]` within a pair, `[:]` within a range. */
function patternsOf(item: Item, key: Key): readonly string[] {
	if (key.form === 'number') return key.within.map(({ from, to }) => (from === to ? String(from) : `${from}[:]${to}`));
	return key.form === 'practical' ? [] : [listed(key.form === 'one' ? [key.right] : idsOf(key, item))];
}

function idsOf(key: Exclude<Key, { form: 'one' | 'number' | 'practical' }>, item: Item): readonly string[] {
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
