import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { asideWords, fileWords, shareWords } from '#words/bench/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button, Dialog, Field, Live } from '../../ui/index.ts';
import { benchText, fitForKeeping, linkOf, type RigStore, takePlace } from '../rig/index.ts';
import { OpenFile } from './OpenFile.tsx';
import type { OpenOther } from './opened.ts';

/** Characters past which some apps cut a link short (common practice, no source). */
const LONG = 8000;

interface Props {
	store: RigStore;
	openOther: OpenOther;
	onClose: () => void;
}

/** The bench as a link, made when it is opened and not kept up with what happens after; and to a file and from one. */
export default function Share({ store, openOther, onClose }: Props): JSX.Element {
	const [link, set] = useState('');
	const [said, say] = useState('');
	useEffect(() => {
		store.upToNow();
		const { sheet, log } = store.rig;
		linkOf({ sheet, log: fitForKeeping(log) }).then((fragment) =>
			set(`${location.origin}${location.pathname}${fragment}`),
		);
	}, [store]);
	const copy = () =>
		navigator.clipboard.writeText(link).then(
			() => say(shareWords.copied),
			() => say(shareWords.copyFailed),
		);
	const save = () => {
		store.upToNow();
		saveText(asideWords.fileName, benchText(store.rig, takePlace()));
	};
	return (
		<Dialog open onClose={onClose} title={shareWords.title} closeWords={shareWords.close}>
			<p>{shareWords.words}</p>
			<Field label={shareWords.label} value={link} readOnly onFocus={(event) => event.currentTarget.select()} />
			{link.length > LONG && <p>{shareWords.long(link.length)}</p>}
			<Button look="main" disabled={link === ''} onClick={copy}>
				{shareWords.copy}
			</Button>
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
			<h3>{fileWords.heading}</h3>
			<p>{fileWords.words}</p>
			<div class="bench-ways">
				<Button onClick={save}>{fileWords.save}</Button>
				<OpenFile openOther={openOther} />
			</div>
		</Dialog>
	);
}
