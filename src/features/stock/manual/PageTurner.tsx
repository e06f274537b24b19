import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { manualWords as words } from '#words/stock/index.ts';
import { Button, Field, readNumber } from '../../../ui/index.ts';

interface Props {
	number: number;
	pages: number;
	onTurn: (number: number) => void;
}

/** Which page is shown, and the ways to another. */
export function PageTurner({ number, pages, onTurn }: Props): JSX.Element {
	const [typed, type] = useState('');
	const [isWrong, setWrong] = useState(false);
	useEffect(() => {
		type('');
		setWrong(false);
	}, [number]);
	const go = () => {
		const found = readNumber(typed, 1, pages, true);
		if (typeof found === 'number') onTurn(found);
		else setWrong(true);
	};
	return (
		<div class="manual-turner">
			<div class="stock-ways">
				<Button disabled={number <= 1} onClick={() => onTurn(number - 1)}>
					{words.back}
				</Button>
				<p aria-live="polite">{words.pageOf(number, pages)}</p>
				<Button disabled={number >= pages} onClick={() => onTurn(number + 1)}>
					{words.next}
				</Button>
			</div>
			{pages > 3 && (
				<form
					class="stock-ways"
					onSubmit={(event) => {
						event.preventDefault();
						go();
					}}
				>
					<Field
						label={words.goTo}
						inputMode="numeric"
						value={typed}
						error={isWrong ? words.noPage(pages) : undefined}
						onInput={(event) => type(event.currentTarget.value)}
					/>
					<Button type="submit">{words.go}</Button>
				</form>
			)}
		</div>
	);
}
