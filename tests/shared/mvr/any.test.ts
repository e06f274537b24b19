import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import {
	type MvrArchive,
	type PlanFromScene,
	type Scene,
	type SceneFixture,
	toPlan,
} from '../../../shared/mvr/index.ts';
import { PLAN_PROFILES, readPlan } from '../../../shared/plan/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { mvrLeftText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { nameOf } from '../plan/plans.ts';

const [first] = BUNDLED as readonly [Profile];
const specs = Array.from({ length: PLAN_PROFILES + 5 }, (_, i) => `own-${i}`);
const own = specs.map((id): Profile => ({ ...first, id }));
const archive: MvrArchive = { scene: '', names: [], file: () => null };
/** Each kind is one of the crew's own, in any mode that is asked for. */
const picks = {
	types: { ...Object.fromEntries(specs.map((id) => [id, id])), '': first.id },
	modes: Object.fromEntries([...specs, first.id].map((id) => [`${id}/`, first.modes[0]?.id ?? ''])),
};

const planOf = (scene: Scene): PlanFromScene =>
	toPlan(
		scene,
		archive,
		[...own, ...BUNDLED],
		(id) => BUNDLED.some((each) => each.id === id),
		{ rig: 'File', fixture: nameOf, gdtf: gdtfNames },
		picks,
	);

const text = fc.string({ unit: 'binary', maxLength: 70 });
const length = fc.oneof(
	fc.integer({ min: -20_000, max: 300_000 }),
	fc.double({ noNaN: true, noDefaultInfinity: true }),
	fc.constantFrom(0, -0, -250_000, 1e308, -1e308),
);
const uuids = fc.constantFrom('', 'a', 'b', 'c', 'd');
const addresses = fc.oneof(fc.constantFrom('0', '1', '512', '513', '63999.512', '32767488', ''), text);
const axes = { u: [1, 0, 0], v: [0, 1, 0], w: [0, 0, 1] } as const;
const fixtures = fc.array(
	fc.record<Omit<SceneFixture, 'path'>>({
		uuid: uuids,
		name: fc.option(text),
		spec: fc.option(fc.constantFrom(...specs)),
		mode: fc.option(fc.constantFrom('', first.modes[0]?.name ?? '')),
		addresses: fc.array(fc.record({ break: fc.constantFrom(0, 1), text: addresses }), { maxLength: 2 }),
		fixtureId: fc.option(text),
		matrix: fc.option(fc.tuple(length, length, length).map((o) => ({ ...axes, o }))),
		badMatrix: fc.constant(null),
		multipatch: fc.option(uuids),
		links: fc.array(fc.record({ own: fc.constant('DMX out'), other: fc.constant('DMX in'), to: uuids }), {
			maxLength: 2,
		}),
	}),
	{ maxLength: 70, size: 'max' },
);
const sceneOf = (all: readonly Omit<SceneFixture, 'path'>[]): Scene => ({
	fixtures: all.map((each, i) => ({ ...each, path: `fixtures[${i}]` })),
	left: [],
});

it('whatever a scene says, its plan can be kept and opened again', () => {
	fc.assert(
		fc.property(fixtures, (all) => {
			const { plan, left } = planOf(sceneOf(all));
			expect(readPlan(JSON.parse(JSON.stringify(plan)))).toEqual(JSON.parse(JSON.stringify(plan)));
			for (const { place } of plan.rows)
				expect(Object.values(place).every((each) => typeof each === 'boolean' || Number.isFinite(each))).toBe(true);
			for (const each of left) expect(mvrLeftText(each)).toMatch(/\.$/);
		}),
		{ numRuns: runs(40) },
	);
});

const bare: Omit<SceneFixture, 'path'> = {
	uuid: '',
	name: 'a',
	spec: null,
	mode: null,
	addresses: [],
	fixtureId: null,
	matrix: null,
	badMatrix: null,
	multipatch: null,
	links: [],
};

it('more kinds than a plan carries are left out, each told once with how many it is', () => {
	const { plan, left } = planOf(sceneOf([...specs, ...specs].map((spec) => ({ ...bare, spec }))));
	expect(plan.profiles).toHaveLength(PLAN_PROFILES);
	expect(plan.rows).toHaveLength(2 * PLAN_PROFILES);
	const told = left.filter(({ code }) => code === 'too-many-own');
	expect(told.map(({ facts }) => facts)).toEqual(Array(5).fill({ name: first.name, count: 2, limit: PLAN_PROFILES }));
	expect(() => readPlan(JSON.parse(JSON.stringify(plan)))).not.toThrow();
});

it('fixtures with no place, however many, stand within the widest wall', () => {
	for (let n = 95; n < 260; n++) {
		const { plan } = planOf(sceneOf(Array.from({ length: n }, () => bare)));
		expect(plan.hall.width).toBeLessThanOrEqual(200);
	}
});
