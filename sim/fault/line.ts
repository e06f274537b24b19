import { GOOD_WIRES, type RigSheet, type SheetCable } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { laid } from './sheet.ts';
import type { Fault } from './types.ts';

const atCables = (sheet: RigSheet) => laid(sheet).map(({ id }) => ({ place: id }));

/** A fault that changes a cable's own self. */
function badCable(
	id: string,
	weight: number,
	change: Partial<Omit<SheetCable, 'id'>>,
	more: Partial<Fault> = {},
): Fault {
	return {
		id,
		family: 'line',
		weight,
		repair: 'replace-cable',
		cautions: [],
		spots: atCables,
		events: (_, { place }): RigEvent[] => [{ type: 'cable.become', cable: place, change }],
		...more,
	};
}

/** Faults of cables, connectors and terminators. */
export const LINE: readonly Fault[] = [
	{
		id: 'cable-out',
		family: 'line',
		weight: 8,
		repair: 'plug-cable',
		cautions: [],
		spots: (sheet) =>
			laid(sheet).flatMap(({ id }) => [
				{ place: id, detail: 'from', share: 0.5 },
				{ place: id, detail: 'to', share: 0.5 },
			]),
		events: (_, { place, detail }) => [
			{ type: 'cable.become', cable: place, change: detail === 'from' ? { from: null } : { to: null } },
		],
	},
	badCable('cable-dead', 4, { minus: 'open', plus: 'open' }),
	badCable('minus-open', 3, { minus: 'open' }),
	badCable('plus-open', 3, { plus: 'open' }),
	badCable('common-open', 2, { common: 'open' }),
	badCable('wires-swapped', 3, { swapped: true }),
	{
		...badCable('microphone-cable', 4, { kind: 'microphone' }),
		events: (_, { place }) => [{ type: 'cable.become', cable: place, change: { kind: 'microphone' } }],
	},
	{
		id: 'cable-too-long',
		family: 'line',
		weight: 1,
		repair: 'replace-cable',
		cautions: [],
		spots: atCables,
		// somebody took the drum instead of the short one
		events: (_, { place }) => [{ type: 'cable.become', cable: place, change: { length: 600 } }],
	},
	{
		id: 'terminator-missing',
		family: 'line',
		weight: 6,
		repair: 'fit-terminator',
		cautions: [],
		spots: (sheet) => sheet.terminators.map((port) => ({ place: port })),
		events: (_, { place }) => [{ type: 'terminator.remove', port: place }],
	},
	{
		id: 'universes-exchanged',
		family: 'line',
		weight: 5,
		repair: 'right-way-round',
		cautions: [],
		spots: (sheet) => (fromDesk(sheet).length >= 2 ? [{ place: 'rig' }] : []),
		events: (sheet) => {
			const [one, two] = fromDesk(sheet);
			if (!one || !two) return [];
			return [
				{ type: 'cable.become', cable: one.id, change: swapEnd(one, two) },
				{ type: 'cable.become', cable: two.id, change: swapEnd(two, one) },
			];
		},
	},
	{
		id: 'bad-socket-in',
		family: 'line',
		weight: 2,
		repair: 'swap-fixture',
		cautions: [],
		spots: (sheet) => usedSockets(sheet, 'in'),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { badSocket: 'in' } }],
	},
	{
		id: 'bad-socket-out',
		family: 'line',
		weight: 2,
		repair: 'swap-fixture',
		cautions: [],
		spots: (sheet) => usedSockets(sheet, 'out'),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { badSocket: 'out' } }],
	},
	{
		id: 'too-many-loads',
		family: 'line',
		weight: 1,
		repair: 'swap-fixture',
		cautions: [],
		spots: (sheet) => usedSockets(sheet, 'in'),
		events: (_, { place }) => [{ type: 'condition.become', fixture: place, change: { extraLoads: BAD_INPUT } }],
	},
	{
		id: 'split-without-splitter',
		family: 'line',
		weight: 3,
		repair: 'plug-cable',
		cautions: [],
		// the cable to the last fixture is taken from the first one's socket by a Y lead
		spots: (sheet) =>
			chained(sheet)
				.slice(-1)
				.filter(() => chained(sheet).length >= 3)
				.map(({ id }) => ({ place: id })),
		events: (sheet, { place }) => {
			const [first] = chained(sheet);
			return first ? [{ type: 'cable.become', cable: place, change: { from: first.from } }] : [];
		},
	},
	{
		// its lead or its switch: boxes stand on the floor among feet
		id: 'splitter-off',
		since: 2,
		family: 'line',
		weight: 4,
		repair: 'box-on',
		cautions: ['mains'],
		spots: (sheet) => sheet.splitters.filter(({ on }) => on).map(({ id }) => ({ place: id })),
		events: (_, { place }) => [{ type: 'box.switch', box: place, on: false }],
	},
	{
		// a driver that took a surge: seldom
		id: 'splitter-output-dead',
		since: 2,
		family: 'line',
		weight: 2,
		repair: 'other-output',
		cautions: [],
		spots: (sheet) => {
			const used = new Set(laid(sheet).flatMap(({ from, to }) => [from, to]));
			return sheet.splitters.flatMap(({ id, outputs }) =>
				Array.from({ length: outputs }, (_, i) => `${i + 1}`)
					.filter((socket) => used.has(`${id}:${socket}`))
					.map((socket) => ({ place: id, detail: socket })),
			);
		},
		events: (_, { place, detail }) => [{ type: 'box.output', box: place, socket: detail ?? '1', dead: true }],
	},
	{
		// two outputs that were joined, on rigs that have two: seldom
		id: 'second-source',
		since: 2,
		family: 'line',
		weight: 2,
		repair: 'lift-stray',
		cautions: [],
		spots: (sheet) => fromDesk(sheet).flatMap(({ id }) => (otherOutput(sheet, id) ? [{ place: id }] : [])),
		events: (sheet, { place }) => {
			const cable = laid(sheet).find(({ id }) => id === place);
			const [from, to] = [otherOutput(sheet, place), cable && deskEnd(cable) === cable.from ? cable.to : cable?.from];
			if (!from || !to) return [];
			// two plugs in one socket: a Y lead
			return [
				{ type: 'cable.lay', cable: { id: STRAY, kind: 'data', length: 10, from: null, to: null, ...GOOD_WIRES } },
				{ type: 'cable.become', cable: STRAY, change: { from, to } },
			];
		},
	},
];

/** Id of a cable that no sheet has. */
const STRAY = 'stray-cable';

const deskEnd = ({ from, to }: SheetCable): string | null | undefined =>
	[from, to].find((port) => port?.startsWith('desk:'));

/** A socket of the desk that sends another universe than the one this cable is in. */
function otherOutput(sheet: RigSheet, cable: string): string | null {
	const own = fromDesk(sheet).find(({ id }) => id === cable);
	const mine = own && sheet.desk?.outputs.find(({ id }) => `desk:${id}` === deskEnd(own));
	const other = sheet.desk?.outputs.find(({ universe, on }) => on && mine && universe !== mine.universe);
	return other ? `desk:${other.id}` : null;
}

/** Unit loads that a line input gone bad puts on beyond its own: with a few others more than the 32 of EIA-485 (ours, no source). */
const BAD_INPUT = 30;

/** Cables that start at the desk, by output. */
const fromDesk = (sheet: RigSheet): SheetCable[] =>
	laid(sheet).filter(({ from, to }) => from?.startsWith('desk:') || to?.startsWith('desk:'));

/** Cables from one fixture's out to another's in. */
const chained = (sheet: RigSheet): SheetCable[] =>
	laid(sheet).filter(({ from, to }) => from?.endsWith(':out') && to?.endsWith(':in'));

function swapEnd(mine: SheetCable, other: SheetCable): { from: string | null } | { to: string | null } {
	const theirs = other.from?.startsWith('desk:') ? other.from : other.to;
	return mine.from?.startsWith('desk:') ? { from: theirs } : { to: theirs };
}

function usedSockets(sheet: RigSheet, socket: 'in' | 'out'): { place: string }[] {
	const used = new Set(laid(sheet).flatMap(({ from, to }) => [from, to]));
	return sheet.fixtures.filter(({ id }) => used.has(`${id}:${socket}`)).map(({ id }) => ({ place: id }));
}
