import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { reviewWords as words } from '#words/review/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { DEVICE, Keeping, Trouble } from '../../storage/index.ts';
import { Live } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import {
	type Deck,
	deckShelf,
	deckText,
	dueNow,
	importDeck,
	merged,
	NO_DECK,
	type RecallOutcome,
	withAsked,
} from '../deck/index.ts';
import { Sitting } from './Sitting.tsx';
import { Skills } from './Skills.tsx';
import { Standing } from './Standing.tsx';
import { type Names, skillViews } from './view.ts';

interface Props {
	names: Names;
}

/** What was learnt: what is due now, asked in one sitting; how all of it stands; and what is kept. */
export function Review({ names }: Props): JSX.Element {
	const [found, setFound] = useState<Awaited<ReturnType<typeof deckShelf.open>> | null>(null);
	const [sitting, setSitting] = useState<readonly string[] | null>(null);
	const [now, setNow] = useState(Date.now);
	const [said, say] = useState('');
	useEffect(() => void deckShelf.open(DEVICE).then(setFound), []);
	const deck = found?.kept ?? NO_DECK;
	const views = useMemo(() => skillViews(deck, names, now), [deck, now]);
	if (!found) return <p>{words.loading}</p>;

	const change = async (next: (own: Deck) => Deck, told = '') => {
		setFound(await deckShelf.change(DEVICE, next));
		setNow(Date.now());
		say(told);
	};
	const take = async (text: string) => {
		try {
			const { kept, damaged } = await importDeck(text);
			const left = Object.keys(damaged).length;
			await change(
				(own) => merged(own, kept),
				words.imported(kept.size) + (left > 0 ? ` ${words.importedDamaged(left)}` : ''),
			);
		} catch (error) {
			if (!isInputError(error)) throw error;
			say(await errorTextLater(error));
		}
	};
	if (sitting)
		return (
			<Sitting
				skills={sitting}
				onAsked={(skill: string, outcome: RecallOutcome) => change((own) => withAsked(own, skill, outcome, Date.now()))}
				onEnd={() => {
					setSitting(null);
					setNow(Date.now());
				}}
				more={dueNow(deck, now).length > 0}
			/>
		);
	return (
		<div class="review">
			<Trouble
				words={words}
				found={found}
				aside={() => deckShelf.aside(DEVICE)}
				onDone={() => setFound({ ...found, damaged: null })}
			/>
			<Standing deck={deck} views={views} now={now} onStart={() => setSitting(dueNow(deck, Date.now()))} />
			{views.length > 0 && <Skills views={views} />}
			<Keeping
				words={words}
				text={deck.size === 0 ? null : deckText(deck)}
				onExported={() => say(words.exported)}
				onImport={take}
				onClear={() => {
					deckShelf.clear(DEVICE);
					change(() => NO_DECK, words.cleared);
				}}
				said={said}
			/>
			<Live text={said} />
		</div>
	);
}
