import type { Say } from '../../shared/paper/index.ts';
import type { Programme } from '../../shared/profile/index.ts';
import { type Rig, type Sight, why } from '../rig/index.ts';

/** Cells that look alike. */
interface CellRun {
	/** From 1. */
	readonly cells: readonly number[];
	/** Plain words of the colour. */
	readonly colour: string;
	/** Output of the strongest emitter, percent; 0: dark. */
	readonly percent: number;
	readonly xy: readonly [number, number] | null;
}

/** What a fixture does, as a person would tell it. */
export interface LookInWords {
	/** In the order of the cells. */
	readonly runs: readonly CellRun[];
	/** Flashes a second, in tenths; 0 steady. */
	readonly flashes: number;
	/** The programme it runs, where that is more than flashes. */
	readonly programme: Pick<Programme, 'id' | 'name' | 'kind'> | null;
}

/** Percent of output below which a light is too faint to be asked about, and least difference that is seen without a meter (ours, no source). */
const FAINT = 10;
const STEP = 20;
/** Least distance in CIE x, y between two colours with different names for anybody to tell them apart (ours, no source). */
const HUES_APART = 0.05;
/** Least ratio between two rates of flashing that are told apart by eye (ours, no source). */
const RATES_APART = 1.5;

/** What a fixture does now. Null where that takes more than a few words, or hangs on what the microphone hears. */
export function seenOf(rig: Rig, fixture: string): LookInWords | null {
	const { light } = rig.look(fixture);
	const flashes = Math.round(light.flashes * 10) / 10;
	const programme = programmeOf(rig, fixture);
	if (programme?.kind === 'sound' || light.flicker) return null;
	const isMore = programme !== null && programme.kind !== 'strobe' && light.moving;
	if (isMore && flashes > 0) return null;
	const runs = runsOf(light);
	if (runs.length > 2 || (!isMore && runs.some(({ percent }) => percent > 0 && percent < FAINT))) return null;
	return { runs: isMore ? [] : runs, flashes, programme: isMore ? programme : null };
}

/** The programme that decides the light, by the rig's reason trail. */
function programmeOf(rig: Rig, fixture: string): LookInWords['programme'] {
	const found = why(rig, fixture).find(({ id }) => id === 'slots.programme' || id === 'drive.programme');
	const programmes = rig.gear.units.get(fixture)?.profile.programmes ?? [];
	const programme = programmes.find(({ id }) => id === found?.facts['programme']);
	return programme ? { id: programme.id, name: programme.name, kind: programme.kind } : null;
}

function runsOf({ cells }: Sight['light']): CellRun[] {
	const runs: { cells: number[]; colour: string; percent: number; xy: CellRun['xy'] }[] = [];
	for (const [i, { words, levels, brightness, ultraviolet, xy }] of cells.entries()) {
		const percent = brightness === 0 && ultraviolet === 0 ? 0 : Math.round(100 * Math.max(...levels));
		// what is dark has no colour, whatever it would have
		const known = runs.find((run) => run.percent === percent && (percent === 0 || run.colour === words));
		if (known) known.cells.push(i + 1);
		else runs.push({ cells: [i + 1], colour: words, percent, xy });
	}
	return runs;
}

/** Whether anybody would see that these are not the same. */
export function tellsApart(a: LookInWords, b: LookInWords): boolean {
	if (a.programme || b.programme) return a.programme?.kind !== b.programme?.kind;
	if (a.flashes > 0 !== b.flashes > 0) return true;
	if (a.flashes > 0 && Math.max(a.flashes, b.flashes) / Math.min(a.flashes, b.flashes) >= RATES_APART) return true;
	return a.runs.some((run) =>
		run.cells.some((cell) => {
			const other = b.runs.find(({ cells }) => cells.includes(cell));
			return other !== undefined && runsApart(run, other);
		}),
	);
}

function runsApart(a: CellRun, b: CellRun): boolean {
	if (a.percent === 0 || b.percent === 0) return a.percent !== b.percent;
	if (Math.abs(a.percent - b.percent) >= STEP) return true;
	if (a.colour === b.colour) return false;
	if (!a.xy || !b.xy) return true;
	return Math.hypot(a.xy[0] - b.xy[0], a.xy[1] - b.xy[1]) >= HUES_APART;
}

/** It in words. */
export function saySeen({ runs, flashes: rate, programme }: LookInWords): Say {
	if (programme) return { say: 'look-programme', facts: { name: programme.name, does: programme.kind } };
	const [first, second] = runs;
	if (!first || (first.percent === 0 && !second)) return { say: 'look-dark', facts: {} };
	const { colour, percent } = first;
	if (!second) return { say: 'look-lit', facts: { colour, percent, rate } };
	return {
		say: 'look-cells',
		facts: {
			cells: first.cells,
			colour: percent > 0 ? colour : null,
			percent,
			otherCells: second.cells,
			otherColour: second.percent > 0 ? second.colour : null,
			otherPercent: second.percent,
			rate,
		},
	};
}
