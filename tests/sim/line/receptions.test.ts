import { describe, expect, test } from 'vitest';
import { LINE_LIMITS, LINE_RATES, receptions } from '../../../sim/line/index.ts';
import {
	at,
	cable,
	chain,
	desk,
	leader,
	names,
	qualities,
	receiver,
	road,
	splitter,
	wiring,
	withCables,
} from './build.ts';

describe('a sound line', () => {
	test('reaches every receiver clean, by a path that can be walked', () => {
		const line = chain(4);
		expect(qualities(line)).toBe('cccc');
		expect(at(line, 'w3')).toEqual({
			fixture: 'w3',
			quality: 'clean',
			rate: 0,
			talker: desk(),
			path: [
				{ cable: null, device: 'desk' },
				{ cable: 'c1', device: 'w1' },
				{ cable: 'c2', device: 'w2' },
				{ cable: 'c3', device: 'w3' },
			],
			causes: [],
		});
	});

	test('works backwards too: in and out are the same two sockets', () => {
		const line = wiring({
			receivers: [receiver('w1'), receiver('w2')],
			cables: [cable('c1', 'w1:out', 'desk:a'), cable('c2', 'w2:out', 'w1:in')],
		});
		expect(qualities(line)).toBe('cc');
		expect(road(at(line, 'w2'))).toBe('desk c1 w1 c2 w2');
	});

	test('carries a leader to followers on both sides, and itself', () => {
		const line = { ...chain(3, { head: 'w0:out' }), talkers: [leader('w2')] };
		const row = { ...line, receivers: [receiver('w0'), ...line.receivers] };
		expect(qualities(row)).toBe('cccc');
		expect(road(at(row, 'w0'))).toBe('w2 c2 w1 c1 w0');
		expect(road(at(row, 'w2'))).toBe('w2');
		expect(at(row, 'w3').talker).toEqual(leader('w2'));
	});

	test('is in the order of the receivers given', () => {
		expect([...receptions(chain(3)).keys()]).toEqual(['w1', 'w2', 'w3']);
	});
});

describe('nothing comes', () => {
	test('without a cable, or with one that hangs loose', () => {
		const alone = wiring({ receivers: [receiver('w1'), receiver('w2')], cables: [cable('c1', null, 'w2:in')] });
		expect(at(alone, 'w1').causes).toEqual([{ cause: 'no-cable' }]);
		expect(at(alone, 'w2').causes).toEqual([{ cause: 'no-cable' }]);
		expect(at(alone, 'w2')).toMatchObject({ quality: 'nothing', rate: 1, talker: null, path: [] });
	});

	test('where nobody talks', () => {
		const line = { ...chain(2), talkers: [] };
		expect(at(line, 'w2')).toMatchObject({ quality: 'nothing', talker: null, causes: [{ cause: 'no-talker' }] });
	});

	test('past an unplugged end', () => {
		const line = withCables(chain(3), { c2: { to: null } });
		expect(qualities(line)).toBe('cnn');
		expect(at(line, 'w2').causes).toEqual([{ cause: 'no-talker' }]);
	});

	test('past a pair that is open, in one cable or one wire each in two', () => {
		expect(at(withCables(chain(3), { c2: { minus: 'open', plus: 'open' } }), 'w3')).toMatchObject({
			quality: 'nothing',
			talker: desk(),
			causes: [{ cause: 'pair-open', cables: ['c2'] }],
		});
		const two = withCables(chain(4), { c2: { minus: 'open' }, c3: { plus: 'open' } });
		expect(qualities(two)).toBe('cmnn');
		expect(at(two, 'w4').causes).toEqual([{ cause: 'pair-open', cables: ['c2', 'c3'] }]);
		expect(road(at(two, 'w4'))).toBe('desk c1 w1 c2 w2 c3 w3 c4 w4');
	});

	test('past a break, swaps are named too, unless they cancel', () => {
		const line = withCables(chain(4), {
			c1: { minus: 'open', plus: 'open' },
			c2: { swapped: true },
			c4: { swapped: true },
		});
		expect(names(at(line, 'w1'))).toEqual(['pair-open']);
		expect(at(line, 'w3').causes).toEqual([
			{ cause: 'pair-open', cables: ['c1'] },
			{ cause: 'swapped', cables: ['c2'] },
		]);
		expect(names(at(line, 'w4'))).toEqual(['pair-open']);
	});

	test('past a bad contact, what else is open on the way is named, each wire as it left the talker', () => {
		const bad = (changes: Parameters<typeof withCables>[1]) =>
			at(withCables(chain(3, { receivers: (k) => (k === 3 ? { badSocket: 'in' } : {}) }), changes), 'w3').causes;
		const contact = { cause: 'bad-socket', port: 'w3:in' };
		expect(bad({ c2: { minus: 'open' } })).toEqual([
			contact,
			{ cause: 'one-wire-open', wire: 'minus', cables: ['c2'] },
		]);
		expect(bad({ c1: { swapped: true }, c2: { minus: 'open', swapped: true } })).toEqual([
			contact,
			{ cause: 'one-wire-open', wire: 'plus', cables: ['c2'] },
		]);
		const round = { from: 'w2:in', to: 'w1:out', swapped: true } as const;
		expect(bad({ c1: { swapped: true }, c2: { ...round, plus: 'open' } })).toEqual([
			contact,
			{ cause: 'one-wire-open', wire: 'plus', cables: ['c2'] },
		]);
		expect(bad({ c1: { plus: 'open' }, c2: { minus: 'open' } })).toEqual([
			contact,
			{ cause: 'pair-open', cables: ['c1', 'c2'] },
		]);
	});

	test('past a bad contact: in the fixture itself too where it is on the near side', () => {
		const near = chain(3, { receivers: (k) => (k === 2 ? { badSocket: 'in' } : {}) });
		expect(qualities(near)).toBe('cnn');
		expect(at(near, 'w3').causes).toEqual([{ cause: 'bad-socket', port: 'w2:in' }]);
		expect(road(at(near, 'w3'))).toBe('desk c1 w1 c2 w2 c3 w3');
		const far = chain(3, { receivers: (k) => (k === 2 ? { badSocket: 'out' } : {}) });
		expect(qualities(far)).toBe('ccn');
	});

	test('a bad contact at a single fixture with one cable is not taken for a missing cable', () => {
		const line = chain(1, { receivers: () => ({ badSocket: 'in' }) });
		expect(names(at(line, 'w1'))).toEqual(['bad-socket']);
		expect(names(at({ ...line, talkers: [] }, 'w1'))).toEqual(['no-talker']);
		const loose = wiring({ receivers: [receiver('w1', { badSocket: 'in' })], cables: [cable('c1', null, 'w1:in')] });
		expect(names(at(loose, 'w1'))).toEqual(['no-cable']);
	});

	test('with the data wires swapped, until they are swapped back', () => {
		const line = withCables(chain(4), { c2: { swapped: true }, c4: { swapped: true } });
		expect(qualities(line)).toBe('cnnc');
		expect(at(line, 'w3').causes).toEqual([{ cause: 'swapped', cables: ['c2'] }]);
	});

	test('to a dead receiver, though its loop-through still passes', () => {
		const line = chain(3, { receivers: (k) => ({ dead: k === 2 }) });
		expect(qualities(line)).toBe('cnc');
		expect(at(line, 'w2')).toMatchObject({ rate: 1, talker: desk(), causes: [{ cause: 'receiver-dead' }] });
	});
});

describe('one wire open', () => {
	test('of the pair: what lies past it half works, and is worse with a terminator there', () => {
		const ended = withCables(chain(3), { c2: { plus: 'open' } });
		expect(qualities(ended)).toBe('cmm');
		expect(at(ended, 'w2').causes).toEqual([{ cause: 'one-wire-open', wire: 'plus', cables: ['c2'] }]);
		expect(at(ended, 'w2').rate).toBeCloseTo(LINE_RATES.oneWireTerminated, 12);
		expect(at({ ...ended, terminators: [] }, 'w2').rate).toBeCloseTo(LINE_RATES.oneWire, 12);
	});

	test('is named by the wire that left the talker, whichever way round the cable lies and whatever is swapped before it', () => {
		const swapped = withCables(chain(3), { c1: { swapped: true }, c2: { swapped: true, plus: 'open' } });
		expect(at(swapped, 'w3').causes).toEqual([{ cause: 'one-wire-open', wire: 'minus', cables: ['c2'] }]);
	});

	test('and swapped besides: nothing', () => {
		const line = withCables(chain(2), { c1: { minus: 'open' }, c2: { swapped: true } });
		expect(qualities(line)).toBe('mn');
		expect(names(at(line, 'w2'))).toEqual(['one-wire-open', 'swapped']);
	});

	test('common: harmless where both ends are earthed, else frames are lost', () => {
		const open = (earthed: boolean) =>
			chain(3, { cables: (k) => (k === 2 ? { common: 'open' } : {}), receivers: () => ({ earthed }) });
		expect(qualities(open(true))).toBe('ccc');
		expect(qualities(open(false))).toBe('cmm');
		expect(at(open(false), 'w3')).toMatchObject({
			rate: LINE_RATES.commonOpen,
			causes: [{ cause: 'common-open', cables: ['c2'] }],
		});
	});

	test('common: one earthed neighbour past the break brings it home for all there', () => {
		const line = chain(3, {
			cables: (k) => (k === 2 ? { common: 'open' } : {}),
			receivers: (k) => ({ earthed: k === 3 }),
		});
		expect(qualities(line)).toBe('ccc');
		expect(qualities({ ...line, talkers: [leader('w1')], cables: line.cables.slice(1) })).toBe('cmm');
	});
});

describe('two talkers', () => {
	test('on one line spoil it for everyone, near or far', () => {
		const line = { ...chain(3), talkers: [desk(), leader('w3')] };
		expect(qualities(line)).toBe('mmm');
		expect(at(line, 'w1')).toMatchObject({
			rate: 1,
			talker: null,
			causes: [{ cause: 'collision', talkers: [desk(), leader('w3')], sockets: ['desk:a', 'w3:out'] }],
		});
	});

	test('parted by a break are each heard on their own side', () => {
		const line = withCables({ ...chain(4), talkers: [desk(), leader('w4')] }, { c3: { minus: 'open', plus: 'open' } });
		expect(qualities(line)).toBe('cccc');
		expect(at(line, 'w2').talker).toEqual(desk());
		expect(at(line, 'w3').talker).toEqual(leader('w4'));
		expect(road(at(line, 'w3'))).toBe('w4 c4 w3');
	});

	test('parted in one wire only still collide', () => {
		const line = withCables({ ...chain(4), talkers: [desk(), leader('w4')] }, { c3: { minus: 'open' } });
		expect(qualities(line)).toBe('mmmm');
		expect(new Set([...receptions(line).values()].map((one) => one.talker))).toEqual(new Set([null]));
	});

	test('one heard by a wire, the other nearer but cut off: the way is from the one heard', () => {
		// At w2 the desk comes in by its plus wire and w4's leader, which is nearer, by its minus; only the plus goes on to w3.
		const row = chain(3, { cables: () => ({ minus: 'open' }) });
		const line = {
			...row,
			receivers: [...row.receivers, receiver('w4')],
			cables: [...row.cables, cable('c4', 'w4:in', 'w2:out', { plus: 'open' })],
			talkers: [desk(), leader('w4')],
		};
		expect(names(at(line, 'w2'))).toEqual(['collision']);
		expect(at(line, 'w3')).toMatchObject({ quality: 'marginal', talker: desk() });
		expect(at(line, 'w3').causes[0]).toEqual({ cause: 'one-wire-open', wire: 'minus', cables: ['c1', 'c2', 'c3'] });
		expect(road(at(line, 'w3'))).toBe('desk c1 w1 c2 w2 c3 w3');
	});

	test('one wire that comes the long way round: the way is the one it comes by', () => {
		// Symptom: a cause that names no cable ('swapped' in none). Cause: the way was walked by how many wires each cable has whole,
		// not by which, so it went over c4, past which nothing of what c1 carries goes on.
		const line = wiring({
			receivers: ['w1', 'w2', 'w3'].map((id) => receiver(id)),
			cables: [
				cable('c1', 'desk:a', 'w1:in', { plus: 'open' }),
				cable('c2', 'w1:in', 'w2:in', { plus: 'open', swapped: true }),
				cable('c3', 'w2:out', 'w3:in', { minus: 'open' }),
				cable('c4', 'w1:out', 'w3:out', { minus: 'open' }),
			],
		});
		expect(at(line, 'w3')).toMatchObject({ quality: 'nothing', talker: desk() });
		expect(at(line, 'w3').causes.slice(0, 2)).toEqual([
			{ cause: 'one-wire-open', wire: 'plus', cables: ['c1', 'c2', 'c3'] },
			{ cause: 'swapped', cables: ['c2'] },
		]);
		expect(road(at(line, 'w3'))).toBe('desk c1 w1 c2 w2 c3 w3');
	});

	test('and so through an output of a splitter that is off, with two plugs in it', () => {
		// The same as a free seed found it: all of c5's one whole wire is dead, and w6 hears c4's by way of w4, w2 and another desk output.
		const half = { kind: 'microphone', length: 1, common: 'open', minus: 'open' } as const;
		const line = wiring({
			receivers: ['w2', 'w4', 'w6'].map((id) => receiver(id, { dead: true })),
			cables: [
				cable('c0', 'w4:out', 's:1', { ...half, swapped: true }),
				cable('c1', 'desk:b', 'w2:in', half),
				cable('c2', 'w2:out', 'w6:out', half),
				cable('c3', 'desk:b', 'w4:in', half),
				cable('c4', 'desk:a', 's:1', { ...half, minus: 'sound', plus: 'open' }),
				cable('c5', 's:1', 'w6:in', half),
			],
			boxes: [splitter('s', 2, false)],
		});
		expect(at(line, 'w6').causes).toContainEqual({ cause: 'swapped', cables: ['c0'] });
		expect(road(at(line, 'w6'))).toBe('desk c4 s c0 w4 c3 desk c1 w2 c2 w6');
	});

	test('a desk output that is off is no talker', () => {
		const line = { ...chain(3), talkers: [leader('w1')] };
		expect(qualities(line)).toBe('ccc');
	});
});

describe('slow harms', () => {
	test('no terminator: nothing on a short line, frames lost on a long one, more the longer', () => {
		const open = (length: number) => ({ ...chain(4, { cables: () => ({ length }) }), terminators: [] });
		expect(qualities(open(5))).toBe('cccc');
		expect(qualities(open(40))).toBe('mmmm');
		expect(at(open(40), 'w1').causes).toEqual([{ cause: 'no-terminator', port: 'w4:out', metres: 160, plugged: [] }]);
		expect(at(open(60), 'w1').rate).toBeGreaterThan(at(open(40), 'w1').rate);
	});

	test('no terminator: many receivers on a short line count like metres', () => {
		const row = (count: number) => ({ ...chain(count, { cables: () => ({ length: 2 }) }), terminators: [] });
		expect(names(at(row(20), 'w1'))).toEqual([]);
		expect(names(at(row(30), 'w1'))).toEqual(['no-terminator']);
	});

	test('a terminator halfway leaves the run past it open', () => {
		const line = { ...chain(4, { cables: () => ({ length: 40 }) }), terminators: ['w1:in'] };
		expect(at(line, 'w2').causes).toEqual([{ cause: 'no-terminator', port: 'w4:out', metres: 120, plugged: [] }]);
	});

	test('a terminator in a bad socket does nothing', () => {
		const line = chain(4, {
			cables: () => ({ length: 40 }),
			receivers: (k) => (k === 4 ? { badSocket: 'out' } : {}),
		});
		expect(names(at(line, 'w1'))).toEqual(['no-terminator']);
	});

	test('a long cable hanging loose from the end is an open end', () => {
		const line = chain(2);
		const tail = { ...line, cables: [...line.cables, cable('tail', 'w2:out', null, { length: 100 })] };
		expect(at({ ...tail, terminators: [] }, 'w1').causes).toEqual([
			{ cause: 'no-terminator', port: 'w2:out', metres: 110, plugged: ['tail'] },
		]);
	});

	test('a leader in the middle needs both ends ended', () => {
		const line = {
			...chain(4, { head: 'w0:out', cables: () => ({ length: 40 }) }),
			talkers: [leader('w2')],
		};
		const row = { ...line, receivers: [receiver('w0'), ...line.receivers] };
		expect(at(row, 'w4').causes).toEqual([{ cause: 'no-terminator', port: 'w0:in', metres: 80, plugged: [] }]);
		expect(qualities({ ...row, terminators: ['w0:in', 'w4:out'] })).toBe('ccccc');
	});

	test('too long: only for those beyond, and worse the farther', () => {
		const line = chain(4, { cables: () => ({ length: 120 }) });
		expect(qualities(line)).toBe('ccmm');
		expect(at(line, 'w3').causes).toEqual([{ cause: 'too-long', metres: 360 }]);
		expect(at(line, 'w4').rate).toBeGreaterThan(at(line, 'w3').rate);
	});

	test('too many loads: for all', () => {
		const loads = (count: number) => chain(count, { cables: () => ({ length: 1 }) });
		expect(qualities(loads(32))).toBe('c'.repeat(32));
		expect(qualities(loads(33))).toBe('m'.repeat(33));
		expect(at(loads(40), 'w7').causes).toEqual([{ cause: 'too-many-loads', loads: 40 }]);
		expect(qualities(chain(200, { cables: () => ({ length: 1 }), receivers: () => ({ unitLoads: 1 / 8 }) }))).toBe(
			'c'.repeat(200),
		);
	});

	test('microphone cable: fine when short, frames lost past what it can bear', () => {
		const line = withCables(chain(4, { cables: () => ({ length: 20 }) }), {
			c1: { kind: 'microphone' },
			c3: { kind: 'microphone' },
		});
		expect(qualities(line)).toBe('ccmm');
		expect(at(line, 'w3').causes).toEqual([{ cause: 'microphone-cable', cables: ['c1', 'c3'], metres: 40 }]);
	});

	test('two plugs in one socket: for all', () => {
		const line = chain(2);
		const split = {
			...line,
			receivers: [...line.receivers, receiver('w9')],
			cables: [...line.cables, cable('branch', 'w1:out', 'w9:in')],
		};
		expect(qualities(split)).toBe('mmm');
		expect(at(split, 'w9').causes).toEqual([{ cause: 'split', port: 'w1:out' }]);
		expect(road(at(split, 'w9'))).toBe('desk c1 w1 branch w9');
	});

	test('a ring: for all, naming the cables it is made of', () => {
		const line = chain(4);
		const ring = { ...line, cables: [...line.cables, cable('back', 'w4:out', 'w2:out')] };
		expect(names(at(ring, 'w1'))).toEqual(['split', 'ring']);
		expect(at(ring, 'w1').causes[1]).toEqual({ cause: 'ring', cables: ['back', 'c3', 'c4'] });
	});

	test('a ring repairs a break: both sides still reach', () => {
		const leaders = {
			...chain(4, { head: 'w4:out' }),
			talkers: [leader('w1')],
			terminators: [],
		};
		expect(names(at(leaders, 'w3'))).toEqual(['ring']);
		const broken = withCables(leaders, { c3: { minus: 'open', plus: 'open' } });
		expect(qualities(broken)).toBe('cccc');
		expect(road(at(broken, 'w3'))).toBe('w1 c1 w4 c4 w3');
	});

	test('a ring crossed an odd number of times shorts the pair', () => {
		const ring = withCables(
			{ ...chain(3, { head: 'w3:out' }), talkers: [leader('w1')], terminators: [] },
			{ c2: { swapped: true } },
		);
		expect(qualities(ring)).toBe('nnn');
		expect(at(ring, 'w2').causes).toEqual([
			{ cause: 'swapped', cables: ['c2'] },
			{ cause: 'ring', cables: ['c1', 'c2', 'c3'] },
		]);
		// Crossed twice it is whole again, but for w2, which sits between the two.
		expect(qualities(withCables(ring, { c3: { swapped: true } }))).toBe('mnm');
	});

	test('a ring crossed at the talker silences what hangs off it by one wire too', () => {
		const ring = withCables({ ...chain(3, { head: 'w3:out' }), talkers: [leader('w1')] }, { c2: { swapped: true } });
		const line = {
			...ring,
			receivers: [...ring.receivers, receiver('x1')],
			cables: [...ring.cables, cable('off', 'w2:out', 'x1:in', { minus: 'open' })],
		};
		expect(at(line, 'x1').causes.slice(0, 1)).toEqual([{ cause: 'swapped', cables: ['c2'] }]);
		expect(at(line, 'x1').quality).toBe('nothing');
	});

	test('a ring crossed past a break in one wire shorts what came through', () => {
		const base = chain(4);
		const line = withCables(
			{ ...base, cables: [...base.cables, cable('back', 'w4:out', 'w2:out', { swapped: true })] },
			{ c2: { plus: 'open' } },
		);
		expect(qualities(line)).toBe('cnnn');
		expect(at(line, 'w4').causes).toEqual([
			{ cause: 'one-wire-open', wire: 'plus', cables: ['c2'] },
			{ cause: 'swapped', cables: ['back'] },
			{ cause: 'ring', cables: ['back', 'c3', 'c4'] },
		]);
	});

	test('a short made by two half cables names them', () => {
		// Symptom: a ring without cables. Cause: the short ran through a tap that has one end of the pair on it only.
		const line = wiring({
			receivers: [receiver('w1'), receiver('w2')],
			cables: [
				cable('c1', 'desk:a', 'w1:in', { minus: 'open' }),
				cable('c2', 'w1:out', 'w2:in', { minus: 'open' }),
				cable('c3', 'w2:out', 'w1:out', { minus: 'open', swapped: true }),
			],
		});
		expect(at(line, 'w1')).toMatchObject({ quality: 'nothing' });
		expect(at(line, 'w1').causes.slice(0, 3)).toEqual([
			{ cause: 'one-wire-open', wire: 'minus', cables: ['c1'] },
			{ cause: 'swapped', cables: ['c3'] },
			{ cause: 'ring', cables: ['c2', 'c3'] },
		]);
	});

	test('terminators past two: for all, the more the worse', () => {
		const line = chain(4);
		const ended = (count: number) => ({
			...line,
			terminators: ['desk:a', 'w4:out', 'w2:out', 'w3:out'].slice(0, count),
		});
		expect(qualities(ended(2))).toBe('cccc');
		expect(at(ended(3), 'w1').causes).toEqual([{ cause: 'extra-terminators', count: 3 }]);
		expect(at(ended(4), 'w1').rate).toBeGreaterThan(at(ended(3), 'w1').rate);
	});

	test('add up as losses that do not know of each other', () => {
		const line = withCables(chain(2, { receivers: () => ({ earthed: false }) }), {
			c1: { common: 'open', minus: 'open' },
		});
		expect(at(line, 'w2').rate).toBeCloseTo(1 - (1 - LINE_RATES.commonOpen) * (1 - LINE_RATES.oneWireTerminated), 12);
	});

	test('start small at their limit: about a frame a second', () => {
		const line = chain(1, { cables: () => ({ length: LINE_LIMITS.dataMetres + 0.001 }) });
		expect(at(line, 'w1').rate).toBeCloseTo(LINE_RATES.least, 4);
	});
});
