import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitFlashes, watchFlashes } from '../../../../sim/light/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import {
	BEAT_MS,
	BLANK,
	beatAt,
	colourAt,
	isCapped,
	isJumpy,
	isRestless,
	paint,
	withJump,
} from '../../../../src/features/bench/wall.ts';
import { runs } from '../../../runs.ts';
import { sheetOf } from './sheets.ts';

const colour = fc.constantFrom('#000000', '#ffffff', '#ff0000', '#00ff00', '#0000ff', '#808080', '#ff8800');

/** Moments at which the picture took an opposing turn of ten per cent of luminance or a saturated red: two make a flash (WCAG 2.2, 2.3.1; read). */
function turnsOf(pictures: readonly { at: number; colour: string }[]): number[] {
	let watch = watchFlashes('#000000');
	const turns: number[] = [];
	for (const [i, { colour: shown }] of pictures.entries()) {
		// judged with all the time in the world, so that nothing is held back
		const next = limitFlashes(watch, i * 10_000, shown);
		if (next !== watch && (next.luminance.at.length > 0 || next.red.at.length > 0)) {
			if (next.luminance.at.at(-1) === i * 10_000 || next.red.at.at(-1) === i * 10_000)
				turns.push(pictures[i]?.at ?? 0);
		}
		watch = next;
	}
	return turns;
}

const mostInASecond = (times: readonly number[]): number =>
	Math.max(0, ...times.map((start) => times.filter((at) => at >= start && at < start + 1000).length));

describe('painting the wall', () => {
	it('never flashes a pool, nor all pools together, more than three times in any second', () => {
		fc.assert(
			fc.property(
				fc.array(fc.tuple(fc.integer({ min: 4, max: 60 }), colour, colour, colour), { minLength: 20, maxLength: 200 }),
				(frames) => {
					let painting = BLANK;
					let at = 0;
					const shown: { at: number; colour: string }[][] = [[], [], []];
					for (const [gap, ...colours] of frames) {
						at += gap;
						painting = paint(painting, at, new Map(colours.map((it, i) => [`${i}`, it])));
						for (const i of [0, 1, 2]) shown[i]?.push({ at, colour: painting.pools.get(`${i}`)?.shown ?? '' });
					}
					const turns = shown.map(turnsOf);
					for (const each of turns) expect(mostInASecond(each)).toBeLessThanOrEqual(6);
					expect(mostInASecond([...new Set(turns.flat())])).toBeLessThanOrEqual(6);
				},
			),
			{ numRuns: runs(300) },
		);
	});

	it('shows in the end what is wanted, once it stays', () => {
		fc.assert(
			fc.property(fc.array(colour, { minLength: 1, maxLength: 60 }), (colours) => {
				let painting = BLANK;
				let at = 0;
				const wanted = colours.at(-1) ?? '';
				for (const each of [...colours, ...Array.from({ length: 80 }, () => wanted)]) {
					at += 16;
					painting = paint(painting, at, new Map([['a', each]]));
				}
				expect(painting.pools.get('a')?.shown).toBe(wanted);
			}),
			{ numRuns: runs(200) },
		);
	});

	it('lets one steady change through at once, and forgets pools that are gone', () => {
		const first = paint(
			BLANK,
			5,
			new Map([
				['a', '#ff0000'],
				['b', '#00ff00'],
			]),
		);
		expect([...first.pools].map(([key, { shown }]) => [key, shown])).toEqual([
			['a', '#ff0000'],
			['b', '#00ff00'],
		]);
		expect([...paint(first, 20, new Map([['b', '#00ff00']])).pools.keys()]).toEqual(['b']);
	});
});

describe('a strobe on the screen', () => {
	const strobe = (rate: number) => openRig(sheetOf([{ work: 'held', held: 'white', strobe: rate }])).look('wash-1');

	it('keeps a slow rate, and a fast one comes down to the beat', () => {
		const changes = (rate: number, real = false) => {
			const sight = strobe(rate);
			let last = '';
			let count = 0;
			for (let at = 0; at < 10_000; at += 8) {
				const shown = colourAt(sight, 0, real ? at : beatAt(at), real);
				if (shown !== last) count++;
				last = shown;
			}
			return count;
		};
		expect(changes(1)).toBeCloseTo(20, -1);
		expect(changes(20)).toBeLessThanOrEqual(Math.ceil(10_000 / BEAT_MS));
		expect(changes(20)).toBeGreaterThan(50);
		expect(changes(20, true)).toBeGreaterThan(380);
	});

	it('waits where a page held up has drawn late', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 1, max: 400 }), { maxLength: 60 }), (gaps) => {
				let jumps: readonly number[] = [];
				let at = 0;
				const drawn: number[] = [];
				for (const gap of gaps) {
					at += gap;
					const next = withJump(jumps, at);
					if (!next) continue;
					jumps = next;
					drawn.push(at);
				}
				expect(mostInASecond(drawn)).toBeLessThanOrEqual(6);
			}),
		);
	});

	it('is told as what it is', () => {
		expect([isRestless(strobe(0)), isJumpy(strobe(0)), isCapped(strobe(0))]).toEqual([false, false, false]);
		expect([isRestless(strobe(2)), isJumpy(strobe(2)), isCapped(strobe(2))]).toEqual([true, true, false]);
		expect([isRestless(strobe(9)), isJumpy(strobe(9)), isCapped(strobe(9))]).toEqual([true, true, true]);
		const fade = openRig(sheetOf([{ work: 'programme', programme: 'drift' }])).look('wash-1');
		expect([isRestless(fade), isJumpy(fade), isCapped(fade)]).toEqual([true, false, false]);
	});
});
