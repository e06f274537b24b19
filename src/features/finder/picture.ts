import type { CheckSpot } from '#words/checks/index.ts';
import {
	type DeviceKind,
	devicesOf,
	profileFor,
	type RigSheet,
	type SheetCable,
	type SheetDevice,
	splitPort,
} from '../../../shared/sheet/index.ts';

/** What a small picture shows: a place on a fixture, desk or line, and on which of them. Nothing of it is drawn here. */
export interface Picture {
	readonly spot: CheckSpot;
	/** What the back of the fixture has; null where the place is on no fixture. */
	readonly back: BackParts | null;
	/** The line it hangs on, from the source on; empty where there is none. */
	readonly line: readonly LineBox[];
	/** The box of the line it is about, the cable that leads to that box, or all lights but that one; null for none. */
	readonly mark: { readonly box: number; readonly what: 'box' | 'cable' | 'others' } | null;
}

export interface BackParts {
	readonly panel: 'code' | 'text' | 'dip';
	/** Keys under a display. */
	readonly keys: number;
	readonly battery: boolean;
	readonly sensor: boolean;
	readonly link: boolean;
}

export interface LineBox {
	readonly id: string;
	readonly kind: DeviceKind;
	readonly name: string;
}

type DevicesById = ReadonlyMap<string, SheetDevice>;

/** Longest line drawn; of a longer one, the part round the place in question. */
const LONGEST = 12;

/** The picture for a place of a rig: a fixture, cable, socket, output, `desk`, `remote` or `rig`. */
export function pictureOf(sheet: RigSheet, spot: CheckSpot, place: string, fixture: string): Picture {
	const device = place.includes(':') ? splitPort(place).device : place;
	const placed = sheet.fixtures.find(({ id }) => id === device);
	const cable = sheet.cables.find(({ id }) => id === place);
	const output = sheet.desk?.outputs.find(({ id }) => id === place);
	const reached = cable ? splitPort(inEnd(cable)).device : output ? 'desk' : device;
	const start = output ? `desk:${output.id}` : `${placed || cable ? reached : fixture}:in`;
	const line = lineThrough(sheet, start);
	const box = line.findIndex(({ id }) => id === reached);
	const what = spot === 'row' ? 'others' : cable && box > 0 ? 'cable' : 'box';
	const mark = box < 0 ? null : { box, what: what as NonNullable<Picture['mark']>['what'] };
	return { spot, back: placed ? backOf(sheet, placed.profile) : null, ...cut(line, mark) };
}

function backOf(sheet: RigSheet, id: string): BackParts {
	const { panel, power, sensor } = profileFor(sheet, id);
	return {
		panel: panel.kind,
		keys: panel.kind === 'dip' ? 0 : panel.keys.length,
		battery: power.battery !== null,
		sensor,
		link: power.link,
	};
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

/** The other socket that a device's own wire leads to from this one; none where frames begin or end. */
function onward(devices: DevicesById, port: string): string | undefined {
	const { device, socket } = splitPort(port);
	const passes = devices.get(device)?.ports.find((each) => each.socket === socket)?.passes;
	return passes?.by === 'wire' ? `${device}:${passes.from}` : undefined;
}

/** Up the line from a socket: the output that feeds it, or the data in of a fixture that nothing feeds. */
function sourceOf(devices: DevicesById, other: ReadonlyMap<string, string>, port: string): string {
	const met = new Set<string>();
	let at = port;
	while (at.endsWith(':in') && !met.has(at)) {
		met.add(at);
		const before = other.get(at);
		if (before === undefined) break;
		at = before.endsWith(':in') ? before : (onward(devices, before) ?? before);
	}
	return at;
}

/** The devices of a line in order, from its source on; none where the device is linked to nothing. */
function lineThrough(sheet: RigSheet, port: string): LineBox[] {
	const devices: DevicesById = new Map(devicesOf(sheet).map((device) => [device.id, device]));
	const other = plugged(sheet);
	const boxes = new Map<string, LineBox>();
	let next: string | undefined = sourceOf(devices, other, port);
	while (next !== undefined) {
		const { device: id } = splitPort(next);
		if (boxes.has(id)) break;
		const device = devices.get(id);
		boxes.set(id, { id, kind: device?.kind ?? 'fixture', name: device?.name ?? id });
		const out = onward(devices, next);
		// an output that nothing comes through leads on by itself
		next = other.get(out ?? (boxes.size === 1 && !next.endsWith(':in') ? next : ''));
	}
	return boxes.size > 1 ? [...boxes.values()] : [];
}

/** A long line cut down to the part round its mark, or to its beginning. */
function cut(line: readonly LineBox[], mark: Picture['mark']): Pick<Picture, 'line' | 'mark'> {
	if (line.length <= LONGEST) return { line, mark };
	const from = Math.max(0, Math.min((mark?.box ?? 0) - LONGEST / 2, line.length - LONGEST));
	return { line: line.slice(from, from + LONGEST), mark: mark && { ...mark, box: mark.box - from } };
}
