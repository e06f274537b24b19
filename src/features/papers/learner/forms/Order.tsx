import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import { Button, Live } from '../../../../ui/index.ts';
import type { OptionView } from '../../view.ts';
import { inOrder, moved } from '../typed.ts';

interface Props {
	labelledby: string;
	options: readonly OptionView[];
	/** Null before anything was moved or kept. */
	order: readonly string[] | null;
	disabled: boolean;
	onChange: (order: readonly string[]) => void;
}

/** A list to put in order, by a button up and a button down at each: no dragging. The focus goes along with what is moved. */
export function Order({ labelledby, options, order, disabled, onChange }: Props): JSX.Element {
	const list = useRef<HTMLOListElement>(null);
	const [said, say] = useState('');
	const shown = inOrder(options, order ?? []);
	const ids = shown.map(({ id }) => id);
	const move = (at: number, by: -1 | 1) => {
		const next = moved(ids, at, by);
		if (next === ids) return;
		onChange(next);
		say(sitWords.movedTo(shown[at]?.text ?? '', at + by + 1));
		// the row is drawn elsewhere by then
		requestAnimationFrame(() => {
			const row = list.current?.children[at + by];
			const same = row?.querySelector<HTMLButtonElement>(`[data-by="${by}"]:not(:disabled)`);
			(same ?? row?.querySelector<HTMLButtonElement>('button:not(:disabled)'))?.focus();
		});
	};
	return (
		<>
			<ol class="sit-order" ref={list} aria-labelledby={labelledby}>
				{shown.map(({ id, text }, at) => (
					<li key={id}>
						<span class="sit-place" aria-hidden="true">
							{at + 1}
						</span>
						<span class="sit-order-text">{text}</span>
						<Button
							data-by="-1"
							aria-label={sitWords.up(text)}
							disabled={disabled || at === 0}
							onClick={() => move(at, -1)}
						>
							<Arrow up />
						</Button>
						<Button
							data-by="1"
							aria-label={sitWords.down(text)}
							disabled={disabled || at === shown.length - 1}
							onClick={() => move(at, 1)}
						>
							<Arrow />
						</Button>
					</li>
				))}
			</ol>
			{order === null && !disabled && <Button onClick={() => onChange(ids)}>{sitWords.keepOrder}</Button>}
			<Live text={said} />
		</>
	);
}

const Arrow = ({ up = false }: { up?: boolean }): JSX.Element => (
	<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
		<path
			d={up ? 'M10 17V4m-6 6 6-6 6 6' : 'M10 3v13m-6-6 6 6 6-6'}
			fill="none"
			stroke="currentColor"
			stroke-width="2.5"
		/>
	</svg>
);
