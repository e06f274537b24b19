import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import { Notice } from '../../ui/index.ts';
import { DrillList, type ListedKind } from '../progress/index.ts';
import { Fetched } from './Fetched.tsx';
import { anySeed, drillLink, readAsked } from './link.ts';

/** What the address asks for; where it leaves the seed open one is drawn, and the address is then the link to that very drill. */
function takeAsked() {
	const asked = readAsked(location.hash);
	if (asked.is !== 'any') return asked;
	const seed = anySeed();
	history.replaceState(null, '', drillLink(asked.kind, seed));
	return { is: 'drill', kind: asked.kind, seed } as const;
}

/** The drill that the address asks for; where it asks for none that there is, a sentence and the list. */
export function DrillPage({ kinds }: { kinds: readonly ListedKind[] }): JSX.Element {
	const [asked, set] = useState(takeAsked);
	const [turn, count] = useState(0);
	useEffect(() => {
		const hear = () => {
			set(takeAsked());
			count((n) => n + 1);
		};
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	if (asked.is === 'drill') {
		const { kind, seed } = asked;
		const order = kinds.map(({ id }) => id as typeof kind);
		return <Fetched load={() => import('./Doing.tsx')} props={{ kind, seed, order, isFirst: turn === 0 }} />;
	}
	return (
		<>
			{asked.is === 'bad' && (
				<Notice kind="wrong">
					<p role="alert">{drillWords.badLink}</p>
				</Notice>
			)}
			<DrillList kinds={kinds} />
		</>
	);
}
