import type { SOUND_ANSWERS } from '../../shared/profile/index.ts';
import type { SoundState } from './types.ts';

type SoundAnswer = (typeof SOUND_ANSWERS)[number];

/** Seconds between beats where an average needs a tempo: 120 a minute, the middle of dance music. `common practice, no source`. */
const BEAT_SECONDS = 0.5;

/**
 * What was heard, with the last beat told on a programme's own clock: 0 is the moment it began.
 * @param began milliseconds on the clock that `heard.since` was told on
 */
export function heardSince(heard: SoundState, began: number): SoundState {
	return { level: heard.level, beats: heard.beats, since: heard.since - began };
}

/** A sound programme made ready: how it answers, its colours by emitter, seconds a step at its speed, cells of the fixture. */
interface SoundProgramme {
	readonly answer: SoundAnswer;
	readonly colours: readonly Float32Array[];
	readonly seconds: number;
	readonly cells: number;
}

/**
 * How a sound programme answers.
 *
 * - step: each beat calls the next colour, which stands until the beat after
 * - swell: as bright as it is loud, through its colours by the clock, one a step
 * - flash: each beat flashes the next colour, which dies away in a straight line over one step; dark before the first
 * - run: each beat moves the light one cell on; past the last cell it begins again in the next colour
 *
 * Without a beat step and run stand still; in silence swell is dark.
 * @param elapsedMs milliseconds since it began
 * @param heard its `since` on the programme's own clock
 * @param out written over: 0..1 by cell, then emitter
 */
export function soundLevels(
	{ answer, colours, seconds, cells }: SoundProgramme,
	elapsedMs: number,
	heard: SoundState,
	out: Float32Array,
): void {
	const { beats } = heard;
	// which colour, how strong, and in which cell alone (or in all)
	let which = beats;
	let gain = 1;
	let only = -1;
	if (answer === 'swell') {
		which = Math.floor(Math.max(0, elapsedMs) / 1000 / seconds);
		gain = Math.min(1, Math.max(0, heard.level));
	} else if (answer === 'flash') {
		which = Math.max(0, beats - 1);
		gain = beats > 0 ? Math.max(0, 1 - Math.max(0, elapsedMs - heard.since) / 1000 / seconds) : 0;
	} else if (answer === 'run') {
		which = Math.floor(beats / cells);
		only = beats % cells;
	}
	const colour = colours[which % colours.length] as Float32Array;
	const emitters = colour.length;
	for (let cell = 0; cell < cells; cell++) {
		const strength = only < 0 || only === cell ? gain : 0;
		for (let e = 0; e < emitters; e++) out[cell * emitters + e] = (colour[e] as number) * strength;
	}
}

/**
 * Share of full, on average, that a sound programme gives: run lights one cell of all, swell is as bright as it is loud now,
 * a flash dies away until the next beat (two a second) or to nothing.
 */
export function soundAverage(answer: SoundAnswer, seconds: number, heard: SoundState, cells: number): number {
	switch (answer) {
		case 'step':
			return 1;
		case 'swell':
			return Math.min(1, Math.max(0, heard.level));
		case 'flash': {
			if (heard.beats < 1) return 0;
			const lit = Math.min(seconds, BEAT_SECONDS);
			return ((1 - lit / (2 * seconds)) * lit) / BEAT_SECONDS;
		}
		case 'run':
			return 1 / cells;
	}
}
