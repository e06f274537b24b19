import { LAST_SLOT } from '../../../shared/dmx/index.ts';
import {
	type Chance,
	type Ground,
	KIND_TOPICS,
	type Kind,
	LEVELS,
	type Level,
	oneOf,
	type Wrong,
} from '../../../shared/paper/index.ts';
import { footprintOf, type Profile } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import type { RigSheet } from '../../../shared/sheet/index.ts';
import { openUnharmed } from '../../rig/trusted.ts';
import { bandChartOf, slotChartOf } from '../chart.ts';
import { type At, type Frame, frameFor, misreadings, readingOf, sheetWith } from '../frame.ts';
import { type Seen, saySeen, seenOf, tellsApart } from '../seen.ts';

/** Longest chart that a question spells out, where a shorter one is to be had. */
const LONGEST = 16;
/** Draws before a question with two wrong options will do, and draws in which a mode must show that it can be asked about. */
const DRAWS = 40;
const PROBES = 6;
const LEAST_WRONG = 2;
const MOST_WRONG = 3;

/**
 * What does the fixture do with this frame? Easy: colours, functions at rest; middle: part of the intensity, or a function in the
 * middle of its band; hard: a function on the edge of its band. Read by opening the rig and looking.
 */
export const frameLook: Kind = {
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
		const { profile, mode } = at;
		return oneOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					profile: profile.id,
					mode: mode.name,
					start,
					frame: [...frame].flat(),
					slotChart: slotChartOf(mode),
					bandChart: bandChartOf(mode),
					reading: readingOf(at, start, frame),
				},
				bench: sheet,
			},
			saySeen(seen),
			wrongs.map(([mistake, wrong]) => [mistake, saySeen(wrong)] as const),
		);
	},
};

interface Asked {
	readonly at: At;
	readonly start: number;
	readonly frame: Frame;
	readonly sheet: RigSheet;
	readonly seen: Seen;
	readonly wrongs: readonly Wrong<Seen>[];
}

/** The first of some draws with three wrong options, or else the one with most; null where none has two. */
function bestOf(ground: Ground, chance: Chance, level: Level, places: readonly At[], draws: number): Asked | null {
	let best: Asked | null = null;
	for (let n = 0; n < draws; n++) {
		const asked = ask(ground, chance, level, chance.pick(places));
		if (asked && asked.wrongs.length > (best?.wrongs.length ?? LEAST_WRONG - 1)) best = asked;
		if (best && best.wrongs.length >= MOST_WRONG) break;
	}
	return best;
}

const known = new WeakMap<Profile, readonly At[]>();

/** Modes of a fixture that can be asked about at every level, by itself: tried once a fixture, the same way everywhere. */
function modesOf(profile: Profile): readonly At[] {
	let modes = known.get(profile);
	if (!modes) {
		const alone = { profiles: [profile], sheet: null };
		modes = profile.modes
			.filter((mode) => footprintOf(mode) < LAST_SLOT - 2)
			.map((mode) => ({ profile, mode }))
			.filter((at) => LEVELS.every((level) => bestOf(alone, makeRandom(0).fork(level), level, [at], PROBES) !== null));
		known.set(profile, modes);
	}
	return modes;
}

function placesIn({ profiles }: Ground): readonly At[] {
	const all = profiles.flatMap(modesOf);
	const short = all.filter(({ mode }) => footprintOf(mode) <= LONGEST);
	return short.length > 0 ? short : all;
}

function ask(ground: Ground, chance: Chance, level: Level, at: At): Asked | null {
	const footprint = footprintOf(at.mode);
	const start = level === 'easy' ? 1 : chance.int(2, LAST_SLOT - 1 - footprint);
	const frame = frameFor(chance, level, at.mode, start);
	const sheet = sheetWith(at, start, frame);
	const seen = sheet && lookAt(sheet);
	if (!sheet || !seen || !isWorthAsking(seen, level)) return null;
	const wrongs: Wrong<Seen>[] = [];
	for (const [mistake, read] of misreadings(ground, chance, at, start, frame)) {
		if (wrongs.length === MOST_WRONG) break;
		const wrong = read && lookAt(read);
		if (!wrong) continue;
		if ([seen, ...wrongs.map(([, each]) => each)].every((each) => tellsApart(each, wrong)))
			wrongs.push([mistake, wrong]);
	}
	return { at, start, frame, sheet, seen, wrongs };
}

/** A dark fixture is only asked about where a function makes it so. */
const isWorthAsking = ({ runs, programme }: Seen, level: Level): boolean =>
	programme !== null || level === 'hard' || runs.some(({ percent }) => percent > 0);

function lookAt(sheet: RigSheet): Seen | null {
	const [fixture] = sheet.fixtures;
	return fixture ? seenOf(openUnharmed(sheet), fixture.id) : null;
}
