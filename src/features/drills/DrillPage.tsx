import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import { type DrillKind, isUnseen } from '../../../sim/drill/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Notice } from '../../ui/index.ts';
import { DrillList, type KindRecord, type ListedKind, openProgress } from '../progress/index.ts';
import { Fetched } from './Fetched.tsx';
import { type DrillRequest, drillLink, readAsked, seedFor } from './link.ts';

/** A drill drawn for who leaves the seed open: the address is then the link to that very drill. */
function drawn(kind: DrillKind, record?: KindRecord): DrillRequest {
	const seed = seedFor(kind, record?.tried ?? [], record?.open?.seed);
	history.replaceState(null, '', drillLink(kind, seed));
	return { is: 'drill', kind, seed };
}

/** What the address asks for. Which panel never seen has its turn is known only from what was begun so far. */
function takeAsked(): DrillRequest {
	const asked = readAsked(location.hash);
	return asked.is === 'any' && !isUnseen(asked.kind) ? drawn(asked.kind) : asked;
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
	useEffect(() => {
		if (asked.is !== 'any') return;
		let isAsked = true;
		void openProgress(DEVICE).then(({ progress }) => {
			if (isAsked) set(drawn(asked.kind, progress.get(asked.kind)));
		});
		return () => {
			isAsked = false;
		};
	}, [asked]);
	if (asked.is === 'any') return <p class="coming">{drillWords.loading}</p>;
	if (asked.is === 'drill') {
		const { kind, seed } = asked;
		const props = { kind, seed, order: kinds.map(({ id }) => id as typeof kind), isFirst: turn === 0 };
		return isUnseen(kind) ? (
			<Fetched key="unseen" load={() => import('./DoingUnseen.tsx')} props={props} />
		) : (
			<Fetched key="drill" load={() => import('./Doing.tsx')} props={props} />
		);
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
