import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { benchWords, noticeWords } from '../../content/bench/index.ts';
import { BEFORE_KEY, findKept, forget } from '../rig/index.ts';
import { Button, Notice } from '../ui/index.ts';
import type { Keeping, Opening } from './opened.ts';

interface Props {
	opening: Opening;
	/** Whether the device keeps the bench. */
	kept: boolean;
	storage: Keeping;
}

/** Where the bench came from, what went wrong on the way, and the way back to the person's own. */
export default function FreeNotices({ opening, kept, storage }: Props): JSX.Element {
	const { store, trouble } = opening;
	const [read, markRead] = useState(false);
	const [ownAside, setOwnAside] = useState(opening.ownAside);
	const bringBack = async () => {
		const { kept: before } = await findKept(storage, BEFORE_KEY);
		if (before && store.open(before)) forget(storage, BEFORE_KEY);
		setOwnAside(false);
	};
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
			{ownAside && (
				<Notice>
					<p>{noticeWords.ownAside}</p>
					<Button onClick={bringBack}>{noticeWords.bringBack}</Button>
				</Notice>
			)}
			{!kept && (
				<Notice>
					<p>{noticeWords.notKept}</p>
				</Notice>
			)}
		</>
	);
}
