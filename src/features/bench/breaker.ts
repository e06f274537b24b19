import { GOOD_WIRES } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { UNHARMED } from '../../../sim/light/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';

/** A thing that can be broken: a cable, a fixture, a desk output. */
export type BreakTarget =
	| { readonly kind: 'cable'; readonly id: string }
	| { readonly kind: 'fixture'; readonly id: string }
	| { readonly kind: 'output'; readonly id: string };

export const targetKey = ({ kind, id }: BreakTarget): string => `${kind}:${id}`;

/** The target a key names, if it is still on the bench. */
export function targetOf(rig: Rig, key: string): BreakTarget | null {
	const colon = key.indexOf(':');
	const kind = key.slice(0, colon);
	const id = key.slice(colon + 1);
	const { cables, units, desk } = rig.gear;
	if (kind === 'cable') return cables.some((cable) => cable.id === id) ? { kind, id } : null;
	if (kind === 'fixture') return units.has(id) ? { kind, id } : null;
	if (kind === 'output') return desk?.outputs.some((output) => output.id === id) ? { kind, id } : null;
	return null;
}

/** What puts everything right that the drawer can break: wires, conditions, start codes, the hall's mains. */
export function repairEvents(rig: Rig): RigEvent[] {
	const { cables, units, desk, hallPower } = rig.gear;
	return [
		...(hallPower ? [] : [{ type: 'hall.power', on: true } as const]),
		...cables
			.filter(({ common, minus, plus, swapped }) => swapped || [common, minus, plus].includes('open'))
			.map(({ id }) => ({ type: 'cable.become', cable: id, change: GOOD_WIRES }) as const),
		...[...units]
			.filter(([, { condition }]) => JSON.stringify(condition) !== JSON.stringify(UNHARMED))
			.map(([fixture]) => ({ type: 'condition.become', fixture, change: UNHARMED }) as const),
		...(desk?.outputs ?? [])
			.filter(({ startCode }) => startCode !== 0)
			.map(({ id }) => ({ type: 'desk.start-code', output: id, code: 0 }) as const),
	];
}
