import type { JSX, RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import type { Port } from '../../../shared/sheet/index.ts';
import { cableLines, carriedIn, type PagePoint } from './cableLines.ts';
import { useSeen } from './view.ts';

/** Cables drawn between the sockets of a box; the list of cables tells the same in words. */
export function CableLines({ box }: { box: RefObject<HTMLElement> }): JSX.Element {
	const [sheet, cables, hand, told] = useSeen(({ store, hand, why }) => {
		const { sheet, gear } = store.rig;
		// where the rig is not to give anything away, a cable is a cable
		const told = why ? carriedIn(gear, (id) => store.look(id).lamps.data) : [];
		return [sheet, gear.cables, hand, told.join()];
	});
	const carried = told.split(',');
	const [spots, place] = useState<ReadonlyMap<Port, PagePoint>>(new Map());
	useLayoutEffect(() => {
		const element = box.current;
		if (!element) return;
		const measure = () => {
			const origin = element.getBoundingClientRect();
			const found = new Map<Port, PagePoint>();
			for (const socket of element.querySelectorAll<HTMLElement>('[data-port]')) {
				const { left, top, width } = (socket.querySelector('svg') ?? socket).getBoundingClientRect();
				found.set(socket.dataset['port'] ?? '', { x: left + width / 2 - origin.left, y: top + width / 2 - origin.top });
			}
			place(found);
		};
		measure();
		const watch = new ResizeObserver(measure);
		watch.observe(element);
		return () => watch.disconnect();
	}, [box, sheet]);
	const lines = cableLines(cables, spots);
	const waiting = hand?.kind === 'fresh' ? spots.get(hand.from) : undefined;
	return (
		<svg class="cables-drawn" aria-hidden="true">
			{lines.map(({ id, kind, path, middle, turn, loose }) => (
				<g
					key={id}
					data-kind={kind}
					data-held={hand?.kind === 'end' && hand.cable === id}
					data-carries={carried[cables.findIndex((cable) => cable.id === id)]}
				>
					<path class="cable-edge" d={path} />
					<path class="cable-line" d={path} />
					<path class="cable-data" d={path} />
					<g class="cable-mark" transform={`translate(${middle.x} ${middle.y}) rotate(${turn})`}>
						<circle r="8" />
						<path class="cable-way" d="M-2-4 3 0-2 4" />
						<path class="cable-stop" d="M-4-4 4 4M4-4-4 4" />
					</g>
					{loose.map(({ x, y }) => (
						<circle key={x} class="cable-loose" cx={x} cy={y} r="6" />
					))}
				</g>
			))}
			{waiting && (
				<g data-held="true">
					<path class="cable-line" d={`M${waiting.x} ${waiting.y}q4 20 26 24`} />
					<circle class="cable-loose" cx={waiting.x + 26} cy={waiting.y + 24} r="6" />
				</g>
			)}
		</svg>
	);
}
