import { bandOf, LAST_SLOT, levelOfPercent, middleOf, TOP_LEVEL } from '../../shared/dmx/index.ts';
import type { Chance, Ground, Level, Wrong } from '../../shared/paper/index.ts';
import { type Band, footprintOf, type Mode, type Profile, type Slot } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import { deskWith, idAt, lineThrough, nameAt, sheetFor, stand } from './stage.ts';

/** A mode on its fixture, which a frame is sent to. */
export interface At {
	readonly profile: Profile;
	readonly mode: Mode;
}

/** Slots of the desk and their levels; a slot that is not there is at 0. */
export type Frame = ReadonlyMap<number, number>;

/** Part of full that an intensity or a colour may stand at, and what the slots beside a fixture's own may. */
const INTENSITIES = [64, 128, 191];
const BESIDE = [0, 128, 255];

/** The fixture as it stands and the desk as it sends. @param reads where the fixture reads from, if not where it is patched */
export function sheetWith({ profile, mode }: At, start: number, frame: Frame, reads = start): RigSheet | null {
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

const atRest = ({ effect }: Band): boolean => effect.do === 'nothing' || effect.do === 'open';
const bandsOf = ({ drives }: Slot): readonly Band[] => (drives.kind === 'bands' ? drives.bands : []);

/** Levels from the slot before the fixture's first to the one after its last. */
export function frameFor(chance: Chance, level: Level, mode: Mode, start: number): Frame {
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
function activeSlot(chance: Chance, mode: Mode, level: Level): Slot | undefined {
	const able = mode.slots.filter((slot) => bandsOf(slot).some((band) => !atRest(band)));
	return able.length > 0 && (level === 'hard' || chance.chance(0.6)) ? chance.pick(able) : undefined;
}

function activeValue(chance: Chance, level: Level, slot: Slot): number {
	const band = chance.pick(bandsOf(slot).filter((each) => !atRest(each)));
	return level === 'hard' ? chance.pick([band.from, band.to]) : middleOf(band);
}

function restOf(slot: Slot): number {
	const rest = bandsOf(slot).find(atRest);
	return rest ? middleOf(rest) : 0;
}

/** What each slot reads, as a fact: its name, its level, and what that does where it has bands. What stands at 0 and does nothing is left out. */
export const readingOf = ({ mode }: At, start: number, frame: Frame): (string | number)[] =>
	mode.slots.flatMap((slot) => {
		const level = frame.get(start + slot.at - 1) ?? 0;
		const band = bandOf(bandsOf(slot), level) as Band | undefined;
		return level > 0 || band ? [slot.name, level, band?.name ?? ''] : [];
	});

/** What other readings of the same frame come to, as sheets: opened and looked at like the right one. */
export function misreadings(
	ground: Ground,
	chance: Chance,
	at: At,
	start: number,
	frame: Frame,
): Wrong<RigSheet | null>[] {
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
	const slips: Wrong<RigSheet | null>[] = [
		['frame-slot-shifted', sheetWith(at, start, frame, start + chance.pick([1, -1]))],
		['function-slot-missed', withFrame(bands((_, slot) => restOf(slot)))],
		['next-band', withFrame(bands((level, slot) => beside(slot, level, chance.pick([1, -1]))))],
		['bands-from-the-wrong-end', withFrame(bands((level) => TOP_LEVEL - level))],
		['percent-for-value', withFrame(mapped((level) => (level > 100 ? TOP_LEVEL : levelOfPercent(level))))],
	];
	const mixed = [
		...charts.slice(0, 2).map((chart): Wrong<At> => ['other-modes-chart', { profile, mode: chart }]),
		...others.flatMap((other): Wrong<At>[] =>
			other.modes.slice(0, 1).map((chart) => ['other-fixtures-chart', { profile: other, mode: chart }]),
		),
	].map(([mistake, chart]): Wrong<RigSheet | null> => [mistake, sheetWith(chart, start, frame)]);
	const shifts = [1, -1, 2, -2].map(
		(by): Wrong<RigSheet | null> => ['frame-slot-shifted', sheetWith(at, start, frame, start + by)],
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
