import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { ownReference as words } from '#words/reference/index.ts';
import { ownWords } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import type { OpenRows } from '../../../shared/stock/index.ts';
import { Button, fetchedWith } from '../../ui/index.ts';
import { type OwnFixture, useOwnFixtures } from '../stock/index.ts';

const Fetched = fetchedWith(words.fetching, 'coming');

/** The crew's own fixtures to pick from, and the tables of the one that is picked. */
export function OwnReference(): JSX.Element {
	const own = useOwnFixtures();
	const [picked, pick] = useState<{ readonly id: string; readonly profile: Profile; readonly open: OpenRows } | null>(
		null,
	);
	const [wrong, tell] = useState<string | null>(null);
	const show = async (fixture: OwnFixture) => {
		tell(null);
		const found = await fixture.profile();
		if ('wrong' in found) {
			pick(null);
			tell(found.wrong);
		} else pick({ id: fixture.id, profile: found.profile, open: await fixture.openRows() });
	};
	// with one alone there is nothing to pick
	useEffect(() => {
		const [only, ...others] = own;
		if (only && others.length === 0 && !picked) void show(only);
	}, [own]);
	return (
		<>
			<div class="reference-own">
				{own.length === 0 && <p>{words.none}</p>}
				<ul>
					{own.map((fixture) => (
						<li key={fixture.id}>
							<Button aria-pressed={picked?.id === fixture.id} onClick={() => show(fixture)}>
								{fixture.name}
							</Button>
						</li>
					))}
				</ul>
				<p>
					<a class="reference-link" href={ownWords.href}>
						{ownWords.toStock}
					</a>
				</p>
			</div>
			{wrong !== null && (
				<p class="field-error" role="alert">
					{wrong}
				</p>
			)}
			{picked && (
				<Fetched
					key={picked.profile.id}
					load={() => import('./OwnTables.tsx')}
					props={{ profile: picked.profile, open: picked.open }}
				/>
			)}
		</>
	);
}
