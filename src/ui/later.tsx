import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from './Button.tsx';
import { Notice } from './Notice.tsx';

/** What is said while a part of a page comes, and when it does not. */
export interface LaterWords {
	readonly coming: string;
	readonly failed: string;
	readonly again: string;
}

type Load<P> = () => Promise<{ default: ComponentType<P> }>;

/**
 * Makes components whose script is fetched when they are first drawn, so that a page need not carry what is not open. With the
 * whole site on the device that is at once, network or none. `quiet` ones show nothing until they are there: for what is heard
 * and not seen.
 * @param look the class of the line that says it is coming
 */
export function laterWith(words: LaterWords, look: string) {
	return <P extends object>(load: Load<P>, quiet = false): ComponentType<P> => {
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
			if (state === 'coming') return <p class={look}>{words.coming}</p>;
			return (
				<Notice kind="wrong">
					<p>{words.failed}</p>
					<Button onClick={() => set('coming')}>{words.again}</Button>
				</Notice>
			);
		};
	};
}

interface FetchedProps<P extends object> {
	/** Taken as it is when this is first drawn. */
	load: Load<P>;
	props: P;
}

/** As {@link laterWith}, where what is to be fetched is known only as it is drawn. */
export function fetchedWith(words: LaterWords, look: string) {
	const later = laterWith(words, look);
	return function Fetched<P extends object>({ load, props }: FetchedProps<P>): JSX.Element {
		const [Part] = useState(() => later(load));
		return <Part {...props} />;
	};
}
