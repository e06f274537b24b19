import { strToU8 } from 'fflate';
import { gdtfNames } from '#words/gdtf/index.ts';
import { packedFiles } from '../../../shared/gdtf/index.ts';
import {
	type MvrPicks,
	NO_PICKS,
	type PlanFromScene,
	readMvrArchive,
	readScene,
	toPlan,
} from '../../../shared/mvr/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { nameOf } from '../plan/plans.ts';

/** Scenes made by hand: elements as text. */
export const fixture = (name: string, inside: string, uuid = `00000000-0000-4000-8000-${name}`): string =>
	`<Fixture name="${name}" uuid="${uuid}">${inside}</Fixture>`;

export const matrix = (x: number, y: number, z: number): string =>
	`<Matrix>{1,0,0}{0,1,0}{0,0,1}{${x},${y},${z}}</Matrix>`;

export const scene = (children: string, more = ''): string =>
	`<?xml version="1.0" encoding="UTF-8"?>
<GeneralSceneDescription verMajor="1" verMinor="6"><Scene>${more}<Layers><Layer name="Hall" uuid="1"><ChildList>${children}</ChildList></Layer></Layers></Scene></GeneralSceneDescription>`;

export const archive = (text: string, files: Readonly<Record<string, Uint8Array>> = {}): Uint8Array =>
	packedFiles({ 'GeneralSceneDescription.xml': strToU8(text), ...files });

/** A file read all the way. */
export function read(bytes: Uint8Array, picks: MvrPicks = NO_PICKS, own: readonly Profile[] = []): PlanFromScene {
	const opened = readMvrArchive(bytes);
	return toPlan(
		readScene(opened.scene),
		opened,
		[...own, ...BUNDLED],
		(id) => BUNDLED.some((each) => each.id === id),
		{ rig: 'File', fixture: nameOf, gdtf: gdtfNames },
		picks,
	);
}

/** Every kind and mode picked: the first bundled fixture. */
export const picked: MvrPicks = {
	types: { '': BUNDLED[0]?.id ?? '', other: BUNDLED[0]?.id ?? '' },
	modes: { [`${BUNDLED[0]?.id}/`]: BUNDLED[0]?.modes[0]?.id ?? '' },
};
