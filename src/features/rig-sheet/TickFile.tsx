import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { planWords, startWords, tickWords } from '#words/plan/index.ts';
import { NotFetched } from '../../../shared/error/index.ts';
import { mergedTicks, newIn, type RigTicks } from '../../../shared/plan/index.ts';
import { MOST_READ } from '../../storage/index.ts';
import { FileButton } from '../../ui/index.ts';
import { readPlanText } from './reading.ts';

interface Props {
	/** Id of the rig that is open. */
	id: string;
	/** Changes its ticks. @returns them as they are then */
	onTicks: (how: (ticks: RigTicks) => RigTicks) => RigTicks;
}

/** Ticks of another phone, from a file that it saved. */
export function TickFile({ id, onTicks }: Props): JSX.Element {
	const [said, say] = useState('');
	const read = async (text: string): Promise<string> => {
		const found = await readPlanText(text);
		if (found.is === 'newer') return startWords.newer;
		if (found.is !== 'plan' || !found.ticks) return tickWords.badFile;
		if (found.id !== id) return tickWords.otherRig;
		const { ticks } = found;
		let came = newIn(ticks, ticks);
		onTicks((all) => {
			came = newIn(all, ticks);
			return mergedTicks(all, ticks);
		});
		return tickWords.brought(came.count, came.by);
	};
	const brought = (text: string): Promise<string> =>
		read(text).catch((error) => (error instanceof NotFetched ? planWords.failed : tickWords.badFile));
	return (
		<>
			<FileButton
				accept="application/json,.json"
				onFile={async (file) => say(file.size > MOST_READ.saved ? tickWords.badFile : await brought(await file.text()))}
				onUnread={say}
			>
				{tickWords.bring}
			</FileButton>
			<p role="status">{said}</p>
		</>
	);
}
