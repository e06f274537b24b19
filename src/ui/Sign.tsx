import type { JSX } from 'preact';
import type { CheckSpot } from '#words/checks/index.ts';
import type { ComplaintKind } from '../../sim/finder/index.ts';

/** A drawing 24 wide and high: lines, and what of it is filled. */
interface Drawing {
	readonly lines: string;
	readonly filled?: string;
}

const ring = 'M12 7a5 5 0 1 0 0 10a5 5 0 1 0 0-10z';
const rays = 'M12 1v3M12 20v3M1 12h3M20 12h3M4.2 4.2l2.1 2.1M17.7 17.7l2.1 2.1M4.2 19.8l2.1-2.1M17.7 6.3l2.1-2.1';
const faders = 'M6 3v18M18 3v18';
const remote = 'M4 6h7v15h-7zM7.5 10v0';
const pair = 'M5 9a3 3 0 1 0 0 6a3 3 0 1 0 0-6z';
const battery = 'M2 7h17v10h-17zM22 10v4';

/** A light or an indicator, as it would be seen. */
const LIGHTS = {
	on: { lines: rays, filled: ring },
	off: { lines: ring },
	dim: { lines: `${ring}M12 2v1M12 21v1M2 12h1M21 12h1`, filled: 'M12 7a5 5 0 0 0 0 10z' },
	flickering: { lines: `${ring}M1 14l2-4l2 4M19 14l2-4l2 4M10 2l4 2M10 22l4-2`, filled: 'M12 9l3 3l-3 3l-3-3z' },
	blinking: { lines: `${ring}M3 6a11 11 0 0 1 18 0M3 18a11 11 0 0 0 18 0`, filled: 'M12 7a5 5 0 0 1 0 10z' },
	flashing: { lines: rays, filled: 'M12 6l2 4l4 2l-4 2l-2 4l-2-4l-4-2l4-2z' },
	moving: { lines: 'M4 12a8 8 0 0 1 14-5M18 2v5h-5M20 12a8 8 0 0 1-14 5M6 22v-5h5' },
} as const satisfies Readonly<Record<string, Drawing>>;

const BATTERY = {
	empty: { lines: battery },
	low: { lines: battery, filled: 'M4 9h3v6h-3z' },
	good: { lines: battery, filled: 'M4 9h3v6h-3zM9 9h3v6h-3zM14 9h3v6h-3z' },
	charging: { lines: `${battery}M10 14v-4M8 12l2-2l2 2` },
} as const satisfies Readonly<Record<string, Drawing>>;

const COMPLAINTS: Readonly<Record<ComplaintKind, Drawing>> = {
	dark: LIGHTS.off,
	'no-answer': { lines: `${faders}M9 20l6-6M9 14l6 6`, filled: 'M3 6h6v4h-6zM15 6h6v4h-6z' },
	'follower-silent': { lines: `${pair}M10 12h3M19 9a3 3 0 1 0 0 6a3 3 0 1 0 0-6z`, filled: pair },
	'follower-differs': { lines: `${pair}M10 12h4M16 9h6v6h-6z`, filled: pair },
	'wrong-colour': { lines: `${ring}${rays}`, filled: 'M8.5 8.5a5 5 0 0 1 7 7z' },
	'colour-missing': {
		lines: 'M6 4v16M12 4v16M18 4v16M15 17l6 6M15 23l6-6',
		filled: 'M4 7h4v3h-4zM10 7h4v3h-4z',
	},
	flicker: LIGHTS.flickering,
	'dead-beyond': { lines: 'M1 12h8M15 12h8M10 8l4 8', filled: 'M3 9h4v6h-4z' },
	'answers-anothers': { lines: `${faders}M9 6h4M12 3l3 3l-3 3`, filled: 'M15 4h6v4h-6zM3 14h6v4h-6z' },
	'two-move': { lines: 'M12 13v8M12 13l-6-6M12 13l6-6', filled: 'M9 17h6v4h-6zM3 2h5v5h-5zM16 2h5v5h-5z' },
	'own-show': LIGHTS.moving,
	strobing: LIGHTS.flashing,
	'ignores-remote': { lines: `${remote}M14 5l7 7M21 5l-7 7` },
	'remote-moves-wrong': { lines: `${remote}M14 12h7M18 9l3 3l-3 3` },
	dim: LIGHTS.dim,
	'goes-out': {
		lines: 'M5 4a4 4 0 1 0 0 8a4 4 0 1 0 0-8zM19 12a4 4 0 1 0 0 8a4 4 0 1 0 0-8zM10 10l4 4',
		filled: 'M5 4a4 4 0 1 0 0 8a4 4 0 1 0 0-8z',
	},
	'strange-after-restart': { lines: 'M7 6a8 8 0 1 0 10 0M12 2v9' },
	'does-not-charge': { lines: `${battery}M7 9l6 6M13 9l-6 6` },
};

/** What of a kind of complaint is seen: the same drawing wherever it stands. The words beside it say it. */
export const ComplaintSign = ({ kind }: { kind: ComplaintKind }): JSX.Element => <Sign drawing={COMPLAINTS[kind]} />;

const LAMP_SPOTS: readonly CheckSpot[] = ['power-lamp', 'data-lamp', 'sensor-lamp', 'wall'];
const LAMPS: Readonly<Record<string, Drawing>> = {
	lit: LIGHTS.on,
	lights: LIGHTS.on,
	steady: LIGHTS.on,
	out: LIGHTS.off,
	dark: LIGHTS.off,
	dimmer: LIGHTS.dim,
	flickering: LIGHTS.flickering,
	jumping: LIGHTS.flickering,
	blinking: LIGHTS.blinking,
	flashing: LIGHTS.flashing,
	moving: LIGHTS.moving,
};

const right = (x: number): string => `M${x - 3} 12a3 3 0 1 0 6 0a3 3 0 1 0-6 0z`;
const wrong = (x: number): string => `M${x - 3} 9l6 6M${x + 3} 9l-6 6`;
/** The light a row is looked at for, which is not asked about itself. */
const itself = 'M9.5 8h5v8h-5z';

/** A row of lights: what comes before the one complained of, that one, what comes after. */
const ROWS: Readonly<Record<string, Drawing>> = {
	all: { lines: itself, filled: `${right(4)}${right(20)}` },
	none: { lines: `${itself}${wrong(4)}${wrong(20)}` },
	beyond: { lines: `${itself}${wrong(20)}`, filled: right(4) },
	some: { lines: `${itself}${wrong(4)}`, filled: right(20) },
};

/** What would be seen of an indicator, of the wall or along a row; nothing where a drawing tells no more than its words. */
export function AnswerSign({ spot, outcome }: { spot: CheckSpot; outcome: string }): JSX.Element | null {
	const drawing = answerDrawing(spot, outcome);
	return drawing ? <Sign drawing={drawing} /> : null;
}

/** As `AnswerSign` has it. */
export function answerDrawing(spot: CheckSpot, outcome: string): Drawing | null {
	if (spot === 'battery-lamp') return (BATTERY as Readonly<Record<string, Drawing>>)[outcome] ?? null;
	if (spot === 'row') return ROWS[outcome] ?? null;
	return LAMP_SPOTS.includes(spot) ? (LAMPS[outcome] ?? null) : null;
}

function Sign({ drawing: { lines, filled } }: { drawing: Drawing }): JSX.Element {
	return (
		<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">
			{filled !== undefined && <path class="sign-filled" d={filled} />}
			{lines !== '' && <path d={lines} />}
		</svg>
	);
}
