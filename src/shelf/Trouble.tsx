import type { JSX } from 'preact';
import { Button, Notice, saveText } from '../ui/index.ts';
import type { Found } from './shelf.ts';
import type { KeepingWords } from './words.ts';

interface Props {
	words: KeepingWords;
	found: Pick<Found<unknown>, 'damaged' | 'keeps'>;
	/** What was set aside so far. */
	aside: () => string | null;
	onDone: () => void;
}

/** What went wrong with what is kept: said once, with a way to save what was set aside. Nothing where all is well. */
export function Trouble({ words, found: { damaged, keeps }, aside, onDone }: Props): JSX.Element | null {
	if (damaged === null && keeps) return null;
	return (
		<Notice kind="wrong">
			{damaged !== null && <p role="alert">{words.damaged(damaged === 'whole' ? 0 : damaged)}</p>}
			{!keeps && <p>{words.notKept}</p>}
			{damaged !== null && (
				<div class="keeping-ways">
					<Button onClick={() => saveText(words.asideName, aside() ?? '')}>{words.saveAside}</Button>
					<Button look="quiet" onClick={onDone}>
						{words.dismiss}
					</Button>
				</div>
			)}
		</Notice>
	);
}
