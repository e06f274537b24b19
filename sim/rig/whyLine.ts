import { LAST_SLOT, lastSlot } from '../../shared/dmx/index.ts';
import { type Band, footprintOf, modeOf, type Slot } from '../../shared/profile/index.ts';
import { actingSettings, chargeOf, driveOf, hasDataIn, isSwitchedOn, powerOf, signalOf } from '../fixture/index.ts';
import type { Gear, Unit } from './gear.ts';
import { damageOf, SEEN_DAMAGE } from './look.ts';
import { frameAt, meanWatts, readFrame, readsFrom } from './plan.ts';
import { type Reason, reason } from './reason.ts';
import { whySource } from './whySource.ts';

/** Where the frames come from, how they fare on the way, which slots are read, and what they say. */
export function whyLine(gear: Gear, unit: Unit): Reason[] {
	return [...whySource(gear, unit), ...whySignal(unit), ...whyAddress(gear, unit), ...whySlots(gear, unit)];
}

function whySignal(unit: Unit): Reason[] {
	const settings = actingSettings(unit.state);
	switch (signalOf(unit.state)) {
		case 'none':
			return [reason('signal.never', 'stops', {})];
		case 'dark':
			return [reason('signal.dark', 'stops', {})];
		case 'overdue':
			return [reason('signal.overdue', 'shapes', {})];
		case 'holding':
			return [reason('signal.holding', 'shapes', {})];
		case 'running':
			return [
				reason('signal.running', 'shapes', programmeFacts(unit, settings.programme, settings.speed, settings.level)),
			];
		case 'present':
			return [];
	}
}

/** Whether it still goes by a frame: the one there is, or the last there was. */
const hasFrame = (unit: Unit): boolean => ['present', 'overdue', 'holding'].includes(signalOf(unit.state));

function whyAddress(gear: Gear, unit: Unit): Reason[] {
	if (!hasFrame(unit)) return [];
	const settings = actingSettings(unit.state);
	const footprint = footprintOf(modeOf(unit.profile, settings.mode));
	const from = readsFrom(unit);
	const last = lastSlot(from, footprint);
	const following = driveOf(unit.state) === 'following';
	// what the panel says, where the fixture reads elsewhere: a follower of a kind that reads the leader's slots from one on
	const panel = from === settings.address ? null : settings.address;
	const trail = [
		reason(following ? 'address.follows' : 'address.reads', 'passes', {
			address: from,
			last: Math.min(last, LAST_SLOT),
			footprint,
			mode: settings.mode,
			...(following ? { panel } : {}),
		}),
	];
	if (last > LAST_SLOT) trail.push(reason('address.past-end', 'shapes', { last, slots: last - LAST_SLOT }));
	const { talker } = gear.receptions.get(unit.placed.id) ?? {};
	const patch = gear.desk?.patch.find((each) => each.fixture === unit.placed.id);
	if (talker?.kind === 'desk' && patch) {
		if (patch.universe !== talker.universe)
			trail.push(reason('address.universe-differs', 'shapes', { desk: patch.universe, line: talker.universe }));
		if (patch.address !== from)
			trail.push(reason('address.patch-differs', 'shapes', { desk: patch.address, fixture: from, panel }));
		if (patch.mode !== settings.mode)
			trail.push(reason('address.mode-differs', 'shapes', { other: patch.mode, fixture: settings.mode }));
	}
	const leader = talker?.kind === 'leader' ? gear.units.get(talker.fixture) : undefined;
	if (leader && actingSettings(leader.state).mode !== settings.mode)
		trail.push(
			reason('address.mode-differs', 'shapes', { other: actingSettings(leader.state).mode, fixture: settings.mode }),
		);
	if (leader && from !== 1) trail.push(reason('address.patch-differs', 'shapes', { desk: 1, fixture: from, panel }));
	return trail;
}

/** Whether so many talk at once that no frame is anybody's. */
const isGarbled = (gear: Gear, unit: Unit): boolean =>
	hasDataIn(unit.state) && !gear.receptions.get(unit.placed.id)?.talker;

function whySlots(gear: Gear, unit: Unit): Reason[] {
	// as sent and not as damaged on the way: a level nobody sent explains nothing
	const frame = hasFrame(unit) && !isGarbled(gear, unit) ? frameAt(gear, unit, 'mean') : null;
	if (!frame) return [];
	const stops = damageOf(gear, unit) < SEEN_DAMAGE ? 'stops' : 'shapes';
	const from = readsFrom(unit);
	const value = (slot: Slot): number => frame[from + slot.at - 2] ?? 0;
	const ask = readFrame(unit, frame);
	const slots = [...modeOf(unit.profile, actingSettings(unit.state).mode).slots].sort((a, b) => a.at - b.at);
	const trail: Reason[] = [];
	let taken = false;
	for (const slot of slots) {
		if (slot.drives.kind !== 'bands') continue;
		const band = slot.drives.bands.find((each) => each.from <= value(slot) && value(slot) <= each.to);
		if (!band) continue;
		trail.push(bandReason({ unit, slot, band, from, value: value(slot), ask, taken, stops }));
		taken ||= band.effect.do === 'programme' || band.effect.do === 'held';
	}
	const colours = slots.filter((slot) => slot.drives.kind === 'emitter');
	const facts = { slots: colours.map((slot) => from + slot.at - 1), values: colours.map(value) };
	if (taken) trail.push(reason('slots.ignored', 'shapes', { slots: facts.slots }));
	else trail.push(reason('slots.colours', facts.values.every((each) => each === 0) ? stops : 'shapes', facts));
	for (const slot of slots) {
		if (slot.drives.kind === 'intensity') {
			const word = value(slot) * 256 + (slot.fine === undefined ? 0 : (frame[from + slot.fine - 2] ?? 0));
			const full = slot.fine === undefined ? 255 : 65_535;
			const effect = word === 0 ? stops : word < full ? 'shapes' : 'passes';
			trail.push(reason('slots.intensity', effect, { slot: from + slot.at - 1, value: value(slot) }));
		}
	}
	// what stops the light comes last, so that a trail cut there still tells what was asked
	return trail.sort((a, b) => Number(a.effect === 'stops') - Number(b.effect === 'stops'));
}

/** A slot whose level picks a band, and all that what comes of it hangs on. */
interface BandAsked {
	readonly unit: Unit;
	readonly slot: Slot;
	readonly band: Band;
	/** Where the fixture reads from, and what the slot says, 0 to 255. */
	readonly from: number;
	readonly value: number;
	readonly ask: { readonly strobe: number; readonly speed: number };
	/** Whether a band before it has taken the light over. */
	readonly taken: boolean;
	/** What darkness does to the trail. */
	readonly stops: Reason['effect'];
}

function bandReason({ unit, slot, band, from, value, ask, taken, stops }: BandAsked): Reason {
	const facts = { slot: from + slot.at - 1, name: slot.name, value, band: band.name, from: band.from, to: band.to };
	const { effect } = band;
	switch (effect.do) {
		case 'programme':
			return taken
				? reason('slots.band', 'passes', facts)
				: reason('slots.programme', 'shapes', {
						...facts,
						...programmeFacts(unit, effect.programme, Math.round(ask.speed), 100),
					});
		case 'held':
			return taken
				? reason('slots.band', 'passes', facts)
				: reason('slots.held', 'shapes', { ...facts, held: effect.held });
		case 'dark':
			return reason('slots.dark', stops, facts);
		case 'strobe':
			return reason('slots.strobe', 'shapes', { ...facts, rate: Math.round(ask.strobe * 10) / 10 });
		default:
			return reason('slots.band', 'passes', facts);
	}
}

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
	const settings = actingSettings(unit.state);
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
	const { mode, lead } = actingSettings(unit.state);
	if (drive === 'leading') {
		const met = gear.receptions.get(id)?.causes.find((each) => each.cause === 'collision');
		const others = met?.cause === 'collision' ? met.sockets.filter((port) => port !== `${id}:out`) : [];
		return [reason('drive.leading', others.length > 0 ? 'cuts' : 'passes', { mode, others })];
	}
	return lead === 'on' ? [reason('drive.leading-not', 'cuts', { following: drive === 'following' })] : [];
}

/** What keeps the remote from this fixture, where there is one that it could obey. */
function whyRemote(gear: Gear, { profile, state, condition, hidden }: Unit): Reason[] {
	const settings = actingSettings(state);
	if (!profile.sensor || !gear.remote) return [];
	if (settings.sensor === 'shut') return [reason('drive.remote-shut', 'cuts', {})];
	if (condition.sensorDead) return [reason('drive.sensor-dead', 'cuts', {})];
	if (hidden || condition.sensorCovered) return [reason('drive.remote-hidden', 'cuts', {})];
	if (!gear.remote.battery) return [reason('drive.remote-flat', 'cuts', {})];
	if (gear.remote.code !== settings.code)
		return [reason('drive.remote-code', 'cuts', { remote: gear.remote.code, fixture: settings.code })];
	return [];
}

function programmeFacts(unit: Unit, id: string, speed: number, level: number): Reason['facts'] {
	const programme = unit.profile.programmes.find((each) => each.id === id);
	return { programme: id, kind: programme?.kind ?? null, answer: programme?.answer ?? null, speed, level };
}
