import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../../shared/error/index.ts';
import type { RigEvent } from '../../../../sim/event/index.ts';
import {
	type BenchRecord,
	fitForKeeping,
	holdsRig,
	linkOf,
	MOST,
	playBack,
	playInStretches,
	readLink,
} from '../../../../src/features/rig/index.ts';
import { pauses } from '../../../../src/features/rig/play.ts';
import { runs } from '../../../runs.ts';
import { saidBy, saidOf } from '../../../shared/thrown.ts';
import { deeds, pair } from './sheets.ts';

const linkWith = (text: string | Buffer): string => `#rig=1.${deflateRawSync(text).toString('base64url')}`;

/** What comes of a fragment: what it holds, or the code of the sentence it is refused with. Anything else thrown is a bug. */
async function outcome(fragment: string): Promise<BenchRecord | string> {
	try {
		return await readLink(fragment);
	} catch (error) {
		if (isInputError(error)) return error.code;
		throw error;
	}
}

describe('a link', () => {
	it('carries sheet and log, whole', async () => {
		await fc.assert(
			fc.asyncProperty(deeds(), async (log) => {
				const link = await linkOf({ sheet: pair, log });
				expect(link).toMatch(/^#rig=1\.[\w-]+$/);
				expect(holdsRig(link)).toBe(true);
				expect(await readLink(link)).toEqual({ sheet: pair, log });
			}),
			{ numRuns: runs(60) },
		);
	});

	it('with bits turned over or its end lost is refused with a sentence, or holds a rig that can be played or refused', async () => {
		const link = await linkOf({ sheet: pair, log: [{ type: 'key.tap', fixture: 'wash-1', key: 'up' }] });
		const packed = Buffer.from(link.slice('#rig=1.'.length), 'base64url');
		await fc.assert(
			fc.asyncProperty(
				fc.array(fc.integer({ min: 0, max: packed.length * 8 - 1 }), { maxLength: 6 }),
				fc.integer({ min: 0, max: packed.length }),
				async (bits, length) => {
					const bytes = Buffer.from(packed);
					for (const bit of bits) bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
					const found = await outcome(`#rig=1.${bytes.subarray(0, length).toString('base64url')}`);
					if (typeof found === 'string') expect(found).toMatch(/^(link|sheet|profile|log|event|mode)\./);
					else {
						try {
							playBack(found.sheet, found.log);
						} catch (error) {
							expect(isInputError(error), String(error)).toBe(true);
						}
					}
				},
			),
			{ numRuns: runs(400) },
		);
	});

	it('of any junk is refused with a sentence', async () => {
		await fc.assert(
			fc.asyncProperty(fc.oneof(fc.string(), fc.base64String(), fc.string({ unit: 'binary' })), async (junk) => {
				expect(typeof (await outcome(`#rig=1.${junk}`))).toBe('string');
				expect(typeof (await outcome(`#rig=${junk}`))).toBe('string');
			}),
			{ numRuns: runs(300) },
		);
	});

	it('of any JSON but a rig is refused with a sentence', async () => {
		await fc.assert(
			fc.asyncProperty(fc.json(), async (json) => {
				expect(typeof (await outcome(linkWith(json)))).toBe('string');
				expect(typeof (await outcome(linkWith(`[${json},[]]`)))).toBe('string');
				expect(typeof (await outcome(linkWith(JSON.stringify([pair]).replace(/]$/, `,[${json}]]`))))).toBe('string');
			}),
			{ numRuns: runs(200) },
		);
	});

	it('that stands for gigabytes is left after a few megabytes', async () => {
		const bomb = linkWith(Buffer.alloc(200_000_000, ' '));
		expect(bomb.length).toBeLessThan(1_000_000);
		expect(await outcome(bomb)).toBe('link.damaged');
	});

	it('says what is wrong in a sentence for each kind of wrong', async () => {
		const crowd = { ...pair, fixtures: Array.from({ length: MOST.fixtures + 1 }, () => pair.fixtures[0]) };
		const years = Array.from({ length: 600 }, () => ({ type: 'clock.wait', ms: 2_000_000_000 }));
		const wrongs: [string, string][] = [
			['#rig=2.abc', 'link.version'],
			['#rig=', 'link.damaged'],
			[`#rig=1.${'a'.repeat(1_000_001)}`, 'link.long'],
			[linkWith('[[['), 'link.damaged'],
			[linkWith('['.repeat(100_000)), 'link.damaged'],
			[linkWith(JSON.stringify([crowd, []])), 'link.crowded'],
			[
				linkWith(JSON.stringify([{ ...pair, cables: Array.from({ length: 500 }, () => pair.cables[0]) }, []])),
				'link.crowded',
			],
			[linkWith(JSON.stringify([{ ...pair, fixtures: 'many' }, []])), 'sheet.shape'],
			[linkWith(`[${JSON.stringify(pair)},[${'{},'.repeat(2_500_000)}{}]]`), 'link.crowded'],
			[linkWith(`[${JSON.stringify(pair)},[${'0,'.repeat(20_001)}0]]`), 'log.length'],
			[linkWith(JSON.stringify([pair, years])), 'link.slow'],
			[linkWith(JSON.stringify([pair, [{ type: 'run', code: 'alert(1)' }]])), 'event.shape'],
		];
		for (const [fragment, code] of wrongs) expect(await outcome(fragment), fragment.slice(0, 40)).toBe(code);
		expect(await saidOf(readLink('#rig=9.abc'))).toMatch(/made by another version of Prep Bay/);
		expect(await saidOf(readLink('#rig=1.abc'))).toMatch(/damaged or was cut short/);
	});

	it('is told from other fragments', () => {
		expect(holdsRig('#cautions')).toBe(false);
		expect(holdsRig('')).toBe(false);
		expect(holdsRig('rig=1.x')).toBe(true);
	});
});

describe('a real, honest log', () => {
	/** An hour's practice: a press or a fader a second and a half, and pauses of minutes. */
	const hour: RigEvent[] = Array.from({ length: 4800 }, (_, i): RigEvent => {
		if (i % 2 === 1) return { type: 'clock.wait', ms: i % 400 === 1 ? 240_000 : 700 };
		return i % 4 === 0
			? { type: 'key.tap', fixture: 'wash-1', key: i % 8 === 0 ? 'down' : 'up' }
			: { type: 'desk.level', universe: 1, slot: 1 + (i % 18), level: i % 256 };
	});

	it('of an hour and thousands of events travels in a link, and plays', async () => {
		const kept = await readLink(await linkOf({ sheet: pair, log: hour }));
		expect(kept).toEqual({ sheet: pair, log: hour });
		const rig = await playInStretches(kept.sheet, kept.log);
		expect(rig.log).toEqual(hour);
		expect(rig.now).toBeGreaterThan(3_600_000);
	});

	// a bench left open at ten minutes a second for an hour and a quarter could not be read again: no event may last so long
	it('with a wait of months travels too, in several', async () => {
		const day = 24 * 3_600_000;
		const long: RigEvent[] = [
			{ type: 'clock.wait', ms: 75 * day },
			{ type: 'hall.power', on: false },
		];
		const { log } = await readLink(await linkOf({ sheet: pair, log: fitForKeeping(long) }));
		expect(log).toEqual([
			...[30, 30, 15].map((days) => ({ type: 'clock.wait', ms: days * day })),
			{ type: 'hall.power', on: false },
		]);
		expect((await playInStretches(pair, log)).log).toEqual(long);
	});
});

describe('playing a log in stretches', () => {
	const log = Array.from({ length: 50 }, (): RigEvent => ({ type: 'clock.wait', ms: 1000 }));

	it('gives the rig that playing it at once gives', async () => {
		await fc.assert(
			fc.asyncProperty(deeds(), async (done) => {
				const [one, other] = [playBack(pair, done), await playInStretches(pair, done)];
				const look = (rig: typeof one) =>
					pair.fixtures.map(({ id }) => [rig.look(id), rig.gear.units.get(id)?.state.context]);
				expect(look(other)).toEqual(look(one));
				expect(other.log).toEqual(one.log);
			}),
			{ numRuns: runs(30) },
		);
	});

	it('lets the page in whenever a stretch is over, and says how far it is', async () => {
		let now = 0;
		let rests = 0;
		const clock = () => now++;
		const shares: number[] = [];
		const pause = pauses(clock, async () => void rests++);
		await playInStretches(pair, log, { onShare: (share) => shares.push(share) }, pause);
		expect(rests).toBeGreaterThan(0);
		expect(shares.length).toBe(rests);
		expect(shares.every((share, i) => share >= (shares[i - 1] ?? 0) && share < 1)).toBe(true);
	});

	it('can be called off', async () => {
		const stop = new AbortController();
		let now = 0;
		const pause = pauses(
			() => now++,
			async () => stop.abort(),
		);
		expect(await saidOf(playInStretches(pair, log, { signal: stop.signal }, pause))).toContain('You stopped this rig');
	});
});

describe('playing a log back', () => {
	it('gives up on more work than it has patience for', () => {
		let now = 0;
		const log = Array.from({ length: 100 }, (): RigEvent => ({ type: 'clock.wait', ms: 600_000 }));
		expect(saidBy(() => playBack(pair, log, { patience: 50, clock: () => now++ }))).toMatch(
			/more history than the device can play/,
		);
		expect(playBack(pair, log, { patience: 500, clock: () => now++ }).now).toBe(60_000_000);
	});
});
