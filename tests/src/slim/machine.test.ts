import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import * as whole from '../../../sim/fixture/index.ts';
import { leanMachine } from '../../../src/slim/index.ts';
import { runs } from '../../runs.ts';
import { inputOf } from '../../sim/fixture/kit.ts';
import { makeMove, moveOn } from '../../sim/fixture/moves.ts';
import { leanDoor } from './lean.ts';

let lean: typeof whole;

beforeAll(async () => {
	lean = await leanDoor('sim/fixture/index.ts', leanMachine());
});

/** All of a snapshot that is data; of the chart's nodes, their ids. */
function snapshotOf({
	_nodes,
	machine,
	tags,
	matches,
	hasTag,
	can,
	getMeta,
	toJSON,
	...data
}: whole.FixtureState): unknown {
	return { ...data, nodes: (_nodes as { readonly id: string }[]).map(({ id }) => id) };
}

describe.each(BUNDLED.map((profile): [string, Profile] => [profile.id, profile]))('%s', (_, profile) => {
	it('is moved by the lean machine, event for event, as by the whole library', () => {
		const start = fc.record({ on: fc.boolean(), live: fc.boolean(), now: fc.nat({ max: 1e9 }) });
		const moves = fc.array(moveOn(profile, true), { maxLength: 200, size: 'max' });
		fc.assert(
			fc.property(start, moves, (how, made) => {
				let state = whole.startFixture(profile, inputOf(profile, how));
				let leanState = lean.startFixture(profile, inputOf(profile, how));
				expect(snapshotOf(leanState)).toEqual(snapshotOf(state));
				for (const move of made) {
					state = makeMove(profile, state, move, (from, event) => {
						leanState = lean.stepFixture(profile, leanState, event);
						const next = whole.stepFixture(profile, from, event);
						expect(snapshotOf(leanState)).toEqual(snapshotOf(next));
						return next;
					});
				}
			}),
			{ numRuns: runs(60, 5000) },
		);
	});

	it('stands on as many nodes, and is lean', () => {
		const idsOf = (machine: object): string[] => [
			...(machine as { readonly idMap: Map<string, unknown> }).idMap.keys(),
		];
		expect(idsOf(lean.fixtureMachine(profile))).toEqual(idsOf(whole.fixtureMachine(profile)));
		expect('provide' in whole.fixtureMachine(profile)).toBe(true);
		expect('provide' in lean.fixtureMachine(profile)).toBe(false);
	});
});
