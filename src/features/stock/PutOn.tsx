import type { JSX } from 'preact';
import { stockWords as words } from '#words/stock/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { Button } from '../../ui/index.ts';
import { nameOf } from './own.ts';

interface PutOnProps {
	entry: StockEntry;
	look: 'main' | 'plain';
	disabled?: boolean;
	onTrouble: (sentence: string | null) => void;
}

/** Opens a bench with this fixture on it. The bench that is kept there is set aside by the bench itself. */
export function PutOn({ entry, look, disabled = false, onTrouble }: PutOnProps): JSX.Element {
	const put = async () => {
		try {
			const { benchAddress } = await import('./onBench.ts');
			const address = await benchAddress(entry);
			if (address === null) onTrouble(words.fixOf(nameOf(entry)));
			else location.assign(address);
		} catch {
			onTrouble(words.putFailed);
		}
	};
	return (
		<Button look={look} disabled={disabled} aria-label={words.putOne(nameOf(entry))} onClick={put}>
			{words.put}
		</Button>
	);
}
