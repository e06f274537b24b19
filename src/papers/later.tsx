import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { paperWords } from '../../content/papers/index.ts';
import { Button, Notice } from '../ui/index.ts';

/** A component whose script is fetched when it is first drawn; it says so while it comes, and when it does not. */
export function later<P extends object>(load: () => Promise<{ default: ComponentType<P> }>): ComponentType<P> {
	let Loaded: ComponentType<P> | null = null;
	return function Later(props: P): JSX.Element {
		const [state, set] = useState<'coming' | 'here' | 'failed'>(Loaded ? 'here' : 'coming');
		useEffect(() => {
			if (state !== 'coming') return;
			load().then(
				(module) => {
					Loaded = module.default;
					set('here');
				},
				() => set('failed'),
			);
		}, [state]);
		if (Loaded) return <Loaded {...props} />;
		if (state === 'coming') return <p class="papers-wait">{paperWords.loading}</p>;
		return (
			<Notice kind="wrong">
				<p>{paperWords.failed}</p>
				<Button onClick={() => set('coming')}>{paperWords.again}</Button>
			</Notice>
		);
	};
}
