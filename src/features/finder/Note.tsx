import type { JSX } from 'preact';
import { finderWords, handOnWords } from '#words/finder/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import type { FinderScene } from './scene.ts';
import type { FinderStore } from './store.ts';
import { toBegin } from './toBegin.ts';

/** What is to be read before anything is touched. It stays over every step until it is dismissed. */
export function Note({ store, note }: { store: FinderStore; note: FinderScene['note'] }): JSX.Element | null {
	if (note === null) return null;
	return (
		<Notice>
			<p data-note>{noteText(note)}</p>
			<Button
				look="quiet"
				data-way="noted"
				onClick={({ currentTarget }) => {
					toBegin(currentTarget);
					store.noted();
				}}
			>
				{finderWords.dismiss}
			</Button>
		</Notice>
	);
}

/** The same in words; empty for none. */
export function noteText(note: FinderScene['note']): string {
	if (note === null) return '';
	return note === 'aside' ? `${handOnWords.taken} ${handOnWords.aside}` : handOnWords.taken;
}
