import { meantOf } from './sheet.ts';
import type { Fault } from './types.ts';

const spot = (place: string) => ({ place });

/** Every fixture with a battery. */
const batteries: Fault['spots'] = (sheet) =>
	meantOf(sheet)
		.filter(({ profile }) => profile.power.battery)
		.map(({ fixture }) => spot(fixture.id));

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
];
