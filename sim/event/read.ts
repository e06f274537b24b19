import * as v from 'valibot';
import { InputError, shown } from '../../shared/error/index.ts';
import { idText, KEYS, readShape, someSettingsSchema, whole } from '../../shared/profile/index.ts';
import { cableSchema, conditionSchema, portText } from '../../shared/sheet/index.ts';
import type { RigEvent } from './types.ts';

/** Most events a log from outside may hold, and the longest it may run: 30 days. */
export const LONGEST_LOG = 20_000;
const LONGEST_WAIT_MS = 30 * 24 * 3_600_000;

const fixture = idText;
const universe = whole(1, 63999);
const level = whole(0, 255);
const share = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1));
const output = v.pipe(v.string(), v.regex(/^[a-z]$/, 'small-letter'));
const end = v.picklist(['from', 'to']);
const boxSocket = v.pipe(v.string(), v.regex(/^([1-9]|1[0-6])$/, 'box-output'));
const key = v.picklist(KEYS);
const on = v.boolean();
const cable = idText;
const kind = <const T extends string>(type: T) => v.literal(type);

const cableEntries = cableSchema.entries;

const eventSchema = v.variant('type', [
	v.strictObject({
		type: kind('clock.wait'),
		ms: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(LONGEST_WAIT_MS)),
	}),
	v.strictObject({ type: kind('key.tap'), fixture, key }),
	v.strictObject({ type: kind('key.down'), fixture, key }),
	v.strictObject({ type: kind('key.up'), fixture, key }),
	v.strictObject({ type: kind('switch.flip'), fixture, switch: whole(1, 10), up: on }),
	v.strictObject({ type: kind('slide.move'), fixture, slide: idText, to: whole(0, 9) }),
	v.strictObject({ type: kind('power.switch'), fixture, on }),
	v.strictObject({ type: kind('mains.plug'), fixture, into: idText }),
	v.strictObject({ type: kind('hall.power'), on }),
	v.strictObject({ type: kind('cable.lay'), cable: cableSchema }),
	v.strictObject({ type: kind('cable.lift'), cable }),
	v.strictObject({ type: kind('cable.plug'), cable, end, port: portText }),
	v.strictObject({ type: kind('cable.unplug'), cable, end }),
	v.strictObject({
		type: kind('cable.become'),
		cable,
		change: v.strictObject({
			kind: v.exactOptional(cableEntries.kind),
			length: v.exactOptional(cableEntries.length),
			common: v.exactOptional(cableEntries.common.wrapped),
			minus: v.exactOptional(cableEntries.minus.wrapped),
			plus: v.exactOptional(cableEntries.plus.wrapped),
			swapped: v.exactOptional(on),
			from: v.exactOptional(cableEntries.from),
			to: v.exactOptional(cableEntries.to),
		}),
	}),
	v.strictObject({ type: kind('terminator.fit'), port: portText }),
	v.strictObject({ type: kind('terminator.remove'), port: portText }),
	v.strictObject({ type: kind('desk.level'), universe, slot: whole(1, 512), level }),
	v.strictObject({
		type: kind('desk.recall'),
		levels: v.pipe(v.array(v.strictObject({ universe, slot: whole(1, 512), level })), v.maxLength(512 * 64)),
	}),
	v.strictObject({ type: kind('desk.master'), level }),
	v.strictObject({ type: kind('desk.output'), output, on }),
	v.strictObject({ type: kind('desk.universe'), output, universe }),
	v.strictObject({ type: kind('desk.patch'), fixture, universe, address: whole(1, 512), mode: idText }),
	v.strictObject({ type: kind('desk.start-code'), output, code: level }),
	v.strictObject({ type: kind('desk.hold'), by: v.nullable(v.picklist(['blind', 'frozen'])) }),
	v.strictObject({ type: kind('box.switch'), box: idText, on }),
	v.strictObject({ type: kind('box.output'), box: idText, socket: boxSocket, dead: on }),
	v.strictObject({
		type: kind('remote.press'),
		button: v.pipe(
			v.string(),
			v.regex(/^(light|dark|brighter|dimmer|faster|slower|(held|programme):[a-z][a-z0-9-]{0,39})$/, 'remote-button'),
		),
	}),
	v.strictObject({ type: kind('remote.become'), code: whole(1, 4), battery: on }),
	v.strictObject({ type: kind('sight.block'), fixture, hidden: on }),
	v.strictObject({ type: kind('sound.play'), level: share }),
	v.strictObject({ type: kind('settings.become'), fixture, change: someSettingsSchema }),
	v.strictObject({ type: kind('charge.become'), fixture, charge: share }),
	v.strictObject({ type: kind('condition.become'), fixture, change: conditionSchema() }),
]);

/** One event from outside. @param place where it stood, for the error's path. @throws InputError `event.shape` with the place. */
export function readEvent(input: unknown, place = ''): RigEvent {
	try {
		return readShape(eventSchema, input, 'event.shape') as RigEvent;
	} catch (error) {
		throw error instanceof InputError ? error.within(place) : error;
	}
}

/** A log from outside. @throws InputError `log.shape` or `log.length`, or as {@link readEvent}. */
export function readLog(input: unknown): RigEvent[] {
	if (!Array.isArray(input)) throw new InputError('log.shape', '', { expected: 'list', found: shown(input) });
	if (input.length > LONGEST_LOG)
		throw new InputError('log.length', '', { trouble: 'too-many-events', limit: LONGEST_LOG, events: input.length });
	return input.map((event, i) => readEvent(event, `[${i}]`));
}
