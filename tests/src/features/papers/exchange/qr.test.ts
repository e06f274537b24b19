import { describe, expect, it } from 'vitest';
import { setPaper } from '../../../../../shared/paper/index.ts';
import { makeRandom } from '../../../../../shared/random/index.ts';
import { bundledRig } from '../../../../../shared/sheet/index.ts';
import { paperFragment, readPaperLink, resultFragment } from '../../../../../src/features/papers/exchange/index.ts';
import { MOST_QR_BYTES, qrDrawing } from '../../../../../src/features/papers/exchange/qr.ts';
import { type Pixels, qrInPixels } from '../../../../../src/features/papers/exchange/qrLook.ts';
import { PICTURE_SIZES } from '../../../../../src/features/papers/exchange/readQr.ts';
import { runs } from '../../../../runs.ts';
import { saidBy } from '../../../../shared/thrown.ts';
import { PLAIN, plainPaper, sat } from './class.ts';

const ADDRESS = 'https://papers.lantern-row-hall.example/papers/sit/';

/** What is drawn, as dark and light modules: the path read as a browser would, each `M x y h n v1 h -n z`. */
function modules({ path, size }: { path: string; size: number }): boolean[][] {
	const rows = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
	for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
		for (let i = 0; i < Number(run); i++) (rows[Number(y)] as boolean[])[Number(x) + i] = true;
	return rows;
}

/** A photo of it: a few dots a module, turned about its middle, lit unevenly, with grain. */
function photo(text: string, { scale = 4, turn = 0, grain = 0, shade = 0 } = {}): Pixels {
	const rows = modules(qrDrawing(text));
	const size = rows.length * scale;
	const side = Math.ceil(size * 1.2);
	const chance = makeRandom(1);
	const data = new Uint8ClampedArray(side * side * 4);
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	for (let y = 0; y < side; y++) {
		for (let x = 0; x < side; x++) {
			const [dx, dy] = [x - side / 2, y - side / 2];
			const [u, v] = [(cos * dx + sin * dy + size / 2) / scale, (cos * dy - sin * dx + size / 2) / scale];
			const dark = rows[Math.floor(v)]?.[Math.floor(u)] ?? false;
			const level = (dark ? 30 : 230) - shade * (x / side) + grain * (chance.next() - 0.5);
			data.set([level, level, level, 255], (y * side + x) * 4);
		}
	}
	return { data, width: side, height: side };
}

/** As a picture that was chosen is read. */
const readAs = (pixels: Pixels): string | null => qrInPixels(pixels, PICTURE_SIZES, true);

describe('a QR code', () => {
	it('is read back by jsqr 1.4.0, whatever it carries (recalculated)', async () => {
		const chance = makeRandom(7);
		for (let i = 0; i < runs(6); i++) {
			const length = chance.int(1, 1500);
			const text = Array.from({ length }, () => chance.pick([...'abcXYZ019-_.#=/:äß✓'])).join('');
			expect(readAs(photo(text))).toBe(text);
		}
	});

	it('of a link to a paper of 40 and of a result is read from a photo turned, ill lit and grainy', async () => {
		const paper = plainPaper(5);
		const links = [await paperFragment(paper), await resultFragment(sat(paper, 1), paper)].map(
			(each) => ADDRESS + each,
		);
		const ways = [
			{},
			{ turn: 0.05, grain: 40 },
			{ turn: 0.2, shade: 90 },
			{ turn: -1.3, scale: 5, grain: 30, shade: 60 },
		];
		const missed: string[] = [];
		for (const link of links) {
			for (const way of ways) {
				const read = readAs(photo(link, way));
				// never anything else: a code that is half seen is none
				expect([link, null]).toContain(read);
				if (read === null) missed.push(JSON.stringify(way));
			}
		}
		console.log(`Photos of codes not read: ${missed.length} of ${links.length * ways.length} ${missed}`);
		// a person takes another picture then
		expect(missed.length).toBeLessThanOrEqual(1);
	});

	it('of a paper on a sheet of 24 fixtures of the crew’s own is one code, and sets the same paper', async () => {
		const { recipe } = setPaper({ ...PLAIN, rig: bundledRig('long-line') }, 1);
		const link = ADDRESS + (await paperFragment({ recipe, seed: 1 }));
		const read = readAs(photo(link));
		expect(read).toBe(link);
		expect(await readPaperLink(read ?? '')).toEqual({ recipe, seed: 1 });
		console.log(`A code of ${link.length} characters has ${qrDrawing(link).size - 8} modules a side`);
	});

	it('keeps a margin of four modules, and is dark in its three corners (ISO/IEC 18004, from memory)', () => {
		const rows = modules(qrDrawing('x'));
		const size = rows.length;
		expect(size).toBe(21 + 8);
		for (let i = 0; i < size; i++)
			for (const edge of [0, 1, 2, 3]) {
				expect([rows[edge]?.[i], rows[i]?.[edge], rows[size - 1 - edge]?.[i], rows[i]?.[size - 1 - edge]]).toEqual([
					false,
					false,
					false,
					false,
				]);
			}
		expect([rows[4]?.[4], rows[4]?.[size - 5], rows[size - 5]?.[4], rows[size - 5]?.[size - 5]].slice(0, 3)).toEqual([
			true,
			true,
			true,
		]);
	});

	it('that would carry too much is refused with a sentence', () => {
		expect(qrDrawing('x'.repeat(MOST_QR_BYTES)).size).toBe(177 + 8);
		expect(saidBy(() => qrDrawing('x'.repeat(MOST_QR_BYTES + 1)))).toMatch(/link or a file/);
	});

	it('in a picture of something else is none', async () => {
		const chance = makeRandom(3);
		const data = Uint8ClampedArray.from({ length: 200 * 200 * 4 }, () => chance.int(0, 255));
		expect(readAs({ data, width: 200, height: 200 })).toBeNull();
	});
});
