import type { JSX } from 'preact';
import { reviewWords as words } from '#words/review/index.ts';
import { Title } from '../../ui/index.ts';
import type { SkillView } from './view.ts';

/** All that was learnt, what fades first on top. */
export function Skills({ views }: { views: readonly SkillView[] }): JSX.Element {
	return (
		<section class="review-skills" aria-labelledby="review-skills">
			<Title level={2} id="review-skills">
				{words.skills}
			</Title>
			<ul>
				{views.map(({ skill, name, standing, recall, comes }) => (
					<li key={skill} data-standing={standing}>
						<span class="review-name">{name}</span>
						<span class="review-how">
							<strong>{words.standing[standing]}</strong>
							{recall === null ? '' : `, ${words.recall(recall)}`}; {words.comes(comes)}
						</span>
					</li>
				))}
			</ul>
		</section>
	);
}
