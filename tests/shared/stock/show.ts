import type { Mark, ReadChart } from '../../../shared/stock/index.ts';

/** A chart as read, in lines to be read by eye: a mode, its channels with their bands in brackets, and each mark with its place. */
export function shownChart({ modes, marks }: ReadChart): string {
	const slots = modes.flatMap((mode, i) => [
		...(modes.length > 1 || mode.name !== '' ? [`mode ${mode.name || i + 1}`] : []),
		...mode.slots.map(({ at, fine, name, words, bands }) =>
			[
				`${at}${fine === undefined ? '' : `+${fine}`} ${name}${words === '' ? '' : ` (${words})`}`,
				...bands.map((band) => `[${`${band.from}-${band.to} ${band.words}`.trim()}]`),
			]
				.join(' ')
				.trimEnd(),
		),
	]);
	return [...slots, ...marks.map(shownMark)].join('\n');
}

const shownMark = ({ code, place, facts }: Mark): string =>
	`! ${place.line}:${place.column} ${code} ${Object.values(facts).join(' ')}`.trimEnd();
