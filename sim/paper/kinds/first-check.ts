import { oncePer, onceUnder } from '../../../shared/memo/index.ts';
import {
	type Chance,
	KIND_TOPICS,
	LEVELS,
	oneOf,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	type Say,
	say,
} from '../../../shared/paper/index.ts';
import { bundledProfile, FIRST_BUNDLED, SETTING_KEYS } from '../../../shared/profile/index.ts';
import { profileFor, type QuickLink, quickSheet, type RigSheet, splitPort } from '../../../shared/sheet/index.ts';
import {
	type Check,
	type Complaint,
	complaintsOf,
	finderOn,
	meantWitness,
	openOutcomes,
	type RigOutcomes,
} from '../../finder/index.ts';
import { inputFrom } from '../../fixture/index.ts';
import { askFirstEdition } from '../../sequence/index.ts';

/** The edition of the faults and checks that a question is set from: what a recipe set once, it sets for good. */
const EDITION = 1;

/** Most fixtures of a rig that is asked about: a larger one takes the finder too long. */
const MOST_FIXTURES = 4;
const DRAWS = 60;
const MOST_WRONG = 3;

/** Least share by which wrong options are worse, where there are enough of those. */
const GAPS: Readonly<Record<PaperLevel, number>> = { easy: 0.5, middle: 0.35, hard: 0 };

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
export const firstCheck: QuestionKind = {
	id: 'first-check',
	topic: KIND_TOPICS['first-check'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => isSmall(ground.sheet) || bundledIn(ground).length > 0,
	make(ground, chance, level) {
		for (let n = 0; n < DRAWS; n++) {
			// a rig of the crew's own may have nothing to choose between
			const sheet = chance.pick(n < DRAWS / 2 ? rigsFor(ground) : quickRigs(FIRST_BUNDLED.map(({ id }) => id)));
			const complaints = complaintsOn(sheet);
			const opening = complaints.length > 0 ? openingOf(sheet, chance.pick(complaints)) : null;
			if (opening) return asked(sheet, opening, ground, chance, level);
		}
		throw new RangeError('no complaint of any rig leaves anything to choose');
	},
};

function asked(
	sheet: RigSheet,
	{ complaint, best, others }: FirstChecks,
	ground: QuestionGround,
	chance: Chance,
	level: PaperLevel,
) {
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
		ground,
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

const bundledIn = ({ profiles }: QuestionGround): string[] =>
	profiles.filter((profile) => bundledProfile(profile.id) === profile).map(({ id }) => id);

const rigsFor = (ground: QuestionGround): readonly RigSheet[] =>
	isSmall(ground.sheet) ? [ground.sheet] : quickRigs(bundledIn(ground));

const kept = new Map<string, readonly RigSheet[]>();

/** Small rigs of these fixtures; the same objects every time, so that what the finder works out for them is kept. */
const quickRigs = (profiles: readonly string[]): readonly RigSheet[] =>
	profiles.flatMap((profile) => {
		const rigs = kept.get(profile) ?? QUICK.map(([count, linked]) => quickSheet({ count, linked, profile }));
		kept.set(profile, rigs);
		return rigs;
	});

/** A check that could come first, and the seconds expected from here to the cause if it does. */
export interface First {
	readonly check: Check;
	readonly expected: number;
}

/** What the finder asks first, and other checks of the same walk that are worse. */
export interface FirstChecks {
	readonly complaint: Complaint;
	readonly best: First;
	/** Worst last. Each is worse than the best by `LEAST_GAP` and `LEAST_SECONDS` at least. */
	readonly others: readonly First[];
}

/**
 * Least share by which a check must be worse than the best to be called so. Ours: at 0.2 one of 1,551 walked to their end on changed
 * rigs was no worse, at 0.25 none.
 */
const LEAST_GAP = 0.25;
/** Most seconds that are expected from the best check on. Ours: past it what the finder expects is off by more than the gap. */
const MOST_SECONDS = 80;
/** The same in seconds: below, nobody would feel it. */
const LEAST_SECONDS = 2;
/** Checks that are played to the end to see how much worse they are: the least worth asking is of no interest. */
const MOST_PLAYED = 9;
/** Worse ones after which no more are looked for: a question takes three. */
const ENOUGH = 5;

/** What can be complained of on this rig, as the finder has it; looked up once a sheet. */
const complaintsOn = oncePer((sheet: RigSheet): readonly Complaint[] => complaintsOf(meantWitness(sheet), sheet));

const openings = onceUnder<RigSheet, string, FirstChecks | null>();

/** How the finder would open on this complaint; null where there is nothing to choose between. Worked out once. */
function openingOf(sheet: RigSheet, complaint: Complaint): FirstChecks | null {
	return openings(sheet, `${complaint.kind}@${complaint.fixture}`, () =>
		workOut(openOutcomes(sheet, complaint, { edition: EDITION }), complaint),
	);
}

function workOut(bench: RigOutcomes, complaint: Complaint): FirstChecks | null {
	const next = finderOn(bench, { ask: askFirstEdition }).next();
	const best = next?.check;
	const expected = best ? expectedFrom(bench, best) : null;
	if (!best || expected === null) return null;
	// the dearer of two reckonings, this look trusted and doubted: what is close by either is not offered
	const dearer = Math.max(expected, next.expected ?? 0);
	if (dearer > MOST_SECONDS) return null;
	const worse = Math.max(dearer * (1 + LEAST_GAP), dearer + LEAST_SECONDS);
	const seen = new Set([placeOf(best)]);
	const others: First[] = [];
	let played = 0;
	// quick ones first: what takes long is seldom a temptation
	for (const check of [...bench.checks].sort((a, b) => a.seconds - b.seconds || (a.id < b.id ? -1 : 1))) {
		if (others.length >= ENOUGH || played >= MOST_PLAYED) break;
		const outcomes = new Set(bench.outcomes[bench.checks.indexOf(check)]);
		if (seen.has(placeOf(check)) || outcomes.size < 2) continue;
		seen.add(placeOf(check));
		played++;
		const seconds = expectedFrom(bench, check);
		if (seconds !== null && seconds >= worse) others.push({ check, expected: seconds });
	}
	others.sort((a, b) => a.expected - b.expected);
	return others.length >= 2 ? { complaint, best: { check: best, expected }, others } : null;
}

/** What reads alike: a kind of check at a place, whatever else it is about. */
const placeOf = ({ kind, place }: Check): string => `${kind}@${place}`;

/** Seconds from the start to the cause if this check comes first and the finder goes on after it; null where it cannot say. */
function expectedFrom(bench: RigOutcomes, check: Check): number | null {
	const chances = chancesOf(bench, check);
	let seconds = 0;
	for (const [outcome, chance] of chances) {
		const finder = finderOn(bench, { ask: askFirstEdition });
		finder.answer(check.id, outcome);
		if (seconds === 0) seconds += finder.spent;
		const verdict = finder.verdict();
		// a repair that clears it was to be done in any case: the finder counts what is spent on finding alone
		if (verdict?.confirmed) seconds -= chance * check.seconds;
		if (verdict) continue;
		const next = finder.next();
		if (!next || next.expected === null) return null;
		seconds += chance * next.expected;
	}
	return seconds;
}

/** How likely each outcome of a check is, by the weights of those who would show it. */
function chancesOf(bench: RigOutcomes, check: Check): Map<string, number> {
	const row = bench.outcomes[bench.checks.indexOf(check)] ?? [];
	const total = bench.candidates.reduce((sum, { weight }) => sum + weight, 0);
	const chances = new Map<string, number>();
	for (const [i, { weight }] of bench.candidates.entries()) {
		const outcome = row[i] ?? '';
		chances.set(outcome, (chances.get(outcome) ?? 0) + weight / total);
	}
	return chances;
}
