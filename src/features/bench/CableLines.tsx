import type { JSX, RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import type { Port } from '../../../shared/sheet/index.ts';
import { cableLines, type PagePoint } from './cableLines.ts';
import { useSeen } from './view.ts';

/** Cables drawn between the sockets of a box; the list of cables tells the same in words. */
export function CableLines({ box }: { box: RefObject<HTMLElement> }): JSX.Element {
	const [sheet, cables, hand] = useSeen(({ store, hand }) => [store.rig.sheet, store.rig.gear.cables, hand]);
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
			{lines.map(({ id, kind, path, loose }) => (
				<g key={id} data-kind={kind} data-held={hand?.kind === 'end' && hand.cable === id}>
					<path class="cable-edge" d={path} />
					<path class="cable-line" d={path} />
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
