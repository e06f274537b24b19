import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { breakWords } from '#words/bench/index.ts';
import type { SheetCable } from '../../../shared/sheet/index.ts';
import type { Unit } from '../../../sim/rig/index.ts';
import { Button, Toggle } from '../../ui/index.ts';
import { cableText, portText } from '../../wording/index.ts';
import { useRig } from '../rig/index.ts';
import { repairEvents, targetKey, targetOf } from './breaker.ts';
import { NumberField } from './NumberField.tsx';
import { useBench } from './view.ts';

/** Things that break, one at a time: in a cable, in a fixture, at the desk, in the hall. */
export default function Breaker(): JSX.Element {
	const { store } = useBench();
	useRig(store);
	const id = useId();
	const [key, choose] = useState('');
	const { rig } = store;
	const { cables, units, desk, hallPower } = rig.gear;
	const target = targetOf(rig, key);
	const cable = target?.kind === 'cable' ? cables.find((each) => each.id === target.id) : undefined;
	const unit = target?.kind === 'fixture' ? units.get(target.id) : undefined;
	const output = target?.kind === 'output' ? desk?.outputs.find((each) => each.id === target.id) : undefined;
	return (
		<div class="breaker">
			<p class="hint">{breakWords.hint}</p>
			<Toggle
				label={breakWords.hall}
				words={breakWords.hallWords}
				on={hallPower}
				onChange={(on) => store.send({ type: 'hall.power', on })}
			/>
			<div class="field">
				<label for={id}>{breakWords.what}</label>
				<select id={id} value={target ? targetKey(target) : ''} onChange={(event) => choose(event.currentTarget.value)}>
					<option value="">{breakWords.choose}</option>
					<optgroup label={breakWords.cables}>
						{cables.map((each) => (
							<option key={each.id} value={`cable:${each.id}`}>
								{cableText(rig, each.id)}
							</option>
						))}
					</optgroup>
					<optgroup label={breakWords.fixtures}>
						{[...units].map(([fixture, { placed }]) => (
							<option key={fixture} value={`fixture:${fixture}`}>
								{placed.name}
							</option>
						))}
					</optgroup>
					<optgroup label={breakWords.desk}>
						{desk?.outputs.map((each) => (
							<option key={each.id} value={`output:${each.id}`}>
								{portText(`desk:${each.id}`, rig)}
							</option>
						))}
					</optgroup>
				</select>
			</div>
			{cable && <CableFaults key={cable.id} cable={cable} />}
			{unit && <UnitFaults key={unit.placed.id} unit={unit} />}
			{output && (
				<Choice
					label={breakWords.startCode}
					value={`${output.startCode}`}
					options={breakWords.startCodes}
					onChange={(code) => store.send({ type: 'desk.start-code', output: output.id, code: Number(code) })}
				/>
			)}
			<Button
				disabled={repairEvents(rig).length === 0}
				onClick={() => {
					for (const event of repairEvents(rig)) store.send(event);
				}}
			>
				{breakWords.mend}
			</Button>
		</div>
	);
}

function CableFaults({ cable }: { cable: SheetCable }): JSX.Element {
	const { store } = useBench();
	const become = (change: Partial<Omit<SheetCable, 'id'>>) =>
		store.send({ type: 'cable.become', cable: cable.id, change });
	return (
		<div class="faults">
			{(['common', 'minus', 'plus'] as const).map((wire) => (
				<Toggle
					key={wire}
					label={breakWords.wire[wire]}
					words={breakWords.wireWords}
					on={cable[wire] === 'sound'}
					onChange={(sound) => become({ [wire]: sound ? 'sound' : 'open' })}
				/>
			))}
			<Toggle
				label={breakWords.swapped}
				words={breakWords.noYes}
				on={cable.swapped}
				onChange={(swapped) => become({ swapped })}
			/>
			<Toggle
				label={breakWords.microphone}
				words={breakWords.noYes}
				on={cable.kind === 'microphone'}
				onChange={(on) => become({ kind: on ? 'microphone' : 'data' })}
			/>
			<NumberField
				label={breakWords.length}
				value={cable.length}
				from={0.1}
				to={2000}
				broken
				bad={breakWords.badLength}
				onChange={(length) => become({ length })}
			/>
		</div>
	);
}

function UnitFaults({ unit }: { unit: Unit }): JSX.Element {
	const { store } = useBench();
	const { profile, condition, placed } = unit;
	const become = (change: Partial<typeof condition>) =>
		store.send({ type: 'condition.become', fixture: placed.id, change });
	const flags = [
		'receiverDead',
		'covered',
		...(profile.sensor ? (['sensorDead'] as const) : []),
		...(profile.microphone ? (['microphoneDead'] as const) : []),
		...(profile.panel.kind === 'dip' ? [] : (['displayDead'] as const)),
		...(profile.power.battery ? (['chargerDead'] as const) : []),
	] as const;
	return (
		<div class="faults">
			{flags.map((flag) => (
				<Toggle
					key={flag}
					label={breakWords[flag]}
					words={breakWords.noYes}
					on={condition[flag]}
					onChange={(on) => become({ [flag]: on })}
				/>
			))}
			<Choice
				label={breakWords.socket}
				value={condition.badSocket ?? 'none'}
				options={breakWords.sockets}
				onChange={(socket) => become({ badSocket: socket === 'none' ? null : (socket as 'in' | 'out') })}
			/>
			<Choice
				label={breakWords.foldBack}
				value={`${condition.foldBack}`}
				options={breakWords.foldBacks}
				onChange={(share) => become({ foldBack: Number(share) })}
			/>
			{profile.power.battery && (
				<Choice
					label={breakWords.health}
					value={`${condition.batteryHealth}`}
					options={breakWords.healths}
					onChange={(share) => become({ batteryHealth: Number(share) })}
				/>
			)}
			{profile.emitters.map(({ id, name }) => {
				const dead = condition.deadEmitters.includes(id);
				return (
					<Toggle
						key={id}
						label={breakWords.emitterDead(name)}
						words={breakWords.noYes}
						on={dead}
						onChange={() =>
							become({
								deadEmitters: dead
									? condition.deadEmitters.filter((each) => each !== id)
									: [...condition.deadEmitters, id],
							})
						}
					/>
				);
			})}
		</div>
	);
}

interface ChoiceProps {
	label: string;
	value: string;
	options: Readonly<Record<string, string>>;
	onChange: (value: string) => void;
}

function Choice({ label, value, options, onChange }: ChoiceProps): JSX.Element {
	const id = useId();
	return (
		<div class="field">
			<label for={id}>{label}</label>
			<select id={id} value={value} onChange={(event) => onChange(event.currentTarget.value)}>
				{Object.entries(options).map(([option, words]) => (
					<option key={option} value={option}>
						{words}
					</option>
				))}
			</select>
		</div>
	);
}
