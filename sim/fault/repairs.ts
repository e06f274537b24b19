import { footprintOf, modeOf } from '../../shared/profile/index.ts';
import { boxesOf, type RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { type FixtureCondition, UNHARMED } from '../light/index.ts';
import { cableOf, deskOf, meant } from './sheet.ts';
import type { DeskPatch, Need, Repair, RepairId, RigStanding } from './types.ts';

type Does = (sheet: RigSheet, place: string, now?: RigStanding) => RigEvent[];

function repair(
	id: RepairId,
	seconds: number,
	does: Does,
	more: { needs?: Need[]; cautions?: string[]; disturbs?: boolean } = {},
): Repair {
	return {
		id,
		seconds,
		needs: more.needs ?? [],
		cautions: more.cautions ?? [],
		disturbs: more.disturbs ?? false,
		events: does,
	};
}

/** The cable's wires and kind as they should be, ends left where they are. */
const goodCable: Does = (sheet, place) => {
	const { kind, length, common, minus, plus, swapped } = cableOf(sheet, place);
	return [{ type: 'cable.become', cable: place, change: { kind, length, common, minus, plus, swapped } }];
};

const pluggedCable: Does = (sheet, place) => {
	const { from, to } = cableOf(sheet, place);
	return [{ type: 'cable.become', cable: place, change: { from, to } }];
};

/** What is the fixture's own, with nothing wrong in it: its socket in the wall, its lead and its breaker stay. */
const { socketDead: _, leadDead: __, breakerOff: ___, ...OWN_CONDITION } = UNHARMED;

/** A known-good fixture of the same kind, set as the sheet says and left as it was plugged. */
const freshFixture: Does = (sheet, place) => {
	const { profile, settings, isDip } = meant(sheet, place);
	return [
		{ type: 'condition.become', fixture: place, change: OWN_CONDITION },
		...(isDip ? [] : [{ type: 'settings.become' as const, fixture: place, change: settings }]),
		...(profile.power.battery ? [{ type: 'charge.become' as const, fixture: place, charge: 1 }] : []),
	];
};

/** The strips of one fixture set as the sheet has them, wherever the desk's patch sends them. */
const meantLevels: Does = (sheet, place, now) => {
	const patch = now?.patch ?? deskOf(sheet).patch;
	const [here, wanted] = [patch, deskOf(sheet).patch].map((each) => each.find(({ fixture }) => fixture === place));
	return here && wanted ? levelsOver(sheet, place, here, wanted) : [];
};

/** For each slot from one start on, the level that the sheet has as far behind another. */
function levelsOver(sheet: RigSheet, place: string, to: DeskPatch[number], from: DeskPatch[number]): RigEvent[] {
	const { levels } = deskOf(sheet);
	const footprint = footprintOf(modeOf(meant(sheet, place).profile, from.mode));
	return Array.from({ length: Math.min(footprint, 513 - to.address, 513 - from.address) }, (_, i) => ({
		type: 'desk.level' as const,
		universe: to.universe,
		slot: to.address + i,
		level: levels.find(({ universe, slot }) => universe === from.universe && slot === from.address + i)?.level ?? 0,
	}));
}

const boxOf = (sheet: RigSheet, place: string) => boxesOf(sheet).find(({ id }) => id === place);

/** Something at a fixture put right again. */
const become =
	(change: Partial<FixtureCondition>): Does =>
	(_, place) => [{ type: 'condition.become', fixture: place, change }];

/** Every repair, by id. Seconds are `common practice, no source`: for a practised hand already standing there. */
export const MENDS: Readonly<Record<RepairId, Repair>> = Object.freeze({
	'switch-on': repair('switch-on', 5, (_, place) => [{ type: 'power.switch', fixture: place, on: true }]),
	'fresh-battery': repair('fresh-battery', 90, (_, place) => [{ type: 'charge.become', fixture: place, charge: 1 }], {
		needs: ['spare-battery'],
		cautions: ['batteries'],
		disturbs: true,
	}),
	'plug-mains': repair(
		'plug-mains',
		20,
		(sheet, place) => [{ type: 'mains.plug', fixture: place, into: meant(sheet, place).fixture.plug }],
		{ cautions: ['mains'] },
	),
	'restore-hall': repair('restore-hall', 120, () => [{ type: 'hall.power', on: true }], { cautions: ['mains'] }),
	'set-panel': repair('set-panel', 25, (sheet, place) => [
		{ type: 'settings.become', fixture: place, change: meant(sheet, place).settings },
	]),
	'set-switches': repair('set-switches', 25, (sheet, place) => {
		const { fixture, profile } = meant(sheet, place);
		const slides = profile.panel.kind === 'dip' ? profile.panel.slides : [];
		return [
			...Array.from({ length: 10 }, (_, i) => ({
				type: 'switch.flip' as const,
				fixture: place,
				switch: i + 1,
				up: fixture.switches?.[i] ?? false,
			})),
			...slides.map((slide, i) => ({
				type: 'slide.move' as const,
				fixture: place,
				slide: slide.id,
				to: fixture.slides?.[i] ?? 0,
			})),
		];
	}),
	'open-sensor': repair('open-sensor', 20, (sheet, place) => [
		{ type: 'settings.become', fixture: place, change: { sensor: meant(sheet, place).settings.sensor } },
	]),
	'clear-sight': repair('clear-sight', 20, (sheet, place) => [
		{ type: 'sight.block', fixture: place, hidden: meant(sheet, place).fixture.hidden },
	]),
	'remote-battery': repair(
		'remote-battery',
		40,
		(sheet, _, now) =>
			sheet.remote ? [{ type: 'remote.become', ...(now?.remote ?? sheet.remote), battery: true }] : [],
		{ needs: ['spare-battery'] },
	),
	'remote-code': repair('remote-code', 20, (sheet) =>
		sheet.remote ? [{ type: 'remote.become', ...sheet.remote }] : [],
	),
	'plug-cable': repair('plug-cable', 15, pluggedCable),
	'replace-cable': repair('replace-cable', 75, goodCable, { needs: ['spare-cable'], disturbs: true }),
	'fit-terminator': repair(
		'fit-terminator',
		15,
		(sheet, place) => (sheet.terminators.includes(place) ? [{ type: 'terminator.fit', port: place }] : []),
		{ needs: ['terminator'] },
	),
	'right-way-round': repair(
		'right-way-round',
		30,
		(sheet) => sheet.cables.flatMap((cable) => pluggedCable(sheet, cable.id)),
		{ needs: ['desk'], disturbs: true },
	),
	'output-on': repair(
		'output-on',
		10,
		(sheet, place) => [
			{ type: 'desk.output', output: place, on: deskOf(sheet).outputs.find(({ id }) => id === place)?.on ?? true },
		],
		{ needs: ['desk'] },
	),
	'raise-master': repair('raise-master', 5, (sheet) => [{ type: 'desk.master', level: deskOf(sheet).master }], {
		needs: ['desk'],
	}),
	'set-universe': repair(
		'set-universe',
		30,
		(sheet, place) => [
			{
				type: 'desk.universe',
				output: place,
				universe: deskOf(sheet).outputs.find(({ id }) => id === place)?.universe ?? 1,
			},
		],
		{ needs: ['desk'], disturbs: true },
	),
	'set-patch': repair(
		'set-patch',
		45,
		(sheet, place, now) => {
			const patch = now?.patch ?? deskOf(sheet).patch;
			const [here, wanted] = [patch, deskOf(sheet).patch].map((each) => each.find(({ fixture }) => fixture === place));
			if (!here || !wanted) return [];
			// the strips leave the slots they were sent to, and those go back to whose they are
			return [
				{ type: 'desk.patch', ...wanted },
				...levelsOver(sheet, place, here, here),
				...levelsOver(sheet, place, wanted, wanted),
			];
		},
		{ needs: ['desk'], disturbs: true },
	),
	'set-levels': repair('set-levels', 15, meantLevels, { needs: ['desk'] }),
	'let-cool': repair(
		'let-cool',
		600,
		(_, place) => [{ type: 'condition.become', fixture: place, change: { foldBack: 1 } }],
		{ cautions: ['hot'] },
	),
	'clear-lens': repair(
		'clear-lens',
		15,
		(_, place) => [{ type: 'condition.become', fixture: place, change: { covered: false } }],
		{ cautions: ['staring', 'hot'] },
	),
	'swap-fixture': repair('swap-fixture', 300, freshFixture, {
		needs: ['spare-fixture'],
		cautions: ['hanging', 'lifting', 'hot'],
		disturbs: true,
	}),
	'other-socket': repair('other-socket', 60, become({ socketDead: false }), { cautions: ['mains'], disturbs: true }),
	'replace-lead': repair('replace-lead', 90, become({ leadDead: false }), { cautions: ['mains'], disturbs: true }),
	'ask-breaker': repair(
		'ask-breaker',
		180,
		(sheet) =>
			sheet.fixtures
				.filter(({ plug }) => plug === 'wall')
				.map(({ id }) => ({ type: 'condition.become', fixture: id, change: { breakerOff: false } })),
		{ cautions: ['mains'] },
	),
	'box-on': repair(
		'box-on',
		15,
		(sheet, place) => [{ type: 'box.switch', box: place, on: boxOf(sheet, place)?.on ?? true }],
		{ cautions: ['mains'], disturbs: true },
	),
	'other-output': repair(
		'other-output',
		30,
		(sheet, place) => {
			const { ports = [], dead = [] } = boxOf(sheet, place) ?? {};
			return ports
				.filter(({ direction }) => direction === 'out')
				.map(({ socket }) => ({ type: 'box.output', box: place, socket, dead: dead.includes(socket) }));
		},
		{ disturbs: true },
	),
	'lift-stray': repair(
		'lift-stray',
		20,
		(sheet, _, now) =>
			(now?.cables ?? [])
				.filter(({ id }) => !sheet.cables.some((cable) => cable.id === id))
				.map(({ id }) => ({ type: 'cable.lift', cable: id })),
		{ disturbs: true },
	),
	'leave-blind': repair('leave-blind', 5, () => [{ type: 'desk.hold', by: null }], { needs: ['desk'], disturbs: true }),
	'restart-desk': repair('restart-desk', 120, () => [{ type: 'desk.hold', by: null }], {
		needs: ['desk'],
		cautions: ['live-show', 'flashing'],
		disturbs: true,
	}),
	'set-start-code': repair(
		'set-start-code',
		30,
		(sheet, place) => [
			{
				type: 'desk.start-code',
				output: place,
				code: deskOf(sheet).outputs.find(({ id }) => id === place)?.startCode ?? 0,
			},
		],
		{ needs: ['desk'], disturbs: true },
	),
	'clear-sensor': repair('clear-sensor', 10, become({ sensorCovered: false }), { cautions: ['staring', 'hot'] }),
});
