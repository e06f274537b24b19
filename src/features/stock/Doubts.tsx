import type { JSX } from 'preact';
import { figuresFrame, figureWords } from '#words/stock/index.ts';
import type { Figure, FigureCode } from '../../../shared/stock/index.ts';

type FigureText = { readonly is: (facts: never) => string; readonly matters: string };
const WORDS: Readonly<Record<FigureCode, FigureText>> = figureWords;

const figureText = ({ code, facts }: Figure): string => WORDS[code].is(facts as never);

interface Props {
	figures: readonly Figure[];
	lead?: string;
	/** Sentences on what is assumed besides the figures. */
	besides?: readonly string[];
}

/** The check list of doubt: what is assumed, with what it makes uncertain; and what was given. */
export function Doubts({ figures, lead = figuresFrame.lead, besides = [] }: Props): JSX.Element {
	const assumed = figures.filter(({ is }) => is === 'assumed');
	const given = figures.filter(({ is }) => is === 'given');
	return (
		<details class="stock-doubts">
			<summary class="fold-line">
				<strong>{figuresFrame.heading}</strong> {figuresFrame.count(assumed.length + besides.length, given.length)}
			</summary>
			<p>{lead}</p>
			<ul>
				{besides.map((says, i) => (
					<li key={i}>{says}</li>
				))}
				{assumed.map((figure, i) => (
					<li key={i}>
						<strong>{figureText(figure)}.</strong> {WORDS[figure.code].matters}
					</li>
				))}
			</ul>
			{given.length > 0 && (
				<>
					<h3>{figuresFrame.given}</h3>
					<ul>
						{given.map((figure, i) => (
							<li key={i}>{figureText(figure)}</li>
						))}
					</ul>
				</>
			)}
		</details>
	);
}
