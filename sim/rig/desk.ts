import { InputError } from '../../shared/error/index.ts';
import { modeOf } from '../../shared/profile/index.ts';
import type { RigEvent } from '../event/index.ts';
import { type Desk, type DeskOutput, type Gear, levelsFrom, setLevel } from './gear.ts';
import { unitOf } from './step.ts';

type DeskEvent = Extract<RigEvent, { type: `desk.${string}` }>;

export const isDeskEvent = (event: RigEvent): event is DeskEvent => event.type.startsWith('desk.');

/** @throws InputError `event.desk` where there is no desk or no such output. */
export function deskEvent(gear: Gear, event: DeskEvent): void {
	const { desk } = gear;
	if (!desk) throw new InputError('event.desk', 'type', { trouble: 'no-desk' });
	gear.desk = changed(gear, desk, event);
	// any level may change what a battery fixture draws
	for (const id of gear.units.keys()) gear.stale.add(id);
}

function changed(gear: Gear, desk: Desk, event: DeskEvent): Desk {
	switch (event.type) {
		case 'desk.level': {
			const frame = desk.levels.get(event.universe)?.slice() ?? new Uint8Array(512);
			setLevel(frame, event.slot, event.level);
			return { ...desk, levels: new Map(desk.levels).set(event.universe, frame) };
		}
		case 'desk.recall':
			return { ...desk, levels: levelsFrom(event.levels) };
		case 'desk.master':
			return { ...desk, master: event.level };
		case 'desk.output':
			return withOutput(desk, event.output, { on: event.on });
		case 'desk.universe':
			return withOutput(desk, event.output, { universe: event.universe });
		case 'desk.start-code':
			return withOutput(desk, event.output, { startCode: event.code });
		case 'desk.patch': {
			const { fixture, universe, address, mode } = event;
			modeOf(unitOf(gear, fixture).profile, mode);
			return {
				...desk,
				patch: [...desk.patch.filter((patch) => patch.fixture !== fixture), { fixture, universe, address, mode }],
			};
		}
	}
}

function withOutput(desk: Desk, id: string, change: Partial<DeskOutput>): Desk {
	if (!desk.outputs.some((output) => output.id === id))
		throw new InputError('event.desk', 'output', {
			trouble: 'no-such-output',
			id,
			known: desk.outputs.map((output) => output.id),
		});
	return { ...desk, outputs: desk.outputs.map((output) => (output.id === id ? { ...output, ...change } : output)) };
}
