import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { sitWords } from '#words/papers/index.ts';
import { isInputError, NotFetched } from '../../../../shared/error/index.ts';
import { loadSheet } from '../../../../shared/sheet/index.ts';
import { why } from '../../../../sim/rig/index.ts';
import { openUnharmed } from '../../../../sim/rig/trusted.ts';
import { describeFixture, fixtureName, reasonStage, reasonText } from '../../../wording/index.ts';

interface Trail {
	readonly fixture: string;
	readonly steps: readonly { readonly stage: string; readonly text: string }[];
	readonly end: string;
}

/** Fixtures whose trail is told: more would drown what the question was about. */
const MOST_TRAILS = 2;

/** What the rig itself says of a question's bench, from source to lamp. @param sheet as JSON */
export default function OnTheRig({ sheet }: { sheet: string }): JSX.Element {
	const [trails, tell] = useState<readonly Trail[] | null>(null);
	useEffect(() => {
		let isLeft = false;
		void trailsOf(sheet).then((found) => {
			if (!isLeft) tell(found);
		});
		return () => {
			isLeft = true;
		};
	}, [sheet]);
	return (
		<>
			{trails?.map(({ fixture, steps, end }) => (
				<div key={fixture} class="sit-trail-of">
					<p class="sit-trail-name">{fixture}</p>
					<ol class="sit-trail">
						{steps.map(({ stage, text }) => (
							<li key={`${stage} ${text}`}>
								<strong>{stage}.</strong> {text}
							</li>
						))}
					</ol>
					<p>{end}</p>
				</div>
			))}
			{trails?.length === 0 && <p>{sitWords.trailNone}</p>}
		</>
	);
}

async function trailsOf(text: string): Promise<readonly Trail[]> {
	try {
		const sheet = await loadSheet(JSON.parse(text));
		const rig = openUnharmed(sheet);
		// data has to have come by once
		rig.wait(100);
		return sheet.fixtures.slice(0, MOST_TRAILS).map(({ id }) => ({
			fixture: fixtureName(rig, id),
			steps: why(rig, id).map((reason) => ({ stage: reasonStage(reason), text: reasonText(rig, id, reason) })),
			end: describeFixture(rig, id),
		}));
	} catch (error) {
		if (!isInputError(error) && !(error instanceof NotFetched)) throw error;
		return [];
	}
}
