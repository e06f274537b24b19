import { InputError } from '../error/index.ts';
import { KIND_IDS, KIND_TOPICS, type KindId, type Level, RIG_KIND_IDS, TOPIC_IDS, type TopicId } from './ids.ts';
import { PLAIN_KINDS } from './kinds/index.ts';
import type { PaperRecipe } from './recipe.ts';
import type { Ground, Kind, PaperSources } from './types.ts';

/** One question to be set. */
export interface Place {
	readonly kind: Kind;
	readonly level: Level;
}

const isRigKind = (id: KindId): boolean => (RIG_KIND_IDS as readonly KindId[]).includes(id);

/** Kinds a recipe asks for, whether or not its fixtures can carry them: those named, or all, of its topics. */
function askedKinds({ kinds, topics }: Pick<PaperRecipe, 'kinds' | 'topics'>): KindId[] {
	return KIND_IDS.filter(
		(id) => (kinds.length === 0 || kinds.includes(id)) && (topics.length === 0 || topics.includes(KIND_TOPICS[id])),
	);
}

/**
 * Whether a recipe asks for kinds that are read from a rig, so that it is set and marked through `sim/paper`. One that names no
 * kinds asks for all of its topics, those included. It hangs on the recipe alone.
 */
export function needsRig(recipe: Pick<PaperRecipe, 'kinds' | 'topics'>): boolean {
	return askedKinds(recipe).some(isRigKind);
}

/** Every kind that fixtures and a rig can carry, in the order of `KIND_IDS`: the plain ones, and those of the sources. */
export function kindsFor(ground: Ground, sources?: PaperSources): readonly Kind[] {
	const all = new Map([...PLAIN_KINDS, ...(sources?.kinds ?? [])].map((kind) => [kind.id, kind]));
	return KIND_IDS.flatMap((id) => all.get(id) ?? []).filter((kind) => kind.fits(ground));
}

/** The topics that those kinds are about, in the order of `TOPIC_IDS`. */
export function topicsOf(ground: Ground, sources?: PaperSources): readonly TopicId[] {
	const about = new Set(kindsFor(ground, sources).map(({ topic }) => topic));
	return TOPIC_IDS.filter((topic) => about.has(topic));
}

/**
 * Which kinds at which levels, by the recipe alone: levels in turn, and for each the kind that has been asked least, then whose
 * topic has, then that has been asked least at this level. Kinds that the fixtures cannot carry are left out.
 * @throws InputError `paper.needs-rig` where kinds of the rig are asked for and none are given, `paper.empty` where nothing fits.
 */
export function schedule(recipe: PaperRecipe, ground: Ground, sources?: PaperSources): Place[] {
	if (needsRig(recipe) && !sources) {
		throw new InputError(
			'paper.needs-rig',
			'kinds',
			'This paper has questions that are read from a rig, and no rig is at hand here. Set it where the bench is, or name only kinds that need none.',
		);
	}
	const asked = new Set(askedKinds(recipe));
	const fitting = kindsFor(ground, sources).filter(({ id }) => asked.has(id));
	const levels = recipe.levels.filter((level) => fitting.some((kind) => kind.levels.includes(level)));
	if (levels.length === 0) {
		throw new InputError(
			'paper.empty',
			'kinds',
			'No question of these kinds and topics can be asked about these fixtures. Choose more kinds or topics, or other fixtures.',
		);
	}
	const used = new Map<string, number>();
	const uses = (name: string): number => used.get(name) ?? 0;
	const weigh = (kind: Kind, level: Level): number =>
		(uses(kind.id) * 128 + uses(kind.topic)) * 128 + uses(kind.id + level);
	return Array.from({ length: recipe.count }, (_, i) => {
		const level = levels[i % levels.length] as Level;
		const able = fitting.filter((each) => each.levels.includes(level));
		const weights = able.map((kind) => weigh(kind, level));
		const kind = able[weights.indexOf(Math.min(...weights))] as Kind;
		for (const name of [kind.id, kind.topic, kind.id + level]) used.set(name, uses(name) + 1);
		return { kind, level };
	});
}
