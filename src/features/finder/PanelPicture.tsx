import type { ComponentChildren, JSX } from 'preact';
import type { BackParts } from './picture.ts';

type Ring = readonly [number, number, number, number];
type Draw = (id: 'display' | 'keys' | 'switches' | 'slides', ring: Ring, children: ComponentChildren) => JSX.Element;

type PanelLook = Pick<BackParts, 'panel' | 'keys'>;
const USUAL: PanelLook = { panel: 'code', keys: 4 };
const PANEL_OF: Readonly<Record<string, PanelLook>> = {
	'tallow-6': USUAL,
	'picket-8': { panel: 'text', keys: 4 },
	cobble: { panel: 'dip', keys: 0 },
	'thimble-4': { panel: 'code', keys: 3 },
};

/** What a kind of fixture's panel looks like, by the profile's id, to be told from the others at a glance. */
export function PanelPicture({ profile }: { profile: string }): JSX.Element {
	return (
		<svg class="panel-picture" viewBox="8 20 164 116" aria-hidden="true">
			<rect class="picture-case" x="8" y="20" width="164" height="116" rx="10" />
			<PanelParts {...(PANEL_OF[profile] ?? USUAL)} part={(_, __, children) => <g>{children}</g>} />
		</svg>
	);
}

/** Display and keys, or switches and slides. */
export function PanelParts({ panel, keys, part }: PanelLook & { part: Draw }): JSX.Element {
	if (panel === 'dip')
		return (
			<>
				{part(
					'switches',
					[14, 28, 154, 52],
					<>
						<rect class="picture-bank" x="20" y="34" width="142" height="40" rx="4" />
						{[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((i) => (
							<g key={i}>
								<rect class="picture-hole" x={25 + 13.6 * i} y="40" width="9" height="28" rx="2" />
								<rect
									class="picture-knob"
									x={26.5 + 13.6 * i}
									y={[0, 2, 4].includes(i) ? 42 : 54}
									width="6"
									height="12"
								/>
							</g>
						))}
					</>,
				)}
				{part(
					'slides',
					[14, 84, 154, 46],
					[0, 1, 2].map((i) => (
						<g key={i}>
							<rect class="picture-hole" x={24 + 48 * i} y="101" width="38" height="12" rx="6" />
							<circle class="picture-knob" cx={[31, 91, 127][i]} cy="107" r="5" />
						</g>
					)),
				)}
			</>
		);
	return (
		<>
			{part(
				'display',
				[14, 28, 154, 54],
				panel === 'code' ? (
					<>
						<rect class="picture-glass" x="20" y="34" width="142" height="42" rx="5" />
						{[0, 1, 2, 3].map((i) => (
							<path
								key={i}
								class="picture-digit"
								d={`M${36 + 30 * i} 43h16M${34 + 30 * i} 45v9M${54 + 30 * i} 45v9M${36 + 30 * i} 55h16M${34 + 30 * i} 57v9M${54 + 30 * i} 57v9M${36 + 30 * i} 68h16`}
							/>
						))}
					</>
				) : (
					<>
						<rect class="picture-screen" x="20" y="34" width="142" height="42" rx="5" />
						<path class="picture-letters" d="M28 48h54M88 48h34M28 63h22M56 63h70" />
					</>
				),
			)}
			{part(
				'keys',
				[14, 88, 154, 42],
				Array.from({ length: keys }, (_, i) => (
					<rect key={i} class="picture-key" x={22 + 36.6 * i} y="96" width="28" height="26" rx="6" />
				)),
			)}
		</>
	);
}
