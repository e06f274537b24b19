import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { deskWords } from '#words/bench/index.ts';
import { LAST_SLOT, LAST_UNIVERSE } from '../../../shared/dmx/index.ts';
import type { Patch as Line, Unit } from '../../../sim/rig/index.ts';
import { Button } from '../../ui/index.ts';
import { modeName } from '../../wording/index.ts';
import { suggestedPatch } from './desk.ts';
import { NumberField } from './NumberField.tsx';
import { useBench, useSeen } from './view.ts';

/** What the desk thinks each fixture is: universe, start address, mode. It can be wrong, and often is. */
export function Patch(): JSX.Element {
	const [open, set] = useState(false);
	return (
		<details class="group" open={open} onToggle={(event) => set(event.currentTarget.open)}>
			<summary>
				<h3>{deskWords.patch}</h3>
			</summary>
			{open && (
				<>
					<p class="hint">{deskWords.patchHint}</p>
					<PatchLines />
				</>
			)}
		</details>
	);
}

function PatchLines(): JSX.Element {
	const { store } = useBench();
	const [patch] = useSeen(() => [store.rig.gear.desk?.patch, store.rig.sheet]);
	return (
		<ul class="patch">
			{[...store.rig.gear.units].map(([fixture, unit]) => (
				<PatchLine key={fixture} unit={unit} line={patch?.find((each) => each.fixture === fixture)} />
			))}
		</ul>
	);
}

function PatchLine({ unit, line }: { unit: Unit; line: Line | undefined }): JSX.Element {
	const { store } = useBench();
	const modeId = useId();
	const { placed, profile } = unit;
	const change = (to: Partial<Line>) => line && store.send({ type: 'desk.patch', ...line, ...to });
	return (
		<li>
			<fieldset class="patch-line">
				<legend>{placed.name}</legend>
				{line ? (
					<>
						<NumberField
							label={deskWords.universe}
							value={line.universe}
							from={1}
							to={LAST_UNIVERSE}
							bad={deskWords.badUniverse}
							onChange={(universe) => change({ universe })}
						/>
						<NumberField
							label={deskWords.address}
							value={line.address}
							from={1}
							to={LAST_SLOT}
							bad={deskWords.badAddress}
							onChange={(address) => change({ address })}
						/>
						<div class="field">
							<label for={modeId}>{deskWords.mode}</label>
							<select id={modeId} value={line.mode} onChange={(event) => change({ mode: event.currentTarget.value })}>
								{profile.modes.map(({ id }) => (
									<option key={id} value={id}>
										{modeName(profile, id)}
									</option>
								))}
							</select>
						</div>
					</>
				) : (
					<>
						<p>{deskWords.unpatched}</p>
						<Button
							onClick={() => {
								const patch = suggestedPatch(store.rig, placed.id);
								if (patch) store.send({ type: 'desk.patch', ...patch });
							}}
						>
							{deskWords.patchIt(placed.name)}
						</Button>
					</>
				)}
			</fieldset>
		</li>
	);
}
