import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { manualTroubles, manualWords as words } from '#words/stock/index.ts';
import { MOST_CHARACTERS, type PageText, readPage } from '../../../../shared/stock/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { type Box, WHOLE } from './box.ts';
import { bytesOf } from './bytes.ts';
import { FoundOnPage } from './FoundOnPage.tsx';
import { itemsIn, textState } from './items.ts';
import { PagePicture } from './PagePicture.tsx';
import { PageTurner } from './PageTurner.tsx';
import { type ManualPage, ManualTrouble, type Manual as OpenManual, openManual } from './pdf.ts';

interface Props {
	file: File;
	/** Letters in the chart already. */
	used: number;
	onUse: (text: string, page: number) => void;
}

const sentence = (error: unknown): string => manualTroubles[error instanceof ManualTrouble ? error.code : 'damaged'];

/** A manual's file: its pages, the part that is marked, and what was read of it. */
export default function Manual({ file, used, onUse }: Props): JSX.Element {
	const [manual, open] = useState<OpenManual | null>(null);
	const [number, turn] = useState(1);
	const [page, show] = useState<ManualPage | null>(null);
	const [box, mark] = useState<Box>(WHOLE);
	const [isLarge, enlarge] = useState(false);
	const [wrong, tell] = useState<string | null>(null);
	const [read, setRead] = useState<PageText | null>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => {
		const end = new AbortController();
		heading.current?.focus();
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
				show(found);
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
		const found = readPage(itemsIn(page, box));
		if (found.text.trim() === '') tell(words.none);
		else {
			tell(null);
			setRead(found);
		}
	};
	const canRead = page !== null && textState(page.items) === 'text';
	if (read)
		return (
			<div class="stock manual">
				<FoundOnPage
					page={number}
					read={read}
					room={MOST_CHARACTERS - used - 1}
					most={MOST_CHARACTERS}
					onUse={(text) => onUse(text, number)}
					onMark={() => setRead(null)}
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
