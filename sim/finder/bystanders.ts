import { splitPort } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import type { Gear } from '../rig/index.ts';

/** Whose line a device is on: those joined by cables, all devices between them taken as joined. */
function linesOf({ cables, boxes }: Readonly<Gear>): (port: string) => string {
	const between = new Set(boxes.map(({ id }) => id));
	const nodeOf = (port: string): string => {
		const { device } = splitPort(port);
		if (between.has(device)) return 'between';
		// outputs of a desk are lines of their own
		return device === 'desk' ? port : device;
	};
	const led = new Map<string, string>();
	const rootOf = (node: string): string => {
		let at = node;
		for (let next = led.get(at); next !== undefined && next !== at; next = led.get(at)) at = next;
		return at;
	};
	for (const { from, to } of cables) if (from && to) led.set(rootOf(nodeOf(from)), rootOf(nodeOf(to)));
	return (port) => rootOf(nodeOf(port));
}

/**
 * Tells of events whether they may reach some fixtures of a rig, so that a rig need not be opened with each fault to see that nothing has
 * changed there. A no is sure; a yes is not.
 */
export function reachOf(gear: Readonly<Gear>, fixtures: readonly string[]): (events: readonly RigEvent[]) => boolean {
	const lineOf = linesOf(gear);
	const lines = new Set(fixtures.map((fixture) => lineOf(`${fixture}:in`)));
	const own = new Set(fixtures);
	const feeders = new Set([...gear.units.values()].map(({ plug }) => plug));
	const ports = new Map(gear.cables.map(({ id, from, to }) => [id, [from, to]] as const));

	/** Whether a change inside a fixture stays inside: it is none of those asked about, and leads nobody. */
	const isApart = (fixture: string): boolean => {
		const unit = gear.units.get(fixture);
		return unit !== undefined && !own.has(fixture) && unit.state.context.settings.lead !== 'on';
	};
	const isOnLine = (port: string): boolean => lines.has(lineOf(port));

	function reaches(event: RigEvent): boolean {
		switch (event.type) {
			case 'power.switch':
			case 'charge.become':
			case 'sight.block':
				return !isApart(event.fixture);
			case 'settings.become':
				return !isApart(event.fixture) || event.change.lead === 'on';
			case 'mains.plug':
				// without mains it has no earth for the line's common either
				return !isApart(event.fixture) || feeders.has(event.fixture) || isOnLine(`${event.fixture}:in`);
			case 'condition.become': {
				const { badSocket, extraLoads, leadDead, socketDead, breakerOff } = event.change;
				if (!isApart(event.fixture)) return true;
				if (leadDead || socketDead || breakerOff) return feeders.has(event.fixture);
				return (badSocket !== undefined || extraLoads !== undefined) && isOnLine(`${event.fixture}:in`);
			}
			case 'cable.become': {
				const ends = ports.get(event.cable)?.filter((end) => end !== null) ?? [];
				return Boolean(event.change.from || event.change.to) || ends.length < 2 || ends.some(isOnLine);
			}
			default:
				return true;
		}
	}
	return (events) => events.some(reaches);
}
