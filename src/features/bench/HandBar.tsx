import type { JSX } from 'preact';
import { cableWords, handWords as words } from '#words/bench/index.ts';
import { Button } from '../../ui/index.ts';
import { cableName, portText } from '../../wording/index.ts';
import { layEvent } from './hand.ts';
import { useBench, useSeen } from './view.ts';

/** What the hand at the sockets holds, and what else can be done with it. It stays in sight until the hand is empty. */
export default function HandBar(): JSX.Element | null {
	const { hold } = useBench();
	const [store, hand, next] = useSeen(({ store, hand, next }) => [store, hand, next, store.version]);
	const { rig } = store;
	const act = (send: () => boolean) => {
		if (send()) hold(null);
	};
	return (
		<div class="hand" data-task-bar role="status">
			{hand?.kind === 'fresh' && (
				<>
					<p>
						{words.fresh(`${cableWords.metres(next.length)} ${cableWords.kinds[next.kind]}`, portText(hand.from, rig))}
					</p>
					<div class="hand-ways">
						<Button onClick={() => act(() => store.send({ type: 'terminator.fit', port: hand.from }))}>
							{words.terminate}
						</Button>
						<Button onClick={() => act(() => store.send(layEvent(rig, hand.from, null, next)))}>{words.leave}</Button>
						<Button look="quiet" onClick={() => hold(null)}>
							{words.putAway}
						</Button>
					</div>
				</>
			)}
			{hand?.kind === 'end' && (
				<>
					<p>{words.end(cableName(hand.cable))}</p>
					<div class="hand-ways">
						<Button onClick={() => act(() => store.send({ type: 'cable.lift', cable: hand.cable }))}>
							{words.lift}
						</Button>
						<Button look="quiet" onClick={() => hold(null)}>
							{words.letHang}
						</Button>
					</div>
				</>
			)}
		</div>
	);
}
