import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { segments } from '../../../sim/line/index.ts';
import { runs } from '../../runs.ts';
import { anyWiring } from './arbitrary.ts';
import { cable, chain, desk, leader, receiver, splitter, wiring, withCables } from './build.ts';

describe('segments', () => {
	test('a chain: all of it, outwards from the desk', () => {
		expect(segments(chain(3))).toEqual([
			{
				id: 'desk:a',
				ports: ['desk:a', 'w1:in', 'w1:out', 'w2:in', 'w2:out', 'w3:in'],
				cables: ['c1', 'c2', 'c3'],
				talkers: [desk()],
				drives: ['desk:a'],
				receivers: ['w1', 'w2', 'w3'],
				feeds: [],
				metres: 15,
				unitLoads: 3,
				terminators: ['w3:out'],
				farEnds: ['w3:out'],
			},
		]);
	});

	test('what is broken inside a cable or socket does not part them; an unplugged end does', () => {
		const broken = withCables(chain(3, { receivers: (k) => (k === 3 ? { badSocket: 'in' } : {}) }), {
			c2: { minus: 'open', plus: 'open', common: 'open' },
		});
		expect(segments(broken).map((one) => one.receivers)).toEqual([['w1', 'w2', 'w3']]);
		const pulled = segments(withCables(chain(3), { c2: { to: null } }));
		expect(pulled.map((one) => [one.id, one.cables, one.farEnds])).toEqual([
			['desk:a', ['c1', 'c2'], ['w1:out']],
			['w2:out', ['c3'], ['w2:in', 'w3:out']],
		]);
	});

	test('a splitter parts them: its input ends one line, each output heads another', () => {
		const line = wiring({
			receivers: [receiver('w1'), receiver('w2')],
			talkers: [desk(), leader('w2')],
			boxes: [splitter('s', 2, false)],
			cables: [cable('c1', 'desk:a', 's:in'), cable('c2', 's:1', 'w1:in'), cable('c3', 'w2:in', 's:2')],
		});
		expect(
			segments(line).map(({ id, drives, talkers, feeds, unitLoads, farEnds }) => ({
				id,
				drives,
				talkers,
				feeds,
				unitLoads,
				farEnds,
			})),
		).toEqual([
			{ id: 'desk:a', drives: ['desk:a'], talkers: [desk()], feeds: ['s'], unitLoads: 1, farEnds: ['s:in'] },
			{ id: 's:1', drives: ['s:1'], talkers: [], feeds: [], unitLoads: 1, farEnds: ['w1:out'] },
			{ id: 's:2', drives: ['s:2', 'w2:out'], talkers: [leader('w2')], feeds: [], unitLoads: 1, farEnds: [] },
		]);
	});

	test('share out every cable and every plugged fixture, each once', () => {
		fc.assert(
			fc.property(anyWiring, (wiring) => {
				const all = segments(wiring);
				const plugged = wiring.cables.filter((one) => one.from !== null || one.to !== null);
				expect(all.flatMap((one) => one.cables).sort()).toEqual(plugged.map((one) => one.id).sort());
				const used = new Set(plugged.flatMap((one) => [one.from, one.to]));
				const fixtures = wiring.receivers.filter(
					({ fixture }) => used.has(`${fixture}:in`) || used.has(`${fixture}:out`),
				);
				expect(all.flatMap((one) => one.receivers).sort()).toEqual(fixtures.map((one) => one.fixture).sort());
				expect(all.flatMap((one) => one.ports).sort()).toEqual([...used].filter((port) => port !== null).sort());
				expect(all.map((one) => one.id)).toEqual([...new Set(all.map((one) => one.id))].sort());
			}),
			{ numRuns: runs(300, 5000) },
		);
	});
});
