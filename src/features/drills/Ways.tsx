import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { drillWords } from '#words/drills/index.ts';
import type { Drill, DrillKind } from '../../../sim/drill/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { openProgress, suggestNext } from '../progress/index.ts';
import { drillLink, seedAfter, seedFor } from './link.ts';

/** Ways on from a drill: another like it, the next kind, the list, the link. */
export function Ways({ drill, order }: { drill: Drill; order: readonly DrillKind[] }): JSX.Element {
	const [said, say] = useState('');
	const nextKind = async () => {
		const { progress } = await openProgress(DEVICE);
		const { kind = drill.kind } = suggestNext(progress, order, Date.now(), drill.kind) ?? {};
		const { tried = [], open } = progress.get(kind) ?? {};
		const last = kind === drill.kind ? drill.seed : open?.seed;
		location.hash = drillLink(kind, seedFor(kind, tried, last));
	};
	const share = () =>
		navigator.clipboard.writeText(location.href).then(
			() => say(drillWords.copied),
			() => say(drillWords.copyFailed),
		);
	return (
		<nav class="drill-ways" aria-label={drillWords.ways}>
			<Button
				onClick={() => {
					location.hash = drillLink(drill.kind, seedAfter(drill.kind, drill.seed));
				}}
			>
				{drillWords.another}
			</Button>
			<Button onClick={nextKind}>{drillWords.next}</Button>
			<Button onClick={share}>{drillWords.share}</Button>
			<Button look="quiet" href="/drills/">
				{drillWords.list}
			</Button>
			<span class="drill-said" aria-hidden="true">
				{said}
			</span>
			<Live text={said} />
		</nav>
	);
}
