import type { Spot } from '../../../content/en/checks/index.ts';
import { profileFor, type RigSheet, type SheetCable, splitPort } from '../../../shared/sheet/index.ts';

/** What a small picture shows: a place on a fixture, desk or line, and on which of them. Nothing of it is drawn here. */
export interface Picture {
	readonly spot: Spot;
	/** What the back of the fixture has; null where the place is on no fixture. */
	readonly back: BackParts | null;
	/** The line it hangs on, from the source on; empty where there is none. */
	readonly line: readonly LineBox[];
	/** The box of the line it is about, or the cable that leads to that box; null for neither. */
	readonly mark: { readonly box: number; readonly what: 'box' | 'cable' } | null;
}

export interface BackParts {
	readonly panel: 'code' | 'text' | 'dip';
	readonly battery: boolean;
	readonly sensor: boolean;
	readonly link: boolean;
}

export interface LineBox {
	readonly id: string;
	readonly kind: 'desk' | 'splitter' | 'fixture';
	readonly name: string;
}

/** Longest line drawn; of a longer one, the part round the place in question. */
const LONGEST = 12;

/** The picture for a place of a rig: a fixture, cable, socket, output, `desk`, `remote` or `rig`. */
export function pictureOf(sheet: RigSheet, spot: Spot, place: string, fixture: string): Picture {
	const device = place.includes(':') ? splitPort(place).device : place;
	const placed = sheet.fixtures.find(({ id }) => id === device);
	const cable = sheet.cables.find(({ id }) => id === place);
	const output = sheet.desk?.outputs.find(({ id }) => id === place);
	const reached = cable ? splitPort(inEnd(cable)).device : output ? 'desk' : device;
	const start = output ? `desk:${output.id}` : `${placed || cable ? reached : fixture}:in`;
	const line = lineThrough(sheet, start);
	const box = line.findIndex(({ id }) => id === reached);
	const mark = box < 0 ? null : { box, what: cable && box > 0 ? ('cable' as const) : ('box' as const) };
	return { spot, back: placed ? backOf(sheet, placed.profile) : null, ...cut(line, mark) };
}

function backOf(sheet: RigSheet, id: string): BackParts {
	const { panel, power, sensor } = profileFor(sheet, id);
	return { panel: panel.kind, battery: power.battery !== null, sensor, link: power.link };
}

/** The end of a cable that is further down the line, as far as its sockets tell. */
const inEnd = ({ from, to }: SheetCable): string =>
	[to, from].find((port) => port?.endsWith(':in')) ?? to ?? from ?? ':';

/** The sockets at the other ends of the cables. */
function plugged(sheet: RigSheet): Map<string, string> {
	return new Map(
		sheet.cables.flatMap(({ from, to }): [string, string][] =>
			from !== null && to !== null
				? [
						[from, to],
						[to, from],
					]
				: [],
		),
	);
}

/** Up the line from a socket: the output that feeds it, or the data in of a fixture that nothing feeds. */
function sourceOf(other: ReadonlyMap<string, string>, port: string): string {
	const met = new Set<string>();
	let at = port;
	while (at.endsWith(':in') && !met.has(at)) {
		met.add(at);
		const before = other.get(at);
		if (before === undefined) break;
		at = before.endsWith(':out') ? `${splitPort(before).device}:in` : before;
	}
	return at;
}

/** The devices of a line in order, from its source on; none where the device is linked to nothing. */
function lineThrough(sheet: RigSheet, port: string): LineBox[] {
	const other = plugged(sheet);
	const source = sourceOf(other, port);
	const boxes: LineBox[] = [];
	const seen = new Set<string>();
	let next: string | undefined = source;
	while (next !== undefined) {
		const device = splitPort(next).device;
		if (seen.has(device)) break;
		seen.add(device);
		boxes.push(boxOf(sheet, device));
		next = other.get(boxes.length === 1 && !next.endsWith(':in') ? next : `${device}:out`);
	}
	return boxes.length > 1 ? boxes : [];
}

function boxOf(sheet: RigSheet, id: string): LineBox {
	if (id === 'desk') return { id, kind: 'desk', name: sheet.desk?.name ?? id };
	const splitter = sheet.splitters.find((each) => each.id === id);
	if (splitter) return { id, kind: 'splitter', name: splitter.name };
	return { id, kind: 'fixture', name: sheet.fixtures.find((each) => each.id === id)?.name ?? id };
}

/** A long line cut down to the part round its mark, or to its beginning. */
function cut(line: readonly LineBox[], mark: Picture['mark']): Pick<Picture, 'line' | 'mark'> {
	if (line.length <= LONGEST) return { line, mark };
	const from = Math.max(0, Math.min((mark?.box ?? 0) - LONGEST / 2, line.length - LONGEST));
	return { line: line.slice(from, from + LONGEST), mark: mark && { ...mark, box: mark.box - from } };
}
