import { locale } from '#words/locale/index.ts';
import { fixtureWords } from '#words/reference/index.ts';
import { beamOf, edgeSpacing, luxAside, poolDiameter } from '../../../shared/optics/index.ts';
import { batteryHours, CAUTIOUS_SHARE, chargeHours, fullWatts, mainsWatts } from '../../../shared/power/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceTable } from './types.ts';

const { facts: words } = fixtureWords;

/** The throw that pools are told at, metres: what a ready-made bench stands at. */
const THROW = 3;

const tenth = (n: number): string => locale.number(Math.round(n * 10) / 10);
const hundredth = (n: number): string => locale.number(n, 2);
const yes = (is: boolean): string => (is ? words.yes : words.no);

/** The figures of one fixture, read off its profile or worked out from it. */
export function factTable(profile: Profile): ReferenceTable {
	const { battery, idleWatts, link } = profile.power;
	const { beam, field } = profile.optics;
	const full = fullWatts(profile);
	const watts = (n: number): string => fill(words.watts, { n: tenth(n) });
	const metres = (n: number): string => fill(words.metres, { n: hundredth(n) });
	const rows: [keyof typeof words.rows, string][] = [
		['supply', battery ? words.battery : words.mains],
		['idle', watts(idleWatts)],
		['full', watts(full)],
		['mains', watts(mainsWatts(profile))],
	];
	if (battery) {
		const { wattHours, chargeWatts } = battery;
		const hours = (n: number): string => fill(words.hours, { n: tenth(n) });
		rows.push(
			['battery', fill(words.wattHours, { n: wattHours })],
			['hours', hours(batteryHours(wattHours, full))],
			[
				'hoursCautious',
				fill(words.share, {
					hours: tenth(batteryHours(wattHours, full, CAUTIOUS_SHARE)),
					percent: CAUTIOUS_SHARE * 100,
				}),
			],
			['charge', fill(words.atLeast, { time: hours(chargeHours(wattHours, chargeWatts)) })],
		);
	}
	rows.push(
		['beam', fill(words.angles, { beam, field })],
		['pool', metres(poolDiameter(THROW, beam))],
		['lux', fill(words.lux, { n: Math.round(luxAside(beamOf(profile), THROW, 0)) })],
		['spacing', metres(edgeSpacing(THROW, beam))],
		['loads', locale.number(profile.unitLoads)],
		['follows', words.follows[profile.follows]],
		['sensor', yes(profile.sensor)],
		['microphone', yes(profile.microphone)],
		['link', yes(link)],
	);
	if (profile.panel.kind !== 'dip')
		rows.push(['lock', fill(words.unlock, { seconds: profile.panel.unlockHold / 1000 })]);
	return {
		caption: fill(words.caption, { name: profile.name }),
		head: words.head,
		rows: rows.map(([id, figure]) => [fill(words.rows[id], { metres: THROW }), figure]),
	};
}
