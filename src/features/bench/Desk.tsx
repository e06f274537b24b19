import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { deskWords } from '#words/bench/index.ts';
import { LAST_UNIVERSE } from '../../../shared/dmx/index.ts';
import type { DeskOutput } from '../../../sim/rig/index.ts';
import { Button, Toggle } from '../../ui/index.ts';
import { type RigStore, withDesk } from '../rig/index.ts';
import { type FaderGroup, faderGroups, levelsWith } from './desk.ts';
import { LevelEntry, LevelFader } from './LevelFader.tsx';
import { NumberField } from './NumberField.tsx';
import { Patch } from './Patch.tsx';
import { useBench, useSeen } from './view.ts';

const NONE: readonly DeskOutput[] = [];

/** The desk: faders by fixture, those of the one in hand first, master, outputs, and the patch that names them. */
export default function Desk(): JSX.Element {
	const { store, free } = useBench();
	// levels are read fader by fader: of several, only the one that moves is drawn again
	const [desk, selected] = useSeen(({ store: { rig }, selected }) => [
		rig.gear.desk !== null,
		selected,
		rig.sheet,
		rig.gear.desk?.patch,
	]);
	if (!desk)
		return (
			<>
				<p>{deskWords.none}</p>
				<Button onClick={() => store.edit((sheet) => withDesk(sheet, deskWords.name))}>{deskWords.add}</Button>
			</>
		);
	const groups = faderGroups(store.rig);
	const inHand = groups.find(({ fixture }) => fixture === selected);
	return (
		<div class="desk">
			{inHand && <Group key={inHand.fixture} group={inHand} startsOpen />}
			<div class="desk-head">
				<Master />
				{free && (
					<div class="desk-all">
						<Button onClick={() => store.send({ type: 'desk.recall', levels: [] })}>{deskWords.allOut}</Button>
						<Button onClick={() => sendFull(store)}>{deskWords.allFull}</Button>
					</div>
				)}
				<Outputs />
			</div>
			<p class="hint">{deskWords.entryHint}</p>
			{groups
				.filter((group) => group !== inHand)
				.map((group) => (
					<Group key={group.fixture} group={group} startsOpen={false} />
				))}
			{free && <Patch />}
		</div>
	);
}

function Master(): JSX.Element {
	const { store } = useBench();
	const [level] = useSeen(() => [store.rig.gear.desk?.master ?? 0]);
	return (
		<div class="desk-master">
			<span class="strip-name">{deskWords.master}</span>
			<LevelEntry
				label={deskWords.master}
				slider={deskWords.masterSlider}
				level={level}
				onType={(to) => store.send({ type: 'desk.master', level: to })}
				onSlide={(to) => store.slide({ type: 'desk.master', level: to })}
				onRest={store.rest}
			/>
		</div>
	);
}

function sendFull({ rig, send }: RigStore): void {
	const { desk } = rig.gear;
	if (desk) send({ type: 'desk.recall', levels: levelsWith(desk, fullOf(faderGroups(rig))) });
}

/** Every intensity of the patch at full, coarse and fine. */
const fullOf = (groups: readonly FaderGroup[]) =>
	groups.flatMap(({ patch, faders }) =>
		faders
			.filter(({ drives }) => drives === 'intensity')
			.map(({ slot }) => ({ universe: patch.universe, slot, level: 255 })),
	);

function Outputs(): JSX.Element {
	const { store } = useBench();
	const [outputs] = useSeen(() => [store.rig.gear.desk?.outputs ?? NONE]);
	return (
		<ul class="desk-outputs" aria-label={deskWords.outputs}>
			{outputs.map(({ id, on, universe }) => (
				<li key={id}>
					<Toggle
						label={deskWords.output(id.toUpperCase())}
						words={deskWords.sends}
						on={on}
						onChange={(next) => store.send({ type: 'desk.output', output: id, on: next })}
					/>
					<NumberField
						label={deskWords.universeOf(id.toUpperCase())}
						value={universe}
						from={1}
						to={LAST_UNIVERSE}
						bad={deskWords.badUniverse}
						onChange={(next) => store.send({ type: 'desk.universe', output: id, universe: next })}
					/>
				</li>
			))}
		</ul>
	);
}

function Group({ group, startsOpen }: { group: FaderGroup; startsOpen: boolean }): JSX.Element {
	const { store } = useBench();
	const { name, patch, last, mode, pastEnd, faders } = group;
	const [open, set] = useState(startsOpen);
	return (
		<details class="group" open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary>
				<h3>{name}</h3>
				<span class="group-where">
					{deskWords.where(patch.universe, patch.address, last)} · {mode}
				</span>
			</summary>
			{pastEnd && <p class="group-past">{deskWords.past}</p>}
			{open && (
				<ol class="strips" aria-label={deskWords.group(name)}>
					{faders.map((fader) => {
						const { universe } = patch;
						const event = (level: number) => ({ type: 'desk.level', universe, slot: fader.slot, level }) as const;
						return (
							<LevelFader
								key={fader.key}
								fader={fader}
								universe={universe}
								onType={(level) => store.send(event(level))}
								onSlide={(level) => store.slide(event(level))}
								onRest={store.rest}
							/>
						);
					})}
				</ol>
			)}
		</details>
	);
}
