import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { unseen } from '../invented/index.ts';
import { openProgress } from '../progress/index.ts';
import { seedFor } from './link.ts';
import { type SetTaskProps, TaskGoes } from './TaskGoes.tsx';

/** A task on a panel that nobody has seen, of another law than the last one that was begun here. */
export default function SetTaskUnseen(props: SetTaskProps): JSX.Element {
	const [first, set] = useState<number | null>(null);
	useEffect(() => {
		void openProgress(DEVICE).then(({ progress }) => {
			const record = progress.get(props.under);
			set(seedFor('panel-unseen', record?.tried ?? [], record?.open?.seed));
		});
	}, []);
	if (first === null) return <p class="coming">{drillWords.loading}</p>;
	return <TaskGoes {...props} first={first} unseen={unseen} />;
}
