import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { PINS } from '../../../../shared/dmx/index.ts';
import { Label } from './parts.tsx';

const { plugs, conductors, drawn } = figureWords;

/**
 * Where the pins stand on the face of a plug, in degrees clockwise from its key, pin 1 first; a socket is its mirror image. From
 * memory of IEC 61076-2-103, the order and not the exact angles; every connector has the numbers beside its contacts.
 */
export const PIN_ANGLES = { five: [50, 115, 180, 245, 310], three: [60, 300, 180] } as const;

/** The face of five-pin and three-pin plugs and sockets, and what each pin carries. */
export function Pins(): JSX.Element {
	const face = (cx: number, cy: number, of: keyof typeof PIN_ANGLES, socket: boolean) => (
		<g>
			<circle class="f-part" cx={cx} cy={cy} r="52" />
			<path class="f-key" d={`M${cx - 7} ${cy - 53}v10h14v-10`} />
			{PIN_ANGLES[of].map((degrees, i) => {
				const angle = ((socket ? -degrees : degrees) * Math.PI) / 180;
				const [x, y] = [cx + 30 * Math.sin(angle), cy - 30 * Math.cos(angle)];
				return (
					<g key={degrees}>
						<circle class={socket ? 'f-well' : 'f-pin'} cx={x} cy={y} r="12" />
						<text class={socket ? 'f-label' : 'f-pin-number'} x={x} y={y + 5} text-anchor="middle">
							{i + 1}
						</text>
					</g>
				);
			})}
		</g>
	);
	return (
		<g>
			<Label x={66} y={20} middle>
				{drawn.pins.plug}
			</Label>
			<Label x={186} y={20} middle>
				{drawn.pins.socket}
			</Label>
			{face(66, 88, 'five', false)}
			{face(186, 88, 'five', true)}
			<Label x={126} y={160} middle>
				{plugs.five}
			</Label>
			{face(66, 228, 'three', false)}
			{face(186, 228, 'three', true)}
			<Label x={126} y={300} middle>
				{plugs.three}
			</Label>
			{PINS.map((conductor, row) => (
				<Label key={conductor} x={258} y={74 + 28 * row}>{`${row + 1}  ${conductors[conductor]}`}</Label>
			))}
			<Label x={258} y={232} small>
				{drawn.pins.key[0]}
			</Label>
			<Label x={258} y={250} small>
				{drawn.pins.key[1]}
			</Label>
		</g>
	);
}
