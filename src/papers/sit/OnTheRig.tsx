import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sitWords } from '../../../content/papers/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import { linkOf } from '../../rig/index.ts';
import { Button } from '../../ui/index.ts';
import { describeFixture, fixtureName, reasonStage, reasonText } from '../../words/index.ts';

interface Trail {
	readonly fixture: string;
	readonly steps: readonly { readonly stage: string; readonly text: string }[];
	readonly end: string;
}

/** What the rig itself says of a question's bench, from source to lamp, and the link that opens it. @param sheet as JSON */
export default function OnTheRig({ sheet: text }: { sheet: string }): JSX.Element | null {
	const [trails, tell] = useState<readonly Trail[]>([]);
	const [link, set] = useState('');
	useEffect(() => {
		try {
			const sheet = readSheet(JSON.parse(text));
			void linkOf({ sheet, log: [] }).then((fragment) => set(`/bench/${fragment}`));
			const rig = openRig(sheet);
			// data has to have come by once
			rig.wait(100);
			tell(
				sheet.fixtures.slice(0, MOST_TRAILS).map(({ id }) => ({
					fixture: fixtureName(rig, id),
					steps: rig.why(id).map((reason) => ({ stage: reasonStage(reason), text: reasonText(rig, id, reason) })),
					end: describeFixture(rig, id),
				})),
			);
		} catch (error) {
			if (!isInputError(error)) throw error;
		}
	}, [text]);
	if (link === '') return null;
	return (
		<div class="sit-rig">
			<details>
				<summary>{sitWords.trail}</summary>
				{trails.map(({ fixture, steps, end }) => (
					<div key={fixture}>
						<p class="sit-trail-name">{fixture}</p>
						<ol class="sit-trail">
							{steps.map(({ stage, text: says }) => (
								<li key={`${stage} ${says}`}>
									<strong>{stage}.</strong> {says}
								</li>
							))}
						</ol>
						<p>{end}</p>
					</div>
				))}
			</details>
			<Button href={link} target="_blank" rel="noopener">
				{sitWords.tryIt}
			</Button>
		</div>
	);
}

/** Fixtures whose trail is told: more would drown what the question was about. */
const MOST_TRAILS = 2;
