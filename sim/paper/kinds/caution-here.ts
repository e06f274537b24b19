import { KIND_TOPICS, type Kind, LEVELS, type Level, say, severalOf, type Wrong } from '../../../shared/paper/index.ts';
import { profileFor } from '../../../shared/sheet/index.ts';
import { DRILL_IDS, type Drill } from '../../drill/index.ts';
import { drillable, drillFacts, drillsOn } from '../drills.ts';

const DRAWS = 60;
/** Drills with a caution, after which the one that comes nearest to the level will do. */
const ENOUGH = 6;
const MOST_WRONG = 3;

/** Which cautions go with this task? More go with a harder one. They are those that the drill's own rig calls for. */
export const cautionHere: Kind = {
	id: 'caution-here',
	topic: KIND_TOPICS['caution-here'],
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => drillable(ground).length > 0,
	make(ground, chance, level) {
		let drill: Drill | null = null;
		let met = 0;
		for (const each of drillsOn(ground, chance, DRILL_IDS, DRAWS)) {
			if (each.cautions.length === 0 || elsewhere(each).length < 2 || !isTold(each)) continue;
			if (!drill || distance(each, level) < distance(drill, level)) drill = each;
			met++;
			if (distance(drill, level) === 0 || met >= ENOUGH) break;
		}
		if (!drill) throw new RangeError('no drill on these fixtures has a caution');
		const right = drill.cautions;
		const wrong = chance.shuffle(elsewhere(drill)).slice(0, MOST_WRONG);
		const slips: Wrong<readonly string[]>[] = [
			...wrong.map((id): Wrong<readonly string[]> => ['caution-not-here', [...right, id]]),
			...right.map((id): Wrong<readonly string[]> => ['some-missed', right.filter((each) => each !== id)]),
			['one-too-many', [...right, ...wrong]],
		];
		const { sheet } = drill;
		return severalOf(
			chance,
			{
				facts: {
					...drillFacts(drill),
					seed: drill.seed,
					overhead: isOverhead(drill),
					charges: drill.scene === 'bench' && hasBattery(drill),
					calls: [...right],
				},
				bench: sheet,
			},
			[...right, ...wrong],
			{ label: (id) => say(`caution-${id}`), isRight: (id) => right.includes(id), wrongs: slips },
		);
	},
};

/**
 * Whether the task's words say enough to see each of its cautions. What a lamp of the rig happens to do is not in them: ultraviolet
 * and flashing count only where the task names the colour or the programme, or is about a lamp left flashing.
 */
function isTold({ kind, cautions, facts, sheet }: Drill): boolean {
	const profiles = sheet.fixtures.map(({ profile }) => profileFor(sheet, profile));
	const named = new Set(Object.values(facts).flat());
	const namesUltraviolet = profiles.some(({ held, emitters }) =>
		held.some(
			({ id, levels }) => named.has(id) && emitters.some((one) => one.ultraviolet && (levels[one.id] ?? 0) > 0),
		),
	);
	const namesFlashing =
		kind === 'strobe-left-on' ||
		profiles.some(({ programmes }) => programmes.some(({ id, kind: does }) => named.has(id) && does === 'strobe'));
	return (namesUltraviolet || !cautions.includes('ultraviolet')) && (namesFlashing || !cautions.includes('flashing'));
}

/** How far the number of a drill's cautions is from what the level asks: one, two, or three and more. */
function distance({ cautions }: Drill, level: Level): number {
	if (level === 'hard') return Math.max(0, 3 - cautions.length);
	return Math.abs(cautions.length - (level === 'easy' ? 1 : 2));
}

const isOverhead = ({ sheet }: Drill): boolean => sheet.fixtures.some(({ place }) => place.overhead);
const hasBattery = ({ sheet }: Drill): boolean =>
	sheet.fixtures.some(({ profile }) => profileFor(sheet, profile).power.battery !== null);

/**
 * Cautions that this task plainly does not call for: what they speak of is not on its rig at all. One that it could be said to touch
 * is left out, so that nobody is marked wrong for taking care.
 */
function elsewhere(drill: Drill): string[] {
	const { cautions, scene, hands } = drill;
	const never: readonly (readonly [id: string, isFar: boolean])[] = [
		['live-show', scene !== 'show'],
		['hanging', !isOverhead(drill)],
		['height', !isOverhead(drill)],
		['mains', !hands.includes('mains') && !hands.includes('power')],
		['batteries', !hasBattery(drill)],
		['ultraviolet', drill.sheet.fixtures.every(({ profile }) => !hasUltraviolet(drill, profile))],
		['flashing', !('speed' in drill.facts) && !('programme' in drill.facts)],
	];
	return never.flatMap(([id, isFar]) => (isFar && !cautions.includes(id) ? [id] : []));
}

const hasUltraviolet = ({ sheet }: Drill, profile: string): boolean =>
	profileFor(sheet, profile).emitters.some(({ ultraviolet }) => ultraviolet);
