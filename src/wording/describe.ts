import { fixtureLine, lamps as lampWords, light as lightWords, warnings } from '#words/rig/index.ts';
import { askedOf, type Rig, type Sight } from '../../sim/rig/index.ts';
import { colourText } from './colour.ts';
import { fill, sentence } from './fill.ts';
import { plainKinds } from './kinds.ts';
import { fixtureName } from './names.ts';

export type SightLight = Sight['light'];
type Cell = SightLight['whole'];

/** Whether a person would call it dark: nothing is seen, and no ultraviolet comes out either. */
export const isDark = ({ brightness, ultraviolet }: Cell): boolean => brightness === 0 && ultraviolet === 0;

/** A light in words: colour, how bright it looks, flashes, movement, flicker. No name, no full stop. */
export function describeLight(light: SightLight): string {
	// what nobody sees does not move; one on damaged data jumps about, dark at one moment and lit at the next, and that is said throughout
	if (isDark(light.whole)) return [lightWords.dark, ...(light.flicker ? [lightWords.flicker] : [])].join(', ');
	return [
		coloursText(light),
		...(light.flashes > 0 ? [fill(lightWords.flashing, { rate: light.flashes }, plainKinds)] : []),
		...(light.moving ? [lightWords.moving] : []),
		...(light.flicker ? [lightWords.flicker] : []),
	].join(', ');
}

/** A fixture's light in words, and the level it was asked for, where it shows one. No name, no full stop. */
export function fixtureLight(rig: Rig, fixtureId: string): string {
	const { light } = rig.look(fixtureId);
	return [describeLight(light), ...askedText(rig, fixtureId, light)].join(', ');
}

/** The level it was asked for, as one part more; nothing where it is dark, for that is what is to be found out. */
export function askedText(rig: Rig, fixtureId: string, light: SightLight): string[] {
	const level = isDark(light.whole) ? null : askedOf(rig, fixtureId);
	return level === null ? [] : [fill(lightWords.asked, { level }, plainKinds)];
}

/** Colour and how bright it looks, of the whole light where its cells are alike and by runs of cells where not. */
export function coloursText({ cells, whole }: SightLight): string {
	const runs = new Map<string, { cells: number[]; cell: Cell }>();
	for (const [i, cell] of cells.entries()) {
		const key = `${cell.words}${plainKinds.bright(cell.strength * 100)}`;
		const run = runs.get(key);
		if (run) run.cells.push(i + 1);
		else runs.set(key, { cells: [i + 1], cell });
	}
	if (runs.size < 2) return cellText(cells[0] ?? whole);
	return [...runs.values()].map((run) => cellText(run.cell, run.cells)).join(', ');
}

function cellText(cell: Cell, cells: readonly number[] | null = null): string {
	const facts = { colour: colourText(cell.words), how: plainKinds.bright(cell.strength * 100), cells };
	if (isDark(cell)) return cells ? fill(lightWords.cellsDark, facts, plainKinds) : lightWords.dark;
	return fill(cells ? lightWords.cells : lightWords.lit, facts, plainKinds);
}

/** What has to be said with a light that can harm, as sentences. */
export function warningsFor(light: SightLight): string[] {
	return [
		...(light.flashes > 0 ? [warnings.flashing] : []),
		...(light.whole.ultraviolet > 0 ? [warnings.ultraviolet] : []),
	];
}

/** The small lamps on a fixture's back: 'power indicator lit, data indicator steady'. No full stop. */
function describeIndicators({ power, data, battery, sensor }: Sight['lamps']): string {
	return [
		lampWords.power[power],
		lampWords.data[data],
		...(battery ? [fill(lampWords.battery, { ...battery })] : []),
		...(sensor ? [lampWords.sensor[sensor]] : []),
	].join(', ');
}

/** The text twin of what is seen of a fixture, but for its display: its name, its light with its warnings, the lamps on its back. */
export function describeFixture(rig: Rig, fixtureId: string): string {
	const { light, lamps } = rig.look(fixtureId);
	return sentence(fixtureLine, {
		name: fixtureName(rig, fixtureId),
		light: fixtureLight(rig, fixtureId),
		warnings: warningsFor(light)
			.map((warning) => `${warning} `)
			.join(''),
		lamps: describeIndicators(lamps),
	});
}

/** The text twin of the whole rig, a line for each fixture, in the order of the sheet. */
export function describeRig(rig: Rig): string[] {
	return [...rig.gear.units.keys()].map((id) => describeFixture(rig, id));
}
