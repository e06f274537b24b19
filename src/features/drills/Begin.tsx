import type { JSX } from 'preact';
import { drillWords } from '#words/drills/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { DrillCautions } from './DrillCautions.tsx';

interface Props {
	task: Task;
	/** Why it is worth doing. */
	why?: string;
	onBegin: () => void;
}

/** Before the first hand is laid on: why it is worth doing, what it would disturb, and every caution of the task. */
export function Begin({ task, why, onBegin }: Props): JSX.Element {
	return (
		<div class="drill-begin">
			{why !== undefined && <p>{why}</p>}
			{task.disturbs && (
				<Notice kind="wrong" word={drillWords.disturbs}>
					<p>{drillWords.disturbsWords}</p>
				</Notice>
			)}
			<div>
				<Button look="main" onClick={onBegin}>
					{task.disturbs ? drillWords.beginAnyway : drillWords.begin}
				</Button>
			</div>
			{task.cautions.length > 0 && <DrillCautions ids={task.cautions} />}
		</div>
	);
}
