import { fixtures } from '#words/fixtures/index.ts';
import { locale } from '#words/locale/index.ts';
import { fixtureWords } from '#words/reference/index.ts';
import { formatLevel, middleOf } from '../../../shared/dmx/index.ts';
import { beamOf, edgeSpacing, luxAside, poolDiameter } from '../../../shared/optics/index.ts';
import { batteryHours, CAUTIOUS_SHARE, chargeHours, fullWatts, mainsWatts } from '../../../shared/power/index.ts';
import {
	type Band,
	BUNDLED,
	footprintOf,
	type Mode,
	type Profile,
	type Slot,
	settingsOn,
} from '../../../shared/profile/index.ts';
import { NO_OPEN_ROWS, type OpenRows, UNCHECKED } from '../../../shared/stock/index.ts';
import { fill, modeCalled, partCalled } from '../../wording/index.ts';
import { switchNote, switchTables, wayNote, wayTable } from './panel.ts';
import type { ReferenceSection, ReferenceTable } from './types.ts';

/** One section a bundled fixture: what it is, its figures, its panel, its modes. */
export const fixtureSections = (): ReferenceSection[] => BUNDLED.map((profile) => profileSection(profile));

/**
 * The same of any fixture; one that is not bundled has no words of its own, and no cautions.
 * @param open the rows of its charts that nobody has held against the manual: each is marked
 */
export function profileSection(profile: Profile, open: OpenRows = NO_OPEN_ROWS): ReferenceSection {
	const { id, name, panel, modes } = profile;
	const words = fixtures[id];
	return {
		id,
		heading: name,
		says: [words?.introduction ?? profile.about, panel.kind === 'dip' ? switchNote(panel) : wayNote(panel)],
		tables: [
			factTable(profile),
			...(panel.kind === 'dip' ? switchTables(profile, panel) : [wayTable(profile, panel)]),
			...modes.map((mode, i) => chartTable(profile, mode, i, open)),
		],
		cautions: words?.cautions ?? [],
	};
}

const { facts: words } = fixtureWords;

/** The throw that pools are told at, metres: what a ready-made bench stands at. */
const THROW = 3;

const tenth = (n: number): string => locale.number(Math.round(n * 10) / 10);
const hundredth = (n: number): string => locale.number(n, 2);
const yes = (is: boolean): string => (is ? words.yes : words.no);

/** The figures of one fixture, read off its profile or worked out from it. */
function factTable(profile: Profile): ReferenceTable {
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
	if (profile.panel.kind !== 'dip' && settingsOn(profile.panel).has('lock'))
		rows.push(['lock', fill(words.unlock, { seconds: profile.panel.unlockHold / 1000 })]);
	return {
		caption: fill(words.caption, { name: profile.name }),
		head: words.head,
		rows: rows.map(([id, figure]) => [fill(words.rows[id], { metres: THROW }), figure]),
	};
}

const { chart: chartWords } = fixtureWords;

/** Every slot and band of a mode. What to type for a band has a column only where there are bands. */
function chartTable(profile: Profile, mode: Mode, index: number, open: OpenRows): ReferenceTable {
	const columns = mode.slots.some(({ drives }) => drives.kind === 'bands')
		? chartWords.head.length
		: chartWords.head.length - 1;
	const caption = fill(chartWords.caption, { name: profile.name, mode: modeCalled(mode.name), n: footprintOf(mode) });
	return {
		caption: open.heading(index) ? `${caption} ${UNCHECKED}` : caption,
		head: chartWords.head.slice(0, columns),
		rows: [...mode.slots]
			.sort((a, b) => a.at - b.at)
			.flatMap((slot) => rowsOf(slot, (values, isFirst) => open.row(index, slot.at, values, isFirst)))
			.map((row) => row.slice(0, columns)),
	};
}

/** @param isOpen whether nobody has held a row against the manual yet */
function rowsOf(slot: Slot, isOpen: (values: Band | null, isFirst: boolean) => boolean): string[][] {
	const marked = (text: string, values: Band | null, isFirst: boolean): string =>
		isOpen(values, isFirst) ? `${text} ${UNCHECKED}` : text;
	const at = slot.fine === undefined ? `${slot.at}` : fill(chartWords.fine, { coarse: slot.at, fine: slot.fine });
	const { drives } = slot;
	if (drives.kind !== 'bands') {
		const does = marked(chartWords.drives[drives.kind], null, true);
		return [[at, partCalled(slot.name), chartWords.all, does, '']];
	}
	return drives.bands.map((band, i) => [
		at,
		partCalled(slot.name),
		fill(chartWords.band, { from: `${band.from}`, to: band.to }),
		marked(doesText(band), band, i === 0),
		formatLevel(middleOf(band)),
	]);
}

function doesText({ name, effect }: Band): string {
	return effect.do === 'strobe'
		? fill(chartWords.strobe, { name, slow: effect.slow, fast: effect.fast })
		: partCalled(name);
}
