import * as v from 'valibot';
import { InputError } from '../../../shared/error/index.ts';
import { isRecord, KEPT, type ReadResult, readRecord } from '../../storage/index.ts';
import type { Card, Deck } from './deck.ts';

const time = v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(8.64e15));
const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const amount = (most: number) => v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(most));
const cardSchema = v.strictObject({
	due: time,
	stability: amount(1e5),
	difficulty: amount(10),
	state: v.picklist([0, 1, 2, 3]),
	step: count,
	days: amount(1e5),
	reps: count,
	lapses: count,
	last: v.nullable(time),
	added: time,
});
const SKILL = /^[a-z0-9-]{1,40}@[a-z][a-z0-9-]{0,39}\.[a-z]{1,12}$/;
/** Most cards: a file from elsewhere is not trusted with more. */
const MOST_CARDS = 5000;

/**
 * A deck as it is kept or exported, from text. Each card is read by itself: one that is damaged does not take the others along.
 * @throws InputError `review.damaged` where the whole cannot be read, `review.newer` where a newer version wrote it
 */
export function readDeck(text: string): ReadResult<Deck> {
	const cards = new Map<string, Card>();
	const damaged: [string, unknown][] = [];
	for (const [skill, found] of Object.entries(cardsOf(text))) {
		const read = v.safeParse(cardSchema, found);
		const fits = read.success && (read.output.state === 0) === (read.output.last === null);
		if (SKILL.test(skill) && cards.size < MOST_CARDS && fits) cards.set(skill, read.output);
		else damaged.push([skill, found]);
	}
	return { kept: cards, damaged: Object.fromEntries(damaged) };
}

function cardsOf(text: string): Readonly<Record<string, unknown>> {
	const found = readRecord(text, KEPT.review);
	if (found.is === 'newer') throw new InputError('review.newer', 'version', { trouble: 'newer' });
	const cards = found.is === 'record' ? found.record['cards'] : null;
	if (isRecord(cards)) return cards;
	throw new InputError('review.damaged', '', { trouble: 'damaged' });
}
