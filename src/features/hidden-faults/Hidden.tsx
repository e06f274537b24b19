import type { JSX } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import { bundledWords } from '#words/finder/index.ts';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import { openEngine, troubleText } from '../../engine/index.ts';
import { Live, Notice } from '../../ui/index.ts';
import { RigPractise } from '../rig-sheet/index.ts';
import { Begin } from './Begin.tsx';
import { Drill } from './Drill.tsx';
import { anySeed, type DrillOf, drillLink, readDrillLink } from './view.ts';

const makeAsk = () => openEngine().ask;

const RIGS = Object.keys(bundledWords);

/** The fault drills: the address says which; with none, one is begun here. */
export function Hidden(): JSX.Element {
	const [ask] = useState(makeAsk);
	const [drill, setDrill] = useState<DrillOf | null>(null);
	const [hiding, setHiding] = useState(false);
	const [trouble, setTrouble] = useState<string | null>(null);
	const fail = useCallback((error: unknown) => setTrouble(troubleText(error, hiddenWords)), []);

	useEffect(() => {
		const take = (): void => {
			const link = readDrillLink(location.hash, RIGS);
			setDrill(link.is === 'drill' ? link.of : null);
			if (link.is === 'begin') void begin(link.of, null, true);
			setTrouble(link.is === 'bad' ? hiddenWords.badLink : null);
		};
		take();
		addEventListener('hashchange', take);
		return () => removeEventListener('hashchange', take);
	}, []);

	/** Goes to a drill; one with no seed is looked for. @param instead of the address that asked for any */
	const begin = async (want: Omit<DrillOf, 'seed'>, seed: number | null, instead = false): Promise<void> => {
		setTrouble(null);
		setHiding(true);
		try {
			const link = drillLink({ ...want, seed: seed ?? (await ask('hidden.seed', { ...want, seed: anySeed() })) });
			if (instead) location.replace(link);
			else location.hash = link;
		} catch (error) {
			fail(error);
		} finally {
			setHiding(false);
		}
	};

	return (
		<div class="hidden-drill">
			{trouble !== null && <Notice kind="wrong">{trouble}</Notice>}
			{hiding ? (
				<p class="hidden-wait">{hiddenWords.opening}</p>
			) : drill ? (
				<Drill
					key={drillLink(drill)}
					ask={ask}
					drill={drill}
					onFail={fail}
					onAnother={() => void begin(drill, null)}
					onLeave={() => {
						location.hash = '';
					}}
				/>
			) : (
				<>
					<RigPractise />
					<Begin onBegin={(want, seed) => void begin(want, seed)} />
				</>
			)}
			<Live text={trouble ?? ''} urgent />
		</div>
	);
}
