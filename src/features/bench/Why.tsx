import type { JSX } from 'preact';
import { whyWords } from '#words/bench/index.ts';
import { type Reason, why } from '../../../sim/rig/index.ts';
import { Dialog } from '../../ui/index.ts';
import { describeFixture, fixtureName, reasonStage, reasonText } from '../../wording/index.ts';
import { useSeen } from './view.ts';
import { effectText } from './why.ts';

/** Shapes beside the words of what a link does: an arrow on, a wave, a bar across; the same bar where data or the remote stops. */
const MARKS: Readonly<Record<Reason['effect'], string>> = {
	passes: 'M12 3v16m-6-6 6 6 6-6',
	shapes: 'M12 3c-9 4 9 7 0 10m-6 0 6 6 6-6',
	stops: 'M12 3v10M4 15h16M4 20h16',
	cuts: 'M12 3v10M4 15h16M4 20h16',
};

/** A lamp's reason trail, from what feeds it to what is seen; what stops the light is marked in words and shape. */
export default function Why({ fixture, onClose }: { fixture: string; onClose: () => void }): JSX.Element {
	const [store] = useSeen(({ store }) => [store, store.version]);
	const { rig } = store;
	return (
		<Dialog open onClose={onClose} title={whyWords.title(fixtureName(rig, fixture))} closeWords={whyWords.close}>
			<p>{whyWords.lead}</p>
			<ol class="trail">
				{why(rig, fixture).map((reason, i) => (
					<li key={`${reason.id}-${i}`} data-effect={reason.effect}>
						<svg class="trail-mark" viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
							<path d={MARKS[reason.effect]} />
						</svg>
						<div>
							<p class="trail-stage">
								{reasonStage(reason)} <span class="trail-effect">{effectText(reason)}</span>
							</p>
							<p>{reasonText(rig, fixture, reason)}</p>
						</div>
					</li>
				))}
			</ol>
			<p class="trail-end">{describeFixture(rig, fixture)}</p>
		</Dialog>
	);
}
