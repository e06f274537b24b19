import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { unseenWords } from '#words/drills/index.ts';
import type { Mark, Task } from '../../../sim/drill/index.ts';
import { strangerPresses } from '../../../sim/drill/trusted.ts';
import { openUnharmed } from '../../../sim/rig/trusted.ts';

/** How it went on a panel never seen: against a careful stranger, and against who knows the panel. */
export default function Stranger({ drill, mark }: { drill: Task; mark: Mark }): JSX.Element | null {
	const needed = useMemo(() => strangerPresses(drill, openUnharmed(drill.sheet)), [drill]);
	if (needed === null) return null;
	return <p class="drill-stranger">{unseenWords.against(mark.presses, needed, mark.fewest)}</p>;
}
