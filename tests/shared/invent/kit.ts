import { INVENT_LEVELS, type InventLevel, type Law } from '../../../shared/invent/index.ts';
import { lawOf, type Profile } from '../../../shared/profile/index.ts';
import { invent } from '../../../src/features/invented/index.ts';

/** The law of an invented fixture, by its panel alone. */
export function lawIn({ panel }: Profile): Law {
	if (panel.kind === 'dip') return 'dip';
	if (lawOf(panel).shape === 'flat') return 'flat';
	if (panel.keys.includes('left')) return 'knob';
	return panel.kind === 'code' ? 'tree-code' : 'tree-text';
}

/** The level of a seed, in turn. */
export const levelOf = (seed: number): InventLevel => INVENT_LEVELS[seed % INVENT_LEVELS.length] as InventLevel;

/** Fixtures of seeds from one on, levels in turn. */
export const inventions = (count: number, from = 0): Profile[] =>
	Array.from({ length: count }, (_, i) => invent(from + i, levelOf(i)));

/** All that a panel can show as words: labels of items, values and questions. */
export function labelsOf({ panel }: Profile): string[] {
	if (panel.kind === 'dip')
		return [
			...panel.slides.flatMap(({ title, positions }) => [title, ...positions.map(({ label }) => label)]),
			...panel.fields.flatMap(({ title, choices }) => [title, ...choices.map((choice) => choice.title)]),
		];
	return panel.menu.flatMap((item) =>
		[item, ...(item.kind === 'menu' ? item.items : [])].flatMap((each) => [
			each.label,
			...(each.kind === 'choice' ? each.options.map(({ label }) => label) : []),
			...(each.kind === 'action' ? [each.ask] : []),
		]),
	);
}

/** All that a chart can show as words. */
export const chartWordsOf = ({ modes }: Profile): string[] =>
	modes.flatMap(({ slots }) =>
		slots.flatMap(({ name, drives }) => [
			name,
			...(drives.kind === 'bands' ? drives.bands.map((band) => band.name) : []),
		]),
	);
