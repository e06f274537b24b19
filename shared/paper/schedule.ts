import { InputError } from '../error/index.ts';
import {
	FIRST_KIND_IDS,
	KIND_IDS,
	KIND_TOPICS,
	type KindId,
	type PaperLevel,
	RIG_KIND_IDS,
	TOPIC_IDS,
	type TopicId,
	UNSEEN_KIND_IDS,
	WHEN_NAMED,
} from './ids.ts';
import { footprintKind, lastSlotKind, nthAddressKind, runsPastKind } from './kinds/addresses.ts';
import { bandEdge, bandMiddle, bandsInOrder } from './kinds/bands.ts';
import { bondCheck } from './kinds/bonds.ts';
import { deskSlot, matchSlots, slotDoes } from './kinds/charts.ts';
import { luxAtThrow, poolAtThrow, rowSpacing } from './kinds/light.ts';
import { splitterAfter, terminatorPlace } from './kinds/lines.ts';
import { hexOfValue, percentOfValue, valueOfHex, valueOfPercent } from './kinds/numbers.ts';
import { coarseFine, valueOfPair } from './kinds/pairs.ts';
import { patchAgainstPanel } from './kinds/patches.ts';
import { bandOfPercent, percentInBand } from './kinds/percents.ts';
import { howManyFitKind, nextFree, overlapsKind } from './kinds/placing.ts';
import { fitOnCircuit, hoursLeft, rowAmps } from './kinds/power.ts';
import { faderPasses, gapValues, parkValue } from './kinds/resting.ts';
import { addressToDip, dipToAddress } from './kinds/switches.ts';
import { functionValues, valueFunction } from './kinds/values.ts';
import type { PaperRecipe } from './recipe.ts';
import type { PaperSources, QuestionGround, QuestionKind } from './types.ts';

/** One question to be set. */
export interface QuestionSlot {
	readonly kind: QuestionKind;
	readonly level: PaperLevel;
}

const isRigKind = (id: KindId): boolean => (RIG_KIND_IDS as readonly KindId[]).includes(id);

/** What says which kinds a recipe asks for. */
type Asks = Pick<PaperRecipe, 'kinds' | 'topics' | 'version'>;

/** Kinds a recipe asks for, whether or not its fixtures can carry them: those named, or all, of its topics. */
function askedKinds({ kinds, topics, version }: Asks): KindId[] {
	const isAsked = (id: KindId): boolean => (kinds.length === 0 ? isOfAll(id, version) : kinds.includes(id));
	return KIND_IDS.filter((id) => isAsked(id) && (topics.length === 0 || topics.includes(KIND_TOPICS[id])));
}

/** Whether a kind is among all, where none is named: of version 1 those that there were, later all but what must be named. */
export const isOfAll = (id: KindId, version: PaperRecipe['version']): boolean =>
	version === 1 ? FIRST_KIND_IDS.includes(id) : !WHEN_NAMED.includes(id);

/**
 * Whether a recipe asks for kinds that are read from a rig, so that it is set and marked through `sim/paper`. One that names no
 * kinds asks for all of its topics, those included. It hangs on the recipe alone.
 */
export function needsRig(recipe: Asks): boolean {
	return askedKinds(recipe).some(isRigKind);
}

/** Every kind that fixtures and a rig can carry, in the order of `KIND_IDS`: the plain ones, and those of the sources. */
export function kindsFor(ground: QuestionGround, sources?: PaperSources): readonly QuestionKind[] {
	const all = new Map([...PLAIN_KINDS, ...(sources?.kinds ?? [])].map((kind) => [kind.id, kind]));
	return KIND_IDS.flatMap((id) => all.get(id) ?? []).filter(
		(kind) => kind.fits(ground) || (ground.unseen === true && UNSEEN_KIND_IDS.includes(kind.id)),
	);
}

/** The topics that those kinds are about, in the order of `TOPIC_IDS`. */
export function topicsOf(ground: QuestionGround, sources?: PaperSources): readonly TopicId[] {
	const about = new Set(kindsFor(ground, sources).map(({ topic }) => topic));
	return TOPIC_IDS.filter((topic) => about.has(topic));
}

/**
 * Which kinds at which levels, by the recipe alone: kinds in turn, topic by topic, levels in turn along them. Kinds that the fixtures
 * cannot carry are left out.
 * @throws InputError `paper.needs-rig` where kinds of the rig are asked for and none are given, `paper.empty` where nothing fits.
 */
export function schedule(recipe: PaperRecipe, ground: QuestionGround, sources?: PaperSources): QuestionSlot[] {
	if (needsRig(recipe) && !sources?.kinds.length) {
		throw new InputError('paper.needs-rig', 'kinds', { trouble: 'no-rig-at-hand' });
	}
	const asked = new Set(askedKinds(recipe));
	const fitting = kindsFor(ground, sources).filter(({ id }) => asked.has(id));
	const levels = recipe.levels.filter((level) => fitting.some((kind) => kind.levels.includes(level)));
	if (levels.length === 0) {
		throw new InputError('paper.empty', 'kinds', { trouble: 'nothing-to-ask' });
	}
	const able = inTurn(fitting.filter((kind) => levels.some((level) => kind.levels.includes(level))));
	return Array.from({ length: recipe.count }, (_, i) => {
		const round = Math.floor(i / able.length);
		const kind = able[i % able.length] as QuestionKind;
		// from one round to the next a kind moves on by one level, and so comes to each
		const turned = levels.map((_, step) => levels[((i % able.length) + round + step) % levels.length] as PaperLevel);
		return { kind, level: turned.find((level) => kind.levels.includes(level)) as PaperLevel };
	});
}

/** Kinds with their topics by turns, so that a short paper is about as much as a long one. */
function inTurn(kinds: readonly QuestionKind[]): QuestionKind[] {
	const nth = new Map<TopicId, number>();
	const turns = kinds.map((kind) => {
		const turn = nth.get(kind.topic) ?? 0;
		nth.set(kind.topic, turn + 1);
		return { kind, turn };
	});
	return turns.sort((a, b) => a.turn - b.turn).map(({ kind }) => kind);
}

/** The kinds that are arithmetic on profiles and sheets alone, in the order of `PLAIN_KIND_IDS`. */
export const PLAIN_KINDS: readonly QuestionKind[] = Object.freeze([
	valueFunction,
	functionValues,
	bandEdge,
	bandMiddle,
	percentOfValue,
	valueOfPercent,
	hexOfValue,
	valueOfHex,
	slotDoes,
	matchSlots,
	bandsInOrder,
	deskSlot,
	footprintKind,
	lastSlotKind,
	nextFree,
	nthAddressKind,
	overlapsKind,
	runsPastKind,
	howManyFitKind,
	dipToAddress,
	addressToDip,
	coarseFine,
	valueOfPair,
	bandOfPercent,
	percentInBand,
	parkValue,
	faderPasses,
	gapValues,
	hoursLeft,
	fitOnCircuit,
	rowAmps,
	splitterAfter,
	terminatorPlace,
	luxAtThrow,
	poolAtThrow,
	rowSpacing,
	bondCheck,
	patchAgainstPanel,
]);
