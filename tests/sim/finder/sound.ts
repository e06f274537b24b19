import fc from 'fast-check';
import { switchesFor } from '../../../shared/dmx/index.ts';
import {
	bundledProfile,
	type DipPanel,
	footprintOf,
	modeOf,
	type Profile,
	type SomeSettings,
} from '../../../shared/profile/index.ts';
import { profileFor, type RigSheet, type RigSheetInput, readSheet } from '../../../shared/sheet/index.ts';
import { inputFrom } from '../../../sim/fixture/index.ts';
import { openRig } from '../../../sim/rig/index.ts';

/** A rig with nothing wrong in it: all of it is as its sheet has it, whatever that is. */
export interface Sound {
	readonly sheet: RigSheet;
	/** How long it stood before anybody looked, ms: displays go dark and panels lock. */
	readonly stood: number;
}

const KINDS = ['tallow-6', 'picket-8', 'cobble', 'cobble'] as const;
type Work = 'line' | 'held' | 'programme' | 'follow' | 'lead-held' | 'lead-programme';

const oneOf = <T>(list: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...list);
const idOf = <T extends { readonly id: string }>(list: readonly T[]): fc.Arbitrary<string> =>
	oneOf(list.map(({ id }) => id));

function keyedSettings(profile: Profile, work: Work, address: number): fc.Arbitrary<SomeSettings> {
	const leads = work.startsWith('lead-');
	return fc.record({
		work: fc.constant((leads ? work.slice('lead-'.length) : work) as 'line'),
		lead: fc.constant(leads ? ('on' as const) : ('off' as const)),
		address: fc.constant(address),
		mode: idOf(profile.modes),
		// the first of them more often than the rest: candle, of the washes
		held: fc.oneof(idOf(profile.held), fc.constant(profile.held[0]?.id ?? '')),
		programme: idOf(profile.programmes),
		speed: fc.integer({ min: 1, max: 100 }),
		level: oneOf([0, 5, 40, 100, 100]),
		strobe: oneOf([0, 0, 0, 4]),
		loss: oneOf(['hold', 'dark', 'programme'] as const),
		curve: oneOf(['straight', 'square', 'soft'] as const),
		limit: oneOf([10, 60, 100]),
		sensor: oneOf(['open', 'open', 'shut'] as const),
		code: oneOf([1, 1, 2]),
		hearing: oneOf([0, 60]),
		lock: oneOf(['off', 'on'] as const),
		sleep: oneOf([0, 10, 60]),
	});
}

/** Ten switches for what a fixture is to do. */
function switchesOf(panel: DipPanel, work: Work, address: number): fc.Arbitrary<boolean[]> {
	if (work === 'line') return fc.constant([...switchesFor(address, panel.wiring), false]);
	const fits = ({ sets }: { readonly sets: SomeSettings }): boolean =>
		(sets.lead === undefined || (sets.lead === 'on') === work.startsWith('lead-')) &&
		(sets.work === undefined || sets.work === (work.startsWith('lead-') ? work.slice('lead-'.length) : work));
	return fc
		.tuple(
			...panel.fields.map(({ choices }) =>
				oneOf([...choices.keys()].filter((at) => fits(choices[at] ?? { sets: {} }))),
			),
		)
		.map((picks) => {
			const switches = Array.from({ length: 10 }, (_, i) => i === 9);
			for (const [f, { switches: numbers }] of panel.fields.entries())
				for (const [bit, number] of numbers.entries()) switches[number - 1] = ((picks[f] ?? 0) & (2 ** bit)) !== 0;
			return switches;
		});
}

function fixtureOf(i: number, kind: string, work: Work): fc.Arbitrary<RigSheetInput['fixtures'][number]> {
	const profile = bundledProfile(kind) as Profile;
	const { panel } = profile;
	const address = 1 + 40 * i;
	const set: fc.Arbitrary<object> =
		panel.kind === 'dip'
			? fc.record({
					switches: switchesOf(panel, work, address),
					slides: fc.tuple(...panel.slides.map(({ positions }) => fc.nat(positions.length - 1))),
				})
			: keyedSettings(profile, work, address).map((settings) => ({ settings }));
	return fc
		.record({
			set,
			on: oneOf([true, true, true, false]),
			plug: oneOf(profile.power.battery ? ['none', 'none', 'wall'] : ['wall', 'wall', 'wall', 'none']),
			charge: oneOf([1, 0.5, 0.1, 0]),
			hidden: oneOf([false, false, true]),
		})
		.map(({ set: own, ...rest }) => ({
			id: `f-${i + 1}`,
			name: `fixture ${i + 1}`,
			profile: kind,
			place: { x: 2 + 2 * i, y: 0, throw: 3 },
			...own,
			...rest,
		}));
}

/** Rigs of one to four fixtures of every kind on a desk, behind a leader or alone. */
export const sounds: fc.Arbitrary<Sound> = fc
	.record({
		linked: oneOf(['desk', 'leader', 'alone'] as const),
		kinds: fc.array(oneOf(KINDS), { minLength: 1, maxLength: 4 }),
		works: fc.array(oneOf<Work>(['line', 'held', 'programme', 'follow']), { minLength: 4, maxLength: 4 }),
		lead: oneOf<Work>(['lead-held', 'lead-programme']),
		// of a row behind a leader most follow it
		all: oneOf([true, true, false]),
	})
	.chain(({ linked, kinds, works, lead, all }) => {
		const workOf = (i: number): Work => {
			if (linked === 'leader' && i === 0) return lead;
			if (!all) return works[i] ?? 'held';
			return linked === 'desk' ? 'line' : linked === 'leader' ? 'follow' : (works[i] ?? 'held');
		};
		return fc.record({
			linked: fc.constant(linked),
			fixtures: fc.tuple(...kinds.map((kind, i) => fixtureOf(i, kind, workOf(i)))),
			outputOn: oneOf([true, true, true, false]),
			master: oneOf([255, 255, 60, 0]),
			levels: fc.array(oneOf([0, 0, 90, 200, 255, 255]), { minLength: 160, maxLength: 160 }),
			sends: oneOf([true, true, false]),
			ended: oneOf([true, true, false]),
			remote: oneOf([{ code: 1 }, { code: 1 }, { code: 2, battery: false }, null]),
			stood: oneOf([3000, 3000, 25_000, 130_000]),
		});
	})
	.map(({ linked, fixtures, outputOn, master, levels, sends, ended, remote, stood }) => {
		const ids = fixtures.map(({ id }) => id);
		const plain = { version: 1 as const, name: 'sound', fixtures, remote };
		const bare = readSheet(plain);
		const patch = bare.fixtures.map((fixture, i) => {
			const profile = profileFor(bare, fixture.profile);
			const { settings } = inputFrom(profile, fixture, false);
			return { fixture: fixture.id, universe: 1, address: 1 + 40 * i, mode: settings.mode, profile };
		});
		const desk = {
			name: 'desk',
			outputs: [{ id: 'a', universe: 1, on: outputOn }],
			patch: patch.map(({ fixture, universe, address, mode }) => ({ fixture, universe, address, mode })),
			levels: sends
				? patch.flatMap(({ address, mode, profile }) =>
						Array.from({ length: footprintOf(modeOf(profile, mode)) }, (_, s) => ({
							universe: 1,
							slot: address + s,
							level: levels[address + s - 1] ?? 0,
						})),
					)
				: [],
			master,
		};
		const from = linked === 'desk' ? ['desk:a', ...ids.map((id) => `${id}:out`)] : ids.map((id) => `${id}:out`);
		const to = (linked === 'desk' ? ids : ids.slice(1)).map((id) => `${id}:in`);
		const last = ids.at(-1) ?? '';
		const sheet = readSheet({
			...plain,
			desk: linked === 'desk' ? desk : null,
			cables:
				linked === 'alone'
					? []
					: to.map((port, i) => ({ id: `cable-${i + 1}`, kind: 'data', length: 5, from: from[i] ?? null, to: port })),
			terminators: linked === 'alone' || !ended ? [] : [`${last}:out`],
		});
		return { sheet, stood };
	});

/** The rig as it stands there. */
export function soundRig({ sheet, stood }: Sound) {
	const rig = openRig(sheet);
	rig.wait(stood);
	return rig;
}
