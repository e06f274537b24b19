import { actingSettings, driveOf, powerOf, signalOf } from '../fixture/index.ts';
import type { Gear, Rig, Unit } from './gear.ts';
import { lookAt } from './look.ts';
import { isByLine, outputsOf, planAt } from './plan.ts';
import { type Reason, reason } from './reason.ts';
import { unitOf } from './step.ts';
import { whyDrive, whyLine, whyPower } from './whyLine.ts';

/** Stages between a source and a fixture. What is wrong there can be wrong several times over, and all of it must be put right. */
const WAY = ['source', 'line', 'signal'];

/**
 * Why a fixture looks as it does: from what feeds it, through what decides its light and how that reaches it, to the lamp.
 * The trail ends at the first link that stops the light; where that is on the way from a source, with what else is wrong there,
 * and with what the fixture does without data.
 * @param id of a fixture of the rig
 * @throws InputError `event.fixture` for a fixture that the rig has not
 */
export function why({ gear }: Pick<Rig, 'gear'>, id: string): Reason[] {
	const unit = unitOf(gear, id);
	const trail: Reason[] = [...whyPower(gear, unit)];
	if (driveOf(unit.state) !== 'unpowered' && powerOf(unit.state) !== 'flat') {
		trail.push(...whyDrive(gear, unit));
		if (isByLine(driveOf(unit.state))) trail.push(...whyLine(gear, unit));
		trail.push(...whyFixture(gear, unit));
	}
	const stop = trail.findIndex((reason) => reason.effect === 'stops');
	if (stop < 0) return trail;
	const isOnWay = ({ id }: Reason) => WAY.includes(id.slice(0, id.indexOf('.')));
	const more = trail.slice(stop + 1).filter((each) => isOnWay(each) && each.effect !== 'passes');
	return [...trail.slice(0, stop + 1), ...more];
}

/** From what is asked of the lamp to what is seen. */
function whyFixture(gear: Gear, unit: Unit): Reason[] {
	const trail: Reason[] = [];
	const { profile, condition, state } = unit;
	const settings = actingSettings(state);
	const plan = planAt(gear, unit, gear.now, true);
	// damaged frames light what no whole one asks for
	const stops = lookAt(gear, unit.placed.id).light.flicker ? 'shapes' : 'stops';
	const asked = profile.emitters.filter((_, e) => {
		for (let cell = 0; cell < profile.cells; cell++)
			if ((plan.levels[cell * profile.emitters.length + e] ?? 0) > 0) return true;
		return false;
	});
	const own = driveOf(state) !== 'line' && driveOf(state) !== 'following';
	if ((own || signalOf(state) === 'running') && settings.level === 0)
		trail.push(reason('level.nothing', stops, { level: 0 }));
	if (asked.length === 0 && plan.programme && profile.programmes[plan.programme.index]?.kind === 'sound')
		trail.push(reason('level.silence', stops, { hearing: settings.hearing }));
	if (settings.limit < 100) trail.push(reason('level.limit', 'shapes', { limit: settings.limit }));
	if (settings.curve !== 'straight') trail.push(reason('level.curve', 'shapes', { curve: settings.curve }));
	const dead = asked.filter((emitter) => condition.deadEmitters.includes(emitter.id)).map((emitter) => emitter.id);
	if (dead.length > 0)
		trail.push(reason('lamp.dead-emitter', dead.length === asked.length ? stops : 'shapes', { emitters: dead }));
	if (condition.foldBack < 1)
		trail.push(
			reason('lamp.folded-back', condition.foldBack === 0 ? stops : 'shapes', {
				percent: Math.round(condition.foldBack * 100),
			}),
		);
	if (condition.covered) trail.push(reason('lamp.covered', 'stops', {}));
	return [...trail, ...whySeen(gear, unit)];
}

function whySeen(gear: Gear, unit: Unit): Reason[] {
	const { light } = lookAt(gear, unit.placed.id);
	const { whole } = light;
	if (whole.brightness === 0 && whole.ultraviolet === 0 && !light.flicker) {
		const lit = outputsOf(unit, planAt(gear, unit, gear.now)).some((output) => output > 0);
		return [reason('light.dark', 'stops', { emitting: lit })];
	}
	const trail: Reason[] = [];
	// one that jumps about is dark only at moments
	if (whole.brightness > 0 || whole.ultraviolet > 0)
		trail.push(
			reason('light.shows', 'passes', {
				words: whole.words,
				colour: whole.colour,
				brightness: Math.round(whole.brightness * 100),
			}),
		);
	if (whole.ultraviolet > 0)
		trail.push(reason('light.ultraviolet', 'shapes', { percent: Math.round(whole.ultraviolet * 100) }));
	if (light.flashes > 0) trail.push(reason('light.flashes', 'shapes', { rate: Math.round(light.flashes * 10) / 10 }));
	if (light.flicker) trail.push(reason('light.flickers', 'shapes', {}));
	return trail;
}
