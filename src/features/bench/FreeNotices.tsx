import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { benchWords, noticeWords } from '#words/bench/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { type BenchOpening, IN_PLACE, type OpenOther } from './opened.ts';
import { openAside } from './reopening.ts';
import type { BenchKeepOutcome } from './useKeeping.ts';

interface Props {
	opening: BenchOpening;
	/** What became of keeping it. */
	kept: BenchKeepOutcome;
	openOther: OpenOther;
}

/** Where the bench came from, what went wrong on the way, and the way back to the person's own. */
export default function FreeNotices({ opening, kept, openOther }: Props): JSX.Element {
	const { trouble, before, by } = opening;
	const [read, markRead] = useState(false);
	const [wrong, tell] = useState<string | null>(null);
	return (
		<>
			{trouble && !read && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
					<Button look="quiet" onClick={() => markRead(true)}>
						{benchWords.dismiss}
					</Button>
				</Notice>
			)}
			{before !== null && wrong === null && (
				<Notice>
					<p>{before === IN_PLACE ? noticeWords.ownThere : noticeWords.ownAside[by]}</p>
					<Button onClick={() => openOther((ways) => openAside(before, ways)).then(tell)}>
						{noticeWords.bringBack}
					</Button>
				</Notice>
			)}
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			{kept === 'aside' && (
				<Notice>
					<p role="status">{noticeWords.otherTab}</p>
				</Notice>
			)}
			{(kept === 'refused' || kept === 'full') && (
				<Notice>
					<p>{kept === 'full' ? noticeWords.noRoom : noticeWords.notKept}</p>
				</Notice>
			)}
		</>
	);
}
