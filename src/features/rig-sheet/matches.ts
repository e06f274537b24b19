import type { MvrPicks } from '../../../shared/mvr/index.ts';
import { type BrowserStore, KEPT, moveAside, putText, readRecord, textAt } from '../../storage/index.ts';

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

/**
 * Keeps picks beside earlier ones. What fixtures without a kind are is another thing in each file, and is not kept. What is damaged
 * is set aside first.
 * @param now ms since 1970
 */
export function keepMatches(store: BrowserStore, { types, modes }: MvrPicks, now: number): void {
	const text = textAt(store, matches.key);
	const there = text === null ? null : readRecord(text, matches).is;
	// a newer version's stay, and what can't be moved out of the way
	if (there === 'newer') return;
	if (text !== null && there === 'damaged' && !moveAside(store, { place: matches.key, text, why: 'damaged', now }))
		return;
	const latest = (all: Readonly<Record<string, string>>): Record<string, string> =>
		Object.fromEntries(
			Object.entries(all)
				.filter(([found, pick]) => found !== '' && pick !== '')
				.slice(-MOST),
		);
	const { version } = matches;
	putText(store, matches.key, JSON.stringify({ version, types: latest(types), modes: latest(modes) }));
}
