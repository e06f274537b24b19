import { bandOf, LAST_SLOT, levelOfPercent, middleOf, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import { oncePer } from '../../../shared/memo/index.ts';
import {
	type Chance,
	isAtRest,
	KIND_TOPICS,
	LEVELS,
	oneOf,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	shortOf,
	slotChartOf,
	type WrongAnswer,
} from '../../../shared/paper/index.ts';
import { type Band, footprintOf, type Mode, type Profile, type Slot } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { openUnharmed } from '../../rig/trusted.ts';
import { type LookInWords, saySeen, seenOf, tellsApart } from '../seen.ts';
import { deskWith, idAt, lineThrough, nameAt, sheetFor, stand } from '../stage.ts';

/** Draws before a question with two wrong options will do, and draws in which a mode must show that it can be asked about. */
const DRAWS = 40;
const PROBES = 6;
const LEAST_WRONG = 2;
const MOST_WRONG = 3;
/** Wrong ones to draw from, where their look must not tell. */
const MOST_FOUND = 6;

/**
 * What does the fixture do with this frame? Easy: colours, functions at rest; middle: part of the intensity, or a function in the
 * middle of its band; hard: a function on the edge of its band. Read by opening the rig and looking.
 */
export const frameLook: QuestionKind = {
	id: 'frame-look',
	topic: KIND_TOPICS['frame-look'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => placesIn(ground).length > 0,
	make(ground, chance, level) {
		const places = placesIn(ground);
		const best = bestOf(ground, chance, level, places, DRAWS);
		if (!best) throw new RangeError('no frame tells any two looks apart');
		const { at, start, frame, seen, wrongs, sheet } = best;
		return oneOf(
			chance,
			{
				facts: {
					...modeFacts(at),
					start,
					frame: [...frame].flat(),
					slotChart: slotChartOf(at.mode),
					bandChart: bandChartOf(at.mode),
					reading: readingOf(at, start, frame),
				},
				bench: sheet,
			},
			saySeen(seen),
			wrongs.map(([mistake, wrong]) => [mistake, saySeen(wrong)] as const),
			ground,
		);
	},
};

interface FrameQuestion {
	readonly at: ModeOnFixture;
	readonly start: number;
	readonly frame: Frame;
	readonly sheet: RigSheet;
	readonly seen: LookInWords;
	readonly wrongs: readonly WrongAnswer<LookInWords>[];
}

/** The first of some draws with three wrong options, or else the one with most; null where none has two. */
function bestOf(
	ground: QuestionGround,
	chance: Chance,
	level: PaperLevel,
	places: readonly ModeOnFixture[],
	draws: number,
): FrameQuestion | null {
	let best: FrameQuestion | null = null;
	for (let n = 0; n < draws; n++) {
		const asked = ask(ground, chance, level, chance.pick(places));
		if (asked && asked.wrongs.length > (best?.wrongs.length ?? LEAST_WRONG - 1)) best = asked;
		if (best && best.wrongs.length >= MOST_WRONG) break;
	}
	return best;
}

/** Modes of a fixture that can be asked about at every level, by itself: tried once a fixture, the same way everywhere. */
const modesOf = oncePer((profile: Profile): readonly ModeOnFixture[] => {
	const alone = { profiles: [profile], sheet: null, version: 1 } as const;
	return profile.modes
		.filter((mode) => footprintOf(mode) < LAST_SLOT - 2)
		.map((mode) => ({ profile, mode }))
		.filter((at) => LEVELS.every((level) => bestOf(alone, makeRandom(0).fork(level), level, [at], PROBES) !== null));
});

const placesIn = ({ profiles }: QuestionGround): readonly ModeOnFixture[] => shortOf(profiles.flatMap(modesOf));

function ask(ground: QuestionGround, chance: Chance, level: PaperLevel, at: ModeOnFixture): FrameQuestion | null {
	const footprint = footprintOf(at.mode);
	const start = level === 'easy' ? 1 : chance.int(2, LAST_SLOT - 1 - footprint);
	const frame = frameFor(chance, level, at.mode, start);
	const sheet = sheetWith(at, start, frame);
	const seen = sheet && lookAt(sheet);
	if (!sheet || !seen || !isWorthAsking(seen, level)) return null;
	const wrongs: WrongAnswer<LookInWords>[] = [];
	for (const [mistake, read] of misreadings(ground, chance, at, start, frame)) {
		if (wrongs.length === (ground.version === 1 ? MOST_WRONG : MOST_FOUND)) break;
		const wrong = read && lookAt(read);
		if (!wrong) continue;
		if ([seen, ...wrongs.map(([, each]) => each)].every((each) => tellsApart(each, wrong)))
			wrongs.push([mistake, wrong]);
	}
	return { at, start, frame, sheet, seen, wrongs };
}

/** A dark fixture is only asked about where a function makes it so. */
const isWorthAsking = ({ runs, programme }: LookInWords, level: PaperLevel): boolean =>
	programme !== null || level === 'hard' || runs.some(({ percent }) => percent > 0);

export function lookAt(sheet: RigSheet): LookInWords | null {
	const [fixture] = sheet.fixtures;
	return fixture ? seenOf(openUnharmed(sheet), fixture.id) : null;
}

/** A mode on its fixture, which a frame is sent to. */
export interface ModeOnFixture {
	readonly profile: Profile;
	readonly mode: Mode;
}

/** It as facts: the fixture's name and id, and the mode's name. */
export const modeFacts = ({ profile, mode }: ModeOnFixture) => ({
	fixture: profile.name,
	profile: profile.id,
	mode: mode.name,
});

/** Slots of the desk and their levels; a slot that is not there is at 0. */
export type Frame = ReadonlyMap<number, number>;

/** Part of full that an intensity or a colour may stand at, and what the slots beside a fixture's own may. */
const INTENSITIES = [64, 128, 191];
const BESIDE = [0, 128, 255];

/** The fixture as it stands and the desk as it sends. @param reads where the fixture reads from, if not where it is patched */
export function sheetWith(
	{ profile, mode }: ModeOnFixture,
	start: number,
	frame: Frame,
	reads = start,
): RigSheet | null {
	if (reads < 1 || reads + footprintOf(mode) - 1 > LAST_SLOT) return null;
	const placed = stand(profile, 1, { work: 'line', mode: mode.id, address: reads });
	if (!placed) return null;
	const id = idAt(profile, 1);
	return sheetFor(nameAt(profile, 1), [profile], {
		fixtures: [placed],
		desk: deskWith([{ fixture: id, universe: 1, address: start, mode: mode.id }], frame),
		...lineThrough('desk:a', [id]),
	});
}

export const bandsOf = ({ drives }: Slot): readonly Band[] => (drives.kind === 'bands' ? drives.bands : []);

/** Levels from the slot before the fixture's first to the one after its last. */
function frameFor(chance: Chance, level: PaperLevel, mode: Mode, start: number): Frame {
	const levels = new Map<number, number>();
	const put = (n: number, value: number): unknown => levels.set(start + n - 1, value);
	if (start > 1) put(0, chance.pick(BESIDE));
	for (let n = 1; n <= footprintOf(mode); n++) put(n, 0);
	put(footprintOf(mode) + 1, chance.pick(BESIDE));
	const emitters = [
		...new Set(mode.slots.flatMap(({ drives }) => (drives.kind === 'emitter' ? [drives.emitter] : []))),
	];
	const up = chance.shuffle(emitters).slice(0, level === 'easy' ? chance.int(1, 2) : chance.int(1, 3));
	const values = new Map(up.map((id) => [id, level === 'easy' ? TOP_LEVEL : chance.pick([TOP_LEVEL, ...INTENSITIES])]));
	const full = level === 'easy' || chance.chance(0.4);
	const active = level === 'easy' ? undefined : activeSlot(chance, mode, level);
	for (const slot of mode.slots) {
		const { drives } = slot;
		if (drives.kind === 'intensity') {
			put(slot.at, full ? TOP_LEVEL : chance.pick(INTENSITIES));
			if (slot.fine !== undefined) put(slot.fine, full ? TOP_LEVEL : 0);
		} else if (drives.kind === 'emitter') {
			put(slot.at, values.get(drives.emitter) ?? 0);
		} else if (drives.kind === 'speed') put(slot.at, active ? 128 : 0);
		else put(slot.at, slot === active ? activeValue(chance, level, slot) : restOf(slot));
	}
	return levels;
}

/** A slot whose function is up: with hard always one, where the mode has any. */
function activeSlot(chance: Chance, mode: Mode, level: PaperLevel): Slot | undefined {
	const able = mode.slots.filter((slot) => bandsOf(slot).some((band) => !isAtRest(band)));
	return able.length > 0 && (level === 'hard' || chance.chance(0.6)) ? chance.pick(able) : undefined;
}

function activeValue(chance: Chance, level: PaperLevel, slot: Slot): number {
	const band = chance.pick(bandsOf(slot).filter((each) => !isAtRest(each)));
	return level === 'hard' ? chance.pick([band.from, band.to]) : middleOf(band);
}

export function restOf(slot: Slot): number {
	const rest = bandsOf(slot).find(isAtRest);
	return rest ? middleOf(rest) : 0;
}

/** What each slot reads, as a fact: its name, its level, and what that does where it has bands. What stands at 0 and does nothing is left out. */
const readingOf = ({ mode }: ModeOnFixture, start: number, frame: Frame): (string | number)[] =>
	mode.slots.flatMap((slot) => {
		const level = frame.get(start + slot.at - 1) ?? 0;
		const band = bandOf(bandsOf(slot), level) as Band | undefined;
		return level > 0 || band ? [slot.name, level, band?.name ?? ''] : [];
	});

/** What other readings of the same frame come to, as sheets: opened and looked at like the right one. */
function misreadings(
	ground: QuestionGround,
	chance: Chance,
	at: ModeOnFixture,
	start: number,
	frame: Frame,
): WrongAnswer<RigSheet | null>[] {
	const { profile, mode } = at;
	const mapped = (change: (level: number, slot: Slot | undefined) => number): Frame =>
		new Map(
			[...frame].map(([n, level]) => [
				n,
				change(
					level,
					mode.slots.find(({ at: own }) => start + own - 1 === n),
				),
			]),
		);
	const withFrame = (read: Frame): RigSheet | null => sheetWith(at, start, read);
	const bands = (change: (level: number, slot: Slot) => number): Frame =>
		mapped((level, slot) => (slot && bandsOf(slot).length > 0 ? change(level, slot) : level));
	const charts = chance.shuffle(profile.modes.filter((each) => each !== mode));
	const others = chance.shuffle(ground.profiles.filter((each) => each !== profile));
	const slips: WrongAnswer<RigSheet | null>[] = [
		['frame-slot-shifted', sheetWith(at, start, frame, start + chance.pick([1, -1]))],
		['function-slot-missed', withFrame(bands((_, slot) => restOf(slot)))],
		['next-band', withFrame(bands((level, slot) => beside(slot, level, chance.pick([1, -1]))))],
		['bands-from-the-wrong-end', withFrame(bands((level) => TOP_LEVEL - level))],
		['percent-for-value', withFrame(mapped((level) => (level > 100 ? TOP_LEVEL : levelOfPercent(level))))],
	];
	const mixed = [
		...charts.slice(0, 2).map((chart): WrongAnswer<ModeOnFixture> => ['other-modes-chart', { profile, mode: chart }]),
		...others.flatMap((other): WrongAnswer<ModeOnFixture>[] =>
			other.modes.slice(0, 1).map((chart) => ['other-fixtures-chart', { profile: other, mode: chart }]),
		),
	].map(([mistake, chart]): WrongAnswer<RigSheet | null> => [mistake, sheetWith(chart, start, frame)]);
	const shifts = [1, -1, 2, -2].map(
		(by): WrongAnswer<RigSheet | null> => ['frame-slot-shifted', sheetWith(at, start, frame, start + by)],
	);
	return [...chance.shuffle([...slips, ...mixed.slice(0, 1)]), ...mixed.slice(1), ...shifts];
}

/** The middle of the band before or after the one a level is in; the level itself where there is none. */
function beside(slot: Slot, level: number, by: 1 | -1): number {
	const bands = bandsOf(slot);
	const here = bandOf(bands, level);
	const other = here ? bands[bands.indexOf(here as Band) + by] : undefined;
	return other ? middleOf(other) : level;
}

/** The bands of every slot that has any, as a fact: the slot's name, first value, last value, name, and so on. */
export const bandChartOf = ({ slots }: Mode): (string | number)[] =>
	slots.flatMap(({ name: slot, drives }) =>
		drives.kind === 'bands' ? drives.bands.flatMap(({ from, to, name }) => [slot, from, to, name]) : [],
	);
