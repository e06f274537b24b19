import { type FaultWords, faults } from '#words/faults/index.ts';
import { type RepairWords, repairs } from '#words/repairs/index.ts';
import type { Says } from '#words/rig/index.ts';
import { DIP_WEIGHTS } from '../../shared/dmx/index.ts';
import { modeOf } from '../../shared/profile/index.ts';
import { type Port, profileFor, type RigSheet, type SheetFixture, splitPort } from '../../shared/sheet/index.ts';
import type { PlacedFault, RigEvent } from '../../sim/event/index.ts';
import { faultEvents, MENDS, type RepairId } from '../../sim/fault/index.ts';
import { sentence, type TemplateFacts, wordingOf } from './fill.ts';
import { partCalled } from './names.ts';
import { settingFacts, settingsOf, sheetFacts } from './sheetFacts.ts';
import { sheetKinds } from './sheetNames.ts';

/** Most characters that go on a strip of tape so that it can be read from where one stands. Ours, no source. */
const TAPE_LENGTH = 40;

/** What a tech would call the fault, in a few words with no place and no full stop: 'Start address one slot out'. @throws InputError `fault.unknown` or `fault.place`. */
export function faultName(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ name }) => name);
}

/**
 * What tells this name of a fault from its other names, wherever it sits: one fixture, output, switch or level stands for all, one
 * socket, colour or slide does not. The same in every language. @throws InputError `fault.unknown` or `fault.place`.
 */
export function faultNameKey(sheet: RigSheet, placed: PlacedFault): string {
	const { name } = faults[placed.fault] as FaultWords;
	const { at, filledBy } = wordingOf(name, faultFacts(sheet, placed));
	const kept = filledBy.map(({ value, kind }) => {
		if (kind === 'port') return socketKind(value as Port);
		return Number.isNaN(Number(value)) ? value : null;
	});
	return JSON.stringify([at, ...kept]);
}

/** What kind of socket it is: a desk's outputs are of one kind, and so are the numbered ones of any device. */
function socketKind(port: Port): string {
	const { device, socket } = splitPort(port);
	return device === 'desk' ? device : socket.replace(/\d+$/, '');
}

/** What has happened and what it does, in a sentence or two. @throws InputError `fault.unknown` or `fault.place`. */
export function faultCause(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ cause }) => cause);
}

/** What to write on the tape: at most `TAPE_LENGTH` characters; a name that would run over is cut there. @throws InputError `fault.unknown` or `fault.place`. */
export function faultTape(sheet: RigSheet, placed: PlacedFault): string {
	return faultSays(sheet, placed, ({ tape }) => tape)
		.slice(0, TAPE_LENGTH)
		.trimEnd();
}

function faultSays(sheet: RigSheet, placed: PlacedFault, part: (words: FaultWords) => Says): string {
	const facts = faultFacts(sheet, placed);
	return sentence(part(faults[placed.fault] as FaultWords), facts, sheetKinds(sheet, placed.place));
}

/** A repair in a few words with its place and no full stop: 'Switch on wash 1, house left'. */
export function repairTitle(sheet: RigSheet, repair: RepairId, place: string): string {
	return repairSays(sheet, repair, place, ({ title }) => title);
}

/** What to do, in one to three sentences. Its cautions are the catalogue's, by id. */
export function repairText(sheet: RigSheet, repair: RepairId, place: string): string {
	return repairSays(sheet, repair, place, ({ does }) => does);
}

/** How to tell that it is repaired. */
export function repairConfirm(sheet: RigSheet, repair: RepairId, place: string): string {
	return repairSays(sheet, repair, place, ({ confirm }) => confirm);
}

function repairSays(sheet: RigSheet, repair: RepairId, place: string, part: (words: RepairWords) => Says): string {
	const facts = { ...sheetFacts(sheet, place), mendTime: MENDS[repair].seconds * 1000 };
	return sentence(part(repairs[repair] as RepairWords), facts, sheetKinds(sheet, place));
}

/**
 * What the words of a fault ask for: what the sheet means at its place, and beside it what is so instead, read off the events
 * that bring the fault about.
 * @throws InputError `fault.unknown` or `fault.place`
 */
export function faultFacts(sheet: RigSheet, placed: PlacedFault): TemplateFacts {
	const events = faultEvents(sheet, placed);
	const fixture = sheet.fixtures.find(({ id }) => id === placed.place);
	return {
		...sheetFacts(sheet, placed.place),
		detail: placed.detail ?? null,
		...(fixture ? fixtureNow(sheet, fixture, events) : {}),
		...Object.assign({}, ...events.map((event) => eventFacts(sheet, event))),
		...faderFacts(sheet, placed.place, events),
	};
}

/** A fixture's settings once the fault is in it. */
function fixtureNow(sheet: RigSheet, fixture: SheetFixture, events: readonly RigEvent[]): TemplateFacts {
	const profile = profileFor(sheet, fixture.profile);
	const { panel } = profile;
	const slides = panel.kind === 'dip' ? panel.slides : [];
	let now = fixture;
	for (const event of events) {
		if (event.type === 'settings.become') now = { ...now, settings: { ...now.settings, ...event.change } };
		if (event.type === 'switch.flip')
			now = { ...now, switches: (now.switches ?? []).map((up, i) => (i + 1 === event.switch ? event.up : up)) };
		if (event.type === 'slide.move')
			now = {
				...now,
				slides: slides.map(({ id }, i) => (id === event.slide ? event.to : (now.slides?.[i] ?? 0))),
			};
	}
	return {
		...settingFacts('is', settingsOf(profile, now)),
		noneUp: panel.kind === 'dip' && !(now.switches ?? []).slice(0, DIP_WEIGHTS.length).includes(true),
	};
}

/** What one event says by itself. */
function eventFacts(sheet: RigSheet, event: RigEvent): TemplateFacts {
	switch (event.type) {
		case 'switch.flip':
			return { isUp: event.up };
		case 'slide.move':
			return slideFacts(sheet, event);
		case 'charge.become':
			return { charge: event.charge };
		case 'condition.become':
			return {
				health: event.change.batteryHealth ?? null,
				foldBack: event.change.foldBack ?? null,
				loads: event.change.extraLoads ?? null,
			};
		case 'remote.become':
			return { isSent: event.code };
		case 'cable.become':
			return {
				isLength: event.change.length ?? null,
				isFrom: event.change.from ?? null,
				loose: looseEnd(sheet, event),
			};
		case 'desk.master':
			return { isMaster: event.level };
		case 'desk.universe':
			return { isUniverse: event.universe };
		case 'desk.patch':
			return { isPatchAddress: event.address, isPatchUniverse: event.universe, isPatchMode: event.mode };
		default:
			return {};
	}
}

/** The socket an end is out of; null where neither is. */
function looseEnd(sheet: RigSheet, { cable, change }: Extract<RigEvent, { type: 'cable.become' }>): string | null {
	const meant = sheet.cables.find(({ id }) => id === cable);
	if (change.from === null) return meant?.from ?? null;
	return change.to === null ? (meant?.to ?? null) : null;
}

function slideFacts(sheet: RigSheet, { fixture, slide, to }: Extract<RigEvent, { type: 'slide.move' }>): TemplateFacts {
	const placed = sheet.fixtures.find(({ id }) => id === fixture);
	const panel = placed && profileFor(sheet, placed.profile).panel;
	const at = panel?.kind === 'dip' ? panel.slides.findIndex(({ id }) => id === slide) : -1;
	const moved = panel?.kind === 'dip' ? panel.slides[at] : undefined;
	return {
		slide: moved?.title ?? slide,
		isPosition: moved?.positions[to]?.label ?? to,
		meantPosition: moved?.positions[placed?.slides?.[at] ?? 0]?.label ?? null,
	};
}

/** Which of a fixture's faders are elsewhere, and for one with bands, in which band it stands and where it would be at rest. */
function faderFacts(sheet: RigSheet, place: string, events: readonly RigEvent[]): TemplateFacts {
	const patch = sheet.desk?.patch.find(({ fixture }) => fixture === place);
	const fixture = sheet.fixtures.find(({ id }) => id === place);
	if (!patch || !fixture) return {};
	const { slots } = modeOf(profileFor(sheet, fixture.profile), patch.mode);
	const moved = events.flatMap((event) => {
		if (event.type !== 'desk.level') return [];
		const slot = slots.find(({ at }) => patch.address + at - 1 === event.slot);
		return slot ? [{ slot, level: event.level }] : [];
	});
	const [first] = moved;
	const bands = first?.slot.drives.kind === 'bands' ? first.slot.drives.bands : [];
	const band = bands.find(({ from, to }) => first && from <= first.level && first.level <= to);
	const rest = bands.find(({ effect }) => effect.do === 'nothing' || effect.do === 'open');
	return {
		faders: moved.map(({ slot }) => partCalled(slot.name)),
		fader: first ? partCalled(first.slot.name) : null,
		level: first?.level ?? null,
		band: band ? partCalled(band.name) : null,
		restFrom: rest ? `${rest.from}` : null,
		restTo: rest?.to ?? null,
	};
}
