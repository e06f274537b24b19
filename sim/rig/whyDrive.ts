import { chargeAt, driveOf, powerOf } from '../fixture/index.ts';
import { meanWatts } from './emit.ts';
import type { Gear, Unit } from './gear.ts';
import { type Reason, reason } from './reason.ts';

/** What feeds it, or why nothing does. */
export function whyPower(gear: Gear, unit: Unit): Reason[] {
	const { profile, state, plug } = unit;
	const context = { ...state.context, now: gear.now };
	const battery = profile.power.battery;
	const percent = battery
		? Math.round((100 * chargeAt(context, gear.now, battery.chargeWatts)) / battery.wattHours)
		: null;
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
			if (!context.on) return [reason('power.off', 'stops', {})];
			return [
				plug === 'none' || gear.hallPower
					? reason('power.no-mains', 'stops', { plug })
					: reason('power.hall-dark', 'stops', { plug }),
			];
	}
}

/** What decides the light, and whether a remote could have a say. */
export function whyDrive(gear: Gear, unit: Unit): Reason[] {
	const { profile, state, condition, hidden } = unit;
	const { settings } = state.context;
	const trail: Reason[] = [];
	const drive = driveOf(state);
	if (drive === 'line') trail.push(reason('drive.line', 'passes', { address: settings.address, mode: settings.mode }));
	else if (drive === 'following') trail.push(reason('drive.follow', 'passes', { mode: settings.mode }));
	else if (settings.work === 'held')
		trail.push(reason('drive.held', 'passes', { held: settings.held, level: settings.level, strobe: settings.strobe }));
	else
		trail.push(
			reason('drive.programme', 'passes', programmeFacts(unit, settings.programme, settings.speed, settings.level)),
		);
	if (drive.startsWith('leading')) trail.push(reason('drive.leading', 'passes', { mode: settings.mode }));
	if (profile.sensor && gear.remote) {
		if (settings.sensor === 'shut') trail.push(reason('drive.remote-shut', 'passes', {}));
		else if (condition.sensorDead) trail.push(reason('drive.sensor-dead', 'passes', {}));
		else if (hidden) trail.push(reason('drive.remote-hidden', 'passes', {}));
		else if (!gear.remote.battery) trail.push(reason('drive.remote-flat', 'passes', {}));
		else if (gear.remote.code !== settings.code)
			trail.push(reason('drive.remote-code', 'passes', { remote: gear.remote.code, fixture: settings.code }));
	}
	return trail;
}

export function programmeFacts(unit: Unit, id: string, speed: number, level: number): Reason['facts'] {
	const programme = unit.profile.programmes.find((each) => each.id === id);
	return { programme: id, kind: programme?.kind ?? null, answer: programme?.answer ?? null, speed, level };
}
