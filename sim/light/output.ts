import { assert, CHECKED } from '../../shared/error/index.ts';
import type { Profile, Settings } from '../../shared/profile/index.ts';
import { programmeLevels, STROBE_DUTY, staticLevels } from './programme.ts';
import type { FixtureCondition, SlotRequest, SoundState } from './types.ts';

/**
 * A dim curve: output 0..1 against level 0..1. All rise steadily from 0 to 1.
 * straight: `x`. square: `x²`, finer at the bottom. soft: `3x² − 2x³`, gentle at both ends.
 */
export function curve(kind: Settings['curve'], x: number): number {
	if (kind === 'straight') return x;
	return kind === 'square' ? x * x : x * x * (3 - 2 * x);
}

/**
 * The levels an ask comes to: nothing where it is dark, else its programme, else its held colour, else its colour slots.
 * @param elapsedMs milliseconds since the programme began
 * @param heard see `ProgrammeRun`
 * @param out written over: 0..1 by cell, then emitter
 */
export function askLevels(
	profile: Profile,
	ask: SlotRequest,
	elapsedMs: number,
	heard: SoundState,
	out: Float32Array,
): void {
	if (ask.dark) out.fill(0);
	else if (ask.programme >= 0)
		programmeLevels(profile, { index: ask.programme, elapsedMs, speed: ask.speed, heard }, out);
	else if (ask.held >= 0) staticLevels(profile, ask.held, out);
	else out.set(ask.levels);
}

/** All that stands between what is asked and what the emitters do. May be kept and changed between frames. */
export interface OutputRequest {
	readonly profile: Profile;
	/** 0..1 by cell, then emitter. */
	readonly levels: Float32Array;
	/** 0..1 by cell. */
	readonly intensity: Float32Array;
	readonly curve: Settings['curve'];
	/** Highest output allowed, percent: full becomes this, and all below in proportion. */
	readonly limit: number;
	readonly condition: Pick<FixtureCondition, 'deadEmitters' | 'foldBack'>;
	/** 1: lit. 0: between two flashes. `mean`: averaged over the flashes of a strobe, for the draw. */
	readonly strobe: 0 | 1 | 'mean';
}

/**
 * What each emitter gives in the end. The curve bends level and intensity each for itself, so that a colour keeps its hue
 * as it dims; limit and thermal fold-back scale; dead emitters stay out. A cover changes nothing here: the emitters
 * light behind it and draw their power (see `cellLight`).
 * @param out written over: 0..1 by cell, then emitter
 * @returns `out`
 */
export function outputOf(request: OutputRequest, out: Float32Array): Float32Array {
	const { profile, levels, intensity, curve: kind, condition } = request;
	const { cells, emitters } = profile;
	const width = emitters.length;
	const gate = request.strobe === 'mean' ? STROBE_DUTY : request.strobe;
	const most = (request.limit / 100) * condition.foldBack * gate;
	for (let cell = 0; cell < cells; cell++) {
		const gain = curve(kind, intensity[cell] as number) * most;
		const end = (cell + 1) * width;
		for (let at = cell * width; at < end; at++) out[at] = curve(kind, levels[at] as number) * gain;
	}
	const dead = condition.deadEmitters;
	for (let d = 0; d < dead.length; d++) {
		for (let e = 0; e < width; e++) {
			if (emitters[e]?.id !== dead[d]) continue;
			for (let at = e; at < out.length; at += width) out[at] = 0;
		}
	}
	if (CHECKED)
		for (const share of out) assert(share >= 0 && share <= 1, 'an emitter past its full output, or below none', share);
	return out;
}

/**
 * Watts drawn: the idle draw, and each emitter in proportion to its output.
 * @param outputs 0..1 by cell, then emitter
 */
export function wattsOf(profile: Profile, outputs: Float32Array): number {
	const { emitters, cells } = profile;
	let watts = profile.power.idleWatts;
	for (let at = 0; at < outputs.length; at++) {
		watts += ((outputs[at] as number) * (emitters[at % emitters.length]?.watts ?? 0)) / cells;
	}
	return watts;
}
