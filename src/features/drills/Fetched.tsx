import type { ComponentType, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import { laterWith } from '../../ui/index.ts';

const later = laterWith({ ...drillWords, coming: drillWords.loading }, 'coming');

interface FetchedProps<P extends object> {
	/** Taken as it is when this is first drawn. */
	load: () => Promise<{ default: ComponentType<P> }>;
	props: P;
}

/** A part whose script is fetched when it is first drawn; it says so while it comes, and when it does not. */
export function Fetched<P extends object>({ load, props }: FetchedProps<P>): JSX.Element {
	const [Part] = useState(() => later(load));
	return <Part {...props} />;
}
