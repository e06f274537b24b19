import type { MvrPicks } from '../../../shared/mvr/index.ts';
import { type BrowserStore, KEPT, putText, readRecord, textAt } from '../../storage/index.ts';

const { matches } = KEPT;

/** Most picks of each kind that are kept: the latest stay. */
const MOST = 200;

/** What was picked for fixtures and modes of earlier rig files; what is damaged counts as nothing. */
export function keptMatches(store: BrowserStore): MvrPicks {
	const text = textAt(store, matches.key);
	const found = text === null ? null : readRecord(text, matches);
	if (found?.is !== 'record') return { types: {}, modes: {} };
	return { types: textsIn(found.record['types']), modes: textsIn(found.record['modes']) };
}

const textsIn = (value: unknown): Record<string, string> =>
	Object.fromEntries(
		Object.entries(value ?? {}).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
	);

/** Keeps picks beside earlier ones. What fixtures without a kind are is another thing in each file, and is not kept. */
export function keepMatches(store: BrowserStore, { types, modes }: MvrPicks): void {
	const text = textAt(store, matches.key);
	// a newer version's stay
	if (text !== null && readRecord(text, matches).is === 'newer') return;
	const latest = (all: Readonly<Record<string, string>>): Record<string, string> =>
		Object.fromEntries(
			Object.entries(all)
				.filter(([found, pick]) => found !== '' && pick !== '')
				.slice(-MOST),
		);
	const { version } = matches;
	putText(store, matches.key, JSON.stringify({ version, types: latest(types), modes: latest(modes) }));
}
