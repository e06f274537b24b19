import { oncePer } from '../../../shared/memo/index.ts';
import { GOOD_WIRES, type SheetCable, splitPort } from '../../../shared/sheet/index.ts';
import type { RigEvent } from '../../event/index.ts';
import { driveOf, isPowered } from '../../fixture/index.ts';
import { dataIndicatorAfter, type Rig, type Unit } from '../../rig/index.ts';
import { fadersOf, patchOf } from '../probes.ts';
import { contentOf, type Witness } from '../witness.ts';
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
export function indicatorWhenEnded({ rig }: Witness, fixture: string): string {
	const port = `${fixture}:out`;
	const { cables, terminators } = rig.gear;
	const lifted = cables.flatMap(({ id, from, to }): RigEvent[] =>
		from === port || to === port ? [{ type: 'cable.unplug', cable: id, end: from === port ? 'from' : 'to' }] : [],
	);
	return dataIndicatorAfter(
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
				...GOOD_WIRES,
			},
		};
		return [...busy, ...free, lay, ...ended];
	});
}

export interface DeskKind extends CheckKind {
	/** `output`: once an output; `patch`: once a patched fixture; `desk`: once. */
	readonly per: 'output' | 'patch' | 'desk';
	read(w: Witness, place: string, meant: Witness): string;
}

const outputOf = (w: Witness, id: string) => w.rig.gear.desk?.outputs.find((output) => output.id === id);

/** Whether the levels of one kind of fader are as the sheet has them, as the desk's own patch shows them. */
function fadersRead(
	w: Witness,
	meant: Witness,
	fixture: string,
	wanted: (kind: string, id: string) => boolean,
): 'as-meant' | 'other' {
	const read = (of: Witness): number[] =>
		fadersOf(of.rig, fixture)
			.filter(({ slot }) => wanted(slot.drives.kind, slot.id))
			.map(({ at, universe }) => of.rig.gear.desk?.levels.get(universe)?.[at - 1] ?? 0);
	return JSON.stringify(read(w)) === JSON.stringify(read(meant)) ? 'as-meant' : 'other';
}

/** What can be looked at on the desk. Showing is not sending: these are the desk's own screen. */
export const DESK_LOOKS: readonly DeskKind[] = [
	{
		kind: 'desk-output',
		per: 'output',
		sort: 'look',
		seconds: 5,
		needs: ['desk'],
		read: (w, id) => (w.rig.gear.hallPower && outputOf(w, id)?.on ? 'on' : 'off'),
	},
	{
		kind: 'desk-universe',
		per: 'output',
		sort: 'look',
		seconds: 15,
		needs: ['desk'],
		read: (w, id, meant) => (outputOf(w, id)?.universe === outputOf(meant, id)?.universe ? 'as-meant' : 'other'),
	},
	{
		kind: 'desk-master',
		per: 'desk',
		sort: 'look',
		seconds: 4,
		needs: ['desk'],
		read: (w) => {
			const master = w.rig.gear.desk?.master ?? 255;
			return master === 0 ? 'out' : master < 200 ? 'low' : 'up';
		},
	},
	{
		kind: 'desk-live',
		since: 2,
		per: 'desk',
		sort: 'try',
		seconds: 4,
		needs: ['desk'],
		disturbs: true,
		read: (w) => w.rig.gear.desk?.held?.by ?? 'live',
	},
	{
		kind: 'desk-sends',
		since: 2,
		per: 'output',
		sort: 'look',
		seconds: 15,
		needs: ['desk'],
		read: (w, id, meant) => (outputOf(w, id)?.startCode === outputOf(meant, id)?.startCode ? 'as-meant' : 'other'),
	},
	{
		kind: 'desk-patch',
		per: 'patch',
		sort: 'look',
		seconds: 20,
		needs: ['desk'],
		read: (w, fixture, meant) =>
			JSON.stringify(patchOf(w.rig, fixture)) === JSON.stringify(patchOf(meant.rig, fixture)) ? 'as-meant' : 'other',
	},
	{
		kind: 'desk-intensity',
		per: 'patch',
		sort: 'look',
		seconds: 6,
		needs: ['desk'],
		read: (w, fixture, meant) => fadersRead(w, meant, fixture, (kind) => kind === 'intensity'),
	},
	{
		kind: 'desk-functions',
		per: 'patch',
		sort: 'look',
		seconds: 8,
		needs: ['desk'],
		read: (w, fixture, meant) => fadersRead(w, meant, fixture, (kind) => kind === 'bands' || kind === 'speed'),
	},
	{
		kind: 'desk-colour-strips',
		per: 'patch',
		sort: 'look',
		seconds: 10,
		needs: ['desk'],
		read: (w, fixture, meant) => fadersRead(w, meant, fixture, (kind) => kind === 'emitter'),
	},
];

type Plugs = ReadonlyMap<string, readonly SheetCable[]>;

/** Cables by what they are plugged into: a desk's socket, or a device through which they go on. */
const plugsOf = oncePer((cables: readonly SheetCable[]): Plugs => {
	const plugs = new Map<string, SheetCable[]>();
	for (const cable of cables) {
		for (const port of [cable.from, cable.to]) {
			if (port === null) continue;
			const list = plugs.get(nodeOf(port));
			if (list) list.push(cable);
			else plugs.set(nodeOf(port), [cable]);
		}
	}
	return plugs;
});

/** A desk's sockets are apart from each other; what is plugged into any other device hangs together. */
const nodeOf = (port: string): string => (port.startsWith('desk:') ? port : splitPort(port).device);

/** A text for what is plugged into a fixture. */
export function pluggedInto({ gear }: Rig, fixture: string): string {
	const cables = plugsOf(gear.cables).get(fixture) ?? [];
	return `${cables.map(contentOf)},${gear.terminators.includes(`${fixture}:out`)}`;
}

/**
 * A text of all that decides what a fixture's data lamp does once the line is ended there: the fixture's own power and drive, and
 * everything that still hangs together with it through its in socket. What was past the cut cannot matter.
 */
export function wiredUpTo({ gear }: Rig, fixture: string): string {
	const plugs = plugsOf(gear.cables);
	const cut = `${fixture}:out`;
	const seen = new Set<string>([fixture]);
	let text = `${contentOf(gear.desk?.outputs)}${gear.hallPower}${contentOf(gear.boxes)}`;
	for (const node of seen) {
		const unit = gear.units.get(node);
		if (unit) text += nodeText(unit);
		for (const cable of plugs.get(node) ?? []) {
			if (cable.from === cut || cable.to === cut) continue;
			text += `,${contentOf(cable)}`;
			for (const port of [cable.from, cable.to]) if (port !== null) seen.add(nodeOf(port));
		}
	}
	for (const port of gear.terminators) if (seen.has(nodeOf(port))) text += `;${port}`;
	return `${text}#${indicatorOf(gear.units.get(fixture))}`;
}

/** What a fixture on the way is to the line, whatever else it does. */
const nodeText = oncePer((unit: Unit): string => {
	const { receiverDead, badSocket, extraLoads } = unit.condition;
	const leads = driveOf(unit.state) === 'leading';
	return `|${unit.placed.id}${leads ? 'L' : ''}${unit.plug !== 'none' ? 'e' : ''}${receiverDead ? 'd' : ''}${badSocket ?? ''}${extraLoads || ''}`;
});

/** What a fixture's data lamp hangs on in the fixture itself. */
function indicatorOf(unit: Unit | undefined): string {
	return unit ? `${isPowered(unit.state)}${driveOf(unit.state)}` : '';
}
