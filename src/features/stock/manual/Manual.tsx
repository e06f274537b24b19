import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { manualTroubles, manualWords as words } from '#words/stock/index.ts';
import { MOST_CHARACTERS, type PageText, readPage } from '../../../../shared/stock/index.ts';
import { useUnderWay } from '../../../site/updates/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { type Box, WHOLE } from './box.ts';
import { bytesOf } from './bytes.ts';
import { FoundOnPage } from './FoundOnPage.tsx';
import { itemsIn, textState } from './items.ts';
import { PagePicture } from './PagePicture.tsx';
import { PageTurner } from './PageTurner.tsx';
import { backNames } from './parts.ts';
import { type ManualPage, ManualTrouble, type Manual as OpenManual, openManual } from './pdf.ts';

interface Props {
	file: File;
	/** Letters in the chart already. */
	used: number;
	/** `hasMore` where text that was changed is left from another part: the manual stays open then. */
	onUse: (text: string, page: number, hasMore: boolean) => void;
	/** Whether text was changed that isn't in the chart. */
	onEdited: (isEdited: boolean) => void;
}

/** A part of a page that was read, and its text as a person has it by now. */
interface Part {
	readonly number: number;
	readonly box: Box;
	readonly read: PageText;
	readonly text: string;
}

const isOf = (part: Part, number: number, box: Box): boolean =>
	part.number === number && JSON.stringify(part.box) === JSON.stringify(box);

const sentence = (error: unknown): string => manualTroubles[error instanceof ManualTrouble ? error.code : 'damaged'];

/** A manual's file: its pages, the part that is marked, and what was read of it. */
export default function Manual({ file, used, onUse, onEdited }: Props): JSX.Element {
	const [manual, open] = useState<OpenManual | null>(null);
	const [number, turn] = useState(1);
	const [shown, show] = useState<{ readonly number: number; readonly page: ManualPage } | null>(null);
	// a page that was just turned is there for a moment longer: what is done to it would be done to none
	const page = shown?.number === number ? shown.page : null;
	const [box, mark] = useState<Box>(WHOLE);
	const [isLarge, enlarge] = useState(false);
	const [wrong, tell] = useState<string | null>(null);
	/** What is held against its page now. */
	const [part, hold] = useState<Part | null>(null);
	/** Text that was changed and isn't in the chart. */
	const [edited, keepEdited] = useState<readonly Part[]>([]);
	useUnderWay(edited.length > 0);
	useEffect(() => onEdited(edited.length > 0), [edited.length > 0]);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => {
		if (!part) heading.current?.focus();
	}, [file, part === null]);
	useEffect(() => {
		const end = new AbortController();
		bytesOf(file)
			.then((bytes) => openManual(bytes, end.signal))
			.then(
				(opened) => (end.signal.aborted ? opened.close() : open(opened)),
				(error: unknown) => {
					if (!end.signal.aborted) tell(sentence(error));
				},
			);
		return () => end.abort();
	}, [file]);
	useEffect(() => {
		let isOver = false;
		show(null);
		if (!manual) return;
		tell(null);
		manual.page(number).then(
			(found) => {
				if (isOver) return;
				show({ number, page: found });
				const state = textState(found.items);
				if (state !== 'text') tell(state === 'none' ? words.scanned : words.garbled);
			},
			(error: unknown) => {
				if (!isOver) tell(sentence(error));
			},
		);
		return () => {
			isOver = true;
		};
	}, [manual, number]);

	const readBox = () => {
		if (!page) return;
		const read = readPage(itemsIn(page, box));
		if (read.text.trim() === '') tell(words.none);
		else {
			tell(null);
			hold(edited.find((each) => isOf(each, number, box)) ?? { number, box, read, text: read.text });
		}
	};
	const without = (gone: Part) => edited.filter((each) => !isOf(each, gone.number, gone.box));
	const edit = (now: Part) => {
		hold(now);
		// each in its place: the names of the ways back count them
		if (now.text === now.read.text) keepEdited(without(now));
		else if (edited.some((each) => isOf(each, now.number, now.box)))
			keepEdited(edited.map((each) => (isOf(each, now.number, now.box) ? now : each)));
		else keepEdited([...edited, now]);
	};
	const goBack = (to: Part) => {
		turn(to.number);
		mark(to.box);
		hold(to);
	};
	const canRead = page !== null && textState(page.items) === 'text';
	if (part)
		return (
			<div class="stock manual">
				<FoundOnPage
					page={part.number}
					read={part.read}
					text={part.text}
					room={MOST_CHARACTERS - used - 1}
					most={MOST_CHARACTERS}
					onText={(text) => edit({ ...part, text })}
					onUse={(text) => {
						const left = without(part);
						keepEdited(left);
						hold(null);
						onUse(text, part.number, left.length > 0);
					}}
					onMark={() => hold(null)}
				/>
			</div>
		);
	return (
		<div class="stock manual">
			<h2 ref={heading} tabIndex={-1}>
				{words.heading(file.name)}
			</h2>
			<Live text={manual || wrong !== null ? '' : words.opening} />
			{!manual && wrong === null && <p class="coming">{words.opening}</p>}
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			{edited.length > 0 && (
				<div class="stock-ways">
					{backNames(edited).map((name, i) => (
						<Button key={i} onClick={() => goBack(edited[i] as Part)}>
							{name}
						</Button>
					))}
				</div>
			)}
			{manual && <PageTurner number={number} pages={manual.pages} onTurn={turn} />}
			{page && (
				<>
					<p>
						{words.how} <span class="field-hint">{words.keys}</span>
					</p>
					<div class="stock-ways">
						<Button onClick={() => mark(WHOLE)}>{words.whole}</Button>
						<Button aria-pressed={isLarge} onClick={() => enlarge(!isLarge)}>
							{isLarge ? words.smaller : words.larger}
						</Button>
						<Button look="main" disabled={!canRead} onClick={readBox}>
							{words.read}
						</Button>
					</div>
					<PagePicture
						page={page}
						label={words.picture(number)}
						box={box}
						onBox={mark}
						isLarge={isLarge}
						onTrouble={(trouble) => trouble && tell(sentence(trouble))}
					/>
				</>
			)}
		</div>
	);
}
