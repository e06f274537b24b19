import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { drillWords, ownDrills as words } from '#words/drills/index.ts';
import { ownWords } from '#words/stock/index.ts';
import { Button, fetchedWith, Notice } from '../../ui/index.ts';
import { RigPractise } from '../rig-sheet/index.ts';
import { type OwnFixture, useOwnFixtures } from '../stock/index.ts';
import { type Opened, openAt } from './opened.ts';

const Fetched = fetchedWith({ ...drillWords, coming: drillWords.loading }, 'coming');

/** Drills on the crew's own fixtures: which of them, and the task. The address holds both. */
export function OwnDrills(): JSX.Element {
	const [opened, open] = useState<Opened>(location.hash === '' ? { is: 'list' } : { is: 'wait' });
	const look = () => void openAt(location.hash).then(open);
	useEffect(() => {
		look();
		window.addEventListener('hashchange', look);
		return () => window.removeEventListener('hashchange', look);
	}, []);
	if (opened.is === 'wait') return <p class="coming">{drillWords.loading}</p>;
	if (opened.is === 'task') {
		const { profile, seed } = opened;
		return <Fetched key={`${profile.id} ${seed}`} load={() => import('./OwnWork.tsx')} props={{ profile, seed }} />;
	}
	if (opened.is === 'rig') {
		const { sheet, seed } = opened;
		return <Fetched key={`${sheet.name} ${seed}`} load={() => import('./RigWork.tsx')} props={{ sheet, seed }} />;
	}
	return (
		<>
			{opened.is === 'wrong' && (
				<Notice kind="wrong">
					<p role="alert">{opened.sentence}</p>
					{opened.again && <Button onClick={look}>{drillWords.again}</Button>}
				</Notice>
			)}
			<RigPractise />
			<Pick />
		</>
	);
}

/** The crew's own fixtures to pick from, and a way to add one. */
function Pick(): JSX.Element {
	const own = useOwnFixtures();
	const [wrong, tell] = useState<string | null>(null);
	const pick = async (fixture: OwnFixture) => {
		tell(null);
		const found = await fixture.profile();
		if ('wrong' in found) return tell(found.wrong);
		try {
			const { ownLink } = await import('./link.ts');
			location.hash = await ownLink({
				profile: found.profile,
				seed: crypto.getRandomValues(new Uint32Array(1))[0] ?? 0,
			});
		} catch {
			tell(drillWords.failed);
		}
	};
	return (
		<section class="own-drills" aria-labelledby="own-drills">
			<h2 class="title title-2" id="own-drills">
				<span>{words.list}</span>
			</h2>
			{own.length === 0 && <p>{words.none}</p>}
			<ul>
				{own.map((fixture) => (
					<li key={fixture.id}>
						<Button aria-label={words.of(fixture.name)} onClick={() => pick(fixture)}>
							{fixture.name}
						</Button>
					</li>
				))}
			</ul>
			{wrong !== null && (
				<p class="field-error" role="alert">
					{wrong}
				</p>
			)}
			<p>
				<a href={ownWords.href}>{own.length === 0 ? words.add : ownWords.toStock}</a>
			</p>
		</section>
	);
}
