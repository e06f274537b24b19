import { draft, KIND_TOPICS, type Kind, LEVELS } from '../../../shared/paper/index.ts';
import { DRILL_KINDS, fewestPresses } from '../../drill/index.ts';
import { openUnharmed } from '../../rig/trusted.ts';
import { drillable, drillFacts, drillsOn } from '../drills.ts';

/** Draws before there is held to be no drill of a level on these fixtures; each bundled fixture has some at every level. */
const DRAWS = 400;

/** To be done on the bench: a drill of the level, marked by playing what was done there. */
export const onTheBench: Kind = {
	id: 'on-the-bench',
	topic: KIND_TOPICS['on-the-bench'],
	forms: ['practical'],
	levels: LEVELS,
	fits: (ground) => drillable(ground).length > 0,
	make(ground, chance, level) {
		const kinds = DRILL_KINDS.filter((each) => each.level === level).map(({ id }) => id);
		const drill = drillsOn(ground, chance, kinds, DRAWS).next().value;
		if (!drill) throw new RangeError(`no ${level} drill on these fixtures`);
		return draft(
			{
				facts: { ...drillFacts(drill), fewest: fewestPresses(drill, openUnharmed(drill.sheet)) },
				bench: drill.sheet,
			},
			{
				ask: { form: 'practical', drill: { kind: drill.kind, seed: drill.seed } },
				key: { form: 'practical' },
				mistakes: [],
			},
		);
	},
};
