import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { paperWords } from '#words/papers/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { later } from './asking.ts';
import type { WaysToHand } from './protocol.ts';

const QrCode = later(async () => ({ default: (await import('./exchange/QrCode.tsx')).QrCode }));

interface Props {
	handing: WaysToHand;
	/** Over the link. */
	label: string;
	/** What it is, in a word, for the code's description. */
	what: string;
	/** For the device's own way of sharing. */
	title: string;
}

/** A link to copy, a QR code, a file, and the device's own way of sharing. Each holds the whole of it. */
export function HandingWays({ handing, label, what, title }: Props): JSX.Element {
	const id = useId();
	const [code, show] = useState(false);
	const [said, say] = useState({ text: '', turn: 0 });
	const tell = (text: string) => say(({ turn }) => ({ text, turn: turn + 1 }));
	const { link, fileName, fileText, fitsQr } = handing;
	return (
		<div class="papers-handing">
			<div class="field">
				<label for={id}>{label}</label>
				<textarea
					id={id}
					class="papers-link"
					readOnly
					rows={2}
					value={link}
					spellcheck={false}
					onFocus={(event) => event.currentTarget.select()}
				/>
			</div>
			<div class="papers-ways">
				<Button
					look="main"
					onClick={() =>
						navigator.clipboard.writeText(link).then(
							() => tell(paperWords.copied),
							() => tell(paperWords.copyFailed),
						)
					}
				>
					{paperWords.copy}
				</Button>
				{fitsQr && (
					<Button aria-expanded={code} onClick={() => show(!code)}>
						{code ? paperWords.qrHide : paperWords.qr}
					</Button>
				)}
				<Button
					onClick={() => {
						saveText(fileName, fileText);
						tell(paperWords.saved);
					}}
				>
					{paperWords.save}
				</Button>
				{'share' in navigator && (
					<Button onClick={() => navigator.share({ title, url: link }).catch(() => {})}>{paperWords.share}</Button>
				)}
				<span class="papers-said" aria-hidden="true">
					{said.text}
				</span>
			</div>
			{!fitsQr && <p class="sit-soft">{paperWords.qrTooLong}</p>}
			{fitsQr && code && (
				<div class="papers-qr">
					<QrCode text={link} label={paperWords.qrAlt(what)} />
				</div>
			)}
			<Live text={said.text} turn={said.turn} />
		</div>
	);
}
