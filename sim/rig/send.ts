import { InputError } from '../../shared/error/index.ts';
import { checkValue, modeOf, type SettingKey } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import { type Desk, type DeskOutput, type Gear, levelsFrom, setLevel } from './gear.ts';
import { replace, tell, unitOf } from './step.ts';
import { isLineEvent, lineEvent } from './wiring.ts';

/**
 * Puts one event into the gear; what follows from it is `settle`'s.
 * @throws InputError `event.*` or `rig.*` where it fits nothing in this rig; the gear is then as it was
 */
export function apply(gear: Gear, event: RigEvent): void {
	if (isDeskEvent(event)) deskEvent(gear, event);
	else if (isBoxEvent(event)) boxEvent(gear, event);
	else if (isLineEvent(event)) lineEvent(gear, event);
	else if (isPanelEvent(event)) panelEvent(gear, event);
	else if (isChangeInside(event)) changeInside(gear, event);
	else handEvent(gear, event);
}

type PanelEvent = Extract<RigEvent, { type: `key.${string}` | `switch.${string}` | `slide.${string}` }>;
type ChangeInside = Extract<RigEvent, { type: `${'settings' | 'charge' | 'condition'}.become` }>;
type BoxEvent = Extract<RigEvent, { type: `box.${string}` }>;
type ElsewhereEvent =
	| Parameters<typeof deskEvent>[1]
	| BoxEvent
	| Parameters<typeof lineEvent>[1]
	| PanelEvent
	| ChangeInside;

const isPanelEvent = (event: RigEvent): event is PanelEvent => /^(key|switch|slide)\./.test(event.type);
const isChangeInside = (event: RigEvent): event is ChangeInside =>
	/^(settings|charge|condition)\.become$/.test(event.type);

const isBoxEvent = (event: RigEvent): event is BoxEvent => event.type.startsWith('box.');

/** @throws InputError `event.box` where there is no such box or output. */
function boxEvent(gear: Gear, event: BoxEvent): void {
	const box = gear.boxes.find(({ id }) => id === event.box);
	const known = box?.ports.some(
		({ socket, direction }) => direction === 'out' && event.type === 'box.output' && socket === event.socket,
	);
	if (!box || (event.type === 'box.output' && !known))
		throw new InputError('event.box', box ? 'socket' : 'box', { trouble: 'no-such-box', id: event.box });
	const become =
		event.type === 'box.switch'
			? { ...box, on: event.on }
			: {
					...box,
					dead: [
						...(box.dead ?? []).filter((socket) => socket !== event.socket),
						...(event.dead ? [event.socket] : []),
					],
				};
	gear.boxes = gear.boxes.map((each) => (each === box ? become : each));
}

/** Hands on a panel: keys, switches, slides. */
function panelEvent(gear: Gear, event: PanelEvent): void {
	switch (event.type) {
		case 'key.tap':
		case 'key.down':
		case 'key.up': {
			const { panel } = unitOf(gear, event.fixture).profile;
			if (panel.kind === 'dip')
				throw new InputError('event.key', 'fixture', { trouble: 'no-keys', fixture: event.fixture });
			if (!panel.keys.includes(event.key))
				throw new InputError('event.key', 'key', { trouble: 'no-such-key', fixture: event.fixture, key: event.key });
			if (event.type !== 'key.up') tell(gear, event.fixture, { type: 'key.down', key: event.key });
			if (event.type !== 'key.down') tell(gear, event.fixture, { type: 'key.up', key: event.key });
			return;
		}
		case 'switch.flip': {
			if (unitOf(gear, event.fixture).profile.panel.kind !== 'dip')
				throw new InputError('event.switch', 'fixture', { trouble: 'no-switches', fixture: event.fixture });
			tell(gear, event.fixture, { type: 'switch.flip', switch: event.switch, up: event.up });
			return;
		}
		case 'slide.move': {
			const { panel } = unitOf(gear, event.fixture).profile;
			const slide = panel.kind === 'dip' ? panel.slides.find((each) => each.id === event.slide) : undefined;
			if (!slide || event.to >= slide.positions.length)
				throw new InputError('event.slide', 'slide', {
					trouble: 'no-such-position',
					fixture: event.fixture,
					slide: event.slide,
					position: event.to,
				});
			tell(gear, event.fixture, { type: 'slide.move', slide: event.slide, to: event.to });
			return;
		}
	}
}

/** Hands on plugs and switches, the remote, and what there is to hear. */
function handEvent(gear: Gear, event: Exclude<RigEvent, ElsewhereEvent>): void {
	switch (event.type) {
		case 'clock.wait':
			throw new InputError('event.wait', 'type', { trouble: 'time-by-send' });
		case 'power.switch':
			tell(gear, event.fixture, { type: 'power.switch', on: event.on });
			return;
		case 'mains.plug':
			plugMains(gear, event.fixture, event.into);
			return;
		case 'hall.power':
			gear.hallPower = event.on;
			return;
		case 'remote.press':
			pressRemote(gear, event.button);
			return;
		case 'remote.become':
			gear.remote = { code: event.code, battery: event.battery };
			return;
		case 'sight.block': {
			const unit = unitOf(gear, event.fixture);
			replace(gear, event.fixture, { ...unit, hidden: event.hidden });
			return;
		}
		case 'sound.play':
			gear.sound = event.level;
			for (const [id, unit] of gear.units) {
				if (unit.profile.microphone && !unit.condition.microphoneDead)
					tell(gear, id, { type: 'sound.hear', level: event.level });
			}
			return;
	}
}

/** What is in a fixture becomes another by no hand. */
function changeInside(gear: Gear, event: ChangeInside): void {
	switch (event.type) {
		case 'settings.become': {
			const { profile } = unitOf(gear, event.fixture);
			if (profile.panel.kind === 'dip')
				throw new InputError('event.settings', 'fixture', { trouble: 'switches-alone', profile: profile.name });
			for (const [key, value] of Object.entries(event.change))
				checkValue(profile, key as SettingKey, value, `change.${key}`);
			tell(gear, event.fixture, { type: 'settings.become', change: event.change });
			return;
		}
		case 'charge.become': {
			const { profile, state } = unitOf(gear, event.fixture);
			const { battery } = state.context;
			if (!battery) throw new InputError('event.charge', 'fixture', { trouble: 'no-battery', profile: profile.name });
			const { capacity, takesCharge } = battery;
			tell(gear, event.fixture, { type: 'battery.become', capacity, takesCharge, wattHours: capacity * event.charge });
			return;
		}
		case 'condition.become': {
			const unit = unitOf(gear, event.fixture);
			const condition = { ...unit.condition, ...event.change };
			replace(gear, event.fixture, { ...unit, condition });
			const { battery } = unit.profile.power;
			if (
				battery &&
				(condition.batteryHealth !== unit.condition.batteryHealth ||
					condition.chargerDead !== unit.condition.chargerDead)
			) {
				tell(gear, event.fixture, {
					type: 'battery.become',
					capacity: battery.wattHours * condition.batteryHealth,
					takesCharge: !condition.chargerDead,
				});
			}
			return;
		}
	}
}

function plugMains(gear: Gear, fixture: string, into: string): void {
	const unit = unitOf(gear, fixture);
	let at = into;
	while (at !== 'wall' && at !== 'none') {
		const feeder = gear.units.get(at);
		if (!feeder?.profile.power.link)
			throw new InputError('event.mains', 'into', { trouble: 'no-link-socket', fixture: at });
		if (at === fixture) throw new InputError('event.mains', 'into', { trouble: 'feeds-itself', fixture });
		at = feeder.plug;
	}
	replace(gear, fixture, { ...unit, plug: into });
}

/** The remote's flash reaches every fixture it can see; each decides for itself. */
function pressRemote(gear: Gear, button: string): void {
	const { remote } = gear;
	if (!remote) throw new InputError('event.remote', 'type', { trouble: 'no-remote' });
	if (!remote.battery) return;
	for (const [id, unit] of gear.units) {
		if (unit.profile.sensor && !unit.hidden && !unit.condition.sensorDead && !unit.condition.sensorCovered)
			tell(gear, id, { type: 'remote.hear', code: remote.code, button });
	}
}

type DeskEvent = Extract<RigEvent, { type: `desk.${string}` }>;

const isDeskEvent = (event: RigEvent): event is DeskEvent => event.type.startsWith('desk.');

/** @throws InputError `event.desk` where there is no desk or no such output. */
function deskEvent(gear: Gear, event: DeskEvent): void {
	const { desk } = gear;
	if (!desk) throw new InputError('event.desk', 'type', { trouble: 'no-desk' });
	gear.desk = changed(gear, desk, event);
	// any level may change what a battery fixture draws
	for (const id of gear.units.keys()) gear.stale.add(id);
}

function changed(gear: Gear, desk: Desk, event: DeskEvent): Desk {
	switch (event.type) {
		case 'desk.level': {
			const frame = desk.levels.get(event.universe)?.slice() ?? new Uint8Array(512);
			setLevel(frame, event.slot, event.level);
			return { ...desk, levels: new Map(desk.levels).set(event.universe, frame) };
		}
		case 'desk.recall':
			return { ...desk, levels: levelsFrom(event.levels) };
		case 'desk.master':
			return { ...desk, master: event.level };
		case 'desk.output':
			return withOutput(desk, event.output, { on: event.on });
		case 'desk.universe':
			return withOutput(desk, event.output, { universe: event.universe });
		case 'desk.start-code':
			return withOutput(desk, event.output, { startCode: event.code });
		case 'desk.hold':
			return { ...desk, held: event.by && { by: event.by, levels: desk.levels, master: desk.master } };
		case 'desk.patch': {
			const { fixture, universe, address, mode } = event;
			modeOf(unitOf(gear, fixture).profile, mode);
			return {
				...desk,
				patch: [...desk.patch.filter((patch) => patch.fixture !== fixture), { fixture, universe, address, mode }],
			};
		}
	}
}

function withOutput(desk: Desk, id: string, change: Partial<DeskOutput>): Desk {
	if (!desk.outputs.some((output) => output.id === id))
		throw new InputError('event.desk', 'output', {
			trouble: 'no-such-output',
			id,
			known: desk.outputs.map((output) => output.id),
		});
	return { ...desk, outputs: desk.outputs.map((output) => (output.id === id ? { ...output, ...change } : output)) };
}
