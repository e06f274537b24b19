import { cableChanges, conditions, events, type Says, settingChange } from '#words/rig/index.ts';
import type { SettingKey, SettingValue } from '../../shared/profile/index.ts';
import type { Port } from '../../shared/sheet/index.ts';
import type { RigEvent, RigEventType } from '../../sim/event/index.ts';
import type { Rig, Unit } from '../../sim/rig/index.ts';
import { fill, sentence, type TemplateFacts } from './fill.ts';
import { profileKinds, settingTitle, settingValueText, startCodeWords } from './kinds.ts';
import { portText } from './names.ts';
import { rigKinds } from './rigKinds.ts';

const words: Readonly<Record<RigEventType, Says>> = events;

/**
 * The log's line for one event: 'Set pressed on wash 2', 'Slot 14 of universe 1 set to 128 (50 %)'. No full stop.
 * @param pressed for a key that went down: how long it was, ms, and whether it was let go; left out, it counts as a tap
 */
export function eventText(
	rig: Rig,
	event: RigEvent,
	pressed: { readonly ms: number; readonly over: boolean } | null = null,
): string {
	const unit = event.type === 'key.down' ? rig.gear.units.get(event.fixture) : undefined;
	const more = event.type === 'key.down' ? pressFacts(unit, pressed) : {};
	return eventIn(words[event.type], rig, event, more);
}

/** A press is a hold from where its panel takes it for one: once the key would repeat. A finger that taps is gone before that. */
function pressFacts(unit: Unit | undefined, pressed: Parameters<typeof eventText>[2]): TemplateFacts {
	const panel = unit?.profile.panel;
	const isTap = !pressed || panel?.kind === 'dip' || pressed.ms < (panel?.repeat.after ?? 0);
	return {
		press: isTap ? 'tap' : pressed.over ? 'hold' : 'still',
		seconds: pressed && Math.round(pressed.ms / 100) / 10,
	};
}

/** An event in another template than the log's, filled from the same facts and any more that it asks for. */
export function eventIn(says: Says, rig: Rig, event: RigEvent, more: TemplateFacts = {}): string {
	const unit = 'fixture' in event ? rig.gear.units.get(event.fixture) : undefined;
	return sentence(
		says,
		{ ...event, ...moreFacts(rig, unit, event), ...more },
		{
			...rigKinds(rig),
			...(unit ? profileKinds(unit.profile) : { mode: (id: string) => id }),
		},
	);
}

/** What the words need beside the event itself. */
function moreFacts(rig: Rig, unit: Unit | undefined, event: RigEvent): TemplateFacts {
	switch (event.type) {
		case 'slide.move': {
			const panel = unit?.profile.panel;
			const slide = panel?.kind === 'dip' ? panel.slides.find((each) => each.id === event.slide) : undefined;
			return { slide: slide?.title ?? event.slide, label: slide?.positions[event.to]?.label ?? event.to };
		}
		case 'cable.lay':
			return { ...event.cable, cable: event.cable.id };
		case 'cable.unplug':
			return { port: portBefore(rig, event) };
		case 'cable.become':
			return { changes: changesText(rig, unit, cableChanges, event.change) };
		case 'desk.recall':
			return { up: event.levels.filter(({ level }) => level > 0).length };
		case 'desk.start-code':
			return { meaning: startCodeWords(event.code) };
		case 'settings.become':
			return {
				changes: Object.entries(event.change).map(([key, value]) =>
					unit ? settingText(unit, key as SettingKey, value) : key,
				),
			};
		case 'condition.become':
			return { changes: changesText(rig, unit, conditions, event.change) };
		default:
			return {};
	}
}

const settingText = (unit: Unit, key: SettingKey, value: SettingValue): string =>
	fill(settingChange, { title: settingTitle(key), value: settingValueText(unit.profile, key, value) });

function changesText(
	rig: Rig,
	unit: Unit | undefined,
	says: Readonly<Record<string, Says>>,
	change: Readonly<Record<string, unknown>>,
): string[] {
	const kinds = { ...rigKinds(rig), ...(unit ? profileKinds(unit.profile) : {}) };
	return Object.entries(change).map(([key, value]) =>
		fill(says[key] ?? key, { value, some: Array.isArray(value) ? value.length > 0 : value !== null }, kinds),
	);
}

/** The socket an end was in before it was unplugged: followed through the log up to that event, since the cable no longer tells. */
function portBefore(rig: Rig, event: Extract<RigEvent, { type: 'cable.unplug' }>): string | null {
	const { cable, end } = event;
	let port: Port | null = rig.sheet.cables.find((each) => each.id === cable)?.[end] ?? null;
	for (const past of rig.log) {
		if (past === event) break;
		if (past.type === 'cable.lay' && past.cable.id === cable) port = past.cable[end];
		else if (past.type === 'cable.plug' && past.cable === cable && past.end === end) port = past.port;
		else if (past.type === 'cable.unplug' && past.cable === cable && past.end === end) port = null;
	}
	return port === null ? null : portText(port, rig);
}
