import type { JSX } from 'preact';
import { drills, drillWords } from '#words/drills/index.ts';
import type { Drill } from '../../../sim/drill/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { DrillCautions } from './DrillCautions.tsx';

/** Before the first hand is laid on: why it is worth doing, what it would disturb, and every caution of the drill. */
export function Begin({ drill, onBegin }: { drill: Drill; onBegin: () => void }): JSX.Element {
	return (
		<div class="drill-begin">
			<p>{drills[drill.kind].why}</p>
			{drill.disturbs && (
				<Notice kind="wrong" word={drillWords.disturbs}>
					<p>{drillWords.disturbsWords}</p>
				</Notice>
			)}
			<div>
				<Button look="main" onClick={onBegin}>
					{drill.disturbs ? drillWords.beginAnyway : drillWords.begin}
				</Button>
			</div>
			{drill.cautions.length > 0 && <DrillCautions ids={drill.cautions} />}
		</div>
	);
}
