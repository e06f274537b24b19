import { portsOf, type RigSheet, splitPort } from '../../../shared/sheet/index.ts';
import { placeName } from '../../wording/index.ts';
import type { RowPlace } from './view.ts';

/** Data cables by the device they come out of, with the device they lead to. */
interface Leg {
	readonly cable: string;
	readonly from: string;
	readonly socket: string;
	readonly to: string;
}

/**
 * A rig as rows of places to tap: from each output of the desk, and from each thing that nothing feeds, along the cables. Everything that
 * stands on the sheet is in one row, and in one only.
 */
export function rowsOf(sheet: RigSheet): readonly (readonly RowPlace[])[] {
	const legs = sheet.cables.flatMap(({ id, kind, from, to }): Leg[] => {
		if (kind !== 'data' || from === null || to === null) return [];
		const { device, socket } = splitPort(from);
		return [{ cable: id, from: device, socket, to: splitPort(to).device }];
	});
	const placed = new Set<string>();
	const place = (id: string, kind: RowPlace['kind']): RowPlace => {
		placed.add(id);
		return { id, kind, name: placeName(sheet, id) };
	};
	const kindOf = (id: string): RowPlace['kind'] => (sheet.fixtures.some((each) => each.id === id) ? 'fixture' : 'box');
	const rows: (readonly RowPlace[])[] = [];
	/** Along the first cable out of each thing; what else leads out of it is a row of its own. */
	const along = (row: RowPlace[], first: Leg | undefined): void => {
		rows.push(row);
		const aside: Leg[] = [];
		for (let leg = first; leg && !placed.has(leg.cable); ) {
			row.push(place(leg.cable, 'cable'));
			if (placed.has(leg.to)) break;
			const { to } = leg;
			row.push(place(to, kindOf(to)));
			const [next, ...others] = legs.filter(({ from }) => from === to);
			aside.push(...others);
			leg = next;
		}
		for (const leg of aside) if (!placed.has(leg.cable)) along([], leg);
	};
	for (const { id } of sheet.desk?.outputs ?? [])
		along(
			[place(id, 'output')],
			legs.find(({ from, socket }) => from === 'desk' && socket === id),
		);
	const devices = [...new Set(portsOf(sheet).map((port) => splitPort(port).device))].filter((id) => id !== 'desk');
	const isFed = (id: string): boolean => legs.some(({ to }) => to === id);
	for (const id of [...devices.filter((each) => !isFed(each)), ...devices])
		if (!placed.has(id))
			along(
				[place(id, kindOf(id))],
				legs.find(({ from }) => from === id),
			);
	for (const { id, kind } of sheet.cables) if (kind === 'data' && !placed.has(id)) rows.push([place(id, 'cable')]);
	// what hangs on nothing stands side by side
	const [lone, lines] = [rows.filter(({ length }) => length === 1), rows.filter(({ length }) => length > 1)];
	return lone.length > 0 ? [...lines, lone.flat()] : lines;
}
