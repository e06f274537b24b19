import type { Slot } from '../../../shared/profile/index.ts';
import type { Random } from '../../../shared/random/index.ts';
import { compileMode, makeAsk } from '../../light/index.ts';
import type { Condition, Range } from '../types.ts';
import { othersQuiet, type Patched, patched, quiet, shown, slot, slotsOf } from './patched.ts';
import { rangesOf } from './ranges.ts';
import { COBBLE, ids, type Made, PICKET, TALLOW } from './stage.ts';

// Kinds done at the desk. What a value does is asked of the data plane, never typed.

const hands = ['panel', 'power', 'desk'] as const;

export function deskPercent(random: Random): Made {
	const profile = random.pick([TALLOW, PICKET, COBBLE]);
	// the mode by cells would be the same entry eight times over
	const mode = random.pick(ids(profile.modes).filter((id) => id !== 'cells'));
	const { one, rig } = patched(
		random,
		profile,
		mode,
		'rig',
		random.chance(0.5) ? random.pick(ids(profile.held)) : null,
	);
	const percent = random.int(2, 19) * 5;
	const emitters = random.shuffle(ids(profile.emitters)).slice(0, random.pick([1, 1, 2]));
	const hasIntensity = slotsOf(one).some(({ drives }) => drives.kind === 'intensity');
	return {
		scene: 'rig',
		rig,
		goal: [
			...othersQuiet(one),
			...slotsOf(one).flatMap((it): Condition[] => {
				if (it.drives.kind === 'intensity') return [slot(one, it, shown(percent))];
				if (it.drives.kind !== 'emitter') return [];
				const isUp = emitters.includes(it.drives.emitter);
				return [slot(one, it, shown(isUp ? (hasIntensity ? 100 : percent) : 0))];
			}),
			{ is: 'lit', fixture: one.id },
		],
		hands,
		facts: { fixture: one.id, profile: profile.id, mode, address: one.address, emitters, percent },
	};
}

/** How far off the speed may be, either way, of 1 to 100. */
const SPEED_OFF = 2;

export function deskBand(random: Random): Made {
	const modes = [TALLOW, PICKET, COBBLE].flatMap((profile) =>
		profile.modes
			.filter(({ slots }) => slots.some(({ drives }) => drives.kind === 'speed'))
			.map(({ id }) => ({ profile, mode: id })),
	);
	const { profile, mode } = random.pick(modes);
	const { one, rig } = patched(random, profile, mode, 'rig', random.pick(ids(profile.held)));
	const slots = slotsOf(one);
	const bands = slots.flatMap((it) =>
		it.drives.kind === 'bands' ? it.drives.bands.map((band) => ({ it, effect: band.effect })) : [],
	);
	const timed = bands.flatMap(({ it, effect }) => {
		const programme = effect.do === 'programme' ? effect.programme : null;
		const kind = profile.programmes.find(({ id }) => id === programme)?.kind;
		return programme !== null && kind !== 'sound' ? [{ it, programme }] : [];
	});
	const { it: at, programme } = random.pick(timed);
	const speedSlot = slots.find(({ drives }) => drives.kind === 'speed') ?? at;
	const speed = random.int(5, 95);
	const which = profile.programmes.findIndex(({ id }) => id === programme);
	return {
		scene: 'rig',
		rig,
		goal: [
			...othersQuiet(one, at),
			slot(
				one,
				at,
				valuesThat(one, at, (ask) => ask.programme === which),
			),
			slot(
				one,
				speedSlot,
				valuesThat(one, speedSlot, (ask) => Math.abs(ask.speed - speed) <= SPEED_OFF),
			),
			...slots.flatMap((it) => (it.drives.kind === 'intensity' ? [slot(one, it, shown(100))] : [])),
		],
		hands,
		facts: { fixture: one.id, profile: profile.id, mode, address: one.address, programme, speed, off: SPEED_OFF },
	};
}

/** Values of one slot at which a frame that is otherwise at rest asks for this. */
function valuesThat(one: Patched, at: Slot, isSo: (ask: ReturnType<typeof makeAsk>) => boolean): Range[] {
	const chart = compileMode(one.profile, one.mode);
	const frame = new Uint8Array(512);
	for (const it of slotsOf(one))
		if (it.drives.kind === 'bands') frame[it.at - 1] = quiet(it.drives.bands)[0]?.from ?? 0;
	const ask = makeAsk(one.profile);
	return rangesOf(
		Array.from({ length: 256 }, (_, value) => value).filter((value) => {
			frame[at.at - 1] = value;
			chart.read(frame, 1, ask);
			return isSo(ask);
		}),
	);
}
