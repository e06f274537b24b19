import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { deskWords, layOutWords } from '#words/bench/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { Button, Dialog, Field } from '../../ui/index.ts';
import { MOST, type RigStore, useWatched, withDesk, withFixture, withName, withoutFixture } from '../rig/index.ts';
import { emptySheet } from './firstSheet.ts';
import { OwnFixtures } from './OwnFixtures.tsx';
import { PRESET_IDS, presetSheet } from './presets.ts';

interface Props {
	store: RigStore;
	onClose: () => void;
}

/** Chooses what stands on the bench: a ready-made one, or fixture by fixture. */
export default function LayOut({ store, onClose }: Props): JSX.Element {
	const [sheet] = useWatched(store, () => [store.rig.sheet]);
	const put = (next: typeof sheet) => {
		store.open({ sheet: next, log: [] });
		onClose();
	};
	return (
		<Dialog open onClose={onClose} title={layOutWords.title} closeWords={layOutWords.done}>
			<h3>{layOutWords.presets}</h3>
			<p class="hint">{layOutWords.replaces}</p>
			<ul class="presets">
				{PRESET_IDS.map((id) => (
					<li key={id}>
						<Button onClick={() => put(presetSheet(id))}>{layOutWords.preset[id].name}</Button>
						<p>{layOutWords.preset[id].words}</p>
					</li>
				))}
				<li>
					<Button onClick={() => put(emptySheet())}>{layOutWords.clear}</Button>
				</li>
			</ul>
			<h3>{layOutWords.add}</h3>
			{sheet.fixtures.length >= MOST.fixtures ? (
				<p>{layOutWords.full(MOST.fixtures)}</p>
			) : (
				<>
					<p class="hint">{layOutWords.added}</p>
					<OwnFixtures store={store} />
					<ul class="presets">
						{BUNDLED.map((profile) => (
							<li key={profile.id}>
								<Button
									onClick={() => store.edit((before) => withFixture(before, profile, layOutWords.kinds[profile.shape]))}
								>
									{layOutWords.addOne(profile.name)}
								</Button>
								<p>{profile.about}</p>
							</li>
						))}
						{sheet.desk === null && (
							<li>
								<Button onClick={() => store.edit((before) => withDesk(before, deskWords.name))}>
									{layOutWords.desk}
								</Button>
							</li>
						)}
					</ul>
				</>
			)}
			{sheet.fixtures.length > 0 && <h3>{layOutWords.on}</h3>}
			<ul class="on-bench">
				{sheet.fixtures.map(({ id, name }) => (
					<Named key={id} store={store} id={id} name={name} />
				))}
			</ul>
		</Dialog>
	);
}

function Named({ store, id, name }: { store: RigStore; id: string; name: string }): JSX.Element {
	const [typed, type] = useState(name);
	const rename = () => {
		if (typed.trim() === '') type(name);
		else if (typed.trim() !== name) store.edit((sheet) => withName(sheet, id, typed));
	};
	return (
		<li>
			<Field
				label={layOutWords.nameOf(name)}
				value={typed}
				maxLength={60}
				onInput={(event) => type(event.currentTarget.value)}
				onBlur={rename}
				onKeyDown={(event) => {
					if (event.key === 'Enter') rename();
				}}
			/>
			<Button aria-label={layOutWords.removeOne(name)} onClick={() => store.edit((sheet) => withoutFixture(sheet, id))}>
				{layOutWords.remove}
			</Button>
		</li>
	);
}
