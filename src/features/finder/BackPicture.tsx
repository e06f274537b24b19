import type { JSX } from 'preact';
import type { CheckSpot } from '#words/checks/index.ts';
import { pictureWords } from '#words/finder/index.ts';
import { PanelParts } from './PanelPicture.tsx';
import { Part } from './Part.tsx';
import type { BackParts } from './picture.ts';

/** The back of a fixture with what it has, and the place in question ringed. */
export function BackPicture({ spot, back }: { spot: CheckSpot; back: BackParts }): JSX.Element {
	const lamps = [
		'power-lamp',
		'data-lamp',
		...(back.sensor ? ['sensor-lamp' as const] : []),
		...(back.battery ? ['battery-lamp' as const] : []),
	] as const;
	return (
		<>
			<rect class="picture-case" x="6" y="8" width="328" height="136" rx="14" />
			<rect class="picture-slot" x="132" y="16" width="76" height="7" rx="3.5" />
			<PanelParts
				keys={back.keys}
				panel={back.panel}
				part={(id, ring, children) => (
					<Part on={spot === id} ring={ring}>
						{children}
					</Part>
				)}
			/>
			{lamps.map((lamp, i) => (
				<Part key={lamp} on={spot === lamp} ring={[176, 28 + 26 * i, 78, 25]}>
					<Indicator lamp={lamp} y={40 + 26 * i} />
				</Part>
			))}
			<Part on={spot === 'socket-in'} ring={[253, 27, 38, 52]}>
				<Socket x={272} label={pictureWords.in} />
			</Part>
			<Part on={spot === 'socket-out'} ring={[295, 27, 38, 52]}>
				<Socket x={314} label={pictureWords.out} />
			</Part>
			<Part on={spot === 'mains'} ring={[252, 84, 40, 54]}>
				<path class="picture-hole" d="M259 92h26v17l-5 6h-16l-5-6z" />
				<path class="picture-pins" d="M266 97v7M272 100v7M278 97v7" />
				<text class="picture-word" x="272" y="131">
					{pictureWords.mains}
				</text>
			</Part>
			<Part on={spot === 'power-switch'} ring={[294, 84, 39, 54]}>
				<rect class="picture-hole" x="305" y="90" width="18" height="26" rx="3" />
				<rect class="picture-key" x="307.5" y="92.5" width="13" height="11" rx="2" />
				<text class="picture-word" x="314" y="131">
					{pictureWords.switch}
				</text>
			</Part>
		</>
	);
}

function Indicator({ lamp, y }: { lamp: keyof typeof pictureWords.lamps; y: number }): JSX.Element {
	return (
		<>
			{lamp === 'battery-lamp' ? (
				[0, 1, 2, 3].map((bar) => (
					<rect key={bar} class="picture-bar" x={180 + 5 * bar} y={y - 6} width="3.5" height="12" rx="1" />
				))
			) : (
				<circle class="picture-lamp" cx="189" cy={y} r="6" />
			)}
			<text class="picture-word picture-word-start" x="204" y={y + 4}>
				{pictureWords.lamps[lamp]}
			</text>
		</>
	);
}

function Socket({ x, label }: { x: number; label: string }): JSX.Element {
	return (
		<>
			<circle class="picture-rim" cx={x} cy="47" r="13" />
			<circle class="picture-hole" cx={x} cy="47" r="9.5" />
			<g class="picture-dots">
				<circle cx={x - 4} cy="45" r="1.8" />
				<circle cx={x + 4} cy="45" r="1.8" />
				<circle cx={x} cy="51.5" r="1.8" />
			</g>
			<text class="picture-word" x={x} y="74">
				{label}
			</text>
		</>
	);
}
