import type { JSX } from 'preact';
import { complaintWords, fixtureWords, quickWords, startWords } from '#words/finder/index.ts';
import type { ComplaintKind } from '../../../sim/finder/index.ts';
import { Button, ComplaintSign, Title } from '../../ui/index.ts';
import { Allowed } from './Allowed.tsx';
import { Choices } from './Choices.tsx';
import type { FinderScene } from './scene.ts';
import type { FinderStore } from './store.ts';
import { Working } from './Working.tsx';

interface Props {
	store: FinderStore;
	scene: FinderScene;
}

/** Which fixture does wrong. */
export function PickFixture({ store, scene }: Props): JSX.Element {
	if (scene.stage !== null) return <Working stage={scene.stage} />;
	const fixtures = scene.laid?.fixtures ?? [];
	return (
		<section class="pick">
			<Title level={2}>{fixtureWords.title}</Title>
			<p class="hint">{fixtureWords.hint}</p>
			<fieldset class="picks" data-begin tabIndex={-1}>
				<legend class="visually-hidden">{fixtureWords.title}</legend>
				<Choices choices={fixtures} onChoose={(id) => store.pickFixture(id)} small={fixtures.length > 6} />
			</fieldset>
			<p>
				<Button look="quiet" onClick={() => store.back()}>
					{startWords.back}
				</Button>
			</p>
		</section>
	);
}

/** What is wrong with it. */
export function PickComplaint({ store, scene }: Props): JSX.Element {
	if (scene.stage !== null) return <Working stage={scene.stage} />;
	const { complaints, laid, walk } = scene;
	const name = laid?.fixtures.find(({ id }) => id === walk?.fixture)?.name ?? '';
	return (
		<section class="pick">
			<Title level={2}>{complaintWords.title}</Title>
			<p class="pick-with">{complaintWords.with(name)}</p>
			{laid?.isQuick && <p class="hint">{quickWords.assumed}</p>}
			<Allowed store={store} allows={scene.allows} />
			{complaints?.length === 0 ? (
				<p>{complaintWords.nothing}</p>
			) : (
				<fieldset class="picks" data-begin tabIndex={-1}>
					<legend class="visually-hidden">{complaintWords.title}</legend>
					<Choices
						choices={(complaints ?? []).map(({ kind, short, more }) => ({
							id: kind,
							name: short,
							more,
							picture: <ComplaintSign kind={kind} />,
						}))}
						onChoose={(kind) => store.pickComplaint(kind as ComplaintKind)}
						rows
					/>
				</fieldset>
			)}
			<details class="fold">
				<summary class="fold-line">{complaintWords.none}</summary>
				<p>{complaintWords.noneSays}</p>
			</details>
			<p>
				<Button look="quiet" onClick={() => store.back()}>
					{startWords.back}
				</Button>
			</p>
		</section>
	);
}
