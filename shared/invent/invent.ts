import { InputError } from '../error/index.ts';
import { idByContent, type Profile } from '../profile/index.ts';
import { makeRandom, type Random } from '../random/index.ts';
import { inventModes } from './chart.ts';
import { inventSwitches } from './dip.ts';
import { inventLight } from './light.ts';
import { inventPanel } from './panel.ts';
import { type InventLevel, type InventNames, LAWS, type Law, type Making, type Without } from './types.ts';
import { Wordbook } from './wordbook.ts';

/**
 * A whole fixture that nobody has seen: the same seed, level, words and leavings-out give the same, always and everywhere. Its figures
 * are drawn, and stand for no real fixture.
 * @param seed a whole number from 0 to 2^53 - 1
 * @param level how much there is to it, and how regular
 * @param without laws and words that it is to have none of; a law is drawn from the rest, each as likely
 * @throws InputError `random.seed` for a seed out of range, `invent.words` where no law or no word for something is left
 */
export function inventFixture(seed: number, level: InventLevel, names: InventNames, without: Without = {}): Profile {
	const random = makeRandom(seed).fork(`invent ${level}`);
	const laws = LAWS.filter((each) => !without.laws?.includes(each));
	if (laws.length === 0) throw new InputError('invent.words', 'without.laws', { trouble: 'none-left', of: 'law' });
	const law: Law = random.fork('which law').pick(laws);
	const making: Making = { level, law, random, names };
	const words = new Wordbook(names, random.fork('words'), without.words ?? []);
	const shape = law !== 'dip' && level !== 'easy' && random.chance(0.3) ? 'bar' : 'wash';
	const cells = shape === 'bar' ? random.pick([1, 4, 5, 6, 8, 10, 12]) : 1;
	const light = inventLight(making, words);
	const modes = inventModes({ ...making, random: random.fork('modes') }, words, light, cells);
	const power = inventPower(
		random.fork('power'),
		law,
		light.emitters.reduce((sum, { watts }) => sum + watts, 0),
	);
	const sensor = law !== 'dip' && random.chance(power.battery ? 0.7 : 0.25);
	const parts = {
		modes,
		held: [...light.held],
		programmes: [...light.programmes],
		sensor,
		microphone: light.microphone,
	};
	const panel =
		law === 'dip'
			? inventSwitches(making, words, parts)
			: inventPanel({ ...making, random: random.fork('panel') }, words, { ...parts, power });
	const some = random.fork('rest');
	const beam = some.pick([8, 12, 15, 18, 22, 25, 30, 36, 45, 60]);
	const name = `${some.pick(names.fixtures)} ${cells > 1 ? cells : some.int(2, 99)}`;
	const profile: Profile = {
		version: 1,
		id: 'invented',
		name,
		about: names.about({ law, shape, emitters: light.emitters.length, isBattery: power.battery !== null }),
		shape,
		panel,
		power,
		optics: { beam, field: Math.round(beam * (1.4 + 0.5 * some.next())) },
		cells,
		emitters: [...light.emitters],
		...parts,
		follows: some.pick(['slot-one', 'own-address']),
		unitLoads: some.pick([1, 1, 1, 0.5, 0.25]),
		defaults: defaultsOf(some, parts),
	};
	return { ...profile, id: idByContent(name, 'invented', profile) };
}

function inventPower(random: Random, law: Law, watts: number): Profile['power'] {
	const idleWatts = random.pick([1, 1.5, 2, 3, 4, 6]);
	if (law !== 'dip' && random.chance(0.45)) {
		const wattHours = Math.round(watts * (2 + 4 * random.next()));
		return { battery: { wattHours, chargeWatts: Math.max(15, Math.round(wattHours / 3)) }, link: false, idleWatts };
	}
	return { battery: null, link: random.chance(0.6), idleWatts };
}

function defaultsOf(
	random: Random,
	{ modes, held, programmes, sensor }: Pick<Profile, 'modes' | 'held' | 'programmes' | 'sensor'>,
): Profile['defaults'] {
	const idOf = (things: readonly { readonly id: string }[]): string => random.pick(things).id;
	return {
		work: random.pick(['line', 'line', 'held']),
		lead: 'off',
		address: 1,
		mode: idOf(modes),
		held: idOf(held),
		programme: idOf(programmes),
		speed: random.pick([40, 50, 60]),
		level: 100,
		strobe: 0,
		loss: random.pick(['hold', 'dark']),
		curve: random.pick(['straight', 'square']),
		limit: 100,
		sensor: sensor ? random.pick(['open', 'shut']) : 'open',
		code: 1,
		hearing: random.pick([40, 50, 60]),
		lock: 'off',
		sleep: 0,
	};
}
