import { patchOf, stripsOf } from '../probes.ts';
import type { Witness } from '../witness.ts';
import type { CheckKind } from './types.ts';

export interface DeskKind extends CheckKind {
	/** `output`: once an output; `patch`: once a patched fixture; `desk`: once. */
	readonly per: 'output' | 'patch' | 'desk';
	read(w: Witness, place: string, meant: Witness): string;
}

const outputOf = (w: Witness, id: string) => w.rig.gear.desk?.outputs.find((output) => output.id === id);

/** Whether the levels of one kind of strip are as the sheet has them, as the desk's own patch shows them. */
function stripsRead(
	w: Witness,
	meant: Witness,
	fixture: string,
	wanted: (kind: string, id: string) => boolean,
): 'as-meant' | 'other' {
	const read = (of: Witness): number[] =>
		stripsOf(of.rig, fixture)
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
		read: (w, fixture, meant) => stripsRead(w, meant, fixture, (kind) => kind === 'intensity'),
	},
	{
		kind: 'desk-functions',
		per: 'patch',
		sort: 'look',
		seconds: 8,
		needs: ['desk'],
		read: (w, fixture, meant) => stripsRead(w, meant, fixture, (kind) => kind === 'bands' || kind === 'speed'),
	},
	{
		kind: 'desk-colour-strips',
		per: 'patch',
		sort: 'look',
		seconds: 10,
		needs: ['desk'],
		read: (w, fixture, meant) => stripsRead(w, meant, fixture, (kind) => kind === 'emitter'),
	},
];
