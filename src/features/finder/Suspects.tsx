import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { suspectWords } from '#words/finder/index.ts';
import { Button, Title } from '../../ui/index.ts';
import { Bar } from './Bar.tsx';
import { lineOf, part, shareText } from './verdict.ts';
import type { SuspectView } from './view.ts';

/** Suspects of each part shown until more are asked for. */
const FEW = 8;

interface Props {
	suspects: readonly SuspectView[];
	/** Whether a repair has helped. */
	isRepaired: boolean;
	turn: number;
}

/** The set that still fits, always in view: a line with the heaviest three, and the whole of it behind. */
export function Suspects({ suspects, isRepaired, turn }: Props): JSX.Element {
	const [open, set] = useState(false);
	// a new check begins at its own words, not under a long list
	useEffect(() => set(false), [turn]);
	const list = useId();
	const { fitting, against, unknown } = part(suspects);
	const { count, named } = lineOf(suspects, isRepaired);
	return (
		<section class="suspects" data-open={open} aria-label={suspectWords.title}>
			<button
				type="button"
				class="fold-line suspects-line"
				aria-expanded={open}
				aria-controls={list}
				onClick={() => set(!open)}
			>
				<span class="suspects-count" data-fitting={fitting.length}>
					{count}
				</span>
				<span class="suspects-top">
					{named.map(({ id, name, share }) => (
						<span key={id} class="suspects-one">
							<span class="suspects-name">{name}</span> <span class="value">{shareText(share)}</span>
						</span>
					))}
				</span>
				<span class="visually-hidden">{open ? suspectWords.hide : suspectWords.show}</span>
			</button>
			<div class="suspects-list" id={list}>
				<Title level={2}>{suspectWords.title}</Title>
				<Part title={suspectWords.fitting} suspects={unknown ? [...fitting, unknown] : fitting} />
				<Part title={suspectWords.against} suspects={against} />
			</div>
		</section>
	);
}

function Part({ title, suspects }: { title: string; suspects: readonly SuspectView[] }): JSX.Element | null {
	const [all, showAll] = useState(false);
	if (suspects.length === 0) return null;
	return (
		<>
			<h3>{title}</h3>
			<ul class="suspects-part">
				{(all ? suspects : suspects.slice(0, FEW)).map((suspect) => (
					<One key={suspect.id} suspect={suspect} />
				))}
			</ul>
			{!all && suspects.length > FEW && (
				<Button look="quiet" onClick={() => showAll(true)}>
					{suspectWords.more(suspects.length - FEW)}
				</Button>
			)}
		</>
	);
}

function One({ suspect: { id, name, more, share, against } }: { suspect: SuspectView }): JSX.Element {
	return (
		<li data-suspect={id}>
			<p class="suspect-name">
				<span>{name}</span> <span class="value">{shareText(share)}</span>
			</p>
			{more !== null && <p class="suspect-against">{more}</p>}
			<Bar share={share} />
			{against.map(({ check, seen, predicted }) => (
				<p key={check} class="suspect-against">
					{suspectWords.ruledOut(check, seen, predicted)}
				</p>
			))}
		</li>
	);
}
