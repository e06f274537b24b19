import { handedNames } from '#words/papers/index.ts';
import { InputError, isInputError } from '../../../../shared/error/index.ts';
import { MOST_READ } from '../../../storage/index.ts';
import { fill } from '../../../wording/index.ts';
import { damaged, endOfJson, handedError, refusedFor } from './bounds.ts';
import { readFile } from './files.ts';
import { PAPER_LINK, readPaperLink, readResultLink } from './link.ts';
import type { HandedIn, PaperSetter } from './types.ts';

/** Most pieces that one text is taken apart into, and most that may be cut short before the rest is left. */
const MOST_PIECES = 20_000;
const MOST_CUT = 50;
/** Pieces read side by side: a browser inflates them off the page's own thread. */
const AT_ONCE = 16;

/**
 * Sorts whatever was handed in: a link, a message with links in it, a file, several run together, or nonsense. Nothing of it is
 * run, and nothing is lost: what cannot be read is there with its sentence.
 * @param set sets the paper that a result link belongs to; `settingOnce` keeps it from being set for each result anew
 * @param from what it is called: a file's name
 */
export async function readHandedIn(
	text: string,
	set: PaperSetter,
	from: string = handedNames.text,
): Promise<readonly HandedIn[]> {
	const pieces: Piece[] = [];
	for (const piece of piecesOf(text)) pieces.push(piece);
	const nameOf = (at: number): string => (pieces.length === 1 ? from : fill(handedNames.piece, { from, n: at + 1 }));
	const handed: HandedIn[] = [];
	for (let at = 0; at < pieces.length; at += AT_ONCE) {
		const some = pieces.slice(at, at + AT_ONCE);
		handed.push(...(await Promise.all(some.map((piece, i) => sortedPiece(piece, set, nameOf(at + i))))));
	}
	return handed;
}

type Piece = { readonly json: unknown } | { readonly link: string } | { readonly error: InputError };

async function sortedPiece(piece: Piece, set: PaperSetter, from: string): Promise<HandedIn> {
	try {
		return await readPiece(piece, set, from);
	} catch (error) {
		if (!isInputError(error)) throw error;
		return { is: 'refused', ...refusedFor(from, error), error: handedError(error) };
	}
}

async function readPiece(piece: Piece, set: PaperSetter, from: string): Promise<HandedIn> {
	if ('error' in piece) throw piece.error;
	if ('json' in piece) return { from, ...readFile(piece.json, from) };
	const [, what] = PAPER_LINK.exec(piece.link) ?? [];
	if (what === 'paper') return { is: 'paper', from, ...(await readPaperLink(piece.link)) };
	if (what === 'result') return { is: 'result', from, ...(await readResultLink(piece.link, set)) };
	throw new InputError('handed.rig', '', { trouble: 'a-bench' });
}

const START = /\{|(?:^|[#\s&])(?:paper|result|rig)=\d{1,6}\.[\w.-]*/g;
const FILE_START = /\{\s*"prepBay"\s*:/g;

function* piecesOf(text: string): Generator<Piece> {
	if (text.length > MOST_READ.handedIn) return yield { error: tooLong() };
	let pieces = 0;
	let cut = 0;
	for (let start = found(START, text, 0); start; ) {
		if (pieces++ >= MOST_PIECES || cut > MOST_CUT) return yield { error: tooMany(pieces) };
		let end = start.index + start[0].length;
		if (start[0] === '{') {
			const read = jsonAt(text, start.index);
			yield read.piece;
			// what was cut short may have swallowed the next
			if (read.end === null) cut++;
			end = read.end ?? found(FILE_START, text, start.index + 1)?.index ?? text.length;
		} else yield { link: start[0] };
		start = found(START, text, end);
	}
	if (pieces === 0) yield { error: nothing(text) };
}

function jsonAt(text: string, from: number): { piece: Piece; end: number | null } {
	try {
		const end = endOfJson(text, from);
		if (end !== null) return { piece: { json: JSON.parse(text.slice(from, end)) as unknown }, end };
	} catch (error) {
		if (isInputError(error)) return { piece: { error }, end: null };
		if (!(error instanceof SyntaxError)) throw error;
	}
	return { piece: { error: damaged() }, end: null };
}

function found(pattern: RegExp, text: string, from: number): RegExpExecArray | null {
	pattern.lastIndex = from;
	return pattern.exec(text);
}

const nothing = (text: string): InputError =>
	text.trim() === ''
		? new InputError('handed.empty', '', { trouble: 'empty' })
		: new InputError('handed.nothing', '', { trouble: 'nothing-in-it' });

const tooLong = (): InputError => new InputError('handed.long', '', { trouble: 'text-too-long' });

const tooMany = (pieces: number): InputError =>
	new InputError('handed.many', '', { trouble: 'too-many-pieces', read: pieces - 1 });
