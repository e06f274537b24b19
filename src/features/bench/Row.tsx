import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { backWords, benchWords, rowWords } from '#words/bench/index.ts';
import { Tape } from '../../ui/index.ts';
import { panelTitle } from '../../wording/index.ts';
import { CableLines } from './CableLines.tsx';
import { briefLight } from './fixtureBack.ts';
import { Socket } from './Socket.tsx';
import { useBench } from './view.ts';

/** What a socket of a box is called on its card. */
const labelOf = (socket: string): string => (socket === 'in' || socket === 'out' ? backWords[socket] : socket);

/** Everything with a data socket, in a row: desk, boxes, fixtures, each with its light in words, and the cables between them. */
export function Row(): JSX.Element {
	const { store } = useBench();
	const { sheet } = store.rig;
	const box = useRef<HTMLDivElement>(null);
	return (
		<section class="row" aria-label={benchWords.parts.row}>
			<div class="row-scroll">
				<div class="row-inner" ref={box}>
					<CableLines box={box} />
					{sheet.desk && (
						<div class="card card-source">
							<Tape>{sheet.desk.name}</Tape>
							<p class="card-light">
								{store.rig.gear.desk?.outputs.map(({ id, universe, on }) => (
									<span key={id}>
										{on ? rowWords.carries(id.toUpperCase(), universe) : rowWords.silent(id.toUpperCase())}
									</span>
								))}
							</p>
							<div class="card-sockets">
								{sheet.desk.outputs.map(({ id }) => (
									<Socket key={id} port={`desk:${id}`} label={id.toUpperCase()} />
								))}
							</div>
						</div>
					)}
					{store.rig.gear.boxes.map(({ id, name, ports }) => (
						<div key={id} class="card card-source">
							<Tape>{name}</Tape>
							<div class="card-sockets">
								{ports.map(({ socket }) => (
									<Socket key={socket} port={`${id}:${socket}`} label={labelOf(socket)} />
								))}
							</div>
						</div>
					))}
					<ul class="row-list">
						{sheet.fixtures.map(({ id }, at) => (
							<Card key={id} fixture={id} number={at + 1} />
						))}
					</ul>
				</div>
			</div>
		</section>
	);
}

function Card({ fixture, number }: { fixture: string; number: number }): JSX.Element {
	const { store, selected, select, why } = useBench();
	const unit = store.rig.gear.units.get(fixture);
	const name = unit?.placed.name ?? fixture;
	const { light, display } = store.look(fixture);
	const inHand = selected === fixture;
	const face = display.kind === 'keyed' ? (display.lit ? display.lines[0]?.trim() || ' ' : ' ') : backWords.noDisplay;
	return (
		<li class="card" data-selected={inHand}>
			<button type="button" class="card-name" aria-pressed={inHand} onClick={() => select(fixture)}>
				<span class="visually-hidden">{backWords.takeInHand} </span>
				<span class="card-number">{number}</span>
				<Tape>{name}</Tape>
			</button>
			<span
				class={`card-face card-face-${display.kind}`}
				aria-hidden="true"
				data-lit={display.kind !== 'keyed' || display.lit}
			>
				{face}
			</span>
			{display.kind === 'keyed' && (
				<span class="card-title" aria-hidden="true">
					{panelTitle(store.rig, fixture)}
				</span>
			)}
			<p class="card-light" id={`light-${fixture}`}>
				{briefLight(store.rig, fixture, light)}
			</p>
			{why && (
				<button type="button" class="button card-why" aria-label={backWords.whyOf(name)} onClick={() => why(fixture)}>
					{backWords.why}
				</button>
			)}
			<div class="card-sockets">
				<Socket port={`${fixture}:in`} label={backWords.in} />
				<Socket port={`${fixture}:out`} label={backWords.out} />
			</div>
		</li>
	);
}
