import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { shareWords } from '../../../content/en/bench/index.ts';
import { Button, Dialog, Field, Live } from '../../ui/index.ts';
import { fitForKeeping, linkOf, type RigStore } from '../rig/index.ts';

/** Characters past which some apps cut a link short (common practice, no source). */
const LONG = 8000;

/** The bench as a link, made when it is opened and not kept up with what happens after. */
export default function Share({ store, onClose }: { store: RigStore; onClose: () => void }): JSX.Element {
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
		</Dialog>
	);
}
