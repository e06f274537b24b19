import type { StockEntry } from './entry.ts';
import type { Question } from './panel/entry.ts';

/** What a figure of a fixture can be, with what its sentence is told. Words for each are in `content/en/stock`. */
export interface FigureFacts {
	beam: { degrees: number };
	field: { degrees: number };
	watts: { watts: number };
	lumens: { lumens: number };
	/** Where each colour of the light lies. */
	colours: { emitters: readonly string[] };
	feed: { feed: 'battery' | 'mains' };
	'watt-hours': { wattHours: number };
	charger: { watts: number };
	link: { has: boolean };
	idle: { watts: number };
	/** The panel and its menu, which no chart tells. */
	panel: Record<never, never>;
	/** The panel as its crew wrote it: how many keys and items. */
	'panel-own': { keys: number; items: number };
	/** How it acts, by the question. */
	'panel-answer': { question: Question; answer: string };
	/** Items of its menu that do nothing here. */
	'panel-idle': { items: readonly string[] };
	/** How long keys are held and displays wait. */
	'panel-times': Record<never, never>;
	defaults: Record<never, never>;
	follows: Record<never, never>;
	'unit-loads': { unitLoads: number };
	remote: Record<never, never>;
	/** How fast a strobe band flashes, flashes a second. */
	strobe: { slot: string; band: string; slow: number; fast: number };
	/** The chart gives a rate that is none of ours; it flashes at the nearest. */
	'strobe-clamped': { slot: string; band: string; found: number; rate: number };
	/** The colours and pace of a programme. */
	programme: { slot: string; band: string };
	/** The mix of a colour band. */
	mix: { slot: string; band: string };
	/** `off` in a shutter: steady light is assumed, and it could be no light. */
	off: { slot: string; band: string };
	/** A band, or all of a slot, that the simulator does nothing for. */
	'not-acted': { slot: string; band: string };
	/** Values the chart leaves out: nothing is assumed to happen. */
	gap: { slot: string; from: number; to: number };
	/** A slot the chart leaves out: it is assumed to do nothing. */
	'slot-missing': { slot: number };
	cells: { cells: number };
	/** A channel of bands that is of some cells: here it acts on all of them. */
	'cell-bands': { slot: string };
}

export type FigureCode = keyof FigureFacts;

/** A figure of a fixture, and whether a person gave it or it was assumed. */
export type Figure = {
	readonly [Code in FigureCode]: {
		readonly code: Code;
		readonly is: 'given' | 'assumed';
		readonly facts: Readonly<FigureFacts[Code]>;
	};
}[FigureCode];

/** Notes figures down as a profile is made. */
export class Figures {
	readonly all: Figure[] = [];

	note<Code extends FigureCode>(code: Code, is: Figure['is'], facts: FigureFacts[Code]): void {
		this.all.push({ code, is, facts } as unknown as Figure);
	}

	/** What was given, or else what is assumed; noted either way. */
	given<Code extends FigureCode>(
		code: Code,
		given: number | null,
		assumed: number,
		facts: (value: number) => FigureFacts[Code],
	): number {
		this.note(code, given === null ? 'assumed' : 'given', facts(given ?? assumed));
		return given ?? assumed;
	}
}

/** What is assumed where a label was not read, beside `ASSUMED` of `shared/profile`: round figures, and common practice too. */
export const UNREAD = Object.freeze({
	beam: 25,
	/** Field angle to beam angle. */
	fieldRatio: 1.7,
	wattHours: 150,
	chargeWatts: 40,
});

/** What feeds an entry: what was given, or the battery where a battery's figure was. */
export const feedOf = ({ feed, wattHours }: Pick<StockEntry, 'feed' | 'wattHours'>): 'battery' | 'mains' =>
	feed ?? (wattHours === null ? 'mains' : 'battery');

/** Field angle assumed for a beam angle, both in degrees. */
export const fieldOf = (beam: number): number => Math.min(175, Math.round(beam * UNREAD.fieldRatio));
