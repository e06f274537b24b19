import type { Profile } from '../../shared/profile/index.ts';
import { actingSettings } from '../fixture/index.ts';
import {
	heardSince,
	programmeAverage,
	programmeFlashes,
	programmeLevels,
	type SoundState,
	secondsAStep,
	staticLevels,
} from '../light/index.ts';
import type { Unit } from './gear.ts';

/** When to look: a time on the rig's clock, ms, or the mean over all of it, for what is drawn. */
export type Moment = number | 'mean';

/** Light as some source asks for it, before dim curve, limit and the lamp's own wrongs. */
export interface LightPlan {
	/** 0..1 by cell, then emitter. */
	readonly levels: Float32Array;
	/** 0..1 by cell. */
	readonly intensity: Float32Array;
	/** Flashes a second; 0 steady. The levels are those of the lit part of a flash. */
	readonly strobe: number;
	/** Whether it changes by itself as time goes on, flashes aside. */
	readonly moving: boolean;
	/** The programme that runs, by index in the profile, and its speed; null where none does. */
	readonly programme: { readonly index: number; readonly speed: number } | null;
}

/** No light asked for. */
export function darkPlan(profile: Profile): LightPlan {
	return {
		levels: new Float32Array(profile.cells * profile.emitters.length),
		intensity: new Float32Array(profile.cells),
		strobe: 0,
		moving: false,
		programme: null,
	};
}

/** A held colour. @param intensity 0..1 by cell */
export function staticPlan(profile: Profile, index: number, intensity: Float32Array, strobe: number): LightPlan {
	const levels = new Float32Array(profile.cells * profile.emitters.length);
	staticLevels(profile, index, levels);
	return { levels, intensity, strobe, moving: false, programme: null };
}

/** A programme under way. */
interface RunningProgramme {
	/** Its index in the profile. */
	readonly index: number;
	/** 1..100. */
	readonly speed: number;
	/** When it began, ms on the rig's clock. */
	readonly since: number;
	/** With its own `since` on the rig's clock. */
	readonly heard: SoundState;
	/** 0..1 by cell. */
	readonly intensity: Float32Array;
}

/** A programme at a moment. */
export function programmePlan(profile: Profile, run: RunningProgramme, moment: Moment): LightPlan {
	const { index, speed, since, heard, intensity } = run;
	const levels = new Float32Array(profile.cells * profile.emitters.length);
	const programme = { index, speed };
	if (moment === 'mean') {
		programmeAverage(profile, index, speed, heard, levels);
		return { levels, intensity, strobe: 0, moving: true, programme };
	}
	const strobe = programmeFlashes(profile, index, speed);
	const elapsed = moment - since;
	const elapsedMs = strobe > 0 ? startOfFlash(profile, index, speed, elapsed) : elapsed;
	programmeLevels(profile, { index, elapsedMs, speed, heard: heardSince(heard, since) }, levels);
	return { levels, intensity, strobe, moving: strobe === 0, programme };
}

/** A strobe is looked at in its lit part: its rate is told apart. */
function startOfFlash(profile: Profile, index: number, speed: number, elapsed: number): number {
	const flash = 1000 * secondsAStep(profile, index, speed);
	// a hair past the start, so that rounding cannot land in the flash before
	return (Math.floor(elapsed / flash) + 1e-6) * flash;
}

/** What the fixture's own panel asks for: its held colour or its programme, as set. */
export function ownPlan(unit: Unit, moment: Moment, asProgramme = false): LightPlan {
	const { profile } = unit;
	const { heard, programmeSince } = unit.state.context;
	const settings = actingSettings(unit.state);
	const intensity = new Float32Array(profile.cells).fill(settings.level / 100);
	if (settings.work === 'programme' || asProgramme) {
		const index = profile.programmes.findIndex((programme) => programme.id === settings.programme);
		const { speed } = settings;
		return programmePlan(
			profile,
			{ index, speed, since: programmeSince, heard: heardBy(unit, heard), intensity },
			moment,
		);
	}
	return staticPlan(
		profile,
		profile.held.findIndex((held) => held.id === settings.held),
		intensity,
		settings.strobe,
	);
}

/** A fixture with no microphone, or a dead one, hears nothing. */
export function heardBy(unit: Unit, heard: SoundState): SoundState {
	return unit.profile.microphone && !unit.condition.microphoneDead ? heard : { level: 0, beats: 0, since: 0 };
}
