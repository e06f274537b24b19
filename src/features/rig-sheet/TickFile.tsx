import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { planWords, startWords, tickWords } from '#words/plan/index.ts';
import { NotFetched } from '../../../shared/error/index.ts';
import { mergedTicks, newIn, type RigTicks } from '../../../shared/plan/index.ts';
import { MOST_READ } from '../../storage/index.ts';
import { Button } from '../../ui/index.ts';
import { readPlanText } from './reading.ts';

interface Props {
	/** Id of the rig that is open. */
	id: string;
	/** Changes its ticks. @returns them as they are then */
	onTicks: (how: (ticks: RigTicks) => RigTicks) => RigTicks;
}

/** Ticks of another phone, from a file that it saved. */
export function TickFile({ id, onTicks }: Props): JSX.Element {
	const input = useRef<HTMLInputElement>(null);
	const [said, say] = useState('');
	const read = async (file: File): Promise<string> => {
		if (file.size > MOST_READ.saved) return tickWords.badFile;
		const found = await readPlanText(await file.text());
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
	return (
		<>
			<Button onClick={() => input.current?.click()}>{tickWords.bring}</Button>
			<input
				ref={input}
				type="file"
				accept="application/json,.json"
				aria-label={tickWords.bring}
				hidden
				onChange={(event) => {
					const { currentTarget: chosen } = event;
					const [file] = chosen.files ?? [];
					if (file)
						void read(file).then(say, (error) =>
							say(error instanceof NotFetched ? planWords.failed : tickWords.badFile),
						);
					chosen.value = '';
				}}
			/>
			<p role="status">{said}</p>
		</>
	);
}
