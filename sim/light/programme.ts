import { InputError, shown } from '../../shared/error/index.ts';
import type { Profile, Programme } from '../../shared/profile/index.ts';
import { soundAverage, soundLevels } from './sound.ts';
import type { SoundState } from './types.ts';

/** A programme made ready: its colours by emitter, and seconds a step at each speed 1..100 (index 0 is unused). */
interface ReadyProgramme {
	readonly programme: Programme;
	readonly colours: readonly Float32Array[];
	readonly seconds: Float64Array;
}

const ready = new WeakMap<Profile, readonly ReadyProgramme[]>();

function programmeOf(profile: Profile, index: number): ReadyProgramme {
	let all = ready.get(profile);
	if (all === undefined) {
		const held = staticTable(profile);
		all = profile.programmes.map((programme) => ({
			programme,
			colours: programme.colours.map((id) => held[profile.held.findIndex((it) => it.id === id)] as Float32Array),
			seconds: Float64Array.from({ length: 101 }, (_, speed) => secondsAt(programme, speed)),
		}));
		ready.set(profile, all);
	}
	const one = all[index];
	if (one === undefined) {
		throw new InputError('programme.index', 'programme', {
			expected: 'place-in-list',
			profile: profile.name,
			last: all.length - 1,
			found: shown(index),
		});
	}
	return one;
}

function secondsAt({ slowest, fastest }: Programme, speed: number): number {
	return slowest * (fastest / slowest) ** ((speed - 1) / 99);
}

/** A whole speed 1..100: the nearest. */
function notch(speed: number): number {
	return Math.min(100, Math.max(1, Math.round(speed)));
}

function stepOf({ seconds }: ReadyProgramme, speed: number): number {
	return seconds[notch(speed)] as number;
}

/**
 * Seconds a step takes (strobe: seconds a flash). Between slowest (speed 1) and fastest (speed 100) each notch of speed
 * is the same ratio: `slowest × (fastest / slowest) ^ ((speed - 1) / 99)`.
 * @param speed 1..100, to the nearest whole; past the ends it stays at the end
 * @throws InputError `programme.index`
 */
export function secondsAStep(profile: Profile, index: number, speed: number): number {
	return stepOf(programmeOf(profile, index), speed);
}

/** A programme at a moment of its running. */
export interface ProgrammeRun {
	/** Into the profile's programmes, from 0. */
	readonly index: number;
	/** Milliseconds since it began. */
	readonly elapsedMs: number;
	/** 1..100. */
	readonly speed: number;
	/** By the microphone; its `since` on the programme's own clock, as from `heardSince`. */
	readonly heard: SoundState;
}

/**
 * What a programme asks of the emitters at a moment. A function of its arguments alone: asked twice, it says the same.
 *
 * - change: each step one colour
 * - fade: crossfades from each colour to the next, in levels, one step a crossfade
 * - pulse: each step one swell of a colour from nothing to full and back (the square of a sine)
 * - strobe: each step one flash of a colour, lit for its first half
 * - sound: see `soundLevels`
 * @param out written over: 0..1 by cell, then emitter
 * @throws InputError `programme.index`
 */
export function programmeLevels(profile: Profile, run: ProgrammeRun, out: Float32Array): void {
	const { elapsedMs, heard } = run;
	const found = programmeOf(profile, run.index);
	const { programme, colours } = found;
	const seconds = stepOf(found, run.speed);
	if (programme.kind === 'sound') {
		const { answer = 'step' } = programme;
		soundLevels({ answer, colours, seconds, cells: profile.cells }, elapsedMs, heard, out);
		return;
	}
	const steps = Math.max(0, elapsedMs) / 1000 / seconds;
	const whole = Math.floor(steps);
	const part = steps - whole;
	const from = colours[whole % colours.length] as Float32Array;
	const to = colours[(whole + 1) % colours.length] as Float32Array;
	// one loop for all kinds, here: a fraction handed to a function may be put on the heap
	let keep = 1;
	let take = 0;
	if (programme.kind === 'pulse') keep = Math.sin(Math.PI * part) ** 2;
	else if (programme.kind === 'strobe') keep = part < STROBE_DUTY ? 1 : 0;
	else if (programme.kind === 'fade') {
		keep = 1 - part;
		take = part;
	}
	const emitters = from.length;
	for (let at = 0; at < out.length; at += emitters) {
		for (let e = 0; e < emitters; e++) out[at + e] = (from[e] as number) * keep + (to[e] as number) * take;
	}
}

/**
 * Flashes a second a programme means to give: those of a strobe programme. 0 for every other kind: changes, fades and
 * swells are no strobe, and a sound programme flashes as the music does. For what a screen may draw, see `screenPace`.
 * @throws InputError `programme.index`
 */
export function programmeFlashes(profile: Profile, index: number, speed: number): number {
	const found = programmeOf(profile, index);
	return found.programme.kind === 'strobe' ? 1 / stepOf(found, speed) : 0;
}

/**
 * Rises and falls of light a second, at most, that a programme may make: each flash of a strobe, each swell of a pulse, and
 * every two steps of a change or fade. 0 for sound, whose pace is the music's.
 * @throws InputError `programme.index`
 */
export function programmeSwings(profile: Profile, index: number, speed: number): number {
	const found = programmeOf(profile, index);
	const { kind } = found.programme;
	if (kind === 'sound') return 0;
	const steps = 1 / stepOf(found, speed);
	return kind === 'strobe' || kind === 'pulse' ? steps : steps / 2;
}

/**
 * What a programme asks on average over one round of its colours, for the battery's draw.
 * Where sound decides, what was heard last stands for the whole, at two beats a second (see `soundAverage`).
 * @param out written over: 0..1 by cell, then emitter
 * @throws InputError `programme.index`
 */
export function programmeAverage(
	profile: Profile,
	index: number,
	speed: number,
	heard: SoundState,
	out: Float32Array,
): void {
	const found = programmeOf(profile, index);
	const { colours } = found;
	out.fill(0);
	const emitters = profile.emitters.length;
	const gain = meanGain(found, speed, heard, profile.cells) / colours.length;
	for (const colour of colours) {
		for (let at = 0; at < out.length; at++) (out[at] as number) += (colour[at % emitters] as number) * gain;
	}
}

function meanGain(found: ReadyProgramme, speed: number, heard: SoundState, cells: number): number {
	const { programme } = found;
	switch (programme.kind) {
		case 'change':
		case 'fade':
			return 1;
		case 'pulse':
			// the mean of a sine squared
			return 0.5;
		case 'strobe':
			return STROBE_DUTY;
		case 'sound':
			return soundAverage(programme.answer ?? 'step', stepOf(found, speed), heard, cells);
	}
}

const tables = new WeakMap<Profile, readonly Float32Array[]>();

/**
 * Each held colour of a profile as levels 0..1, one array a colour, by emitter in the profile's order.
 * Made once a profile; callers only read it.
 */
function staticTable(profile: Profile): readonly Float32Array[] {
	let table = tables.get(profile);
	if (table === undefined) {
		table = profile.held.map((colour) =>
			Float32Array.from(profile.emitters, (emitter) => (colour.levels[emitter.id] ?? 0) / 255),
		);
		tables.set(profile, table);
	}
	return table;
}

/**
 * The levels of a held colour.
 * @param held index into the profile's held colours, from 0
 * @param out written over: 0..1 by cell, then emitter (`out[cell * emitters + emitter]`)
 * @throws InputError `held.index` where there is no such colour
 */
export function staticLevels(profile: Profile, held: number, out: Float32Array): void {
	const colour = staticTable(profile)[held];
	if (colour === undefined) {
		const last = profile.held.length - 1;
		throw new InputError('held.index', 'held', {
			expected: 'place-in-list',
			profile: profile.name,
			last,
			found: shown(held),
		});
	}
	for (let at = 0; at < out.length; at += colour.length) out.set(colour, at);
}

/** Share of each flash that is lit. `common practice, no source`: real gear gives anything from a blink to a half. */
export const STROBE_DUTY = 0.5;

/**
 * Whether a strobe is lit at a moment: 1 in the first half of each flash, 0 in the second.
 * @param hz flashes a second; 0 or less is a steady light, always 1
 * @param elapsedMs milliseconds since the strobing began
 */
export function strobeGate(hz: number, elapsedMs: number): 0 | 1 {
	if (!(hz > 0)) return 1;
	const flashes = (elapsedMs / 1000) * hz;
	return flashes - Math.floor(flashes) < STROBE_DUTY ? 1 : 0;
}
