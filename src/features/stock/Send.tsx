import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { fileWords, stockWords as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button, Field, Live } from '../../ui/index.ts';
import { linkOf } from './keep.ts';
import { nameOf } from './own.ts';
import { PutOn } from './PutOn.tsx';
import { SaveGdtf } from './SaveGdtf.tsx';
import { stockText } from './stock.ts';

interface Props {
	entry: StockEntry;
	/** Null where its chart has to be put right first. */
	profile: Profile | null;
	onTrouble: (sentence: string | null) => void;
}

/** What can be done with a fixture: onto the bench, out as a link or a file. */
export function Send({ entry, profile, onTrouble }: Props): JSX.Element {
	const [said, say] = useState('');
	const [link, setLink] = useState<string | null>(null);
	const [isWriting, write] = useState(false);
	const name = nameOf(entry);
	const share = async () => {
		const address = `${location.origin}/stock/${await linkOf(new Map([[entry.id, entry]]))}`;
		setLink(address);
		await navigator.clipboard.writeText(address).then(
			() => say(words.shared),
			() => say(words.shareFailed),
		);
	};
	return (
		<>
			<div class="stock-ways">
				<PutOn entry={entry} look="main" disabled={!profile} onTrouble={onTrouble} />
				<Button aria-label={words.shareOne(name)} onClick={share}>
					{words.share}
				</Button>
				<Button onClick={() => saveText(words.fileName, stockText(new Map([[entry.id, entry]])))}>{words.save}</Button>
				<Button aria-label={fileWords.writeOne(name)} disabled={!profile} onClick={() => write(true)}>
					{fileWords.write}
				</Button>
			</div>
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
			{link !== null && (
				<Field label={words.shareLabel} value={link} readOnly onFocus={(event) => event.currentTarget.select()} />
			)}
			{isWriting && profile && <SaveGdtf profile={profile} onClose={() => write(false)} />}
		</>
	);
}
