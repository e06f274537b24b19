import type { Mode, Profile, Slot } from '../profile/index.ts';
import type { LeftOut } from './left.ts';
import { type Attributes, element } from './write-xml.ts';

/** What the data sockets of a fixture that is written are called, before the number of the mode. */
export const DATA_SOCKETS = Object.freeze({ in: 'DMX in', out: 'DMX out' });

/** The geometries of a mode that is written. */
export interface Body {
	readonly root: string;
	readonly xml: string;
	geometryOf(slot: Slot): string;
}

/**
 * A mode's geometries: one beam a cell, and one part round the cells of each slot that drives several of them and not all. Parts can
 * lie within each other or apart; where a slot's cells do neither it goes to the whole fixture, and that is told.
 */
export function geometriesOf(profile: Profile, mode: Mode, index: number, beam: Attributes, left: LeftOut[]): Body {
	const { cells, power } = profile;
	const number = index + 1;
	const path = `modes[${index}]`;
	const root = `Body ${number}`;
	const all = Array.from({ length: cells }, (_, i) => i + 1);
	const groups = new Map<string, readonly number[]>();
	const keyOf = (some: readonly number[]): string => some.toSorted((a, b) => a - b).join('-');
	const isWhole = (some: readonly number[]): boolean => new Set(some).size === cells;
	for (const { id, cells: some } of mode.slots) {
		if (!some || some.length < 2 || isWhole(some) || groups.has(keyOf(some))) continue;
		const overlaps = [...groups.values()].some((other) => {
			const shared = some.filter((cell) => other.includes(cell)).length;
			return shared > 0 && shared < Math.min(some.length, other.length);
		});
		if (overlaps) left.push({ path, code: 'cells-overlap', facts: { mode: mode.name, slot: id } });
		else groups.set(keyOf(some), some);
	}
	const order: number[] = [];
	const build = (within: readonly number[], inside: readonly (readonly [string, readonly number[]])[]): string[] => {
		const done = new Set<number>();
		return within.flatMap((cell) => {
			if (done.has(cell)) return [];
			const [widest] = inside
				.filter(([, some]) => some.includes(cell))
				.toSorted((one, other) => other[1].length - one[1].length);
			if (!widest) {
				order.push(cell);
				return [element('Beam', { Name: `Cell ${number}-${cell}`, ...beam })];
			}
			for (const each of widest[1]) done.add(each);
			const rest = inside.filter((each) => each !== widest && each[1].every((one) => widest[1].includes(one)));
			return [
				element(
					'Geometry',
					{ Name: `Part ${number}-${widest[0]}` },
					build(
						[...widest[1]].sort((a, b) => a - b),
						rest,
					),
				),
			];
		});
	};
	const parts = build(all, [...groups]);
	if (order.some((cell, i) => i > 0 && cell < (order[i - 1] as number)))
		left.push({ path, code: 'cells-in-other-order', facts: { mode: mode.name } });
	const socket = (name: string, type: string, signal: string): string =>
		element('WiringObject', { Name: `${name} ${number}`, ComponentType: type, SignalType: signal });
	const wiring = [
		socket('Mains in', 'Input', 'Power'),
		...(power.link ? [socket('Mains out', 'Output', 'Power')] : []),
		socket(DATA_SOCKETS.in, 'Input', 'DMX512'),
		socket(DATA_SOCKETS.out, 'Output', 'DMX512'),
	];
	return {
		root,
		xml: element('Geometry', { Name: root }, [...parts, ...wiring]),
		geometryOf({ cells: some }) {
			if (!some || isWhole(some)) return root;
			if (some.length === 1) return `Cell ${number}-${some[0]}`;
			return groups.has(keyOf(some)) ? `Part ${number}-${keyOf(some)}` : root;
		},
	};
}
