import type { JSX } from 'preact';
import { stockKeeping, stockWords as words } from '#words/stock/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { type BrowserStore, Trouble } from '../../storage/index.ts';
import { Button, Field, Notice } from '../../ui/index.ts';
import { asideText } from './keep.ts';
import type { Editing } from './useEntry.ts';

interface Props {
	storage: BrowserStore;
	/** The entry as it is kept, and the ways to change it. */
	at: Editing<StockEntry>;
	onDone: () => void;
}

/** What every editor of a fixture begins with: the way back, undo, what went wrong with keeping it, and its name. */
export function EditorTop({ storage, at, onDone }: Props): JSX.Element {
	const { entry, change, undo, canUndo, isTheirs, found } = at;
	return (
		<>
			<div class="stock-ways">
				<Button look="quiet" onClick={onDone}>
					{words.back}
				</Button>
				<Button disabled={!canUndo} onClick={undo}>
					{words.undo}
				</Button>
				<p class="stock-kept">{words.kept}</p>
			</div>
			{found && (
				<Trouble words={stockKeeping} found={found} aside={() => asideText(storage)} onDone={() => undefined} />
			)}
			{isTheirs && (
				<Notice>
					<p role="status">{words.otherTab}</p>
				</Notice>
			)}
			<Field
				label={words.name}
				hint={words.nameHint}
				value={entry.name}
				maxLength={40}
				onInput={(event) => change({ name: event.currentTarget.value })}
			/>
		</>
	);
}
