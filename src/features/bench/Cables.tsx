import type { JSX } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { cableWords } from '#words/bench/index.ts';
import { type Port, portsOf, type SheetCable } from '../../../shared/sheet/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { Button } from '../../ui/index.ts';
import { cableName, portText } from '../../wording/index.ts';
import { inSocket, layEvent } from './hand.ts';
import { NumberField } from './NumberField.tsx';
import { useKeptFocus } from './useKeptFocus.ts';
import { useBench, useSeen } from './view.ts';

const freePorts = (rig: Rig): Port[] => portsOf(rig.sheet).filter((port) => inSocket(rig, port).kind === 'free');

/** Every cable and terminator as a list: the same as the sockets in the row do, for a phone, a keyboard, a screen reader. */
export default function Cables(): JSX.Element {
	const { store, setNext } = useBench();
	const [next] = useSeen(({ next }) => [next, store.rig.sheet, store.rig.gear.cables, store.rig.gear.terminators]);
	const kindId = useId();
	const { rig } = store;
	const free = freePorts(rig);
	const list = useRef<HTMLDivElement>(null);
	useKeptFocus(list);
	return (
		<div class="cable-list" ref={list}>
			<p class="hint">{cableWords.hint}</p>
			<div class="cable-next">
				<div class="field">
					<label for={kindId}>{cableWords.next.kind}</label>
					<select
						id={kindId}
						value={next.kind}
						onChange={(event) => setNext({ ...next, kind: event.currentTarget.value as typeof next.kind })}
					>
						{Object.entries(cableWords.kinds).map(([kind, words]) => (
							<option key={kind} value={kind}>
								{words}
							</option>
						))}
					</select>
				</div>
				<NumberField
					label={cableWords.next.length}
					value={next.length}
					from={0.1}
					to={2000}
					broken
					bad={cableWords.next.badLength}
					onChange={(length) => setNext({ ...next, length })}
				/>
			</div>
			<h3>{cableWords.list}</h3>
			{rig.gear.cables.length === 0 ? <p>{cableWords.none}</p> : null}
			<ul class="cable-lines">
				{rig.gear.cables.map((cable) => (
					<CableLine key={cable.id} cable={cable} free={free} />
				))}
			</ul>
			<Lay free={free} />
			<Terminators free={free} />
		</div>
	);
}

function CableLine({ cable, free }: { cable: SheetCable; free: readonly Port[] }): JSX.Element {
	const { store } = useBench();
	const name = cableName(cable.id);
	return (
		<li class="cable-item">
			<h4>{`${name}: ${cableWords.metres(cable.length)}, ${cableWords.kinds[cable.kind]}`}</h4>
			{(['from', 'to'] as const).map((end) => {
				const port = cable[end];
				const label = cableWords.ends[end];
				return (
					<div key={end} class="cable-end-line">
						<span>{`${label}: ${port === null ? cableWords.loose : portText(port, store.rig)}`}</span>
						{port === null ? (
							<PortChoice
								label={cableWords.plugIntoOf(name, label)}
								free={free}
								value=""
								onChange={(chosen) => store.send({ type: 'cable.plug', cable: cable.id, end, port: chosen })}
							/>
						) : (
							<Button
								aria-label={cableWords.unplugEnd(name, portText(port, store.rig))}
								onClick={() => store.send({ type: 'cable.unplug', cable: cable.id, end })}
							>
								{cableWords.unplug}
							</Button>
						)}
					</div>
				);
			})}
			<Button aria-label={cableWords.liftOne(name)} onClick={() => store.send({ type: 'cable.lift', cable: cable.id })}>
				{cableWords.lift}
			</Button>
		</li>
	);
}

interface PortChoiceProps {
	label: string;
	free: readonly Port[];
	value: string;
	onChange: (port: Port) => void;
}

/** A choice among the free sockets, with its label said and not shown where the line says it already. */
function PortChoice({ label, free, value, onChange }: PortChoiceProps): JSX.Element {
	const { store } = useBench();
	return (
		<select
			aria-label={label}
			value={value}
			onChange={(event) => event.currentTarget.value && onChange(event.currentTarget.value)}
		>
			<option value="">{cableWords.choose}</option>
			{free.map((port) => (
				<option key={port} value={port}>
					{portText(port, store.rig)}
				</option>
			))}
		</select>
	);
}

function Lay({ free }: { free: readonly Port[] }): JSX.Element {
	const bench = useBench();
	const { store } = bench;
	const [from, setFrom] = useState('');
	const [to, setTo] = useState('');
	const ready = free.includes(from) && free.includes(to) && from !== to;
	return (
		<fieldset class="lay">
			<legend>{cableWords.lay}</legend>
			<PortChoice label={cableWords.layFrom} free={free} value={free.includes(from) ? from : ''} onChange={setFrom} />
			<PortChoice label={cableWords.layTo} free={free} value={free.includes(to) ? to : ''} onChange={setTo} />
			<Button disabled={!ready} onClick={() => store.send(layEvent(store.rig, from, to, bench.next))}>
				{cableWords.layDo}
			</Button>
		</fieldset>
	);
}

function Terminators({ free }: { free: readonly Port[] }): JSX.Element {
	const { store } = useBench();
	const [port, choose] = useState('');
	return (
		<fieldset class="lay">
			<legend>{cableWords.terminators}</legend>
			{store.rig.gear.terminators.map((each) => (
				<Button key={each} onClick={() => store.send({ type: 'terminator.remove', port: each })}>
					{cableWords.remove(portText(each, store.rig))}
				</Button>
			))}
			<PortChoice label={cableWords.fitIn} free={free} value={free.includes(port) ? port : ''} onChange={choose} />
			<Button disabled={!free.includes(port)} onClick={() => store.send({ type: 'terminator.fit', port })}>
				{cableWords.fit}
			</Button>
		</fieldset>
	);
}
