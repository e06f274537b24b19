import type { RigSheet } from '../../shared/sheet/index.ts';
import { type MeantFixture, meant, meantOf } from './sheet.ts';
import type { Fault } from './types.ts';

const hearing = (sheet: RigSheet): MeantFixture[] =>
	sheet.remote ? meantOf(sheet).filter(({ profile }) => profile.sensor) : [];
const spots = (wanted: (at: MeantFixture) => boolean) => (sheet: RigSheet) =>
	hearing(sheet)
		.filter(wanted)
		.map(({ fixture }) => ({ place: fixture.id }));
const open = ({ settings, fixture }: MeantFixture): boolean => settings.sensor === 'open' && !fixture.hidden;

/** Faults between the remote and the lamp. */
export const REMOTE: readonly Fault[] = [
	{
		id: 'sensor-shut',
		family: 'remote',
		weight: 5,
		repair: 'open-sensor',
		cautions: [],
		spots: spots(open),
		events: (_, { place }) => [{ type: 'settings.become', fixture: place, change: { sensor: 'shut' } }],
	},
	{
		id: 'sensor-left-open',
		family: 'remote',
		weight: 5,
		repair: 'open-sensor',
		cautions: [],
		spots: spots(({ settings }) => settings.sensor === 'shut'),
		events: (_, { place }) => [{ type: 'settings.become', fixture: place, change: { sensor: 'open' } }],
	},
	{
		id: 'out-of-sight',
		family: 'remote',
		weight: 6,
		repair: 'clear-sight',
		cautions: [],
		spots: spots(open),
		events: (_, { place }) => [{ type: 'sight.block', fixture: place, hidden: true }],
	},
	{
		id: 'remote-battery-flat',
		family: 'remote',
		weight: 6,
		repair: 'remote-battery',
		cautions: [],
		spots: (sheet) => (sheet.remote && hearing(sheet).length > 0 ? [{ place: 'remote' }] : []),
		events: (sheet) => (sheet.remote ? [{ type: 'remote.become', ...sheet.remote, battery: false }] : []),
	},
	{
		id: 'remote-other-code',
		family: 'remote',
		weight: 3,
		repair: 'remote-code',
		cautions: [],
		spots: (sheet) => (sheet.remote && hearing(sheet).length > 0 ? [{ place: 'remote' }] : []),
		events: (sheet) =>
			sheet.remote ? [{ type: 'remote.become', ...sheet.remote, code: (sheet.remote.code % 4) + 1 }] : [],
	},
	{
		id: 'fixture-other-code',
		family: 'remote',
		weight: 4,
		repair: 'set-panel',
		cautions: [],
		spots: spots(open),
		events: (sheet, { place }) => [
			{ type: 'settings.become', fixture: place, change: { code: (meant(sheet, place).settings.code % 4) + 1 } },
		],
	},
	{
		id: 'sensor-dead',
		family: 'remote',
		weight: 1,
		repair: 'swap-fixture',
		cautions: [],
		spots: spots(open),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { sensorDead: true } }],
	},
	{
		// tape, a cloth or strong light on it: met less than somebody standing in the way
		id: 'sensor-covered',
		since: 2,
		family: 'remote',
		weight: 3,
		repair: 'clear-sensor',
		cautions: [],
		spots: spots(open),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { sensorCovered: true } }],
	},
];
