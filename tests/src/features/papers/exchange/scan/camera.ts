import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium, type Page, test } from '@playwright/test';
import { generate } from 'lean-qr';
import { browserFlags } from '../../../../../house/browser.ts';

const WIDTH = 640;
const HEIGHT = 480;
/** Frames a second, and how many each picture stands for. */
const RATE = 2;
const STANDS = 6;

/** A QR code in the middle of a picture, in grey, row by row. */
function pictureOf(text: string): Buffer {
	const code = generate(text);
	const scale = Math.floor((HEIGHT - 40) / code.size);
	const [left, top] = [Math.floor((WIDTH - code.size * scale) / 2), Math.floor((HEIGHT - code.size * scale) / 2)];
	const grey = Buffer.alloc(WIDTH * HEIGHT, 215);
	for (let y = 0; y < code.size * scale; y++)
		for (let x = 0; x < code.size * scale; x++)
			if (code.get(Math.floor(x / scale), Math.floor(y / scale))) grey[(top + y) * WIDTH + left + x] = 40;
	return grey;
}

/** A film of codes held before a camera one after another, round and round: YUV4MPEG2, which Chromium takes for a camera's picture. */
function filmOf(texts: readonly string[]): string {
	const colourless = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
	const frames = texts.flatMap((text) => {
		const frame = [Buffer.from('FRAME\n'), pictureOf(text), colourless];
		return Array.from({ length: STANDS }, () => frame).flat();
	});
	const file = path.join(mkdtempSync(path.join(tmpdir(), 'prep-bay-film-')), 'codes.y4m');
	writeFileSync(
		file,
		Buffer.concat([Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F${RATE}:1 Ip A1:1 C420jpeg\n`), ...frames]),
	);
	return file;
}

/** A browser before whose camera codes are held in turn; null for one with no camera at all. */
export async function browserWith(texts: readonly string[] | null, more: readonly string[] = []): Promise<Browser> {
	const film = texts && filmOf(texts);
	const camera = film ? ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${film}`] : [];
	const executablePath = process.env['PREP_BAY_BROWSER'] ?? '';
	const browser = await chromium.launch({ executablePath, args: [...browserFlags, ...camera, ...more] });
	if (film) browser.on('disconnected', () => rmSync(path.dirname(film), { recursive: true, force: true }));
	return browser;
}

/** Passes a test over, and says so, where the browser was built without cameras: the packaged one is, on some machines. */
export async function needsCamera(browser: Browser, baseURL: string | undefined): Promise<void> {
	const tab = await browser.newPage({ serviceWorkers: 'block', permissions: ['camera'] });
	await tab.goto(`${baseURL}/about/`);
	const trouble = await tab.evaluate(() =>
		navigator.mediaDevices.getUserMedia({ video: true }).then(
			(stream) => {
				for (const track of stream.getTracks()) track.stop();
				return '';
			},
			({ name }: Error) => name,
		),
	);
	await tab.close();
	if (trouble !== 'NotSupportedError') return;
	await browser.close();
	test.skip(true, 'this Chromium was built without cameras');
}

/** Keeps what the page is given of the camera, to be asked for with `tracksOf`. */
export const watchCamera = (tab: Page): Promise<unknown> =>
	tab.addInitScript(() => {
		const given: MediaStreamTrack[] = [];
		Object.assign(window, { given });
		const { mediaDevices } = navigator;
		const real = mediaDevices?.getUserMedia.bind(mediaDevices);
		if (real)
			mediaDevices.getUserMedia = async (wanted) => {
				const stream = await real(wanted);
				given.push(...stream.getTracks());
				return stream;
			};
	});

/** `live` or `ended`, for each camera the page was given so far. */
export const tracksOf = (tab: Page): Promise<string[]> =>
	tab.evaluate(() => (window as unknown as { given: MediaStreamTrack[] }).given.map(({ readyState }) => readyState));
