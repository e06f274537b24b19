import type { JSX } from 'preact';
import { Bands, Curves, Overlap, Switches } from './charts.tsx';
import { Coil, OverUnder } from './coil.tsx';
import { Bond, Column, Ways } from './hang.tsx';
import { Focus, Graze, Square, Throw } from './light.tsx';
import { Branches, Daisy, Frame, Half, Lead } from './line.tsx';
import { Pins } from './plugs.tsx';

/** Our own drawings, each with how tall it stands at 400 wide. */
export const figures = {
	bond: [Bond, 242],
	ways: [Ways, 216],
	column: [Column, 252],
	coil: [Coil, 212],
	'over-under': [OverUnder, 222],
	throw: [Throw, 244],
	graze: [Graze, 240],
	focus: [Focus, 246],
	overlap: [Overlap, 300],
	square: [Square, 256],
	pins: [Pins, 312],
	daisy: [Daisy, 180],
	frame: [Frame, 152],
	half: [Half, 208],
	lead: [Lead, 150],
	branches: [Branches, 212],
	switches: [Switches, 186],
	bands: [Bands, 262],
	curves: [Curves, 264],
} as const satisfies Record<string, readonly [() => JSX.Element, number]>;
export type FigureId = keyof typeof figures;
