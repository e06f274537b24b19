import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { benchWords } from '../../content/bench/index.ts';
import { Button, Notice } from '../ui/index.ts';

/**
 * A component whose script is fetched when it is first drawn, so that a page need not carry what is not open. With the whole
 * site on the device that is at once, network or none.
 * @param quiet shows nothing until it is there: for what is heard and not seen
 */
export function later<P extends object>(
	load: () => Promise<{ default: ComponentType<P> }>,
	quiet = false,
): ComponentType<P> {
	let Loaded: ComponentType<P> | null = null;
	return function Later(props: P): JSX.Element | null {
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
		if (quiet) return null;
		if (state === 'coming') return <p class="coming">{benchWords.coming}</p>;
		return (
			<Notice kind="wrong">
				<p>{benchWords.failed}</p>
				<Button onClick={() => set('coming')}>{benchWords.again}</Button>
			</Notice>
		);
	};
}
