import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { sitWords } from '../../../content/papers/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { ScanQr } from '../scan/ScanQr.tsx';
import { lastPaper } from './keepSitting.ts';

/** Bytes of a file that is read at all. */
const MOST_BYTES = 2_000_000;

/** What a file holds, or the QR code in a picture. @throws InputError for a picture with none; anything for a file that cannot be read */
async function textOf(file: File): Promise<string> {
	if (file.type.startsWith('image/')) {
		const { qrInPicture } = await import('../carry/readQr.ts');
		return qrInPicture(file);
	}
	if (file.size > MOST_BYTES) throw new RangeError('too large for a paper');
	return file.text();
}

/** Ways to open a paper when the address holds none: a link pasted, a file, or a QR code. */
export function OpenPaper({ onText }: { onText: (text: string) => Promise<void> }): JSX.Element {
	const id = useId();
	const [text, type] = useState('');
	const [wrong, tell] = useState('');
	const [last] = useState(() => lastPaper(() => localStorage));
	const takeFile = async (file: File | undefined) => {
		if (!file) return;
		tell('');
		try {
			await onText(await textOf(file));
		} catch (error) {
			tell(isInputError(error) ? error.message : sitWords.notPaper);
		}
	};
	return (
		<section class="sit-open" aria-labelledby={`${id}-none`}>
			<h2 id={`${id}-none`}>{sitWords.none}</h2>
			{last !== null && (
				<Button look="main" onClick={() => void onText(last)}>
					{sitWords.last}
				</Button>
			)}
			<p>{sitWords.noneWays}</p>
			<form
				class="sit-open-paste"
				onSubmit={(event) => {
					event.preventDefault();
					if (text.trim() !== '') void onText(text);
				}}
			>
				<label for={`${id}-paste`}>{sitWords.paste}</label>
				<textarea
					id={`${id}-paste`}
					rows={3}
					spellcheck={false}
					value={text}
					onInput={(event) => type(event.currentTarget.value)}
				/>
				<Button look={last === null ? 'main' : 'plain'} type="submit">
					{sitWords.openPasted}
				</Button>
			</form>
			<div class="sit-open-file">
				<label for={`${id}-file`}>{sitWords.file}</label>
				<input
					id={`${id}-file`}
					type="file"
					accept=".json,.txt,application/json,text/plain,image/*"
					onChange={(event) => void takeFile(event.currentTarget.files?.[0])}
				/>
				<ScanQr onText={onText} />
			</div>
			{wrong !== '' && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
		</section>
	);
}
