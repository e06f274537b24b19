import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords } from '../../content/drills/index.ts';
import { Button, Notice } from '../ui/index.ts';

interface FetchedProps<P extends object> {
	load: () => Promise<{ default: ComponentType<P> }>;
	props: P;
}

/** A part whose script is fetched when it is first drawn; it says so while it comes, and when it does not. */
export function Fetched<P extends object>({ load, props }: FetchedProps<P>): JSX.Element {
	const [Part, set] = useState<ComponentType<P> | null>(null);
	const [turn, again] = useState(0);
	const [failed, fail] = useState(false);
	useEffect(() => {
		fail(false);
		load().then(
			(module) => set(() => module.default),
			() => fail(true),
		);
	}, [turn]);
	if (Part) return <Part {...props} />;
	if (!failed) return <p class="coming">{drillWords.loading}</p>;
	return (
		<Notice kind="wrong">
			<p>{drillWords.failed}</p>
			<Button onClick={() => again(turn + 1)}>{drillWords.again}</Button>
		</Notice>
	);
}
