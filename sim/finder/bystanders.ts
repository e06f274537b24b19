import type { RigEvent } from '../event/index.ts';
import { joinedTo } from '../line/index.ts';
import type { Gear } from '../rig/index.ts';

/**
 * Tells of events whether they may reach some fixtures of a rig, so that a rig need not be opened with each fault to see that nothing has
 * changed there. A no is sure; a yes is not.
 */
export function reachOf(gear: Readonly<Gear>, fixtures: readonly string[]): (events: readonly RigEvent[]) => boolean {
	const isOnLine = joinedTo(gear, fixtures);
	const own = new Set(fixtures);
	const feeders = new Set([...gear.units.values()].map(({ plug }) => plug));
	const ports = new Map(gear.cables.map(({ id, from, to }) => [id, [from, to]] as const));

	/** Whether a change inside a fixture stays inside: it is none of those asked about, and leads nobody. */
	const isApart = (fixture: string): boolean => {
		const unit = gear.units.get(fixture);
		return unit !== undefined && !own.has(fixture) && unit.state.context.settings.lead !== 'on';
	};

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
