import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { handsText } from '../rig/index.ts';

interface Props {
	task: Pick<Task, 'scene' | 'hands'>;
	says: string;
	/** Its heading, where it has one of its own. */
	children?: ComponentChildren;
	labelledby?: string | undefined;
}

/** A task in words: what is to be done, where, and with what. At work on a phone it is one line, and a press opens the whole. */
export function TaskWords({ task, says, children, labelledby }: Props): JSX.Element {
	const [isWhole, open] = useState(false);
	return (
		<section class="drill-task" data-whole={isWhole} aria-labelledby={labelledby}>
			{children}
			<p class="drill-what">{says}</p>
			<button
				type="button"
				class="fold-line drill-fold"
				aria-expanded={isWhole}
				aria-label={drillWords.wholeTask}
				onClick={() => open(!isWhole)}
			/>
			<p class="drill-where">{`${drillWords.scene[task.scene]} ${drillWords.hands}: ${handsText(task)}.`}</p>
		</section>
	);
}
