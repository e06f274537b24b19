import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { benchWords, logWords } from '#words/bench/index.ts';
import { Button } from '../../ui/index.ts';
import { eventText } from '../../wording/index.ts';
import { useRig } from '../rig/index.ts';
import { logLines, timeText } from './log.ts';
import { useBench } from './view.ts';

/** Lines shown until more are asked for. */
const FEW = 20;

/** What was done to the rig, latest first, and the ways back. */
export default function Log(): JSX.Element {
	const { store } = useBench();
	useRig(store);
	const [all, showAll] = useState(false);
	const lines = logLines(store.rig.log);
	return (
		<div class="log">
			<div class="log-ways">
				<Button disabled={!store.canUndo} onClick={store.undo}>
					{benchWords.undo}
				</Button>
				<Button disabled={lines.length === 0} onClick={store.restart}>
					{logWords.startAgain}
				</Button>
			</div>
			{lines.length === 0 && <p>{logWords.none}</p>}
			<ol class="log-lines" reversed>
				{(all ? lines : lines.slice(0, FEW)).map(({ key, at, event, pressed }) => (
					<li key={key}>
						<span class="value">{timeText(at)}</span> {eventText(store.rig, event, pressed)}
					</li>
				))}
			</ol>
			{!all && lines.length > FEW && <Button onClick={() => showAll(true)}>{logWords.more(lines.length - FEW)}</Button>}
		</div>
	);
}
