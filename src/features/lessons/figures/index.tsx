import type { JSX } from 'preact';
import { Bond, Coil, Column, Ways } from './hang.tsx';
import { Graze, Overlap, Square, Throw } from './light.tsx';
import { Bands, Daisy, Frame, Half, Lead, Pins, Switches } from './line.tsx';

/** Our own drawings, each with how tall it stands at 400 wide. */
export const figures = {
	bond: [Bond, 236],
	ways: [Ways, 216],
	column: [Column, 252],
	coil: [Coil, 212],
	throw: [Throw, 244],
	graze: [Graze, 240],
	overlap: [Overlap, 270],
	square: [Square, 256],
	pins: [Pins, 226],
	daisy: [Daisy, 180],
	frame: [Frame, 152],
	half: [Half, 160],
	lead: [Lead, 146],
	switches: [Switches, 186],
	bands: [Bands, 256],
} as const satisfies Record<string, readonly [() => JSX.Element, number]>;
export type FigureId = keyof typeof figures;
