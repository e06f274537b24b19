import type { RigEvent } from '../../event/index.ts';
import type { Rig } from '../../rig/index.ts';
import type { Witness } from '../witness.ts';
import type { CheckKind } from './types.ts';

export interface CableKind extends CheckKind {
	read(w: Witness, cable: string, meant: Witness): string;
}

const cableOf = (rig: Rig, id: string) => rig.gear.cables.find((cable) => cable.id === id);

/** What can be looked at on a cable. */
export const CABLE_LOOKS: readonly CableKind[] = [
	{
		kind: 'cable-ends',
		sort: 'look',
		seconds: 12,
		read: (w, id) => {
			const cable = cableOf(w.rig, id);
			if (!cable?.from) return 'near-out';
			return cable.to ? 'both-in' : 'far-out';
		},
	},
	{ kind: 'cable-kind', sort: 'look', seconds: 12, read: (w, id) => cableOf(w.rig, id)?.kind ?? 'data' },
	{
		kind: 'cable-length',
		sort: 'look',
		seconds: 15,
		error: 0.05,
		read: (w, id, meant) =>
			(cableOf(w.rig, id)?.length ?? 0) > 2 * (cableOf(meant.rig, id)?.length ?? 0) ? 'longer' : 'as-meant',
	},
	{
		kind: 'cable-place',
		sort: 'look',
		seconds: 12,
		read: (w, id, meant) => {
			const [now, wanted] = [cableOf(w.rig, id), cableOf(meant.rig, id)];
			if (!now?.from || !now.to) return 'loose';
			return now.from === wanted?.from && now.to === wanted?.to ? 'as-meant' : 'elsewhere';
		},
	},
];

/** A known-good cable in place of one: what reaches the fixtures past it. */
export function withGoodCable(w: Witness, meant: Witness, id: string): Rig {
	const good = cableOf(meant.rig, id);
	if (!good) return w.rig;
	const { id: _, ...change } = good;
	return w.after(`good ${id}`, (): RigEvent[] => [{ type: 'cable.become', cable: id, change }]);
}

/** The line ended at a fixture: nothing plugged into its out socket, and a terminator there. What the tech does to split a line in half. */
export function endedAt(w: Witness, fixture: string): Rig {
	return w.after(`ended ${fixture}`, (rig): RigEvent[] => {
		const port = `${fixture}:out`;
		const lifted = rig.gear.cables.filter(({ from, to }) => from === port || to === port);
		const fit: RigEvent[] = rig.gear.terminators.includes(port) ? [] : [{ type: 'terminator.fit', port }];
		return [
			...lifted.map(
				({ id, from }): RigEvent => ({ type: 'cable.unplug', cable: id, end: from === port ? 'from' : 'to' }),
			),
			...fit,
		];
	});
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
				common: 'sound',
				minus: 'sound',
				plus: 'sound',
				swapped: false,
			},
		};
		return [...busy, ...free, lay, ...ended];
	});
}
