import type { JSX } from 'preact';
import type { QuestionView } from './view.ts';

/** The chart a question prints: what is said over it, and its lines. */
export function Chart({ chart }: Pick<QuestionView, 'chart'>): JSX.Element | null {
	if (!chart) return null;
	return (
		<figure class="papers-chart">
			<figcaption>{chart.over}</figcaption>
			<ul>
				{chart.lines.map((line) => (
					<li key={line}>{line}</li>
				))}
			</ul>
		</figure>
	);
}
