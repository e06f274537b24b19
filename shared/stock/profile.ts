import {
	ASSUMED,
	assumedDefaults,
	checkProfile,
	idByContent,
	idMaker,
	type Mode,
	type PanelNames,
	type Profile,
	type Programme,
	type Slot,
	type StaticColour,
	standInPanel,
	titleOf,
	ULTRAVIOLET,
} from '../profile/index.ts';
import { CELL, MOST_CELLS } from './cells.ts';
import { drivesOf, type EffectHelp, effectOf, isPlain, type ProgrammeWord } from './effects.ts';
import { type EmitterId, emitterIn, emittersFrom } from './emitters.ts';
import type { ChartEntry } from './entry.ts';
import { type Figure, Figures, feedOf, fieldOf, UNREAD } from './figures.ts';
import { type OwnPanel, type PanelWords, withOwnPanel } from './panel/index.ts';
import { readChart } from './read.ts';
import type { ChartMode, ChartSlot, Mark, MarkCode, ReadChart } from './types.ts';

/** Names for what a chart leaves without one, from `content/`. */
export interface StockNames {
	readonly panel: PanelNames;
	/** What is recognised on a panel that its crew wrote down. */
	readonly ownPanel: PanelWords;
	/** @param isStandIn whether its panel stands in for the real one */
	readonly about: (emitters: number, isBattery: boolean, isStandIn: boolean) => string;
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
	/** What was read of its panel; null where nobody wrote it down, and where there is no profile. */
	readonly own: OwnPanel | null;
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

/**
 * The fixture that an entry describes. What the chart and the label do not say is assumed, and `figures` says so of each. The panel
 * stands in for the real one. The profile's id changes with all that is in it, so that a bench keeps the one it was set up with.
 */
export function stockFixture(entry: ChartEntry, names: StockNames): StockFixture {
	const chart = readChart(entry.chart);
	const stops = chart.marks.filter(({ code }) => STOPS.has(code));
	if (stops.length > 0 || chart.modes.length === 0) return { chart, profile: null, figures: [], stops, own: null };
	const figures = new Figures();
	const made = new Maker(entry, chart.modes, figures, names).profile();
	const { profile, own } = withOwnPanel(made, entry.panel, names.ownPanel, figures);
	checkProfile(profile);
	const isBattery = profile.power.battery !== null;
	const told = { ...profile, about: names.about(profile.emitters.length, isBattery, !own?.panel) };
	return { chart, profile: { ...told, id: idByContent(entry.id, 'own', told) }, figures: figures.all, stops, own };
}

type IdMaker = ReturnType<typeof idMaker>;

class Maker {
	private readonly entry: ChartEntry;
	private readonly modes: readonly ChartMode[];
	private readonly figures: Figures;
	private readonly names: StockNames;
	private readonly emitters: readonly EmitterId[];
	private readonly held: StaticColour[] = [];
	private readonly heldId = idMaker();
	private readonly modeId = idMaker();
	private readonly programmes: Programme[] = [];
	private cells = 1;

	constructor(entry: ChartEntry, modes: readonly ChartMode[], figures: Figures, names: StockNames) {
		this.entry = entry;
		this.modes = modes;
		this.figures = figures;
		this.names = names;
		const named = modes.flatMap(({ slots }) =>
			slots.flatMap((slot) => (isPlain(slot) ? (emitterIn(slot.name) ?? []) : [])),
		);
		// a name or a chart that speaks of ultraviolet anywhere carries its caution
		if (this.speaksOf(ULTRAVIOLET)) named.push('ultraviolet');
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
		const beam = figures.given('beam', entry.beam, UNREAD.beam, (degrees) => ({ degrees }));
		const field = fieldOf(beam);
		figures.note('field', 'assumed', { degrees: field });
		figures.note('feed', isFeedGiven ? 'given' : 'assumed', { feed });
		for (const { id, name } of lit)
			this.held.push({ id: this.heldId(id, id), name: name.toLowerCase(), levels: { [id]: 255 } });
		this.programme('fade');
		const modes = this.modes.map((mode) => this.mode(mode));
		if (this.cells > 1) figures.note('cells', 'assumed', { cells: this.cells });
		const profile: Profile = {
			version: 1,
			id: 'own',
			name: entry.name.trim() === '' ? names.unnamed : entry.name.trim(),
			about: '-',
			shape: entry.shape,
			panel: standInPanel({ modes, held: this.held, programmes: this.programmes }, names.panel),
			power: this.power(feed),
			optics: { beam, field },
			cells: this.cells,
			emitters: lit,
			held: this.held,
			programmes: this.programmes,
			modes,
			sensor: false,
			microphone: this.programmes.some(({ kind }) => kind === 'sound'),
			follows: ASSUMED.follows,
			unitLoads: ASSUMED.unitLoads,
			defaults: assumedDefaults({
				mode: (modes[0] as Mode).id,
				held: (this.held[0] as StaticColour).id,
				programme: 'fade',
			}),
		};
		for (const code of ['defaults', 'follows', 'remote'] as const) figures.note(code, 'assumed', {});
		figures.note('unit-loads', 'assumed', { unitLoads: ASSUMED.unitLoads });
		return profile;
	}

	private speaksOf(pattern: RegExp): boolean {
		const read = this.modes.flatMap(({ slots }) =>
			slots.flatMap(({ name, words, bands }) => [name, words, ...bands.map((band) => band.words)]),
		);
		return [this.entry.name, this.entry.chart, ...read].some((text) => pattern.test(text));
	}

	private power(feed: 'battery' | 'mains'): Profile['power'] {
		const { entry, figures } = this;
		figures.note('idle', 'assumed', { watts: ASSUMED.idleWatts });
		if (feed === 'battery') {
			const wattHours = figures.given('watt-hours', entry.wattHours, UNREAD.wattHours, (each) => ({
				wattHours: each,
			}));
			figures.note('charger', 'assumed', { watts: UNREAD.chargeWatts });
			return { battery: { wattHours, chargeWatts: UNREAD.chargeWatts }, link: false, idleWatts: ASSUMED.idleWatts };
		}
		figures.note('link', entry.link === null ? 'assumed' : 'given', { has: entry.link ?? false });
		return { battery: null, link: entry.link ?? false, idleWatts: ASSUMED.idleWatts };
	}

	private mode({ name, slots }: ChartMode): Mode {
		const ids = idMaker();
		const taken = new Set(slots.flatMap(({ at, fine }) => (fine === undefined ? [at] : [at, fine])));
		const made = slots.flatMap((slot) => this.slot(slot, ids));
		for (let at = 1; at < Math.max(...taken); at++) {
			if (taken.has(at)) continue;
			this.figures.note('slot-missing', 'assumed', { slot: at });
			made.push(this.idle(at, this.names.slot(at), ids));
		}
		const footprint = Math.max(...taken);
		return {
			id: this.modeId(name === '' ? `mode-${footprint}` : name, 'mode'),
			name: titleOf(name, this.names.mode(footprint)),
			slots: made.toSorted((a, b) => a.at - b.at),
		};
	}

	/** A slot that does nothing. */
	private idle(at: number, name: string, ids: IdMaker): Slot {
		const bands = [{ id: 'all', name: this.names.band(0, 255), from: 0, to: 255, effect: { do: 'nothing' } as const }];
		return { id: ids(name, 'slot'), name: titleOf(name, this.names.slot(at)), at, drives: { kind: 'bands', bands } };
	}

	private slot(slot: ChartSlot, ids: IdMaker): Slot[] {
		const name = slot.name === '' ? this.names.slot(slot.at) : slot.name;
		const [, first, last] = CELL.exec(slot.name) ?? [];
		const cells = first === undefined ? {} : { cells: this.cellsFrom(Number(first), Number(last ?? first)) };
		const fine = slot.fine === undefined ? {} : { fine: slot.fine };
		const drives = drivesOf(slot);
		if (drives) {
			const part = drives.kind === 'speed' ? {} : cells;
			return [
				{ id: ids(name, 'slot'), name: titleOf(name, this.names.slot(slot.at)), at: slot.at, ...fine, ...part, drives },
			];
		}
		const banded = this.banded(slot, name, ids);
		if (first !== undefined && slot.bands.length > 0) this.figures.note('cell-bands', 'assumed', { slot: name });
		// a slot of bands has no fine half here: that does nothing
		return slot.fine === undefined ? [banded] : [banded, this.idle(slot.fine, this.names.fine(name), ids)];
	}

	private cellsFrom(first: number, last: number): number[] {
		const from = Math.max(1, Math.min(first, last, MOST_CELLS));
		const to = Math.min(MOST_CELLS, Math.max(first, last, 1));
		this.cells = Math.max(this.cells, to);
		return Array.from({ length: to - from + 1 }, (_, i) => from + i);
	}

	private banded(slot: ChartSlot, name: string, ids: IdMaker): Slot {
		const help: EffectHelp = {
			slot: name,
			emitters: this.emitters,
			figures: this.figures,
			colour: (words, levels) => this.colour(words, levels),
			programme: (kind) => this.programme(kind),
		};
		if (slot.bands.length === 0) {
			this.figures.note('not-acted', 'assumed', { slot: name, band: '' });
			return this.idle(slot.at, name, ids);
		}
		const bands: Extract<Slot['drives'], { kind: 'bands' }>['bands'] = [];
		const bandId = idMaker();
		const gap = (from: number, to: number): void => {
			this.figures.note('gap', 'assumed', { slot: name, from, to });
			bands.push({
				id: bandId('gap', 'gap'),
				name: this.names.band(from, to),
				from,
				to,
				effect: { do: 'nothing' },
			});
		};
		let next = 0;
		for (const { from, to, words } of slot.bands.toSorted((a, b) => a.from - b.from)) {
			if (from > next) gap(next, from - 1);
			const called = titleOf(words, this.names.band(from, to));
			bands.push({ id: bandId(called, 'band'), name: called, from, to, effect: effectOf(words, help) });
			next = to + 1;
		}
		if (next <= 255) gap(next, 255);
		return {
			id: ids(name, 'slot'),
			name: titleOf(name, this.names.slot(slot.at)),
			at: slot.at,
			drives: { kind: 'bands', bands },
		};
	}

	private colour(words: string, levels: Readonly<Record<string, number>>): string {
		const same = this.held.find((each) => JSON.stringify(each.levels) === JSON.stringify(levels));
		if (same) return same.id;
		const id = this.heldId(words, 'colour');
		this.held.push({ id, name: titleOf(words.toLowerCase(), id), levels: { ...levels } });
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
