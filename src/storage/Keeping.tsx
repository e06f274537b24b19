import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button, Dialog, FileButton, Title } from '../ui/index.ts';
import { saveText } from './device.ts';
import { MOST_READ } from './json.ts';
import type { KeepingWords } from './kept.ts';

interface Props {
	words: KeepingWords;
	/** What an export holds; null where there is nothing to export or to clear. */
	text: string | null;
	onExported: () => void;
	/** Text of a chosen file: told whatever it holds. */
	onImport: (text: string) => void;
	onClear: () => void;
	/** What came of the last thing done here. */
	said: string;
}

/** What is kept on the device: to a file, from a file, and away. */
export function Keeping({ words, text, onExported, onImport, onClear, said }: Props): JSX.Element {
	const [unread, tell] = useState('');
	const [asks, ask] = useState(false);
	return (
		<section class="keeping" aria-labelledby="kept">
			<Title level={2} id="kept">
				{words.kept}
			</Title>
			<p>{words.keptWords}</p>
			<div class="keeping-ways">
				<Button
					disabled={text === null}
					onClick={() => {
						saveText(words.fileName, text ?? '');
						onExported();
					}}
				>
					{words.export}
				</Button>
				<FileButton
					accept="application/json,.json"
					onFile={async (chosen) => {
						tell('');
						// larger than anything of ours: as if it held nothing, so that it is said to hold none of ours
						onImport(chosen.size > MOST_READ.saved ? '' : await chosen.text());
					}}
					onUnread={tell}
				>
					{words.import}
				</FileButton>
				<Button look="quiet" disabled={text === null} onClick={() => ask(true)}>
					{words.clear}
				</Button>
			</div>
			<p aria-hidden="true">{said}</p>
			{unread !== '' && (
				<p class="field-error" role="alert">
					{unread}
				</p>
			)}
			{asks && (
				<Dialog open onClose={() => ask(false)} title={words.clearTitle} closeWords={words.keep}>
					<p>{words.clearWords}</p>
					<Button
						onClick={() => {
							ask(false);
							onClear();
						}}
					>
						{words.clearDo}
					</Button>
				</Dialog>
			)}
		</section>
	);
}
