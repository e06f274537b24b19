import type { JSX } from 'preact';
import { playingWords } from '#words/bench/index.ts';
import { Button, Notice } from '../../ui/index.ts';

interface Props {
	/** 0 to 1. */
	share: number;
	onStop: () => void;
}

/** A long history on its way to the bench: how far it is, and the way out. */
export default function PlayingBack({ share, onStop }: Props): JSX.Element {
	const percent = Math.floor(100 * share);
	return (
		<Notice>
			<p role="status">{playingWords.playing}</p>
			<p>
				<progress max={100} value={percent} aria-label={playingWords.playing}>
					{playingWords.played(percent)}
				</progress>{' '}
				{playingWords.played(percent)}
			</p>
			<Button onClick={onStop}>{playingWords.stop}</Button>
		</Notice>
	);
}
