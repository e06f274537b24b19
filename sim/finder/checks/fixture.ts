import { type Settings, settingsOn } from '../../../shared/profile/index.ts';
import { isSwitchedOn } from '../../fixture/index.ts';
import type { Sight, Unit } from '../../rig/index.ts';
import {
	afterClap,
	afterPowerCycle,
	afterRemoteClose,
	answersFaders,
	coloursByDesk,
	onCharger,
	onStaticWhite,
	whileDeskRestarts,
} from '../probes.ts';
import { brightnessAgainst, isLit, looksLit, sameColour, sameLevels, sameLight, type Witness } from '../witness.ts';
import type { CheckKind } from './types.ts';

/** A check on one fixture: where it makes sense, and what it shows. */
export interface FixtureKind extends CheckKind {
	/** Whether it makes sense on this fixture of the rig as meant. */
	fits(unit: Unit, meant: Witness): boolean;
	read(w: Witness, fixture: string, meant: Witness): string;
	/** Whether it looks at what is plugged into the fixture, which the fixture itself does not say. */
	readonly ofPlugs?: boolean;
	/** Whether it goes through the panel's menu. */
	readonly scrolls?: boolean;
}

const unitOf = (w: Witness, fixture: string): Unit | undefined => w.rig.gear.units.get(fixture);
const settingsOf = (w: Witness, fixture: string): Settings | undefined => unitOf(w, fixture)?.state.context.settings;
const isUnitOn = (unit: Unit | undefined): boolean => unit !== undefined && isSwitchedOn(unit.state);
const always = (): boolean => true;
const isKeyed = (unit: Unit): boolean => unit.profile.panel.kind !== 'dip';
const isDip = (unit: Unit): boolean => !isKeyed(unit);
const byLine = (unit: Unit): boolean => ['line', 'follow'].includes(unit.state.context.settings.work);
const hasBattery = (unit: Unit): boolean => unit.profile.power.battery !== null;
const isPatched = (unit: Unit, meant: Witness): boolean =>
	meant.rig.gear.desk?.patch.some(({ fixture }) => fixture === unit.placed.id) ?? false;

function look(
	kind: string,
	seconds: number,
	read: FixtureKind['read'],
	fits: FixtureKind['fits'] = always,
	more: Partial<FixtureKind> = {},
): FixtureKind {
	return { kind, sort: 'look', seconds, read, fits, ...more };
}

/** Reading one setting off the panel's menu: as meant, another, or no display to read. */
function panelReads(key: keyof Settings, seconds: number, fits: FixtureKind['fits'] = always): FixtureKind {
	return look(
		`panel-${key}`,
		seconds,
		(w, at, meant) => {
			const { display } = w.rest(at);
			if (display.kind !== 'keyed' || display.state === 'dark' || !isReadable(w, at)) return 'no-display';
			return settingsOf(w, at)?.[key] === settingsOf(meant, at)?.[key] ? 'as-meant' : 'other';
		},
		(unit, meant) => isKeyed(unit) && canShow(unit, key) && fits(unit, meant),
		{ scrolls: true },
	);
}

/** A sleeping display wakes at a key; a dead one does not. */
const isReadable = (w: Witness, at: string): boolean => unitOf(w, at)?.condition.displayDead === false;

function canShow({ profile }: Unit, key: keyof Settings): boolean {
	return profile.panel.kind !== 'dip' && settingsOn(profile.panel).has(key);
}

const plugged = (w: Witness, port: string): boolean =>
	w.rig.gear.cables.some(({ from, to }) => from === port || to === port);
const hasTerminator = (w: Witness, port: string): boolean => w.rig.gear.terminators.includes(port);

/** Everything that can be looked at on a fixture. */
export const FIXTURE_LOOKS: readonly FixtureKind[] = [
	look('lit', 3, (w, at) => (looksLit(w.rest(at)) ? 'lit' : 'dark')),
	look(
		'ultraviolet',
		10,
		(w, at) => (w.rest(at).light.whole.ultraviolet > 0 ? 'on' : 'off'),
		(unit) => unit.profile.emitters.some(({ ultraviolet }) => ultraviolet),
		{ cautions: ['ultraviolet', 'staring'] },
	),
	look('colour', 4, (w, at, meant) => {
		const [now, wanted] = [w.rest(at), meant.rest(at)];
		if (!looksLit(now)) return 'dark';
		return sameColour(now, wanted) && !now.light.flicker ? 'as-meant' : 'other';
	}),
	look('brightness', 5, (w, at, meant) =>
		w.rest(at).light.flicker ? 'dimmer' : brightnessAgainst(w.rest(at), meant.rest(at)),
	),
	look('flashing', 3, (w, at) => (w.rest(at).light.flashes > 0 ? 'flashing' : 'steady'), always, {
		cautions: ['flashing'],
	}),
	look('moving', 8, (w, at) => (w.rest(at).light.moving ? 'moving' : 'still')),
	look('jumping', 6, (w, at) => (w.rest(at).light.flicker ? 'jumping' : 'calm'), byLine),
	look('power-lamp', 4, (w, at) => w.rest(at).lamps.power),
	look('data-lamp', 4, (w, at) => w.rest(at).lamps.data, byLine),
	look('battery-lamp', 4, (w, at) => batteryWord(w.rest(at)), hasBattery),
	look(
		'sensor-lamp',
		4,
		(w, at) => w.rest(at).lamps.sensor ?? 'out',
		(unit) => unit.profile.sensor,
	),
	look('display', 6, (w, at) => displayWord(w, at), isKeyed),
	look('power-switch', 5, (w, at) => (isUnitOn(unitOf(w, at)) ? 'on' : 'off')),
	look(
		'mains-plug',
		10,
		(w, at) => (unitOf(w, at)?.plug === 'none' ? 'out' : 'in'),
		(unit) => unit.plug !== 'none',
		{ cautions: ['mains'] },
	),
	look(
		'socket-in',
		8,
		(w, at) => (plugged(w, `${at}:in`) ? 'plugged' : 'empty'),
		(unit, meant) => plugged(meant, `${unit.placed.id}:in`),
		{ ofPlugs: true },
	),
	look(
		'socket-out',
		8,
		(w, at) => (plugged(w, `${at}:out`) ? 'plugged' : 'empty'),
		(unit, meant) => plugged(meant, `${unit.placed.id}:out`),
		{ ofPlugs: true },
	),
	look(
		'terminator',
		8,
		(w, at) => (hasTerminator(w, `${at}:out`) ? 'in' : 'missing'),
		(unit, meant) => hasTerminator(meant, `${unit.placed.id}:out`),
		{ ofPlugs: true },
	),
	look('lens', 6, (w, at) => (unitOf(w, at)?.condition.covered ? 'covered' : 'clear'), always, {
		cautions: ['staring', 'hot'],
	}),
	look('heat', 8, (w, at) => ((unitOf(w, at)?.condition.foldBack ?? 1) < 1 ? 'hot' : 'warm'), always, {
		cautions: ['hot'],
		error: 0.08,
	}),
	look(
		'switches',
		15,
		(w, at, meant) =>
			JSON.stringify(unitOf(w, at)?.state.context.switches) ===
			JSON.stringify(unitOf(meant, at)?.state.context.switches)
				? 'as-meant'
				: 'other',
		isDip,
	),
	look(
		'slides',
		8,
		(w, at, meant) =>
			JSON.stringify(unitOf(w, at)?.state.context.slides) === JSON.stringify(unitOf(meant, at)?.state.context.slides)
				? 'as-meant'
				: 'other',
		isDip,
	),
	look(
		'sight-line',
		5,
		(w, at) => (unitOf(w, at)?.hidden ? 'blocked' : 'clear'),
		(unit, meant) => unit.profile.sensor && meant.rig.gear.remote !== null,
	),
	look(
		'sensor-window',
		6,
		(w, at) => (unitOf(w, at)?.condition.sensorCovered ? 'covered' : 'clear'),
		(unit, meant) => unit.profile.sensor && meant.rig.gear.remote !== null,
		{ since: 2, cautions: ['staring'] },
	),
	panelReads('address', 15, byLine),
	panelReads('mode', 15, byLine),
	panelReads('work', 15),
	panelReads('lead', 15),
	panelReads('held', 15, (unit) => unit.state.context.settings.work === 'held'),
	panelReads('level', 15, (unit) => !byLine(unit)),
	panelReads('strobe', 15, (unit) => unit.state.context.settings.work === 'held'),
	panelReads('programme', 15, (unit) => unit.state.context.settings.work === 'programme'),
	panelReads('limit', 20),
	panelReads('curve', 20),
	panelReads('loss', 20, byLine),
	panelReads('sensor', 15, (unit) => unit.profile.sensor),
	panelReads('code', 20, (unit) => unit.profile.sensor),
	panelReads('hearing', 20, (unit) => unit.profile.microphone && unit.state.context.settings.work === 'programme'),
];

function batteryWord({ lamps }: Sight): string {
	const bars = lamps.battery?.bars ?? 0;
	if (lamps.battery?.charging) return 'charging';
	return bars === 0 ? 'empty' : bars === 1 ? 'low' : 'good';
}

function displayWord(w: Witness, at: string): string {
	const { display } = w.rest(at);
	if (display.kind !== 'keyed' || display.state === 'dark' || !isReadable(w, at)) return 'dark';
	return display.state === 'locked' ? 'locked' : 'readable';
}

function attempt(
	kind: string,
	seconds: number,
	read: FixtureKind['read'],
	fits: FixtureKind['fits'],
	more: Partial<CheckKind> = {},
): FixtureKind {
	return { kind, sort: 'try', seconds, read, fits, disturbs: true, error: 0.03, ...more };
}

/** Everything that can be tried on a fixture, and put back. */
export const FIXTURE_TRIES: readonly FixtureKind[] = [
	attempt(
		'desk-strips',
		15,
		(w, at) => (answersFaders(w, at, at) ? 'answers' : 'still'),
		(unit, meant) => isPatched(unit, meant) && byLine(unit),
		{ needs: ['desk'] },
	),
	attempt(
		'desk-colours',
		30,
		(w, at) => coloursByDesk(w, at),
		(unit, meant) => isPatched(unit, meant) && byLine(unit),
		{ needs: ['desk'] },
	),
	attempt(
		'desk-restart',
		40,
		(w, at, meant) => (sameLight(whileDeskRestarts(w, at), whileDeskRestarts(meant, at)) ? 'as-meant' : 'other'),
		(unit, meant) => byLine(unit) && meant.rig.gear.desk !== null,
		{ needs: ['desk'] },
	),
	attempt(
		'held-at-panel',
		30,
		(w, at) => {
			const seen = onStaticWhite(w, at);
			if (!seen) return 'no-display';
			return looksLit(seen) ? 'lights' : 'dark';
		},
		isKeyed,
	),
	attempt(
		'power-cycle',
		20,
		(w, at) => {
			const after = afterPowerCycle(w, at);
			if (!isLit(after)) return 'dark';
			return sameLight(after, w.rest(at)) ? 'same' : 'other';
		},
		always,
	),
	attempt(
		'remote-close',
		15,
		(w, at) => {
			const { before, after } = afterRemoteClose(w, at);
			return sameLight(before, after) ? 'still' : 'answers';
		},
		(unit, meant) => unit.profile.sensor && meant.rig.gear.remote !== null,
	),
	attempt(
		'clap',
		5,
		(w, at) => (sameLevels(afterClap(w, at), w.rest(at)) ? 'still' : 'answers'),
		(unit) => unit.profile.microphone && unit.state.context.settings.work === 'programme',
	),
	attempt('charger', 20, (w, at) => (onCharger(w, at).lamps.battery?.charging ? 'charges' : 'not'), hasBattery, {
		cautions: ['batteries', 'mains'],
	}),
	attempt(
		'socket-live',
		30,
		(w, at) => (isSocketLive(w, at) ? 'live' : 'dead'),
		(unit) => unit.plug === 'wall',
		{ since: 2, cautions: ['mains'] },
	),
];

/** Whether the socket in the wall has power, whatever hangs on it. */
function isSocketLive(w: Witness, fixture: string): boolean {
	const { socketDead = false, breakerOff = false } = unitOf(w, fixture)?.condition ?? {};
	return w.rig.gear.hallPower && !socketDead && !breakerOff;
}
