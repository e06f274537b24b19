import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { backWords, benchWords, rowWords } from '#words/bench/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { askedOf, type Sight } from '../../../sim/rig/index.ts';
import { Tape } from '../../ui/index.ts';
import { CableLines } from './CableLines.tsx';
import { briefLight } from './fixtureBack.ts';
import { Socket } from './Socket.tsx';
import { useBench, useSeen } from './view.ts';

/** What a socket of a box is called on its card. */
const labelOf = (socket: string): string => (socket === 'in' || socket === 'out' ? backWords[socket] : socket);

/** Everything with a data socket, in a row: desk, boxes, fixtures, each with its light in words, and the cables between them. */
export function Row(): JSX.Element {
	const [sheet, boxes] = useSeen(({ store }) => [store.rig.sheet, store.rig.gear.boxes]);
	const box = useRef<HTMLDivElement>(null);
	return (
		<section class="row" aria-label={benchWords.parts.row}>
			<div class="row-scroll">
				<div class="row-inner" ref={box}>
					<CableLines box={box} />
					{sheet.desk && <DeskCard desk={sheet.desk} />}
					{boxes.map(({ id, name, ports }) => (
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

/** The desk's outputs, and what each carries. */
function DeskCard({ desk }: { desk: NonNullable<RigSheet['desk']> }): JSX.Element {
	const says = useSeen(({ store }) =>
		(store.rig.gear.desk?.outputs ?? []).map(({ id, universe, on }) =>
			on ? rowWords.carries(id.toUpperCase(), universe) : rowWords.silent(id.toUpperCase()),
		),
	);
	return (
		<div class="card card-source">
			<Tape>{desk.name}</Tape>
			<p class="card-light">
				{says.map((words) => (
					<span key={words}>{words}</span>
				))}
			</p>
			<div class="card-sockets">
				{desk.outputs.map(({ id }) => (
					<Socket key={id} port={`desk:${id}`} label={id.toUpperCase()} />
				))}
			</div>
		</div>
	);
}

/** Moves the focus from a card to its panel, past all other cards and sockets. */
const toPanel = (): void => document.querySelector<HTMLElement>('.panel .display, .panel button')?.focus();

/** What is read of a display from where the row is walked. */
const faceOf = (display: Sight['display']): { lit: boolean; face: string } =>
	display.kind === 'keyed'
		? { lit: display.lit, face: display.lit ? display.lines[0]?.trim() || ' ' : ' ' }
		: { lit: true, face: backWords.noDisplay };

function Card({ fixture, number }: { fixture: string; number: number }): JSX.Element | null {
	const { store, select, why } = useBench();
	const [placed, sight, inHand] = useSeen(({ selected }) => {
		const { rig } = store;
		const placed = rig.gear.units.get(fixture)?.placed;
		// it may have gone from the bench a moment before its card does
		if (!placed) return [undefined, undefined, false];
		return [placed, store.look(fixture), selected === fixture, askedOf(rig, fixture)];
	});
	if (!placed || !sight) return null;
	const { name } = placed;
	const { kind } = sight.display;
	const panel = store.rig.gear.units.get(fixture)?.profile.panel;
	const { lit, face } = faceOf(sight.display);
	return (
		<li class="card" data-selected={inHand} data-text={panel?.kind === 'text'}>
			<button type="button" class="card-name" aria-pressed={inHand} onClick={() => select(fixture)}>
				<span class="visually-hidden">{backWords.takeInHand} </span>
				<span class="card-number">{number}</span>
				<Tape>{name}</Tape>
			</button>
			{inHand && (
				<button type="button" class="card-skip" onClick={toPanel}>
					{rowWords.toPanel}
				</button>
			)}
			<p class="card-light" id={`light-${fixture}`}>
				{briefLight(store.rig, fixture, sight.light)}
			</p>
			{why && (
				<button type="button" class="button card-why" aria-label={backWords.whyOf(name)} onClick={() => why(fixture)}>
					{backWords.why}
				</button>
			)}
			<div class="card-sockets">
				<Socket port={`${fixture}:in`} label={backWords.in} />
				<span class={`card-face card-face-${kind}`} aria-hidden="true" data-lit={lit}>
					{face}
				</span>
				<Socket port={`${fixture}:out`} label={backWords.out} />
			</div>
		</li>
	);
}
