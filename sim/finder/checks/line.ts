import { SOUND_WIRES } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { dataLampAfter, type Rig } from '../../rig/index.ts';
import type { Witness } from '../witness.ts';
import type { CheckKind } from './types.ts';

export interface CableKind extends CheckKind {
	/** Whether it is about both its ends; what can be told anywhere along it is told from the floor. */
	readonly bothEnds: boolean;
	read(w: Witness, cable: string, meant: Witness): string;
}

const cableOf = (rig: Rig, id: string) => rig.gear.cables.find((cable) => cable.id === id);

/** What can be looked at on a cable. */
export const CABLE_LOOKS: readonly CableKind[] = [
	{
		kind: 'cable-ends',
		bothEnds: true,
		sort: 'look',
		seconds: 12,
		read: (w, id) => {
			const cable = cableOf(w.rig, id);
			if (!cable?.from) return 'near-out';
			return cable.to ? 'both-in' : 'far-out';
		},
	},
	{
		kind: 'cable-kind',
		bothEnds: false,
		sort: 'look',
		seconds: 12,
		read: (w, id) => cableOf(w.rig, id)?.kind ?? 'data',
	},
	{
		kind: 'cable-length',
		bothEnds: false,
		sort: 'look',
		seconds: 15,
		error: 0.05,
		read: (w, id, meant) =>
			(cableOf(w.rig, id)?.length ?? 0) > 2 * (cableOf(meant.rig, id)?.length ?? 0) ? 'longer' : 'as-meant',
	},
	{
		kind: 'cable-place',
		bothEnds: true,
		sort: 'look',
		seconds: 12,
		read: (w, id, meant) => {
			const [now, wanted] = [cableOf(w.rig, id), cableOf(meant.rig, id)];
			if (!now?.from || !now.to) return 'loose';
			return now.from === wanted?.from && now.to === wanted?.to ? 'as-meant' : 'elsewhere';
		},
	},
];

/** The data lamp of a fixture with the line ended there: nothing in its out socket but a terminator. What a tech does to split a line in half. */
export function lampWhenEnded({ rig }: Witness, fixture: string): string {
	const port = `${fixture}:out`;
	const { cables, terminators } = rig.gear;
	const lifted = cables.flatMap(({ id, from, to }): RigEvent[] =>
		from === port || to === port ? [{ type: 'cable.unplug', cable: id, end: from === port ? 'from' : 'to' }] : [],
	);
	return dataLampAfter(
		rig,
		fixture,
		terminators.includes(port) ? lifted : [...lifted, { type: 'terminator.fit', port }],
	);
}

/** The desk's cable, or the leader's, carried straight to a fixture: one known-good cable and nothing between. */
export function straightTo(w: Witness, source: string, fixture: string): Rig {
	return w.after(`straight ${source} ${fixture}`, (rig): RigEvent[] => {
		const ports = [source, `${fixture}:in`, `${fixture}:out`];
		const busy = rig.gear.cables.flatMap((cable): RigEvent[] =>
			(['from', 'to'] as const).flatMap((end): RigEvent[] =>
				cable[end] !== null && ports.includes(cable[end]) ? [{ type: 'cable.unplug', cable: cable.id, end }] : [],
			),
		);
		const ended: RigEvent[] = rig.gear.terminators.includes(`${fixture}:out`)
			? []
			: [{ type: 'terminator.fit', port: `${fixture}:out` }];
		const free: RigEvent[] = rig.gear.terminators
			.filter((port) => port === source || port === `${fixture}:in`)
			.map((port) => ({ type: 'terminator.remove', port }));
		const lay: RigEvent = {
			type: 'cable.lay',
			cable: {
				id: 'known-good',
				kind: 'data',
				length: 10,
				from: source,
				to: `${fixture}:in`,
				...SOUND_WIRES,
			},
		};
		return [...busy, ...free, lay, ...ended];
	});
}
