import type { RigSheet } from '../../shared/sheet/index.ts';
import { type MeantFixture, meantOf } from './sheet.ts';
import type { Fault, RepairId } from './types.ts';

const spot = (place: string) => ({ place });

/** Every fixture with a battery. */
const batteries: Fault['spots'] = (sheet) =>
	meantOf(sheet)
		.filter(({ profile }) => profile.power.battery)
		.map(({ fixture }) => spot(fixture.id));

/** Something between the wall and the light that lets no mains through. */
function noMains(
	id: string,
	weight: number,
	repair: RepairId,
	part: 'fuseBlown' | 'supplyDead' | 'socketDead' | 'leadDead',
	wanted: (at: MeantFixture) => boolean,
): Fault {
	return {
		id,
		since: 2,
		family: 'power',
		weight,
		repair,
		cautions: ['mains'],
		spots: (sheet) =>
			meantOf(sheet)
				.filter((at) => at.fixture.plug !== 'none' && wanted(at))
				.map(({ fixture }) => spot(fixture.id)),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { [part]: true } }],
	};
}

/** Parts of a hall with a breaker of their own: its two sides, since no sheet says which socket is on which breaker (ours, no source). */
const SIDES = ['left', 'right'] as const;

/** Fixtures whose plug is in the wall on that side. */
const onSide = (sheet: RigSheet, side: string | undefined): string[] =>
	sheet.fixtures
		.filter(({ plug, place }) => plug === 'wall' && (place.x < sheet.hall.width / 2 ? 'left' : 'right') === side)
		.map(({ id }) => id);

/** Faults of power and battery. */
export const POWER: readonly Fault[] = [
	{
		id: 'switched-off',
		family: 'power',
		weight: 6,
		repair: 'switch-on',
		cautions: [],
		spots: (sheet) => sheet.fixtures.filter(({ on }) => on).map(({ id }) => spot(id)),
		events: (_, { place }) => [{ type: 'power.switch', fixture: place, on: false }],
	},
	{
		id: 'battery-flat',
		family: 'power',
		weight: 8,
		repair: 'fresh-battery',
		cautions: ['batteries'],
		spots: batteries,
		events: (_, { place }) => [{ type: 'charge.become', fixture: place, charge: 0 }],
	},
	{
		id: 'battery-low',
		family: 'power',
		weight: 6,
		repair: 'fresh-battery',
		cautions: ['batteries'],
		spots: batteries,
		events: (_, { place }) => [{ type: 'charge.become', fixture: place, charge: 0.08 }],
	},
	{
		id: 'battery-worn',
		family: 'power',
		weight: 3,
		repair: 'swap-fixture',
		cautions: ['batteries'],
		spots: batteries,
		// most of its capacity gone: it charges full, and is empty again before the night is over
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { batteryHealth: 0.12 } }],
	},
	{
		id: 'charger-dead',
		family: 'power',
		weight: 2,
		repair: 'swap-fixture',
		cautions: ['batteries', 'mains'],
		spots: (sheet) =>
			meantOf(sheet)
				.filter(({ profile, fixture }) => profile.power.battery && fixture.plug !== 'none')
				.map(({ fixture }) => spot(fixture.id)),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { chargerDead: true } }],
	},
	{
		id: 'mains-unplugged',
		family: 'power',
		weight: 7,
		repair: 'plug-mains',
		cautions: ['mains'],
		spots: (sheet) => sheet.fixtures.filter(({ plug }) => plug !== 'none').map(({ id }) => spot(id)),
		events: (_, { place }) => [{ type: 'mains.plug', fixture: place, into: 'none' }],
	},
	{
		id: 'hall-power-off',
		family: 'power',
		weight: 2,
		repair: 'restore-hall',
		cautions: ['mains'],
		spots: (sheet) => (sheet.desk || sheet.fixtures.some(({ plug }) => plug !== 'none') ? [spot('rig')] : []),
		events: () => [{ type: 'hall.power', on: false }],
	},
	{
		// breaks inside, seldom, and mostly after something else did
		...noMains('fuse-blown', 2, 'swap-fixture', 'fuseBlown', () => true),
	},
	{
		// of those without a battery: one with a battery lights from that
		...noMains('supply-dead', 2, 'swap-fixture', 'supplyDead', ({ profile }) => !profile.power.battery),
	},
	{ ...noMains('socket-dead', 2, 'other-socket', 'socketDead', ({ fixture }) => fixture.plug === 'wall') },
	{
		// leads are trodden on, pulled and rolled up every night
		...noMains('lead-dead', 3, 'replace-lead', 'leadDead', () => true),
	},
	{
		// about as common as the whole hall's mains gone
		id: 'breaker-off',
		since: 2,
		family: 'power',
		weight: 3,
		repair: 'ask-breaker',
		cautions: ['mains'],
		spots: (sheet) =>
			SIDES.filter((side) => onSide(sheet, side).length > 0).map((side) => ({
				place: 'rig',
				detail: side,
				share: 1 / SIDES.length,
			})),
		events: (sheet, { detail }) =>
			onSide(sheet, detail).map((fixture) => ({ type: 'condition.become', fixture, change: { breakerOff: true } })),
	},
];
