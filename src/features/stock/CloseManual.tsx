import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { manualWords as words } from '#words/stock/index.ts';
import { Button, Dialog } from '../../ui/index.ts';

/** The way out of a manual: it asks first where text that was changed would be lost. */
export function CloseManual({ isEdited, onClose }: { isEdited: boolean; onClose: () => void }): JSX.Element {
	const [isAsking, ask] = useState(false);
	return (
		<div class="stock-ways">
			<Button look="quiet" onClick={() => (isEdited ? ask(true) : onClose())}>
				{words.close}
			</Button>
			{isAsking && (
				<Dialog open onClose={() => ask(false)} title={words.closeAsk} closeWords={words.stay}>
					<p>{words.closeLoses}</p>
					<Button onClick={onClose}>{words.closeAnyway}</Button>
				</Dialog>
			)}
		</div>
	);
}
