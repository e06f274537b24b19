import type { JSX } from 'preact';
import { keptWords } from '#words/storage/index.ts';
import { Button, Notice } from '../ui/index.ts';
import { saveText } from './device.ts';
import type { KeepingWords } from './kept.ts';
import type { OnShelf } from './shelf.ts';

interface Props {
	words: Pick<KeepingWords, 'asideName' | 'saveAside' | 'dismiss' | 'notKept' | 'damaged'>;
	found: Omit<OnShelf<unknown>, 'kept'>;
	/** What was set aside last. */
	aside: () => string | null;
	onDone: () => void;
}

/** What went wrong with what is kept: said once, with a way to save what was set aside. Nothing where all is well. */
export function Trouble({ words, found, aside, onDone }: Props): JSX.Element | null {
	const { damaged, isNewer, keeps, isFull } = found;
	if (damaged === null && !isNewer && keeps) return null;
	return (
		<Notice kind="wrong">
			{damaged !== null && <p role="alert">{words.damaged(damaged === 'whole' ? 0 : damaged)}</p>}
			{isNewer && <p role="alert">{keptWords.newer}</p>}
			{!keeps && <p>{isFull ? keptWords.noRoom : words.notKept}</p>}
			<div class="keeping-ways">
				{damaged !== null && (
					<>
						<Button onClick={() => saveText(words.asideName, aside() ?? '')}>{words.saveAside}</Button>
						<Button look="quiet" onClick={onDone}>
							{words.dismiss}
						</Button>
					</>
				)}
				{(damaged !== null || isFull) && (
					<Button look="quiet" href={keptWords.href}>
						{keptWords.link}
					</Button>
				)}
			</div>
		</Notice>
	);
}
