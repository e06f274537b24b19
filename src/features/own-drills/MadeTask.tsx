import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { Task } from '../../../sim/drill/index.ts';
import { fetchedWith } from '../../ui/index.ts';
import { taskAtWork } from '../drills/index.ts';

const AtWork = fetchedWith({ ...drillWords, coming: drillWords.loading }, 'coming');

interface Props {
	title: string;
	/** What is said before the task. */
	children: ComponentChildren;
	/** Null where nothing can be asked. */
	made: { readonly task: Task; readonly says: string } | null;
	/** What is kept of these tasks goes by this. */
	under: string;
	seed: number;
	onAnother: () => Promise<void>;
	words: { readonly nothing: string; readonly link: string; readonly another: string };
	/** Where one goes for another of them. */
	back: string;
}

/** One made-up task with what stands round it. */
export function MadeTask({ title, children, made, under, seed, onAnother, words, back }: Props): JSX.Element {
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	return (
		<>
			<h2 class="title title-2" ref={top} tabIndex={-1}>
				<span>{title}</span>
			</h2>
			{children}
			{made ? (
				<AtWork
					load={taskAtWork}
					props={{
						set: { count: 1, first: made, differ: [] },
						under,
						at: seed,
						onAnother: () => void onAnother(),
					}}
				/>
			) : (
				<p>{words.nothing}</p>
			)}
			<p class="hint">{words.link}</p>
			<p>
				<a href={back}>{words.another}</a>
			</p>
		</>
	);
}
