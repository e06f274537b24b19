import { describe, expect, it } from 'vitest';
import {
	type Item,
	KIND_TOPICS,
	MISTAKE_IDS,
	type MistakeId,
	type PaperLevel,
	PLAIN_KIND_IDS,
} from '../../../shared/paper/index.ts';
import { PLAIN_KINDS } from '../../../shared/paper/schedule.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { runs } from '../../runs.ts';
import { groundFor } from './grounds.ts';
import { wrongWith } from './holds.ts';
import { oracles } from './oracle.ts';

/** An item of a kind, on a ground of any sort that carries it. */
function itemsOf(kind: (typeof PLAIN_KINDS)[number], count: number) {
	let seed = 0;
	return Array.from({ length: count }, (_, i) => {
		let ground = groundFor(seed++);
		while (!kind.fits(ground)) ground = groundFor(seed++);
		const level = kind.levels[i % kind.levels.length] as PaperLevel;
		const draft = kind.make(ground, makeRandom(seed).fork(kind.id), level);
		const item: Item = { id: `${kind.id}-00000000`, kind: kind.id, topic: kind.topic, level, ...draft };
		return { item, ground };
	});
}

const found = new Set<MistakeId>();

describe('the plain kinds', () => {
	it('are all there, in order, each with an oracle', () => {
		expect(PLAIN_KINDS.map(({ id }) => id)).toEqual([...PLAIN_KIND_IDS]);
		expect(Object.keys(oracles).sort()).toEqual([...PLAIN_KIND_IDS].sort());
		for (const { id, topic } of PLAIN_KINDS) expect(topic).toBe(KIND_TOPICS[id]);
	});

	it.each(PLAIN_KINDS)('$id: right by a second way, and by no other answer; every mistake wrong', (kind) => {
		const items = itemsOf(kind, runs(120, 10_000));
		expect(
			items
				.flatMap(({ item, ground }, i) => wrongWith(item, ground, { forms: kind.forms, whole: i % 10 === 0, found }))
				.slice(0, 3),
		).toEqual([]);
	});

	it('between them, they come to every mistake but those read from a rig', () => {
		const ofRigs: MistakeId[] = [
			'other-role',
			'other-setting',
			'frame-slot-shifted',
			'function-slot-missed',
			'later-check',
			'caution-not-here',
			'gate-missed',
		];
		for (const id of MISTAKE_IDS) expect(found.has(id), id).toBe(!ofRigs.includes(id));
	});
});
