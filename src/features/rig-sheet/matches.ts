import type { MvrPicks } from '../../../shared/mvr/index.ts';
import { FIELDS, type Field, plainText } from '../../../shared/plan/index.ts';
import { type BrowserStore, KEPT, moveAside, putText, readRecord, textAt } from '../../storage/index.ts';

const { matches } = KEPT;

/** Most picks of each kind that are kept: the latest stay. */
const MOST = 200;

/** Most lists whose columns are kept, columns of one, and characters of its headings. */
const MOST_LISTS = 50;
const MOST_COLUMNS = 40;
const MOST_CHARACTERS = 400;

/** What each column of a list holds; null for one that is left out. */
type Columns = readonly (Field | null)[];

/** All that is kept; what is damaged counts as nothing. */
function kept(store: BrowserStore): MvrPicks & { readonly columns: Readonly<Record<string, string>> } {
	const text = textAt(store, matches.key);
	const found = text === null ? null : readRecord(text, matches);
	const record = found?.is === 'record' ? found.record : {};
	return { types: textsIn(record['types']), modes: textsIn(record['modes']), columns: textsIn(record['columns']) };
}

/** What was picked for fixtures and modes of earlier rig files. */
export function keptMatches(store: BrowserStore): MvrPicks {
	const { types, modes } = kept(store);
	return { types, modes };
}

/** Headings as one text, by which a list like an earlier one is known; null for what is none or too long to keep. */
function headingsOf(headings: readonly string[]): string | null {
	const text = headings.map(plainText).join('\t');
	const isKept = text.trim() !== '' && text.length <= MOST_CHARACTERS && headings.length <= MOST_COLUMNS;
	return isKept ? text : null;
}

/** What the person said the columns of a list with these headings hold; null where nobody has. */
export function keptColumns(store: BrowserStore, headings: readonly string[]): Columns | null {
	const text = headingsOf(headings);
	const { columns } = kept(store);
	const found = text !== null && Object.hasOwn(columns, text) ? columns[text]?.split(',') : undefined;
	if (found?.length !== headings.length) return null;
	// each field stands in one column
	const fields = found.map((each) => FIELDS.find((field) => field === each) ?? null);
	return fields.map((field, i) => (fields.indexOf(field) === i ? field : null));
}

/** Keeps what the columns of a list hold, as the latest. What is damaged is set aside first. @param now ms since 1970 */
export function keepColumns(store: BrowserStore, headings: readonly string[], fields: Columns, now: number): void {
	const text = headingsOf(headings);
	if (text === null) return;
	const { columns, ...picks } = kept(store);
	const others = Object.entries(columns).filter(([each]) => each !== text);
	const said = fields.map((field) => field ?? '').join(',');
	write(store, { ...picks, columns: Object.fromEntries([...others, [text, said]].slice(-MOST_LISTS)) }, now);
}

const textsIn = (value: unknown): Record<string, string> =>
	Object.fromEntries(
		Object.entries(value ?? {}).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
	);

/**
 * Keeps picks beside earlier ones. What fixtures without a kind are is another thing in each file, and is not kept. What is damaged
 * is set aside first.
 * @param now ms since 1970
 */
export function keepMatches(store: BrowserStore, { types, modes }: MvrPicks, now: number): void {
	const latest = (all: Readonly<Record<string, string>>): Record<string, string> =>
		Object.fromEntries(
			Object.entries(all)
				.filter(([found, pick]) => found !== '' && pick !== '')
				.slice(-MOST),
		);
	write(store, { types: latest(types), modes: latest(modes), columns: kept(store).columns }, now);
}

function write(store: BrowserStore, record: ReturnType<typeof kept>, now: number): void {
	const text = textAt(store, matches.key);
	const there = text === null ? null : readRecord(text, matches).is;
	// a newer version's stay, and what can't be moved out of the way
	if (there === 'newer') return;
	if (text !== null && there === 'damaged' && !moveAside(store, { place: matches.key, text, why: 'damaged', now }))
		return;
	putText(store, matches.key, JSON.stringify({ version: matches.version, ...record }));
}
