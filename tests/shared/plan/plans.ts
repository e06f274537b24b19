import fc from 'fast-check';
import { emptyPlan, type Plan, withRows } from '../../../shared/plan/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';

export const nameOf = ({ name }: Profile, n: number): string => `${name} ${n}`;

/** A row of any bundled fixture in any of its modes. */
export const newRows = fc.constantFrom(...BUNDLED).chain((profile) =>
	fc.record({
		profile: fc.constant(profile.id),
		mode: fc.constantFrom(...profile.modes.map(({ id }) => id)),
		x: fc.integer({ min: 0, max: 40 }),
		overhead: fc.boolean(),
	}),
);

/** Plans of a few bundled fixtures, on a desk or behind a leader. */
export const plans: fc.Arbitrary<Plan> = fc
	.record({
		rows: fc.array(newRows, { minLength: 1, maxLength: 8 }),
		source: fc.constantFrom('desk' as const, 'leader' as const),
		loss: fc.constantFrom('hold' as const, 'dark' as const, 'programme' as const),
		lock: fc.constantFrom('on' as const, 'off' as const),
	})
	.map(({ rows, ...rest }) => withRows({ ...emptyPlan('Test'), ...rest }, rows, nameOf));
