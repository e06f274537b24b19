import { describe, expect, it } from 'vitest';
import { termSources, terms } from '#words/glossary/index.ts';

/** Every id there has ever been: lessons, links and saved reviews name them. */
const IDS =
	'additive-mixing ampere ampere-hour back-to-back band bar battery battery-health battery-hours beam beam-angle bench blackout bracket break breaker cable-drum candela cell charge charge-time check chromaticity clamp class-one coarse-and-fine collision colour-temperature common competent-person controller cue daisy-chain data data-cable data-in data-lamp data-out data-pair defaults derating desk dim-curve dip-switch display-sleep distribution doors drill e1-11 earth emitter escape-lighting field-angle finder firmware fixture flicker focus fold-back follower footprint gig glare grazing half-split held-colour hexadecimal hold-last-look hot-spot identify idle-draw iec-connector impedance incidence inrush-current intensity inverse-square ip-rating isolate known-good last-slot leader led level line line-of-sight load-in load-out look loop-through loss-of-data lumen lux mains mains-link mark-after-break master menu microphone-cable mode multicast ohm operator output-limit over-under overlap packet panel panel-lock pat patch patch-sheet percent personality pin plot point-load pool pool-overlap power-factor power-supply prep programme pwm quarantine rated rcd rdm reason-trail receiver reflection refresh-rate remote remote-code rig rig-sheet rigging risk-group sacn safety-bond screen sensitivity sensor setting shutter signal slot slot-chart sound-to-light spacing speed spill splitter stand-alone start-address start-code strip strobe suspect swapped-pair tape-label terminator three-flashes throw tint truss ultraviolet uniformity unit-load universe uplight volt wall-wash wash watt watt-hour weight wireless-data xlr y-lead yoke';

const ids = new Set(terms.map(({ id }) => id));
/** Whatever is linked to a term, in small letters. */
const named = new Map(
	terms.flatMap(({ id, term, forms = [] }) => [term, ...forms].map((word) => [word.toLowerCase(), id] as const)),
);

/** Words that only the trade knows, or that mean more there: none may stand in a definition without one of its own. */
const JARGON =
	'address ampere ampere-hour band beam candela clamp collision controller derating desk emitter fixture footprint gobo hexadecimal impedance kelvin leader lumen lux luminaire mode multicast ohm packet patch personality plot receiver rig slot spigot splitter start start-address strobe terminator throw truss universe wash watt watt-hour yoke'.split(
		' ',
	);

const wordsOf = (text: string) => text.toLowerCase().match(/[a-z][a-z0-9’-]*/g) ?? [];
const sentencesOf = (text: string) => text.split(/(?<=[.])\s+(?=[A-Z])/);

describe('the glossary', () => {
	it('has at least eighty terms besides this site’s own words', () => {
		expect(terms.filter(({ from }) => from !== 'house').length).toBeGreaterThanOrEqual(80);
	});

	it('keeps its ids, each once, in small letters and hyphens', () => {
		expect([...ids].sort()).toEqual(IDS.split(' '));
		expect(terms).toHaveLength(ids.size);
		for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9-]*$/);
	});

	it('means one thing by each word', () => {
		expect(named.size).toBe(terms.reduce((sum, { forms = [] }) => sum + 1 + forms.length, 0));
	});

	it('leads on from each term to others that are there, and never to itself', () => {
		for (const { id, see = [] } of terms) {
			expect(see.length, id).toBeGreaterThan(0);
			for (const next of see) expect(ids, id).toContain(next);
			expect(see, id).not.toContain(id);
			expect(new Set(see).size, id).toBe(see.length);
		}
	});

	it('says of standards alone how they were come by', () => {
		for (const { id, from, seen } of terms) if (from === 'trade' || from === 'house') expect(seen, id).toBeUndefined();
	});

	it('uses every source it names', () => {
		expect(new Set(terms.map(({ from }) => from))).toEqual(new Set(Object.keys(termSources)));
	});
});

describe.each(terms)('$term', ({ id, term, says }) => {
	it('is said in one to three short whole sentences', () => {
		expect(says).toMatch(/^[A-Z].*[.]$/);
		const sentences = sentencesOf(says);
		expect(sentences.length).toBeLessThanOrEqual(3);
		for (const sentence of sentences) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(32);
		expect(term).toMatch(/^([A-Z]|sACN)/);
	});

	it('is said in words that are plain or have an entry of their own', () => {
		for (const word of wordsOf(says)) {
			const bare = word.replace(/’s$/, '').replace(/s$/, '');
			if (!JARGON.includes(word) && !JARGON.includes(bare)) continue;
			const hasEntry = [...named.keys()].some((key) => key.includes(bare));
			expect(hasEntry, `${id}: ${word}`).toBe(true);
		}
	});

	it('never says please, simply or just, never asks anyone to open a fixture, and shouts at nobody', () => {
		expect(says).not.toMatch(/!|\bplease\b|\bsimply\b|\bopen (?:the|a|it)\b/i);
	});
});
