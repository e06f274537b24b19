import type { JSX } from 'preact';
import { stepNames, stepShort, tickWords } from '#words/plan/index.ts';
import type { RowStep } from '../../../shared/plan/index.ts';
import { Button, Live, useAwake } from '../../ui/index.ts';

interface Props {
	/** Null where all is ticked. */
	next: RowStep | null;
	/** Name of the fixture that is next. */
	name: string;
	/** Whether its card is open: what is not in sight is shown first, with its cautions, and ticked then. */
	isOpen: boolean;
	/** What is unsafe about the row whose card is open, in words: it must not scroll out of sight. */
	warnings: readonly string[];
	onTick: (at: RowStep) => void;
	onShow: (row: string) => void;
	onLater: (at: RowStep) => void;
}

/** What is next, in reach of the thumb. */
export function TickBar({ next, name, isOpen, warnings, onTick, onShow, onLater }: Props): JSX.Element {
	useAwake();
	const warned = (
		<>
			{warnings.map((each) => (
				<p key={each} class="tick-told">
					{each}
				</p>
			))}
			<Live text={warnings.join(' ')} urgent />
		</>
	);
	if (!next)
		return (
			<div class="thumb-bar tick-bar" data-task-bar>
				{warned}
				<p class="tick-next">{tickWords.allDone}</p>
			</div>
		);
	const short = stepShort[next.step];
	return (
		<section class="thumb-bar tick-bar" data-task-bar aria-label={tickWords.next}>
			{warned}
			<p class="tick-next">
				<span class="rig-soft">{tickWords.next}</span> <strong>{name}</strong>: {stepNames[next.step]}
			</p>
			{isOpen ? (
				<Button look="main" data-buzz="done" aria-label={tickWords.tickOne(short, name)} onClick={() => onTick(next)}>
					{tickWords.tick}
				</Button>
			) : (
				<Button look="main" aria-label={tickWords.goToOne(name)} onClick={() => onShow(next.row)}>
					{tickWords.goTo}
				</Button>
			)}
			<Button look="quiet" aria-label={tickWords.laterOne(short, name)} onClick={() => onLater(next)}>
				{tickWords.later}
			</Button>
		</section>
	);
}
