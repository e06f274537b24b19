import { ASSUMED, type Effect, rateWithin, type Slot } from '../profile/index.ts';
import { emitterIn, mixFor } from './emitters.ts';
import type { Figures } from './figures.ts';
import type { ChartSlot } from './types.ts';

/** Kinds of programme that a band can start, each made once for a fixture. */
export const PROGRAMME_WORDS = [
	['sound', /\b(?:sound|music|audio|mic(?:rophone)?)\b/i],
	['pulse', /\bpuls|\bbreath|\bswell/i],
	['fade', /\bfad|\bcross|\bdream|\brainbow/i],
	['change', /\bprogram|\bauto|\bmacro|\bchase|\bchang|\bjump|\bcycle|\beffect|\bscene|\bsnap|\bshow\b/i],
] as const satisfies readonly (readonly [string, RegExp])[];
export type ProgrammeWord = (typeof PROGRAMME_WORDS)[number][0];

const NOTHING =
	/\bno (?:function|effect|action)\b|\bnot? (?:used|in use)\b|\bunused\b|\breserved\b|\bnothing\b|^(?:none|no|-)$/i;
/** Words that leave it to something else what happens: nothing does so here. */
const ELSEWHERE = /\bdecides?\b|\bdepends?\b|\bmanual\b/i;
const CLOSED = /\bclosed?\b|\bblack ?out\b|\bdark\b|\bshut\b/i;
const OPEN = /\bopen\b|\bsteady\b|\bsolid\b|\bshutter on\b/i;
const OFF = /^(?:strobe |flash )?(?:off|none|no strobe|disabled)$|\bno strobe\b/i;
const FLASH = /\bstrob|\bflash|\bslow\b.*\bfast\b|\bincreas|\bhz\b|\bfaster\b/i;
const NOT_PLAIN = /\brandom\b|\bfast\b.*\bslow\b|\blightning\b|\bramp/i;
const RATE = /(\d+(?:\.\d+)?)\s*(?:hz)?\s*(?:-|–|to|\.\.)\s*(\d+(?:\.\d+)?)\s*hz/i;

/** What makes of words an effect: what the fixture has, and where figures are noted. */
export interface EffectHelp {
	readonly slot: string;
	readonly emitters: readonly string[];
	readonly figures: Figures;
	/** The id of a static colour with these levels, made where there is none yet. */
	readonly colour: (words: string, levels: Readonly<Record<string, number>>) => string;
	readonly programme: (kind: ProgrammeWord) => string;
}

/**
 * What a band does, from its words and those of its slot. What the words do not say is assumed and noted; what the simulator has
 * no effect for does nothing, and that is noted too.
 */
export function effectOf(words: string, help: EffectHelp): Effect {
	const { slot, figures } = help;
	const facts = { slot, band: words };
	const isShutter = /\bstrob|\bshutter|\bflash/i.test(slot);
	if (isShutter && OFF.test(words)) {
		if (/\bshutter/i.test(slot)) figures.note('off', 'assumed', facts);
		return { do: 'open' };
	}
	if (NOTHING.test(words)) return { do: 'nothing' };
	if (ELSEWHERE.test(words)) {
		const isOfMore =
			isShutter ||
			FLASH.test(words) ||
			/\bshutter/i.test(words) ||
			PROGRAMME_WORDS.some(([, pattern]) => pattern.test(words));
		if (isOfMore) figures.note('not-acted', 'assumed', facts);
		return { do: 'nothing' };
	}
	if (CLOSED.test(words) && !/\bto\b|\bdim/i.test(words)) return { do: 'dark' };
	if (isShutter && OPEN.test(words)) return { do: 'open' };
	const isFlash =
		(isShutter && FLASH.test(words)) || /\bstrob|\bflash/i.test(words) || (isShutter && /^on$/i.test(words));
	if (isFlash && !NOT_PLAIN.test(words) && !/\b(?:sound|music|colou?r)/i.test(words)) return strobe(words, help);
	if (!NOT_PLAIN.test(words)) {
		const [kind] = PROGRAMME_WORDS.find(([, pattern]) => pattern.test(words)) ?? [];
		if (kind) {
			figures.note('programme', 'assumed', facts);
			return { do: 'programme', programme: help.programme(kind) };
		}
		const mix = mixFor(words, help.emitters);
		if (mix && !/\bto\b|[-–>]/.test(words)) {
			figures.note('mix', 'assumed', facts);
			return { do: 'held', held: help.colour(words, mix) };
		}
	}
	figures.note('not-acted', 'assumed', facts);
	return { do: 'nothing' };
}

function strobe(words: string, { slot, figures }: EffectHelp): Effect {
	const rate = RATE.exec(words);
	const given = rate && { slow: Number(rate[1]), fast: Number(rate[2]) };
	const facts = { slot, band: words };
	if (!given || given.slow > given.fast) {
		figures.note('strobe', 'assumed', { ...facts, ...ASSUMED.strobe });
		return { do: 'strobe', ...ASSUMED.strobe };
	}
	const rates = { slow: rateWithin(given.slow), fast: rateWithin(given.fast) };
	figures.note('strobe', 'given', { ...facts, ...rates });
	for (const edge of ['slow', 'fast'] as const)
		if (rates[edge] !== given[edge])
			figures.note('strobe-clamped', 'assumed', { ...facts, found: given[edge], rate: rates[edge] });
	return { do: 'strobe', ...rates };
}

const INTENSITY = /\b(?:dimmer|dimming|intensity|master|brightness)\b/i;
const SPEED = /\b(?:speed|pace|tempo)\b/i;
/** A slot of such a name is none of plain light or speed, whatever else its name says: `strobe speed`, `dimmer curve`. */
const ACTS_OTHERWISE = /\bstrob|\bflash|\bshutter|\b(?:mode|curve|macro|preset)s?\b/i;
const PLAIN =
	/^(?:|.*\b(?:dim|dark|bright|brightness|intensity|full|max(?:imum)?|min(?:imum)?|level)\b.*|.*%.*|\d+ ?(?:-|–|to) ?\d+)$/i;

/** What a slot drives from end to end; null for one of bands, and for one whose name says nothing that is acted on. */
export function drivesOf(slot: ChartSlot): Exclude<Slot['drives'], { kind: 'bands' }> | null {
	if (!isPlain(slot)) return null;
	// `red dimmer` is of red alone
	const emitter = emitterIn(slot.name);
	if (emitter) return { kind: 'emitter', emitter };
	if (INTENSITY.test(slot.name)) return { kind: 'intensity' };
	return SPEED.test(slot.name) ? { kind: 'speed' } : null;
}

/** Whether all of a slot's values do one thing, more of it the higher they are. */
export function isPlain({ name, bands }: ChartSlot): boolean {
	if (ACTS_OTHERWISE.test(name)) return false;
	if (bands.length === 0) return true;
	const rest = /^(?:off|dark|closed|zero|out|no function)?$/i.test(bands[0]?.words ?? '') ? bands.slice(1) : bands;
	return bands.length <= 2 && rest.length <= 1 && rest.every(({ words }) => PLAIN.test(words.trim()));
}
