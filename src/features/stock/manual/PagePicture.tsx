import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { manualWords as words } from '#words/stock/index.ts';
import { afterKey, type Box, boxBetween, type Point } from './box.ts';
import { type ManualPage, ManualTrouble } from './pdf.ts';

interface Props {
	page: ManualPage;
	label: string;
	box: Box;
	onBox: (box: Box) => void;
	/** Twice as wide as there is room, to be scrolled. */
	isLarge: boolean;
	onTrouble: (trouble: ManualTrouble | null) => void;
}

/** A hand that goes less far than so many dots of the screen taps, and does not drag. */
const TAP = 8;
const percent = (part: number): number => Math.round(part * 100);

/** A page as a picture, with the part of it that is marked: dragged with a mouse, set corner by corner with a finger, or by keys. */
export function PagePicture({ page, label, box, onBox, isLarge, onTrouble }: Props): JSX.Element {
	const canvas = useRef<HTMLCanvasElement>(null);
	const sheet = useRef<HTMLDivElement>(null);
	const [isDrawn, setDrawn] = useState(false);
	/** Where a hand came down. */
	const [start, begin] = useState<(Point & { isTouch: boolean; at: Point }) | null>(null);
	/** The first of two corners. */
	const [corner, setCorner] = useState<Point | null>(null);
	useEffect(() => {
		let isOver = false;
		setDrawn(false);
		const across = (sheet.current?.clientWidth ?? 0) * Math.min(2, window.devicePixelRatio || 1);
		if (canvas.current)
			page.draw(canvas.current, Math.max(300, across)).then(
				() => {
					if (!isOver) setDrawn(true);
				},
				(error: unknown) => {
					if (!isOver && error instanceof ManualTrouble) onTrouble(error);
				},
			);
		return () => {
			isOver = true;
		};
	}, [page, isLarge]);
	useEffect(() => setCorner(null), [page]);

	const pointOf = (event: PointerEvent): Point => {
		const { left, top, width, height } = (sheet.current as HTMLElement).getBoundingClientRect();
		return { x: (event.clientX - left) / width, y: (event.clientY - top) / height };
	};
	const isTap = (event: PointerEvent): boolean =>
		start !== null && Math.hypot(event.clientX - start.at.x, event.clientY - start.at.y) < TAP;
	const tap = (point: Point) => {
		if (corner) onBox(boxBetween(corner, point));
		setCorner(corner ? null : point);
	};
	const [left, top, right, bottom] = [box.left, box.top, box.right, box.bottom].map(percent) as [
		number,
		number,
		number,
		number,
	];
	return (
		<div class="manual-frame">
			<div
				ref={sheet}
				class={isLarge ? 'manual-sheet manual-large' : 'manual-sheet'}
				onPointerDown={(event) => {
					if (event.button !== 0) return;
					const isTouch = event.pointerType === 'touch';
					if (!isTouch) {
						// what it would select or drag instead
						event.preventDefault();
						event.currentTarget.setPointerCapture(event.pointerId);
					}
					begin({ ...pointOf(event), isTouch, at: { x: event.clientX, y: event.clientY } });
				}}
				onPointerMove={(event) => {
					if (start && !start.isTouch && !isTap(event)) {
						setCorner(null);
						onBox(boxBetween(start, pointOf(event)));
					}
				}}
				onPointerUp={(event) => {
					if (isTap(event)) tap(pointOf(event));
					begin(null);
				}}
				onPointerCancel={() => begin(null)}
			>
				<canvas ref={canvas} role="img" aria-label={label} />
				{!isDrawn && <p class="manual-drawing">{words.drawing}</p>}
				<svg class="manual-mark" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
					<path
						class="manual-out"
						d={`M0 0H100V100H0ZM${box.left * 100} ${box.top * 100}V${box.bottom * 100}H${box.right * 100}V${box.top * 100}Z`}
					/>
					<rect
						x={box.left * 100}
						y={box.top * 100}
						width={(box.right - box.left) * 100}
						height={(box.bottom - box.top) * 100}
					/>
					{corner && <path class="manual-corner" d={`M${corner.x * 100} ${corner.y * 100}h0`} />}
				</svg>
				<button
					type="button"
					class="manual-box"
					aria-label={words.box(left, top, right, bottom)}
					style={`left:${left}%;top:${top}%;width:${right - left}%;height:${bottom - top}%`}
					onKeyDown={(event) => {
						const next = afterKey(box, event.key, event.shiftKey);
						if (!next) return;
						event.preventDefault();
						onBox(next);
					}}
				/>
			</div>
			{corner && <p role="status">{words.corner}</p>}
		</div>
	);
}
