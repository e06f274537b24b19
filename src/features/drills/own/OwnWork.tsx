import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { ownDrills as words } from '#words/drills/index.ts';
import { isStandIn } from '../../../../shared/profile/index.ts';
import { ownTask } from '../../../../sim/drill/index.ts';
import { Notice } from '../../../ui/index.ts';
import { ownTaskText } from '../../../wording/index.ts';
import { seedLeft } from '../../unfinished/index.ts';
import { anySeed } from '../link.ts';
import { OneGo } from '../TaskGoes.tsx';
import { type OwnAsked, ownLink } from './link.ts';

/** Seeds after which the same is asked again: of each goal once. */
const TURNS = 4;

/** A drawn seed that asks for the next of the goals. */
const seedAfterOwn = (seed: number): number => {
	const drawn = anySeed(seed);
	return drawn - (drawn % TURNS) + ((seed + 1) % TURNS);
};

/** One task on a fixture that somebody brings. */
export default function OwnWork({ profile, seed }: OwnAsked): JSX.Element {
	const own = useMemo(() => ownTask(profile, seed), [profile, seed]);
	const kind = `own-${profile.id}`;
	const [wasBegun] = useState(() => seedLeft(kind) === seed);
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	const another = async () => {
		location.hash = await ownLink({ profile, seed: seedAfterOwn(seed) });
	};
	return (
		<>
			<h2 class="title title-2" ref={top} tabIndex={-1}>
				<span>{words.of(profile.name)}</span>
			</h2>
			{isStandIn(profile.panel) && (
				<Notice>
					<p>{words.standIn}</p>
				</Notice>
			)}
			{own ? (
				<OneGo
					set={{ cases: [{ task: own.task, says: ownTaskText(own) }] }}
					under={{ kind, seed }}
					wasBegun={wasBegun}
					onAnother={() => void another()}
				/>
			) : (
				<p>{words.nothing}</p>
			)}
			<p class="hint">{words.link}</p>
			<p>
				<a href="/drills/own/">{words.another}</a>
			</p>
		</>
	);
}
