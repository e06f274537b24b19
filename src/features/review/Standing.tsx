import type { JSX } from 'preact';
import { reviewWords as words } from '#words/review/index.ts';
import { Button } from '../../ui/index.ts';
import { type Deck, dueNow, nextDue, SITTING } from '../deck/index.ts';
import { countStandings, type SkillView, STANDINGS, whenText } from './view.ts';

interface Props {
	deck: Deck;
	views: readonly SkillView[];
	now: number;
	onStart: () => void;
}

/** What is due, and a bar of how all that was learnt stands. */
export function Standing({ deck, views, now, onStart }: Props): JSX.Element {
	const due = dueNow(deck, now).length;
	const next = nextDue(deck);
	const counts = countStandings(views);
	const minutes = Math.max(1, Math.round((due * SITTING.minutes) / SITTING.most));
	return (
		<section class="review-standing" aria-labelledby="review-due">
			<h2 id="review-due" tabIndex={-1}>
				{deck.size === 0 ? words.nothingYet : due === 0 ? words.allDone : words.due(due)}
			</h2>
			{deck.size === 0 && <p>{words.nothingYetWords}</p>}
			{due > 0 && <p>{words.takes(minutes)}</p>}
			{due === 0 && next !== null && <p>{words.nextDue(whenText(next, now))}</p>}
			{due > 0 && (
				<Button look="main" onClick={onStart}>
					{words.start}
				</Button>
			)}
			{deck.size === 0 && (
				<Button look="main" href="/lessons/">
					{words.lessons}
				</Button>
			)}
			{views.length > 0 && (
				<>
					<div class="review-bar" role="img" aria-label={words.chart}>
						{STANDINGS.filter((standing) => counts[standing] > 0).map((standing) => (
							<span key={standing} data-standing={standing} style={`flex-grow: ${counts[standing]}`} />
						))}
					</div>
					<dl class="review-counts">
						{STANDINGS.map((standing) => (
							<div key={standing} data-standing={standing}>
								<dt>{words.standing[standing]}</dt>
								<dd>
									<strong>{counts[standing]}</strong> {words.standingWords[standing]}
								</dd>
							</div>
						))}
					</dl>
				</>
			)}
		</section>
	);
}
