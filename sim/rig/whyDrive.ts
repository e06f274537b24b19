import { chargeOf, driveOf, isSwitchedOn, powerOf } from '../fixture/index.ts';
import { meanWatts } from './emit.ts';
import type { Gear, Unit } from './gear.ts';
import { type Reason, reason } from './reason.ts';

/** What feeds it, or why nothing does. */
export function whyPower(gear: Gear, unit: Unit): Reason[] {
	const { profile, state, plug } = unit;
	const battery = profile.power.battery;
	const percent = battery ? Math.round((100 * chargeOf(profile, state, gear.now)) / battery.wattHours) : null;
	switch (powerOf(state)) {
		case 'mains':
			return [reason('power.mains', 'passes', { plug })];
		case 'battery':
			return [reason('power.battery', 'passes', { percent, watts: Math.round(meanWatts(gear, unit)) })];
		case 'charging':
			return [reason('power.charging', 'stops', { percent })];
		case 'flat':
			return [reason('power.flat', 'stops', {})];
		case 'off':
			if (!isSwitchedOn(state)) return [reason('power.off', 'stops', {})];
			return [
				plug === 'none' || gear.hallPower
					? reason('power.no-mains', 'stops', { plug })
					: reason('power.hall-dark', 'stops', { plug }),
			];
	}
}

/** What decides the light, what it sends to others, and whether a remote could have a say. */
export function whyDrive(gear: Gear, unit: Unit): Reason[] {
	const { settings } = unit.state.context;
	const { mode } = settings;
	const drive = driveOf(unit.state);
	const trail: Reason[] = [];
	if (drive === 'line') trail.push(reason('drive.line', 'passes', { address: settings.address, mode }));
	else if (drive === 'following') {
		const underDesk = gear.receptions.get(unit.placed.id)?.talker?.kind === 'desk';
		trail.push(reason('drive.follow', underDesk ? 'shapes' : 'passes', { mode }));
	} else if (settings.work === 'held')
		trail.push(reason('drive.held', 'shapes', { held: settings.held, level: settings.level, strobe: settings.strobe }));
	else
		trail.push(
			reason('drive.programme', 'shapes', programmeFacts(unit, settings.programme, settings.speed, settings.level)),
		);
	return [...trail, ...whyLeading(gear, unit), ...whyRemote(gear, unit)];
}

/** What it sends down the line, whom that meets there, or why it sends nothing though it is set to. */
function whyLeading(gear: Gear, unit: Unit): Reason[] {
	const drive = driveOf(unit.state);
	const { id } = unit.placed;
	const { mode, lead } = unit.state.context.settings;
	if (drive === 'leading') {
		const met = gear.receptions.get(id)?.causes.find((each) => each.cause === 'collision');
		const others = met?.cause === 'collision' ? met.sockets.filter((port) => port !== `${id}:out`) : [];
		return [reason('drive.leading', others.length > 0 ? 'cuts' : 'passes', { mode, others })];
	}
	return lead === 'on' ? [reason('drive.leading-not', 'cuts', { following: drive === 'following' })] : [];
}

/** What keeps the remote from this fixture, where there is one that it could obey. */
function whyRemote(gear: Gear, { profile, state, condition, hidden }: Unit): Reason[] {
	const { settings } = state.context;
	if (!profile.sensor || !gear.remote) return [];
	if (settings.sensor === 'shut') return [reason('drive.remote-shut', 'cuts', {})];
	if (condition.sensorDead) return [reason('drive.sensor-dead', 'cuts', {})];
	if (hidden) return [reason('drive.remote-hidden', 'cuts', {})];
	if (!gear.remote.battery) return [reason('drive.remote-flat', 'cuts', {})];
	if (gear.remote.code !== settings.code)
		return [reason('drive.remote-code', 'cuts', { remote: gear.remote.code, fixture: settings.code })];
	return [];
}

export function programmeFacts(unit: Unit, id: string, speed: number, level: number): Reason['facts'] {
	const programme = unit.profile.programmes.find((each) => each.id === id);
	return { programme: id, kind: programme?.kind ?? null, answer: programme?.answer ?? null, speed, level };
}
