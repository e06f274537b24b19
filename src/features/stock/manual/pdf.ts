import {
	AnnotationMode,
	getDocument,
	type PDFDocumentProxy,
	type PDFPageProxy,
	PDFWorker,
} from 'pdfjs-dist/legacy/build/pdf.mjs';
import { type PageItems, pageItems } from './items.ts';

/** Why a manual, or a page of it, cannot be shown. Words for each are in `content/en/stock/manual.ts`. */
export type ManualTroubleCode =
	| 'too-large'
	| 'unreadable'
	| 'not-pdf'
	| 'locked'
	| 'damaged'
	| 'too-many'
	| 'slow'
	| 'no-part'
	| 'page-damaged';

export class ManualTrouble extends Error {
	override readonly name = 'ManualTrouble';
	readonly code: ManualTroubleCode;

	constructor(code: ManualTroubleCode) {
		super(code);
		this.code = code;
	}
}

/** Bounds on what is opened: bytes of the file, and pages. */
export const MOST_BYTES = 64 * 2 ** 20;
const MOST_PAGES = 400;
/** Milliseconds after which a file or a page is given up: an old phone takes some two seconds for a page. */
const WITHIN_MS = 30_000;
/** The first letters of any such file stand within so many bytes (ISO 32000-1, annex H, note 13). */
const HEAD = 1024;
/** Dots of a picture within a page, and of the picture of a page: past that a phone runs out of room. */
const MOST_DOTS = 2 ** 24;
const MOST_ACROSS = 2400;
/** A page longer than so many times its width is none. */
const MOST_LONG = 20;

export interface ManualPage extends PageItems {
	/** Draws it, so many dots wide; a call while another is at it ends that one. @throws ManualTrouble */
	draw(canvas: HTMLCanvasElement, across: number): Promise<void>;
}

export interface Manual {
	readonly pages: number;
	/** A page by its number, from 1. One at a time: the one before is let go. @throws ManualTrouble */
	page(number: number): Promise<ManualPage>;
	/** Lets go of everything, whatever it is at. */
	close(): void;
}

const isPdf = (bytes: Uint8Array): boolean =>
	new TextDecoder('latin1').decode(bytes.subarray(0, HEAD)).includes('%PDF-');

/** A promise that is given up after a while, or once `broken` says that nothing will come of it. */
async function within<T>(work: Promise<T>, broken: Promise<never>): Promise<T> {
	let timer: ReturnType<typeof setTimeout> | undefined;
	const late = new Promise<never>((_, fail) => {
		timer = setTimeout(() => fail(new ManualTrouble('slow')), WITHIN_MS);
	});
	try {
		return await Promise.race([work, broken, late]);
	} finally {
		clearTimeout(timer);
	}
}

const troubleOf = (error: unknown, otherwise: ManualTroubleCode): ManualTrouble => {
	if (error instanceof ManualTrouble) return error;
	return new ManualTrouble(error instanceof Error && error.name === 'PasswordException' ? 'locked' : otherwise);
};

/**
 * Opens a manual's file on the device. Nothing in it is run: the library has no part for scripts here, and none for forms.
 * @param bytes handed over: they are gone afterwards
 * @throws ManualTrouble
 */
export async function openManual(bytes: Uint8Array, signal: AbortSignal): Promise<Manual> {
	if (bytes.length > MOST_BYTES) throw new ManualTrouble('too-large');
	if (!isPdf(bytes)) throw new ManualTrouble('not-pdf');
	const worker = new Worker(new URL('./pdfWorker.ts', import.meta.url), { type: 'module' });
	const broken = new Promise<never>((_, fail) => {
		worker.addEventListener('error', () => fail(new ManualTrouble('no-part')));
		signal.addEventListener('abort', () => fail(new ManualTrouble('slow')));
	});
	// whoever does not wait for it just then is not to hear of it as unhandled
	broken.catch(() => undefined);
	const task = getDocument({
		data: bytes,
		worker: PDFWorker.create({ port: worker }),
		// under the policy of the site neither could be run; pictures that take them are left blank
		useWasm: false,
		useWorkerFetch: false,
		disableWorkerRendering: true,
		enableXfa: false,
		maxImageSize: MOST_DOTS,
		verbosity: 0,
	});
	const close = (): void => {
		void task.destroy().catch(() => undefined);
		worker.terminate();
	};
	signal.addEventListener('abort', close);
	try {
		const file = await within(task.promise, broken);
		if (file.numPages > MOST_PAGES) throw new ManualTrouble('too-many');
		if (file.numPages < 1) throw new ManualTrouble('damaged');
		return { pages: file.numPages, page: pagesOf(file, broken), close };
	} catch (error) {
		close();
		throw troubleOf(error, 'damaged');
	}
}

function pagesOf(file: PDFDocumentProxy, broken: Promise<never>): Manual['page'] {
	let open: PDFPageProxy | null = null;
	return async (number) => {
		try {
			const page = await within(file.getPage(number), broken);
			if (open !== page) open?.cleanup();
			open = page;
			const items = await within(pageItems(page), broken);
			const { width, height } = items;
			if (!(width > 0 && height > 0 && width < MOST_LONG * height && height < MOST_LONG * width))
				throw new ManualTrouble('page-damaged');
			return { ...items, draw: drawing(page, items, broken) };
		} catch (error) {
			throw troubleOf(error, 'page-damaged');
		}
	};
}

function drawing(page: PDFPageProxy, { width, height }: PageItems, broken: Promise<never>): ManualPage['draw'] {
	let under: ReturnType<PDFPageProxy['render']> | null = null;
	return async (canvas, across) => {
		under?.cancel();
		const most = Math.min(across, MOST_ACROSS, (MOST_ACROSS * 2 * width) / height);
		const viewport = page.getViewport({ scale: most / width });
		canvas.width = Math.max(1, Math.round(viewport.width));
		canvas.height = Math.max(1, Math.round(viewport.height));
		const task = page.render({ canvas, viewport, annotationMode: AnnotationMode.DISABLE });
		under = task;
		try {
			await within(task.promise, broken);
		} catch (error) {
			task.cancel();
			if (error instanceof Error && error.name === 'RenderingCancelledException') return;
			throw troubleOf(error, 'page-damaged');
		}
	};
}
