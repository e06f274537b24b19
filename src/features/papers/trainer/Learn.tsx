import type { JSX } from 'preact';
import { learnWords, trainerWords } from '#words/papers/index.ts';
import type { PaperRecipe } from '../../../../shared/paper/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button } from '../../../ui/index.ts';
import { CountButton } from './CountButton.tsx';
import { Scores, ShareBar } from './plots.tsx';
import type { ItemView, LearnView, RowView } from './views.ts';

interface Props {
	/** Null with nobody to learn from. */
	learn: LearnView | null;
	/** Results there are, counted or not. */
	rows: readonly RowView[];
	ask: AskRoute;
	onChanged: () => Promise<void>;
	onNext: (recipe: PaperRecipe) => void;
}

/** What a paper shows once people have sat it: what to go over again, and which questions are at fault themselves. */
export function Learn({ learn, rows, ask, onChanged, onNext }: Props): JSX.Element {
	const leftOut = <LeftOut rows={rows} ask={ask} onChanged={onChanged} />;
	if (!learn)
		return (
			<div class="learn">
				<p class="build-soft">{rows.length > 0 ? trainerWords.learnNoneFits : trainerWords.learnNone}</p>
				{leftOut}
			</div>
		);
	return (
		<div class="learn">
			<div class="learn-top">
				<div class="learn-card">
					<h3>{trainerWords.plotScores}</h3>
					<Scores tenths={learn.tenths} pass={learn.pass} words={tenthsText(learn.tenths)} />
					{learn.says.map((says) => (
						<p key={says}>{says}</p>
					))}
				</div>
				<div class="learn-card">
					<h3>{learnWords.kr20}</h3>
					{learn.steady.map((says) => (
						<p key={says}>{says}</p>
					))}
				</div>
				<div class="learn-card learn-next">
					<h3>{trainerWords.next}</h3>
					<p>{learn.next ? learn.next.why : trainerWords.nextNone}</p>
					{learn.next && (
						<Button look="main" onClick={() => learn.next && onNext(learn.next.recipe)}>
							{trainerWords.nextDo}
						</Button>
					)}
				</div>
			</div>
			{leftOut}
			<div class="learn-groups">
				<section aria-labelledby="learn-topics">
					<h3 id="learn-topics">{trainerWords.perTopic}</h3>
					<p class="build-soft">{learnWords.topicFirst}</p>
					<ul class="learn-list">
						{learn.topics.map(({ id, name, says, short, ...span }) => (
							<li key={id}>
								<span class="learn-name">{name}</span>
								<ShareBar {...span} bare={short !== null} />
								<span class="build-soft">{short === null ? says : `${says}. ${short}`}</span>
							</li>
						))}
					</ul>
				</section>
				<section aria-labelledby="learn-people">
					<h3 id="learn-people">{trainerWords.perPerson}</h3>
					<ul class="learn-list">
						{learn.persons.map(({ attempt, name, says, weak }) => (
							<li key={attempt}>
								<span class="learn-name">{name}</span>
								<span class="value">{says}</span>
								<span class="build-soft">{weak}</span>
							</li>
						))}
					</ul>
				</section>
			</div>
			<section aria-labelledby="learn-items">
				<h3 id="learn-items">{trainerWords.perQuestion}</h3>
				<p class="build-soft">{learnWords.bars}</p>
				{learn.hint !== null && <p>{learn.hint}</p>}
				<ol class="learn-items">
					{learn.items.map((item) => (
						<Item key={item.id} item={item} />
					))}
				</ol>
			</section>
		</div>
	);
}

/** Who is not counted, each with the reason, and one tap to count it. */
function LeftOut({ rows, ask, onChanged }: Pick<Props, 'rows' | 'ask' | 'onChanged'>): JSX.Element | null {
	const out = rows.filter(({ counts }) => !counts);
	if (out.length === 0) return null;
	return (
		<section class="learn-card learn-left" aria-labelledby="learn-left">
			<h3 id="learn-left">{learnWords.leftOutHead}</h3>
			<p class="build-soft">{learnWords.leftOutLead}</p>
			<ul class="learn-list">
				{out.map((row) => (
					<li key={row.attempt}>
						<span class="learn-name">{row.label}</span>
						<span class="value">{`${row.score} / ${row.of}`}</span>
						<span class="build-soft">{row.standing}</span>
						<CountButton ask={ask} row={row} onChanged={onChanged} />
					</li>
				))}
			</ul>
		</section>
	);
}

/** One question: its bar at a glance, its figures in sentences once opened. */
function Item({ item }: { item: ItemView }): JSX.Element {
	const { at, text, share, low, high, finding, marked, says, drew, topicName, key } = item;
	return (
		<li>
			<details class="learn-item" data-marked={marked}>
				<summary>
					<span class="learn-at">{at}</span>
					<span class="learn-text">{text}</span>
					<ShareBar share={share} low={low} high={high} />
					<span class="value learn-share">{Math.round(share * 100)} %</span>
					<span class="learn-finding">{finding}</span>
				</summary>
				<div class="learn-more">
					<p class="build-soft">{topicName}</p>
					<p>{text}</p>
					<p>
						<strong>{trainerWords.right}:</strong> {key}
					</p>
					<ul>
						{says.map((each) => (
							<li key={each}>{each}</li>
						))}
					</ul>
					{drew.length > 0 && (
						<>
							<h4>{learnWords.drewHead}</h4>
							<ul>
								{drew.map((each) => (
									<li key={each.says}>
										{each.says}
										{each.mistake !== null && <span class="learn-mistake"> {each.mistake}</span>}
									</li>
								))}
							</ul>
						</>
					)}
				</div>
			</details>
		</li>
	);
}

/** The tenths that anybody scored in, for who cannot see the bars. */
const tenthsText = (tenths: readonly number[]): string =>
	tenths
		.flatMap((n, at) => (n > 0 ? [trainerWords.plotBand(at * 10, at === 9 ? 100 : at * 10 + 9, n)] : []))
		.join('; ');
