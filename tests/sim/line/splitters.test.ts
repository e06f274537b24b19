import { describe, expect, test } from 'vitest';
import { receptions, type Wiring } from '../../../sim/line/index.ts';
import { at, cable, desk, leader, names, qualities, receiver, road, splitter, wiring, withCables } from './build.ts';

/** Desk, w0, splitter `s`; a row of three on output 1 and one on output 2. */
function branched(change: Partial<Wiring> = {}): Wiring {
	return wiring({
		receivers: ['w0', 'w1', 'w2', 'w3', 'x1'].map((id) => receiver(id)),
		cables: [
			cable('feed', 'desk:a', 'w0:in'),
			cable('in', 'w0:out', 's:in'),
			cable('c1', 's:1', 'w1:in'),
			cable('c2', 'w1:out', 'w2:in'),
			cable('c3', 'w2:out', 'w3:in'),
			cable('d1', 's:2', 'x1:in'),
		],
		boxes: [splitter('s')],
		terminators: ['w3:out', 'x1:out'],
		...change,
	});
}

describe('a splitter', () => {
	test('passes frames on, and the path goes through it', () => {
		expect(qualities(branched())).toBe('ccccc');
		expect(at(branched(), 'w2').talker).toEqual(desk());
		expect(road(at(branched(), 'w2'))).toBe('desk feed w0 in s c1 w1 c2 w2');
	});

	test('without power passes nothing, and says whose frames it holds up', () => {
		const off = branched({ boxes: [splitter('s', 4, false)] });
		expect(qualities(off)).toBe('cnnnn');
		expect(at(off, 'w2')).toMatchObject({ talker: desk(), causes: [{ cause: 'splitter-off', splitter: 's' }] });
		expect(road(at(off, 'w2'))).toBe('desk feed w0 in s c1 w1 c2 w2');
	});

	test('with nothing at its input passes on why', () => {
		const cut = withCables(branched(), { in: { minus: 'open', plus: 'open' } });
		expect(qualities(cut)).toBe('cnnnn');
		expect(at(cut, 'x1')).toMatchObject({ talker: desk(), causes: [{ cause: 'pair-open', cables: ['in'] }] });
		const crossed = withCables(branched(), { in: { swapped: true } });
		expect(at(crossed, 'x1').causes).toEqual([{ cause: 'swapped', cables: ['in'] }]);
		expect(at(branched({ talkers: [] }), 'x1').causes).toEqual([{ cause: 'no-talker' }]);
		const unplugged = withCables(branched(), { in: { to: null } });
		expect(at(unplugged, 'x1').causes).toEqual([{ cause: 'no-cable' }]);
	});

	test('off, with a break before and a break after it: all three are named, in order', () => {
		const line = withCables(branched({ boxes: [splitter('s', 4, false)] }), {
			feed: { minus: 'open', plus: 'open' },
			c2: { minus: 'open', plus: 'open' },
		});
		expect(at(line, 'w3').causes).toEqual([
			{ cause: 'pair-open', cables: ['feed'] },
			{ cause: 'splitter-off', splitter: 's' },
			{ cause: 'pair-open', cables: ['c2'] },
		]);
	});

	test('sends spoiled frames on spoiled, and what its own line loses comes on top', () => {
		const line = withCables(branched(), { in: { plus: 'open' }, c3: { common: 'open' } });
		const before = at(line, 'w2');
		expect(before.causes).toEqual([{ cause: 'one-wire-open', wire: 'plus', cables: ['in'] }]);
		const after = at(line, 'w3');
		expect(names(after)).toEqual(['one-wire-open', 'common-open']);
		expect(after.rate).toBeCloseTo(1 - (1 - before.rate) * 0.7, 12);
	});

	test('starts a fresh line: swaps, length and loads before it are forgotten', () => {
		const many = Array.from({ length: 20 }, (_, i) => `p${i}`);
		const long = withCables(branched(), { in: { length: 200 }, c1: { length: 200 } });
		const row = {
			...long,
			receivers: [...long.receivers, ...many.map((id) => receiver(id))],
			cables: [
				...long.cables.filter((one) => one.id !== 'in'),
				...many.map((id, i) => cable(`p${i}`, i === 0 ? 'w0:out' : `p${i - 1}:out`, `${id}:in`, { length: 10 })),
				cable('in', 'p19:out', 's:in', { length: 10 }),
			],
		};
		expect(new Set([...receptions(row).values()].map((one) => one.quality))).toEqual(new Set(['clean']));
	});

	test('keeps each output’s harm to itself', () => {
		const line = withCables(branched(), { c2: { minus: 'open', plus: 'open' } });
		expect(qualities(line)).toBe('ccnnc');
		const led = branched({ talkers: [desk(), leader('x1')] });
		expect(qualities(led)).toBe('ccccm');
		expect(at(led, 'x1').causes).toEqual([
			{ cause: 'collision', talkers: [desk(), leader('x1')], sockets: ['s:2', 'x1:out'] },
		]);
	});

	test('whose input collides sends garbage on', () => {
		const line = branched({ talkers: [desk(), leader('w0')] });
		expect(qualities(line)).toBe('mmmmm');
		expect(at(line, 'w3')).toMatchObject({ rate: 1, talker: null });
		expect(names(at(line, 'w3'))).toEqual(['collision']);
		const third = branched({ talkers: [desk(), leader('w0'), leader('x1')] });
		expect(at(third, 'x1').causes).toEqual([
			{ cause: 'collision', talkers: [desk(), leader('w0'), leader('x1')], sockets: ['s:2', 'x1:out'] },
		]);
	});

	test('talks even into a line that nobody has plugged right: its output in its own input', () => {
		const line = branched();
		const looped = { ...line, cables: [...line.cables, cable('loop', 's:3', 'w0:out')] };
		expect(at(looped, 'w0')).toMatchObject({ quality: 'marginal', rate: 1, talker: null });
		expect(at(looped, 'w0').causes).toEqual([{ cause: 'collision', talkers: [desk()], sockets: ['desk:a', 's:3'] }]);
		expect(names(at(looped, 'x1'))).toEqual(['collision']);
	});

	test('two outputs joined drive against each other', () => {
		const line = branched();
		const joined = { ...line, cables: [...line.cables, cable('join', 'x1:out', 'w3:out')] };
		expect(at(joined, 'w1').causes).toEqual([{ cause: 'collision', talkers: [desk()], sockets: ['s:1', 's:2'] }]);
		expect(at(joined, 'w0').quality).toBe('clean');
	});

	test('behind another passes through both, asleep or awake', () => {
		const two = (on: boolean) =>
			branched({
				boxes: [splitter('t'), splitter('s', 4, on)],
				cables: [...branched().cables, cable('e1', 's:3', 't:in'), cable('e2', 't:1', 'y1:in')],
				receivers: [...branched().receivers, receiver('y1')],
			});
		expect(road(at(two(true), 'y1'))).toBe('desk feed w0 in s e1 t e2 y1');
		expect(at(two(true), 'y1').quality).toBe('clean');
		expect(at(two(false), 'y1').causes).toEqual([{ cause: 'splitter-off', splitter: 's' }]);
	});

	test('two that feed only each other stay silent', () => {
		const line = wiring({
			receivers: [receiver('w1')],
			talkers: [],
			boxes: [splitter('s'), splitter('t')],
			cables: [cable('c1', 's:1', 't:in'), cable('c2', 't:1', 's:in'), cable('c3', 't:2', 'w1:in')],
		});
		expect(at(line, 'w1')).toMatchObject({ quality: 'nothing', talker: null, causes: [{ cause: 'no-talker' }] });
	});

	test('input loads the line by one, and ends it', () => {
		const long = withCables(branched(), { feed: { length: 100 }, in: { length: 100 } });
		expect(at(long, 'w0').quality).toBe('clean');
		const heavy = branched({
			receivers: branched().receivers.map((one) => ({ ...one, unitLoads: one.fixture === 'w0' ? 31.5 : 1 })),
		});
		expect(at(heavy, 'w0').causes).toEqual([{ cause: 'too-many-loads', loads: 32.5 }]);
	});
});
