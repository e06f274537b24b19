import type { RigSheet } from '../../schema.ts';
import { ACROSS, chain, HALL, SIDES, wash, wholeSheet } from '../parts.ts';

export const leaderAndThree: RigSheet = wholeSheet({
	name: `${HALL}: a leader and three followers`,
	fixtures: ACROSS.map((x, i) =>
		wash(
			`wash-${i + 1}`,
			i === 0 ? 'leader, house left' : `follower ${i}, ${SIDES[i]}`,
			x,
			i === 0 ? { work: 'held', held: 'rose', lead: 'on' } : { work: 'follow' },
		),
	),
	cables: chain(1, 'wash-1:out', ['wash-2', 'wash-3', 'wash-4']),
	terminators: ['wash-4:out'],
	remote: { code: 1 },
});
