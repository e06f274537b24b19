import type { JSX } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { scanWords, sitWords } from '#words/papers/index.ts';
import { isInputError } from '../../../../shared/error/index.ts';
import { DEVICE, MOST_READ } from '../../../storage/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { errorTextLater } from '../../../wording/index.ts';
import { ScanQr } from '../exchange/scan/ScanQr.tsx';
import { lastPaper } from './keepSitting.ts';

/** What a file holds, or the QR code in a picture. @throws InputError for a picture with none; anything for a file that cannot be read */
async function textOf(file: File, signal: AbortSignal): Promise<string> {
	if (file.type.startsWith('image/')) {
		const { qrInPicture } = await import('../exchange/readQr.ts');
		return qrInPicture(file, signal);
	}
	if (file.size > MOST_READ.paper) throw new RangeError('too large for a paper');
	return file.text();
}

/** Ways to open a paper when the address holds none: a link pasted, a file, or a QR code. */
export function OpenPaper({ onText }: { onText: (text: string) => Promise<void> }): JSX.Element {
	const id = useId();
	const [text, type] = useState('');
	const [wrong, tell] = useState('');
	const [begun] = useState(() => lastPaper(DEVICE));
	const [reading, read] = useState<AbortController | null>(null);
	const files = useRef<HTMLInputElement>(null);
	const last = useRef<AbortController | null>(null);
	const takeFile = async (file: File | undefined) => {
		if (!file) return;
		const stop = new AbortController();
		// what was chosen before is let fall, and nothing said of it
		const before = last.current;
		last.current = stop;
		before?.abort();
		tell('');
		read(stop);
		try {
			const found = await textOf(file, stop.signal);
			if (last.current !== stop) return;
			read(null);
			await onText(found);
		} catch (error) {
			if (last.current !== stop) return;
			read(null);
			tell(isInputError(error) ? await errorTextLater(error) : sitWords.notPaper);
		}
	};
	return (
		<section class="sit-open" aria-labelledby={`${id}-none`}>
			<h2 id={`${id}-none`}>{sitWords.none}</h2>
			{begun !== null && (
				<Button look="main" onClick={() => void onText(begun)}>
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
				<Button look={begun === null ? 'main' : 'plain'} type="submit">
					{sitWords.openPasted}
				</Button>
			</form>
			<div class="sit-open-file">
				<label for={`${id}-file`}>{sitWords.file}</label>
				<input
					id={`${id}-file`}
					type="file"
					accept=".json,.txt,application/json,text/plain,image/*"
					ref={files}
					onChange={(event) => {
						const file = event.currentTarget.files?.[0];
						// the same file may be chosen again
						event.currentTarget.value = '';
						void takeFile(file);
					}}
				/>
				{reading && (
					<>
						<p aria-hidden="true">{scanWords.reading}</p>
						<Button
							onClick={() => {
								reading.abort();
								files.current?.focus();
							}}
						>
							{scanWords.stopReading}
						</Button>
					</>
				)}
				<Live text={reading ? scanWords.reading : ''} />
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
