import type { SOUND_ANSWERS } from '../../shared/profile/index.ts';
import { spread } from './held.ts';
import type { Heard } from './types.ts';

type SoundAnswer = (typeof SOUND_ANSWERS)[number];

/** Seconds between beats where an average needs a tempo: 120 a minute, the middle of dance music. `common practice, no source`. */
const BEAT_SECONDS = 0.5;

/**
 * What was heard, with the last beat told on a programme's own clock: 0 is the moment it began.
 * @param began milliseconds on the clock that `heard.since` was told on
 */
export function heardSince(heard: Heard, began: number): Heard {
	return { level: heard.level, beats: heard.beats, since: heard.since - began };
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
 * @param colours by emitter
 * @param elapsedMs milliseconds since it began
 * @param seconds a step
 * @param heard its `since` on the programme's own clock
 * @param out written over: 0..1 by cell, then emitter
 */
export function soundLevels(
	answer: SoundAnswer,
	colours: readonly Float32Array[],
	elapsedMs: number,
	seconds: number,
	heard: Heard,
	cells: number,
	out: Float32Array,
): void {
	const count = colours.length;
	if (answer === 'step') {
		spread(colours[heard.beats % count] as Float32Array, 1, out);
	} else if (answer === 'swell') {
		const step = Math.floor(Math.max(0, elapsedMs) / 1000 / seconds);
		spread(colours[step % count] as Float32Array, Math.min(1, Math.max(0, heard.level)), out);
	} else if (answer === 'flash') {
		const age = Math.max(0, elapsedMs - heard.since) / 1000;
		const left = heard.beats > 0 ? Math.max(0, 1 - age / seconds) : 0;
		spread(colours[Math.max(0, heard.beats - 1) % count] as Float32Array, left, out);
	} else {
		out.fill(0);
		const colour = colours[Math.floor(heard.beats / cells) % count] as Float32Array;
		out.set(colour, (heard.beats % cells) * colour.length);
	}
}

/**
 * Share of full, on average, that a sound programme gives: run lights one cell of all, swell is as bright as it is loud now,
 * a flash dies away until the next beat (two a second) or to nothing.
 */
export function soundAverage(answer: SoundAnswer, seconds: number, heard: Heard, cells: number): number {
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
