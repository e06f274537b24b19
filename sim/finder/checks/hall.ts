import { boxesOf, type RigSheet } from '../../../shared/sheet/index.ts';
import { contentOf, type Witness } from '../witness.ts';
import { type Check, check } from './types.ts';

/** The boxes between desk and fixtures. */
export function boxChecks(sheet: RigSheet): Check[] {
	return boxesOf(sheet).map(({ id }) =>
		check(
			{ kind: 'box-lamp', since: 2, sort: 'look', seconds: 4, place: id, at: id },
			(w) => (w.rig.gear.hallPower && w.rig.gear.boxes.some((box) => box.id === id && box.on) ? 'lit' : 'out'),
			(w) => `${w.rig.gear.hallPower}${contentOf(w.rig.gear.boxes)}`,
		),
	);
}

/** Whether a breaker for some of the hall's sockets is off, whoever asks. */
const isBreakerOff = ({ rig }: Witness): boolean =>
	[...rig.gear.units.values()].some(({ condition }) => condition.breakerOff);

/** The hall's supply, and the remote. */
export function hallChecks(meant: Witness): Check[] {
	const units = [...meant.rig.gear.units.values()];
	const hall = check(
		{ kind: 'hall-power', sort: 'look', seconds: 6, place: 'rig', at: 'desk' },
		(w) => (w.rig.gear.hallPower ? 'on' : 'off'),
		(w) => `${w.rig.gear.hallPower}`,
	);
	const breakers = units.some(({ plug }) => plug === 'wall')
		? [
				check(
					{ kind: 'breakers', since: 2, sort: 'look', seconds: 40, place: 'rig', at: 'hand', cautions: ['mains'] },
					(w) => (isBreakerOff(w) ? 'off' : 'on'),
					(w) => `${isBreakerOff(w)}`,
				),
			]
		: [];
	if (!meant.rig.gear.remote) return [hall, ...breakers];
	const remote = (w: Witness) => `${w.rig.gear.remote?.battery}${w.rig.gear.remote?.code}`;
	return [
		hall,
		...breakers,
		check(
			{ kind: 'remote-lamp', sort: 'look', seconds: 4, place: 'remote', at: 'hand' },
			(w) => (w.rig.gear.remote?.battery ? 'blinks' : 'dead'),
			remote,
		),
		check(
			{ kind: 'remote-code', sort: 'look', seconds: 8, place: 'remote', at: 'hand' },
			(w) => (w.rig.gear.remote?.code === meant.rig.gear.remote?.code ? 'as-meant' : 'other'),
			remote,
		),
	];
}
