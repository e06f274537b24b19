import { InputError } from '../../shared/error/index.ts';
import { oncePer } from '../../shared/memo/index.ts';
import { type Port, portsOf, type RigSheet, type SheetCable } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Gear } from './gear.ts';

type LineEvent = Extract<RigEvent, { type: `cable.${string}` | `terminator.${string}` }>;

export const isLineEvent = (event: RigEvent): event is LineEvent =>
	event.type.startsWith('cable.') || event.type.startsWith('terminator.');

/** @throws InputError `event.cable`, `event.socket` or `event.terminator` where hands could not do it. */
export function lineEvent(gear: Gear, event: LineEvent): void {
	switch (event.type) {
		case 'cable.lay': {
			const { cable } = event;
			if (gear.cables.some((each) => each.id === cable.id))
				throw new InputError('event.cable', 'cable.id', { trouble: 'id-taken', id: cable.id });
			requireApart(cable, 'cable.to');
			for (const port of [cable.from, cable.to]) if (port !== null) requireFree(gear, port);
			gear.cables = [...gear.cables, cable];
			return;
		}
		case 'cable.lift':
			cableOf(gear, event.cable);
			gear.cables = gear.cables.filter((cable) => cable.id !== event.cable);
			return;
		case 'cable.plug': {
			const cable = cableOf(gear, event.cable);
			const plugged = cable[event.end];
			if (plugged !== null)
				throw new InputError('event.cable', 'end', {
					trouble: 'end-plugged',
					id: event.cable,
					port: plugged,
				});
			requireFree(gear, event.port);
			change(gear, event.cable, { [event.end]: event.port });
			return;
		}
		case 'cable.unplug':
			if (cableOf(gear, event.cable)[event.end] === null)
				throw new InputError('event.cable', 'end', { trouble: 'end-loose', id: event.cable });
			change(gear, event.cable, { [event.end]: null });
			return;
		case 'cable.become':
			requireApart({ ...cableOf(gear, event.cable), ...event.change }, 'change');
			for (const port of [event.change.from, event.change.to]) if (port) requireSocket(gear, port);
			change(gear, event.cable, event.change);
			return;
		case 'terminator.fit':
			requireFree(gear, event.port);
			gear.terminators = [...gear.terminators, event.port];
			return;
		case 'terminator.remove':
			if (!gear.terminators.includes(event.port))
				throw new InputError('event.terminator', 'port', { trouble: 'no-terminator', port: event.port });
			gear.terminators = gear.terminators.filter((port) => port !== event.port);
			return;
	}
}

function requireApart({ from, to }: SheetCable, path: string): void {
	if (from !== null && from === to) throw new InputError('event.socket', path, { trouble: 'both-ends-in-one-socket' });
}

function cableOf(gear: Gear, id: string): SheetCable {
	const cable = gear.cables.find((each) => each.id === id);
	if (!cable) throw new InputError('event.cable', 'cable', { trouble: 'no-such-cable', id });
	return cable;
}

function change(gear: Gear, id: string, to: Partial<SheetCable>): void {
	gear.cables = gear.cables.map((cable) => (cable.id === id ? { ...cable, ...to } : cable));
}

/** A socket takes one plug: a cable's or a terminator's. */
function requireFree(gear: Gear, port: Port): void {
	requireSocket(gear, port);
	const cable = gear.cables.find((each) => each.from === port || each.to === port);
	if (cable) throw new InputError('event.socket', 'port', { trouble: 'cable-in-it', port, cable: cable.id });
	if (gear.terminators.includes(port))
		throw new InputError('event.socket', 'port', { trouble: 'terminator-in-it', port });
}

/** Every data socket of a sheet. Worked out once a sheet. */
const socketsOf = oncePer((sheet: RigSheet): ReadonlySet<Port> => new Set(portsOf(sheet)));

function requireSocket(gear: Gear, port: Port): void {
	if (!socketsOf(gear.sheet).has(port))
		throw new InputError('event.socket', 'port', { trouble: 'no-such-socket', port });
}
