import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { paperWords, trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Notice } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import { HandingWays } from '../HandingWays.tsx';
import type { OpenedPaper, WaysToHand } from '../protocol.ts';

interface Props {
	ask: AskRoute;
	opened: OpenedPaper | null;
	/** False while nobody has asked for a paper. */
	started: boolean;
	/** Told when it goes out, so that it is kept. */
	onGiven: () => void;
}

/** Characters of a link that every way of sending carries. */
const SHORT_LINK = 2000;

/** Ways to give the paper out: link, code, file, paper. */
export function GiveOut({ ask, opened, started, onGiven }: Props): JSX.Element {
	const [handing, hand] = useState<WaysToHand | null>(null);
	const [trouble, tell] = useState('');
	useEffect(() => {
		hand(null);
		tell('');
		if (!opened) return;
		let gone = false;
		const { recipe, seed } = opened;
		ask('papers.handPaper', { recipe, seed, page: new URL('/papers/sit/', location.href).href }).then(
			(found) => {
				if (!gone) hand(found);
			},
			(error: unknown) => tell(troubleText(error)),
		);
		return () => {
			gone = true;
		};
	}, [opened]);
	if (trouble !== '') return <Notice kind="wrong">{trouble}</Notice>;
	if (!opened) return <p class="build-soft">{started ? trainerWords.giveNot : trainerWords.giveUnset}</p>;
	if (!handing) return <p class="papers-wait">{paperWords.loading}</p>;
	const fragment = handing.link.slice(handing.link.indexOf('#'));
	return (
		// any way of giving it out counts; which one does not matter
		<div class="give" onClickCapture={onGiven}>
			<p>{trainerWords.giveLead}</p>
			<HandingWays handing={handing} label={trainerWords.link} what={trainerWords.linkWhat} title={opened.view.title} />
			{handing.link.length > SHORT_LINK && <p class="build-soft">{trainerWords.linkLong(handing.link.length)}</p>}
			<div class="papers-ways">
				<Button href={`/papers/sit/${fragment}`} target="_blank">
					{trainerWords.open}
				</Button>
				<Button href={`/papers/print/${fragment}`} target="_blank">
					{trainerWords.print}
				</Button>
			</div>
		</div>
	);
}
