import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { type CauseGroup, causesOf, findingName } from '../../../sim/drill/trusted.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { findingText, followTexts } from '../../wording/index.ts';

/** What is wrong on a marked rig: causes, and under each what follows from it. */
export default function Causes({ drill, rig }: { drill: Task; rig: Rig }): JSX.Element {
	const groups = useMemo(() => causesOf(drill, rig), [drill, rig]);
	const causes = groups.reduce((sum, group) => sum + group.causes.length, 0);
	const follows = groups.reduce((sum, group) => sum + group.follows.length, 0);
	return (
		<>
			<p>{drillWords.causeCount(causes, follows)}</p>
			<ul class="drill-wrong" aria-label={drillWords.wrong}>
				{groups.map((group, i) => (
					<Group key={i} drill={drill} group={group} />
				))}
			</ul>
		</>
	);
}

/** Causes that belong together, each as a line, and under the last what follows from them: of the same kind in one line. */
function Group({ drill, group: { causes, follows } }: { drill: Task; group: CauseGroup }): JSX.Element {
	const last = causes.at(-1);
	return (
		<>
			{causes.map((finding) => (
				<li key={findingName(finding)}>
					{findingText(drill, finding)}
					{finding === last && follows.length > 0 && (
						<>
							{` ${drillWords.therefore.one}`}
							<ul class="drill-therefore">
								{followTexts(drill, follows).map((text) => (
									<li key={text}>{text}</li>
								))}
							</ul>
						</>
					)}
				</li>
			))}
		</>
	);
}
