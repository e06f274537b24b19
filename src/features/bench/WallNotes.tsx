import type { JSX, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { wallWords } from '#words/bench/index.ts';
import { Button, Dialog, Notice } from '../../ui/index.ts';
import type { Pace } from './usePainting.ts';
import { later, useSeen } from './view.ts';
import { isCapped, isRestless } from './wall.ts';

const Cautions = later(() => import('./Cautions.tsx'));

interface Props {
	pace: Pace;
	onReal: (real: boolean) => void;
	/** Set where the person has just changed the rate: what comes next for it takes the focus, and unsets it. */
	chosen: RefObject<boolean>;
}

/** Where the wall is not drawn as the light is, that is said, with the way to the real rate and its warning. */
export default function WallNotes({ pace, onReal, chosen }: Props): JSX.Element {
	const [asking, ask] = useState(false);
	const [capped, restless] = useSeen(({ store }) => {
		const sights = store.rig.sheet.fixtures.map(({ id }) => store.look(id));
		return [sights.filter(isCapped).length, sights.some(isRestless)];
	});
	const real = pace === 'real';
	const box = useRef<HTMLDivElement>(null);
	// it stands elsewhere once the rate is changed: the way back, or there again, takes the focus that was there
	useEffect(() => {
		if (!chosen.current) return;
		chosen.current = false;
		box.current?.querySelector('button')?.focus();
	}, []);
	return (
		<>
			{pace === 'still' && restless && <Notice>{wallWords.still}</Notice>}
			{pace !== 'still' && (capped > 0 || real) && (
				<div ref={box}>
					<Notice>
						<p>{real ? wallWords.warnTitle : wallWords.capped(capped)}</p>
						<Button look="quiet" onClick={() => (real ? onReal(false) : ask(true))}>
							{real ? wallWords.realRateOff : wallWords.realRate}
						</Button>
					</Notice>
				</div>
			)}
			{asking && (
				<Dialog open onClose={() => ask(false)} title={wallWords.warnTitle} closeWords={wallWords.realRateOff}>
					<Cautions ids={['flashing']} />
					<p>{wallWords.warn}</p>
					<Button
						onClick={() => {
							onReal(true);
							ask(false);
						}}
					>
						{wallWords.accept}
					</Button>
				</Dialog>
			)}
		</>
	);
}
