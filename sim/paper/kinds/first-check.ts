import {
	type Chance,
	type Ground,
	KIND_TOPICS,
	type Kind,
	LEVELS,
	type Level,
	oneOf,
	type Say,
	say,
} from '../../../shared/paper/index.ts';
import { BUNDLED, bundledProfile, SETTING_KEYS } from '../../../shared/profile/index.ts';
import { profileFor, type QuickLink, quickSheet, type RigSheet, splitPort } from '../../../shared/sheet/index.ts';
import type { Check } from '../../finder/index.ts';
import { inputFrom } from '../../fixture/index.ts';
import { complaintsOn, type First, type Opening, openingOf } from '../first.ts';

/** Most fixtures of a rig that is asked about: a larger one takes the finder too long. */
const MOST_FIXTURES = 4;
const DRAWS = 60;
const MOST_WRONG = 3;

/** Least share by which wrong options are worse, where there are enough of those. */
const GAPS: Readonly<Record<Level, number>> = { easy: 0.5, middle: 0.35, hard: 0 };

const QUICK: readonly (readonly [count: number, linked: QuickLink])[] = [
	[1, 'desk'],
	[2, 'desk'],
	[3, 'desk'],
	[2, 'leader'],
	[3, 'leader'],
];

/**
 * What to look at first? Read from the finder: the check it asks first, among others of the same walk after which the cause takes
 * clearly longer to find. Easy: half as long again; hard: as near as they come.
 */
export const firstCheck: Kind = {
	id: 'first-check',
	topic: KIND_TOPICS['first-check'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => isSmall(ground.sheet) || bundledIn(ground).length > 0,
	make(ground, chance, level) {
		for (let n = 0; n < DRAWS; n++) {
			// a rig of the crew's own may have nothing to choose between
			const sheet = chance.pick(n < DRAWS / 2 ? rigsFor(ground) : quickRigs(BUNDLED.map(({ id }) => id)));
			const complaints = complaintsOn(sheet);
			const opening = complaints.length > 0 ? openingOf(sheet, chance.pick(complaints)) : null;
			if (opening) return asked(sheet, opening, chance, level);
		}
		throw new RangeError('no complaint of any rig leaves anything to choose');
	},
};

function asked(sheet: RigSheet, { complaint, best, others }: Opening, chance: Chance, level: Level) {
	const clear = others.filter(({ expected }) => expected >= best.expected * (1 + GAPS[level]));
	const fit = clear.length >= 2 ? clear : others.slice(-MOST_WRONG);
	const wrongs = level === 'hard' ? fit.slice(0, MOST_WRONG) : chance.shuffle(fit).slice(0, MOST_WRONG);
	const nearest = Math.min(...wrongs.map(({ expected }) => expected));
	const furthest = Math.max(...wrongs.map(({ expected }) => expected));
	const lead = sheet.fixtures.find(
		(placed) => inputFrom(profileFor(sheet, placed.profile), placed, false).settings.lead === 'on',
	);
	return oneOf(
		chance,
		{
			facts: {
				complaint: complaint.kind,
				fixture: nameOf(sheet, complaint.fixture),
				rig: sheet.name,
				fixtures: sheet.fixtures.map(({ name }) => name),
				linked: sheet.desk ? 'desk' : lead ? 'leader' : 'alone',
				leader: lead?.name ?? null,
				seconds: Math.round(best.expected),
				next: Math.round(nearest),
				worst: Math.round(furthest),
				same: Math.round(nearest) === Math.round(furthest),
			},
			bench: sheet,
		},
		labelOf(sheet, best),
		wrongs.map((wrong) => ['later-check', labelOf(sheet, wrong)] as const),
	);
}

/** A check as its title is filled: places by the names the sheet gives them, ids where words name them by kind. */
function labelOf(sheet: RigSheet, { check }: First): Say {
	const { kind, place, other } = check;
	const key = kind.startsWith('panel-') ? kind.slice('panel-'.length) : null;
	return say(`check-${kind}`, {
		place: placeFact(sheet, check),
		other: other === undefined ? null : nameOf(sheet, other),
		key: key !== null && (SETTING_KEYS as readonly string[]).includes(key) ? key : null,
		code: sheet.remote?.code ?? null,
		master: sheet.desk?.master ?? null,
		universe: sheet.desk?.outputs.find(({ id }) => id === place)?.universe ?? null,
		meantSensor: sensorOf(sheet, place),
	});
}

function sensorOf(sheet: RigSheet, place: string): string | null {
	const placed = sheet.fixtures.find(({ id }) => id === place);
	return placed ? inputFrom(profileFor(sheet, placed.profile), placed, false).settings.sensor : null;
}

const nameOf = (sheet: RigSheet, id: string): string =>
	sheet.fixtures.find((placed) => placed.id === id)?.name ?? (id === 'desk' ? (sheet.desk?.name ?? id) : id);

/** A socket keeps its own part behind a colon: `wash 1:out`. */
function placeFact(sheet: RigSheet, { place }: Check): string {
	if (!place.includes(':')) return nameOf(sheet, place);
	const { device, socket } = splitPort(place);
	return `${nameOf(sheet, device)}:${socket}`;
}

const isSmall = (sheet: RigSheet | null): sheet is RigSheet =>
	sheet !== null && sheet.fixtures.length > 0 && sheet.fixtures.length <= MOST_FIXTURES;

const bundledIn = ({ profiles }: Ground): string[] =>
	profiles.filter((profile) => bundledProfile(profile.id) === profile).map(({ id }) => id);

const rigsFor = (ground: Ground): readonly RigSheet[] =>
	isSmall(ground.sheet) ? [ground.sheet] : quickRigs(bundledIn(ground));

const kept = new Map<string, readonly RigSheet[]>();

/** Small rigs of these fixtures; the same objects every time, so that what the finder works out for them is kept. */
const quickRigs = (profiles: readonly string[]): readonly RigSheet[] =>
	profiles.flatMap((profile) => {
		const rigs = kept.get(profile) ?? QUICK.map(([count, linked]) => quickSheet({ count, linked, profile }));
		kept.set(profile, rigs);
		return rigs;
	});
