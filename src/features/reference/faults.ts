import { cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { weightReasons } from '#words/faults/index.ts';
import { fixtures } from '#words/fixtures/index.ts';
import { locale } from '#words/locale/index.ts';
import { cautionWords, faultWords } from '#words/reference/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import { bundledRig, quickSheet, RIG_IDS, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import type { PlacedFault } from '../../../sim/event/index.ts';
import { FAULTS, type Fault, type FaultFamily, type FaultSpot, MENDS } from '../../../sim/fault/index.ts';
import { faultCause, faultName, faultNameKey, fill, repairText } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

/** Fixtures on their own sound programmes, which no bundled rig has. */
const LISTENING = BUNDLED.flatMap(({ id, panel, programmes }): RigSheet[] => {
	const sound = programmes.find(({ kind }) => kind === 'sound');
	if (!sound || panel.kind === 'dip') return [];
	const sheet = quickSheet({ count: 1, linked: 'alone', profile: id });
	const set = { work: 'programme', programme: sound.id } as const;
	return [{ ...sheet, fixtures: sheet.fixtures.map((one) => ({ ...one, settings: { ...one.settings, ...set } })) }];
});

/** Fixtures with switches, one of which leads: no bundled rig has that. */
const SWITCHED = BUNDLED.filter(({ panel }) => panel.kind === 'dip').map(({ id }) =>
	quickSheet({ count: 2, linked: 'leader', profile: id }),
);

/** A line that a splitter sends on: no bundled rig has one either. */
function withSplitter(): RigSheet {
	const sheet = bundledRig('four-in-line');
	const [first, ...rest] = sheet.cables;
	if (!first) return sheet;
	const box = { id: 'splitter', name: faultWords.box, outputs: 2 };
	const out = { ...first, id: 'cable-0', from: 'splitter:1' };
	return readSheet({ ...sheet, splitters: [box], cables: [{ ...first, to: 'splitter:in' }, out, ...rest] });
}

/** A fault as one rig could have it. */
interface Example {
	readonly id: string;
	readonly name: string;
	readonly cells: readonly string[];
}

const exampleSheets = (): RigSheet[] => [...RIG_IDS.map(bundledRig), ...LISTENING, ...SWITCHED, withSplitter()];

/** How common each fault is taken to be, commonest first, with the reason and where that comes from: for a trainer to argue with. */
export function faultWeightSection(): ReferenceSection {
	const sheets = exampleSheets();
	const { heading, says, caption, head, standing } = faultWords.weights;
	const rows = FAULTS.toSorted((a, b) => b.weight - a.weight).map((fault) => {
		const reason = weightReasons[fault.id];
		return [
			firstName(fault, sheets),
			locale.number(fault.weight),
			reason?.why ?? '',
			reason ? standing[reason.standing] : '',
		];
	});
	return { id: 'how-common', heading, says, tables: [{ caption, head, look: 'cards', rows }] };
}

/** What a fault is called where the first of these rigs could have it. */
function firstName(fault: Fault, sheets: readonly RigSheet[]): string {
	for (const sheet of sheets) {
		const [spot] = fault.spots(sheet);
		if (spot) return faultName(sheet, placedAt(fault, spot));
	}
	return '';
}

const placedAt = ({ id }: Fault, { place, detail }: FaultSpot): PlacedFault => ({
	fault: id,
	place,
	...(detail === undefined ? {} : { detail }),
});

/** Every fault of the catalogue under its family, each by every name it goes by, worded where the first bundled rig could have it. */
export function faultSections(): ReferenceSection[] {
	const sheets = exampleSheets();
	const families = Object.keys(faultWords.headings) as FaultFamily[];
	return families.map((family) => {
		const heading = faultWords.headings[family];
		const shown = FAULTS.filter((fault) => fault.family === family).flatMap((fault) => examplesOf(fault, sheets));
		return {
			id: family,
			heading,
			says: faultWords.says,
			tables: [
				{
					caption: fill(faultWords.caption, { heading }),
					head: faultWords.head,
					ids: shown.map(({ id }) => id),
					look: 'cards',
					rows: shown.map(({ name, cells }) => [name, ...cells]),
				},
			],
		};
	});
}

/** One example for each name a fault goes by. */
function examplesOf(fault: Fault, sheets: readonly RigSheet[]): Example[] {
	const byName = new Map<string, Example>();
	for (const sheet of sheets)
		for (const spot of fault.spots(sheet)) {
			const placed = placedAt(fault, spot);
			const key = faultNameKey(sheet, placed);
			if (byName.has(key)) continue;
			const name = faultName(sheet, placed);
			const id = byName.size === 0 ? `fault-${fault.id}` : `fault-${fault.id}-${byName.size + 1}`;
			const repair = repairText(sheet, fault.repair, fault.repairAt?.(sheet, spot) ?? spot.place);
			const carried = [...new Set([...fault.cautions, ...MENDS[fault.repair].cautions])];
			const titles = carried.map((caution) => cautions[caution as keyof typeof cautions].title).join('; ');
			byName.set(key, { id, name, cells: [faultCause(sheet, placed), repair, titles || faultWords.none] });
		}
	return [...byName.values()];
}

/** Every caution, what can happen, and which bundled fixtures carry it. */
export function cautionSection(): ReferenceSection {
	return {
		id: 'where',
		heading: cautionWords.where.heading,
		says: [siteFirst],
		tables: [
			{
				caption: cautionWords.where.caption,
				head: cautionWords.where.head,
				look: 'cards',
				rows: cautionIds.map((id) => [
					cautions[id].title,
					cautions[id].harm,
					BUNDLED.filter((profile) => fixtures[profile.id]?.cautions.includes(id))
						.map(({ name }) => name)
						.join(', ') || cautionWords.where.none,
				]),
			},
		],
	};
}
