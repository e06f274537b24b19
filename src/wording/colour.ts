import { colourNames, colourWith } from '#words/rig/index.ts';
import { fill } from './fill.ts';

/** A colour of the light in words: 'dim deep blue', 'warm white', 'red with ultraviolet'. @param name as the light goes by */
export function colourText(name: string): string {
	const [, weak, plain = '', ultraviolet] = /^(?:(faint|dim) )?(.*?)( with ultraviolet)?$/.exec(name) ?? [];
	const colour = (colourNames as Readonly<Record<string, string>>)[plain] ?? plain;
	const shown = weak === 'faint' || weak === 'dim' ? fill(colourWith[weak], { colour }) : colour;
	return ultraviolet ? fill(colourWith.ultraviolet, { colour: shown }) : shown;
}
