import { middleOf, TOP_LEVEL } from '../../../shared/dmx/index.ts';
import { oncePer } from '../../../shared/memo/index.ts';
import {
	type Chance,
	isAtRest,
	KIND_TOPICS,
	LEVELS,
	type MistakeId,
	oneOf,
	type PaperLevel,
	type QuestionGround,
	type QuestionKind,
	say,
	shortOf,
	slotChartOf,
} from '../../../shared/paper/index.ts';
import type { Band, Mode, Profile, Slot } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { type LookInWords, tellsApart } from '../seen.ts';
import {
	bandChartOf,
	bandsOf,
	type Frame,
	lookAt,
	type ModeOnFixture,
	modeFacts,
	restOf,
	sheetWith,
} from './frame-look.ts';

/** A fader moved: a slot of the fixture, and the level it goes to. */
interface FaderMove {
	readonly slot: Slot;
	readonly level: number;
}

const LEAST_WRONG = 2;
const MOST_FOUND = 8;
const DRAWS = 40;

/** A slot that keeps the colours in: an intensity at 0, a shutter shut, a function that runs something else. */
const isGate = (slot: Slot): boolean =>
	slot.drives.kind === 'intensity' || (bandsOf(slot).some(isAtRest) && !bandsOf(slot).every(isAtRest));

/** Where a gate stands open, and where it does not: on an edge of its band for hard. */
const openAt = (slot: Slot): number => (slot.drives.kind === 'intensity' ? TOP_LEVEL : restOf(slot));
function shutAt(slot: Slot, chance: Chance, level: PaperLevel): number {
	if (slot.drives.kind === 'intensity') return 0;
	const band = chance.pick(bandsOf(slot).filter((each) => !isAtRest(each)));
	return level === 'hard' ? chance.pick([band.from, band.to]) : middleOf(band);
}

/** The emitters of a mode that light up for an eye. */
const coloursOf = ({ emitters }: Profile, { slots }: Mode): string[] => {
	const driven = new Set(slots.flatMap(({ drives }) => (drives.kind === 'emitter' ? [drives.emitter] : [])));
	return emitters.flatMap(({ id, ultraviolet }) => (driven.has(id) && !ultraviolet ? [id] : []));
};

/** Every slot of a mode, from the first: one colour at full, every gate open. */
function openFrame({ slots }: Mode, colour: string): Map<number, number> {
	const frame = new Map<number, number>();
	for (const slot of slots) {
		const { drives, at, fine } = slot;
		const level =
			drives.kind === 'emitter' ? (drives.emitter === colour ? TOP_LEVEL : 0) : isGate(slot) ? openAt(slot) : 0;
		frame.set(at, level);
		if (fine !== undefined) frame.set(fine, level);
	}
	return frame;
}

const moved = (frame: Frame, { slot, level }: FaderMove): Map<number, number> => new Map(frame).set(slot.at, level);

/** A gate set wrong, its fine half too. */
function shut(frame: Frame, move: FaderMove): Map<number, number> {
	const after = moved(frame, move);
	return move.slot.fine === undefined ? after : after.set(move.slot.fine, move.level);
}

/** Moves that somebody might make: any gate to any of its bands, or up; any colour up; the speed up. */
function movesOn({ slots }: Mode): FaderMove[] {
	return slots.flatMap((slot) => {
		if (slot.drives.kind === 'bands') return bandsOf(slot).map((band) => ({ slot, level: middleOf(band) }));
		return [{ slot, level: TOP_LEVEL }];
	});
}

interface GateQuestion {
	readonly at: ModeOnFixture;
	readonly colour: string;
	readonly frame: Frame;
	readonly gate: Slot;
	readonly right: FaderMove;
	readonly wrongs: readonly FaderMove[];
}

function ask(at: ModeOnFixture, chance: Chance, level: PaperLevel): GateQuestion | null {
	const { profile, mode } = at;
	const colour = chance.pick(coloursOf(profile, mode));
	const look = (frame: Frame): LookInWords | null => {
		const sheet = sheetWith(at, 1, frame);
		return sheet && lookAt(sheet);
	};
	const open = openFrame(mode, colour);
	const wanted = look(open);
	const gate = chance.pick(mode.slots.filter(isGate));
	const frame = shut(open, { slot: gate, level: shutAt(gate, chance, level) });
	const seen = look(frame);
	if (!wanted || !seen || wanted.runs.every(({ percent }) => percent === 0) || !tellsApart(wanted, seen)) return null;
	const doesHelp = (move: FaderMove): boolean | null => {
		const after = look(moved(frame, move));
		return after && !tellsApart(after, wanted);
	};
	const right: FaderMove = { slot: gate, level: openAt(gate) };
	if (!doesHelp(right)) return null;
	const wrongs: FaderMove[] = [];
	for (const move of chance.shuffle(movesOn(mode))) {
		if (wrongs.length === MOST_FOUND) break;
		// what is there already is no move
		if (frame.get(move.slot.at) !== move.level && doesHelp(move) === false) wrongs.push(move);
	}
	return wrongs.length >= LEAST_WRONG ? { at, colour, frame, gate, right, wrongs } : null;
}

/** Modes that can be asked about at every level: tried once a fixture, the same way everywhere. */
const modesOf = oncePer((profile: Profile): readonly ModeOnFixture[] =>
	profile.modes
		.map((mode) => ({ profile, mode }))
		.filter(
			(at) =>
				at.mode.slots.some(isGate) &&
				coloursOf(profile, at.mode).length > 0 &&
				LEVELS.every((level) => drawn([at], makeRandom(0).fork(level), level) !== null),
		),
);

function drawn(places: readonly ModeOnFixture[], chance: Chance, level: PaperLevel): GateQuestion | null {
	for (let n = 0; n < DRAWS; n++) {
		const found = ask(chance.pick(places), chance, level);
		if (found) return found;
	}
	return null;
}

const placesIn = ({ profiles }: QuestionGround): readonly ModeOnFixture[] => shortOf(profiles.flatMap(modesOf));

/** What a move is called: its slot, the level, and the band that is there. */
function label({ slot, level }: FaderMove) {
	const band = bandsOf(slot).find(({ from, to }) => from <= level && level <= to) as Band | undefined;
	return say('move', { n: slot.at, slot: slot.name, level, band: band?.name ?? null });
}

const mistakeOf = ({ slot }: FaderMove, gate: Slot): MistakeId => (slot === gate ? 'next-band' : 'gate-missed');

/**
 * A colour is at full and something else keeps it in: which one fader lets it out? Easy and middle: what keeps it in stands in the middle
 * of its band; hard: on an edge. Every option is tried on the rig.
 */
export const gateSlot: QuestionKind = {
	id: 'gate-slot',
	topic: KIND_TOPICS['gate-slot'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => placesIn(ground).length > 0,
	make(ground, chance, level) {
		const found = drawn(placesIn(ground), chance, level);
		if (!found) throw new RangeError('no slot of these fixtures keeps a colour in');
		const { at, colour, frame, gate, right, wrongs } = found;
		const { profile, mode } = at;
		return oneOf(
			chance,
			{
				facts: {
					...modeFacts(at),
					colour: profile.emitters.find(({ id }) => id === colour)?.name ?? '',
					frame: [...frame].sort(([a], [b]) => a - b).flat(),
					slotChart: slotChartOf(mode),
					bandChart: bandChartOf(mode),
					n: gate.at,
					gate: gate.name,
					stands: frame.get(gate.at) ?? 0,
					does:
						bandsOf(gate).find(({ from, to }) => from <= (frame.get(gate.at) ?? 0) && to >= (frame.get(gate.at) ?? 0))
							?.name ?? null,
				},
				bench: sheetWith(at, 1, frame),
			},
			label(right),
			wrongs.map((move) => [mistakeOf(move, gate), label(move)] as const),
			ground,
		);
	},
};
