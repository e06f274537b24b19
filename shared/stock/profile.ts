import {
	checkProfile,
	footprintOf,
	type Mode,
	type Profile,
	type Programme,
	type Slot,
	type StaticColour,
} from '../profile/index.ts';
import { murmur3Text } from '../random/index.ts';
import { type EffectHelp, effectOf, type ProgrammeWord } from './effects.ts';
import { type EmitterId, emitterIn, emittersFrom } from './emitters.ts';
import type { StockEntry } from './entry.ts';
import { ASSUMED, type Figure, Figures, feedOf } from './figures.ts';
import { type PanelNames, standInPanel } from './panel.ts';
import { readChart } from './read.ts';
import type { ChartMode, ChartSlot, Mark, MarkCode, ReadChart } from './types.ts';

/** Names for what a chart leaves without one, from `content/`. */
export interface StockNames {
	readonly panel: PanelNames;
	readonly about: (emitters: number, isBattery: boolean) => string;
	readonly mode: (slots: number) => string;
	readonly slot: (at: number) => string;
	readonly band: (from: number, to: number) => string;
	readonly fine: (slot: string) => string;
	readonly emitters: Readonly<Record<EmitterId, string>>;
	readonly programme: Readonly<Record<ProgrammeWord, string>>;
	/** A fixture whose entry has no name. */
	readonly unnamed: string;
}

/** What an entry comes to. */
export interface StockFixture {
	readonly chart: ReadChart;
	/** Null where the chart cannot be used as it stands: see `stops`. */
	readonly profile: Profile | null;
	/** Every figure of it, and whether it was given or assumed. */
	readonly figures: readonly Figure[];
	/** Marks that must be put right first. */
	readonly stops: readonly Mark[];
}

/** Marks with which a chart says two things at once, so that no fixture can be made of it. */
const STOPS: ReadonlySet<MarkCode> = new Set<MarkCode>([
	'no-slots',
	'overlap',
	'reversed',
	'past-255',
	'slot-twice',
	'slot-past-512',
]);

const INTENSITY = /\b(?:dimmer|dimming|intensity|master|brightness)\b/i;
const SPEED = /\b(?:speed|pace|tempo)\b/i;
const PLAIN =
	/^(?:|.*\b(?:dim|dark|bright|brightness|intensity|full|max(?:imum)?|min(?:imum)?|level)\b.*|.*%.*|\d+ ?(?:-|–|to) ?\d+)$/i;
const CELL = /\b(?:cell|pixel|segment|section|zone|head)s? ?(\d{1,2})(?: ?(?:-|–|to) ?(\d{1,2}))?/i;

/**
 * The fixture that an entry describes. What the chart and the label do not say is assumed, and `figures` says so of each. The panel
 * stands in for the real one. The profile's id changes with all that is in it, so that a bench keeps the one it was set up with.
 */
export function stockFixture(entry: StockEntry, names: StockNames): StockFixture {
	const chart = readChart(entry.chart);
	const stops = chart.marks.filter(({ code }) => STOPS.has(code));
	if (stops.length > 0 || chart.modes.length === 0) return { chart, profile: null, figures: [], stops };
	const figures = new Figures();
	const profile = new Maker(entry, chart.modes, figures, names).profile();
	checkProfile(profile);
	return { chart, profile, figures: figures.all, stops };
}

const title = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text);
const slug = (text: string): string => {
	const plain = text
		.toLowerCase()
		.replaceAll(/[^a-z0-9]+/g, '-')
		.replaceAll(/^[^a-z]+|-+$/g, '')
		.slice(0, 30);
	return plain === '' ? 'x' : plain;
};

/** An id made of words, and not among those taken: with a number behind where it must. */
function freshId(words: string, taken: readonly { readonly id: string }[]): string {
	const base = slug(words);
	for (let n = 1; ; n++) {
		const id = n === 1 ? base : `${base}-${n}`;
		if (taken.every((each) => each.id !== id)) return id;
	}
}

class Maker {
	private readonly entry: StockEntry;
	private readonly modes: readonly ChartMode[];
	private readonly figures: Figures;
	private readonly names: StockNames;
	private readonly emitters: readonly EmitterId[];
	private readonly held: StaticColour[] = [];
	private readonly programmes: Programme[] = [];
	private cells = 1;

	constructor(entry: StockEntry, modes: readonly ChartMode[], figures: Figures, names: StockNames) {
		this.entry = entry;
		this.modes = modes;
		this.figures = figures;
		this.names = names;
		const named = modes.flatMap(({ slots }) =>
			slots.flatMap((slot) => (isPlain(slot) ? (emitterIn(slot.name) ?? []) : [])),
		);
		// a chart that speaks of ultraviolet anywhere carries its caution
		if (this.speaksOf(/\bultra[ -]?violet\b|\buv\b/i)) named.push('ultraviolet');
		this.emitters = named.length > 0 ? [...new Set(named)] : ['white'];
	}

	profile(): Profile {
		const { entry, figures, names, emitters } = this;
		const feed = feedOf(entry);
		const isFeedGiven = entry.feed !== null || entry.wattHours !== null;
		const watts = figures.given('watts', entry.watts, emitters.length * ASSUMED.wattsAnEmitter, (each) => ({
			watts: each,
		}));
		figures.note('colours', 'assumed', { emitters: emitters.map((id) => names.emitters[id].toLowerCase()) });
		const lit = emittersFrom(emitters, names.emitters, Math.max(1, watts - ASSUMED.idleWatts), entry.lumens);
		const total = Math.round(lit.reduce((sum, { lumens }) => sum + lumens, 0));
		figures.note('lumens', entry.lumens === null ? 'assumed' : 'given', { lumens: total });
		const beam = figures.given('beam', entry.beam, ASSUMED.beam, (degrees) => ({ degrees }));
		const field = Math.min(175, Math.round(beam * ASSUMED.fieldRatio));
		figures.note('field', 'assumed', { degrees: field });
		figures.note('feed', isFeedGiven ? 'given' : 'assumed', { feed });
		for (const { id, name } of lit) this.held.push({ id, name: name.toLowerCase(), levels: { [id]: 255 } });
		this.programme('fade');
		const modes: Mode[] = [];
		for (const mode of this.modes) modes.push(this.mode(mode, modes));
		if (this.cells > 1) figures.note('cells', 'assumed', { cells: this.cells });
		const profile: Profile = {
			version: 1,
			id: 'own',
			name: entry.name.trim() === '' ? names.unnamed : entry.name.trim(),
			about: names.about(lit.length, feed === 'battery'),
			shape: entry.shape,
			panel: standInPanel({ modes, held: this.held, programmes: this.programmes }, footprintOf, names.panel),
			power: this.power(feed),
			optics: { beam, field },
			cells: this.cells,
			emitters: lit,
			held: this.held,
			programmes: this.programmes,
			modes,
			sensor: false,
			microphone: this.programmes.some(({ kind }) => kind === 'sound'),
			follows: 'slot-one',
			unitLoads: ASSUMED.unitLoads,
			defaults: {
				work: 'line',
				lead: 'off',
				address: 1,
				mode: (modes[0] as Mode).id,
				held: (this.held[0] as StaticColour).id,
				programme: 'fade',
				speed: 50,
				level: 100,
				strobe: 0,
				loss: 'hold',
				curve: 'straight',
				limit: 100,
				sensor: 'shut',
				code: 1,
				hearing: 50,
				lock: 'off',
				sleep: 0,
			},
		};
		for (const code of ['panel', 'defaults', 'follows', 'remote'] as const) figures.note(code, 'assumed', {});
		figures.note('unit-loads', 'assumed', { unitLoads: ASSUMED.unitLoads });
		return { ...profile, id: `${slug(entry.id).slice(0, 24)}-${murmur3Text(JSON.stringify(profile), 0).toString(36)}` };
	}

	private speaksOf(pattern: RegExp): boolean {
		return this.modes.some(({ slots }) =>
			slots.some(({ name, words, bands }) =>
				[name, words, ...bands.map((band) => band.words)].some((text) => pattern.test(text)),
			),
		);
	}

	private power(feed: 'battery' | 'mains'): Profile['power'] {
		const { entry, figures } = this;
		figures.note('idle', 'assumed', { watts: ASSUMED.idleWatts });
		if (feed === 'battery') {
			const wattHours = figures.given('watt-hours', entry.wattHours, ASSUMED.wattHours, (each) => ({
				wattHours: each,
			}));
			figures.note('charger', 'assumed', { watts: ASSUMED.chargeWatts });
			return { battery: { wattHours, chargeWatts: ASSUMED.chargeWatts }, link: false, idleWatts: ASSUMED.idleWatts };
		}
		figures.note('link', entry.link === null ? 'assumed' : 'given', { has: entry.link ?? false });
		return { battery: null, link: entry.link ?? false, idleWatts: ASSUMED.idleWatts };
	}

	private mode({ name, slots }: ChartMode, before: readonly Mode[]): Mode {
		const made: Slot[] = [];
		const taken = new Set(slots.flatMap(({ at, fine }) => (fine === undefined ? [at] : [at, fine])));
		for (const slot of slots) made.push(...this.slot(slot, made));
		for (let at = 1; at < Math.max(...taken); at++) {
			if (taken.has(at)) continue;
			this.figures.note('slot-missing', 'assumed', { slot: at });
			made.push(this.idle(at, this.names.slot(at), made));
		}
		const footprint = Math.max(...taken);
		const called = title(name === '' ? this.names.mode(footprint) : name);
		return {
			id: freshId(name === '' ? `mode-${footprint}` : name, before),
			name: called,
			slots: made.toSorted((a, b) => a.at - b.at),
		};
	}

	/** A slot that does nothing. */
	private idle(at: number, name: string, taken: readonly Slot[]): Slot {
		const bands = [
			{ id: 'all', name: title(this.names.band(0, 255)), from: 0, to: 255, effect: { do: 'nothing' } as const },
		];
		return { id: freshId(name, taken), name: title(name), at, drives: { kind: 'bands', bands } };
	}

	private slot(slot: ChartSlot, taken: readonly Slot[]): Slot[] {
		const name = slot.name === '' ? this.names.slot(slot.at) : slot.name;
		const emitter = emitterIn(slot.name);
		const [, first, last] = CELL.exec(slot.name) ?? [];
		const cells = first === undefined ? {} : { cells: this.cellsFrom(Number(first), Number(last ?? first)) };
		const fine = slot.fine === undefined ? {} : { fine: slot.fine };
		const whole = { id: freshId(name, taken), name: title(name), at: slot.at, ...fine };
		if (isPlain(slot)) {
			if (INTENSITY.test(slot.name)) return [{ ...whole, ...cells, drives: { kind: 'intensity' } }];
			if (emitter) return [{ ...whole, ...cells, drives: { kind: 'emitter', emitter } }];
			if (SPEED.test(slot.name)) return [{ ...whole, drives: { kind: 'speed' } }];
		}
		const banded = this.banded(slot, name, taken);
		// a slot of bands has no fine half here: that does nothing
		return slot.fine === undefined
			? [banded]
			: [banded, this.idle(slot.fine, this.names.fine(name), [...taken, banded])];
	}

	private cellsFrom(first: number, last: number): number[] {
		const from = Math.max(1, Math.min(first, last, 64));
		const to = Math.min(64, Math.max(first, last, 1));
		this.cells = Math.max(this.cells, to);
		return Array.from({ length: to - from + 1 }, (_, i) => from + i);
	}

	private banded(slot: ChartSlot, name: string, taken: readonly Slot[]): Slot {
		const help: EffectHelp = {
			slot: name,
			emitters: this.emitters,
			figures: this.figures,
			colour: (words, levels) => this.colour(words, levels),
			programme: (kind) => this.programme(kind),
		};
		if (slot.bands.length === 0) {
			this.figures.note('not-acted', 'assumed', { slot: name, band: '' });
			return this.idle(slot.at, name, taken);
		}
		const bands: Extract<Slot['drives'], { kind: 'bands' }>['bands'] = [];
		const gap = (from: number, to: number): void => {
			this.figures.note('gap', 'assumed', { slot: name, from, to });
			bands.push({
				id: freshId('gap', bands),
				name: title(this.names.band(from, to)),
				from,
				to,
				effect: { do: 'nothing' },
			});
		};
		let next = 0;
		for (const { from, to, words } of slot.bands.toSorted((a, b) => a.from - b.from)) {
			if (from > next) gap(next, from - 1);
			const called = title(words === '' ? this.names.band(from, to) : words);
			bands.push({ id: freshId(called, bands), name: called, from, to, effect: effectOf(words, help) });
			next = to + 1;
		}
		if (next <= 255) gap(next, 255);
		return { id: freshId(name, taken), name: title(name), at: slot.at, drives: { kind: 'bands', bands } };
	}

	private colour(words: string, levels: Readonly<Record<string, number>>): string {
		const same = this.held.find((each) => JSON.stringify(each.levels) === JSON.stringify(levels));
		if (same) return same.id;
		const id = freshId(words, this.held);
		this.held.push({ id, name: title(words.toLowerCase()), levels: { ...levels } });
		return id;
	}

	private programme(kind: ProgrammeWord): string {
		if (this.programmes.every(({ id }) => id !== kind))
			this.programmes.push({
				id: kind,
				name: this.names.programme[kind],
				kind,
				...(kind === 'sound' ? { answer: 'step' as const } : {}),
				colours: this.held.slice(0, this.emitters.length).map(({ id }) => id),
				slowest: 30,
				fastest: 0.5,
			});
		return kind;
	}
}

/** Whether all of a slot's values do one thing, more of it the higher they are. */
function isPlain({ bands }: ChartSlot): boolean {
	if (bands.length === 0) return true;
	const rest = /^(?:off|dark|closed|zero|out|no function)?$/i.test(bands[0]?.words ?? '') ? bands.slice(1) : bands;
	return bands.length <= 2 && rest.length <= 1 && rest.every(({ words }) => PLAIN.test(words.trim()));
}
