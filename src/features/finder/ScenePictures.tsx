import type { JSX } from 'preact';
import { pictureWords } from '#words/finder/index.ts';
import { Part } from './Part.tsx';

/** The lenses, from in front. */
export function Front(): JSX.Element {
	return (
		<>
			<rect class="picture-case" x="80" y="10" width="180" height="130" rx="14" />
			<Part on ring={[104, 18, 132, 114]}>
				{[0, 1, 2, 3, 4, 5].map((i) => (
					<circle key={i} class="picture-lens" cx={135 + 35 * (i % 3)} cy={52 + 46 * Math.floor(i / 3)} r="15" />
				))}
			</Part>
		</>
	);
}

/** The wall with light on it. */
export function Wall(): JSX.Element {
	return (
		<>
			<rect class="picture-wall" x="6" y="8" width="328" height="112" rx="4" />
			<path class="picture-floor" d="M6 120h328v24H6z" />
			<Part on ring={[104, 14, 132, 100]}>
				<path class="picture-light" d="M164 122C150 80 122 60 118 20h104c-4 40-32 60-46 102z" />
			</Part>
			<path class="picture-case" d="M150 138v-6l5-14h30l5 14v6z" />
		</>
	);
}

/** The wall with the light of a whole row on it. */
export function WallRow(): JSX.Element {
	return (
		<>
			<rect class="picture-wall" x="6" y="8" width="328" height="112" rx="4" />
			<path class="picture-floor" d="M6 120h328v24H6z" />
			<Part on ring={[18, 14, 304, 100]}>
				{[0, 1, 2, 3].map((i) => (
					<path
						key={i}
						class="picture-light"
						transform={`translate(${76 * i - 114} 0)`}
						d="M164 122C156 84 146 64 144 24h52c-2 40-12 60-20 98z"
					/>
				))}
			</Part>
			{[0, 1, 2, 3].map((i) => (
				<path key={i} class="picture-case" transform={`translate(${76 * i - 114} 0)`} d="M150 138v-6l5-14h30l5 14v6z" />
			))}
		</>
	);
}

/** A cable with both its plugs. */
export function Cable(): JSX.Element {
	return (
		<Part on ring={[18, 20, 304, 112]}>
			<path class="picture-lead" d="M78 96C130 20 210 140 262 60" />
			<path class="picture-plug" d="M34 108l36-20 10 16-36 20zM306 46l-36 20-10-16 36-20z" />
		</Part>
	);
}

/** The desk: its screen, or its outputs. */
export function Desk({ spot }: { spot: 'desk-screen' | 'desk-output' }): JSX.Element {
	return (
		<>
			<path
				class="picture-case"
				d="M20 132l14-104a8 8 0 018-8h256a8 8 0 018 8l14 104a8 8 0 01-8 10H28a8 8 0 01-8-10z"
			/>
			<Part on={spot === 'desk-screen'} ring={[44, 28, 252, 58]}>
				<rect class="picture-hole" x="52" y="34" width="236" height="46" rx="3" />
				{[0, 1, 2, 3].map((row) => (
					<g key={row}>
						<rect class="picture-row" x="60" y={40 + 10 * row} width="62" height="5" />
						<rect class="picture-bar" x="132" y={40 + 10 * row} width={[120, 70, 142, 30][row]} height="5" />
					</g>
				))}
			</Part>
			<Part on={spot === 'desk-output'} ring={[116, 88, 108, 50]}>
				{pictureWords.outputs.map((output, i) => (
					<g key={output}>
						<circle class="picture-rim" cx={148 + 44 * i} cy="106" r="12" />
						<circle class="picture-hole" cx={148 + 44 * i} cy="106" r="8.5" />
						<text class="picture-word" x={148 + 44 * i} y="132">
							{output}
						</text>
					</g>
				))}
			</Part>
		</>
	);
}

/** The remote. */
export function Remote(): JSX.Element {
	return (
		<Part on ring={[126, 6, 88, 140]}>
			<rect class="picture-case" x="136" y="14" width="68" height="124" rx="14" />
			<circle class="picture-lamp" cx="170" cy="27" r="5" />
			{[0, 1, 2, 3, 4, 5, 6, 7].map((i) => (
				<rect
					key={i}
					class="picture-key"
					x={146 + 26 * (i % 2)}
					y={40 + 23 * Math.floor(i / 2)}
					width="22"
					height="16"
					rx="5"
				/>
			))}
		</Part>
	);
}

/** Sockets of the hall. */
export function Hall(): JSX.Element {
	return (
		<>
			<rect class="picture-wall" x="6" y="8" width="328" height="136" rx="4" />
			<Part on ring={[76, 36, 188, 80]}>
				{[0, 1].map((i) => (
					<g key={i}>
						<rect class="picture-case" x={88 + 88 * i} y="46" width="76" height="60" rx="8" />
						<path class="picture-pins" d={`M${112 + 88 * i} 68v12M${126 + 88 * i} 74v12M${140 + 88 * i} 68v12`} />
					</g>
				))}
			</Part>
		</>
	);
}
