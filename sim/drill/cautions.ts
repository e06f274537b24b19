import { hasDataIn, hasMains, isPowered, isSwitchedOn } from '../fixture/index.ts';
import type { Rig } from '../rig/index.ts';
import type { Task } from './types.ts';
import { wayOn } from './way/index.ts';

/**
 * The cautions a drill must carry, by what its hands touch and what its lamps do: looked up on the rig at the start and along
 * the shortest way, so that nothing has to be remembered when a kind is written.
 * @param rig the drill's rig at the start; walked along the way
 */
export function cautionsFor(drill: Task, rig: Rig): Pick<Task, 'cautions' | 'disturbs'> {
	const walk = walkOf(drill, rig);
	const { fixtures } = drill.sheet;
	const isTouched = drill.hands.some((hand) => hand !== 'desk' && hand !== 'remote');
	const isShow = drill.scene === 'show';
	const disturbs = isShow && walk.takesAway;
	const cautions = [
		...(isShow ? ['live-show'] : []),
		...(isTouched && fixtures.some(({ place }) => place.overhead) ? ['hanging', 'height'] : []),
		...(drill.hands.includes('mains') ? ['mains'] : []),
		...(drill.scene === 'bench' && walk.charges ? ['batteries'] : []),
		...(walk.ultraviolet ? ['ultraviolet'] : []),
		...(walk.flashes ? ['flashing'] : []),
		...(drill.scene === 'bench' ? ['staring'] : []),
	];
	return { cautions, disturbs };
}

interface Walk {
	/** A lamp that gave light or had data had it no more at some step. */
	readonly takesAway: boolean;
	readonly charges: boolean;
	readonly ultraviolet: boolean;
	readonly flashes: boolean;
}

/** Looks at every lamp at the start and at the end, and with people in the room after each event between. */
function walkOf(drill: Task, rig: Rig): Walk {
	const way = wayOn(drill, rig);
	const start = sightsOf(rig);
	let takesAway = false;
	let seen = standOf(rig);
	for (const event of way) {
		if (event.type === 'clock.wait') rig.wait(event.ms);
		else rig.send(event);
		const stand = standOf(rig);
		// most presses of a key change nothing that a lamp could show
		const isNew = stand.some((part, i) => part !== seen[i]);
		seen = stand;
		if (drill.scene === 'show' && isNew && !takesAway) {
			const now = sightsOf(rig);
			takesAway = start.some((was, i) => (was.lit && now[i]?.lit !== true) || (was.data && now[i]?.data !== true));
		}
	}
	const all = [...start, ...sightsOf(rig)];
	return {
		takesAway,
		charges: drill.sheet.fixtures.some(
			({ id, plug }) => plug !== 'none' && (rig.gear.units.get(id)?.profile.power.battery ?? null) !== null,
		),
		ultraviolet: all.some((sight) => sight.ultraviolet),
		flashes: all.some((sight) => sight.flashes),
	};
}

/** What the light of a rig hangs on, to be compared part by part. */
const standOf = ({ gear }: Rig): readonly unknown[] => [
	gear.desk,
	gear.receptions,
	...[...gear.units.values()].flatMap(({ state }) => [state.context.settings, isSwitchedOn(state), hasMains(state)]),
];

function sightsOf(rig: Rig): { lit: boolean; data: boolean; ultraviolet: boolean; flashes: boolean }[] {
	return [...rig.gear.units].map(([id, unit]) => {
		const { light } = rig.look(id);
		return {
			lit: light.whole.brightness > 0 || light.whole.ultraviolet > 0,
			data: isPowered(unit.state) && hasDataIn(unit.state),
			ultraviolet: light.whole.ultraviolet > 0,
			flashes: light.flashes > 0,
		};
	});
}
