import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { inventNames } from '#words/invent/index.ts';
import { INVENT_LEVELS, type InventNames, inventFixture, LAWS, type Law } from '../../../shared/invent/index.ts';
import { BUNDLED, footprintOf, type Profile, readProfile } from '../../../shared/profile/index.ts';
import { makeRandom } from '../../../shared/random/index.ts';
import { readSheet } from '../../../shared/sheet/index.ts';
import { invent } from '../../../src/features/invented/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';
import { chartWordsOf, inventions, labelsOf, lawIn } from './kit.ts';

const SEEDS = runs(600, 10_000);
const made = inventions(SEEDS);

const bandsIn = ({ modes }: Profile) =>
	modes.flatMap(({ slots }) => slots.flatMap(({ drives }) => (drives.kind === 'bands' ? [drives.bands] : [])));

describe('an invented fixture', () => {
	it(`is a whole profile, unchanged by a file: ${SEEDS} seeds`, () => {
		for (const [seed, profile] of made.entries())
			expect(readProfile(JSON.parse(JSON.stringify(profile))), `seed ${seed}`).toEqual(profile);
	});

	it('is like no other in menu and chart, nor like a bundled one, and its id tells it from all', () => {
		const panels = new Set(made.map(({ panel, modes }) => JSON.stringify([panel, modes])));
		expect(panels.size).toBe(made.length);
		const ids = new Set([...made, ...BUNDLED].map(({ id }) => id));
		expect(ids.size).toBe(made.length + BUNDLED.length);
	});

	it('has each law as often as the next, and one to five modes of different footprints', () => {
		for (const law of LAWS) {
			const share = made.filter((profile) => lawIn(profile) === law).length / made.length;
			expect([law, share > 0.15 && share < 0.35]).toEqual([law, true]);
		}
		const counts = new Set(made.map(({ modes }) => modes.length));
		expect([...counts].sort()).toEqual([1, 2, 3, 4, 5]);
		for (const { modes } of made) expect(new Set(modes.map(footprintOf)).size).toBe(modes.length);
	});

	it('is the same for the same seed, and another for another seed or level', () => {
		for (const seed of [0, 1, 77, 2 ** 53 - 1])
			for (const level of INVENT_LEVELS) expect(invent(seed, level)).toEqual(invent(seed, level));
		expect(invent(5, 'easy')).not.toEqual(invent(6, 'easy'));
		expect(invent(5, 'easy').modes).not.toEqual(invent(5, 'hard').modes);
	});

	// a drill is named by its kind and seed alone, so what a seed gives must stay: what must change is a new level, or a new kind
	it('stays as it was made on 30 November 2026', () => {
		const mark = (profile: Profile) => createHash('sha256').update(JSON.stringify(profile)).digest('hex').slice(0, 8);
		const marks = INVENT_LEVELS.map((level) => [1, 2, 3, 4, 5, 6].map((seed) => mark(invent(seed, level))).join(' '));
		expect(marks).toMatchInlineSnapshot(`
			[
			  "814baf89 d49208d7 8d045f8c b0959a1f c49b4458 ed6aac2a",
			  "6462471b d2430767 ee7cdae8 df7883b5 23d77dd6 f53b28ae",
			  "ee34f7a2 5471a6e3 d737ea0d c520f466 38cb82c4 0c729ae7",
			]
		`);
	});

	it('tells no two items of one level, nor two values of one item, by the same words', () => {
		for (const profile of made) {
			if (profile.panel.kind === 'dip') continue;
			const items = profile.panel.menu.flatMap((item) => [item, ...(item.kind === 'menu' ? item.items : [])]);
			expect(new Set(items.map(({ label }) => label)).size, profile.id).toBe(items.length);
			for (const item of items)
				if (item.kind === 'choice')
					expect(new Set(item.options.map(({ label }) => label)).size, profile.id).toBe(item.options.length);
		}
	});

	it('is like no product: no A or D before a number, and no two letters for what it plays', () => {
		const short = made.filter(({ panel }) => panel.kind === 'code');
		expect(short.length).toBeGreaterThan(100);
		for (const profile of short) {
			if (profile.panel.kind !== 'code') continue;
			const items = profile.panel.menu.flatMap((item) => [item, ...(item.kind === 'menu' ? item.items : [])]);
			for (const item of items) {
				expect(item.label, profile.id).not.toMatch(/^[ad]$|^[ad] ?\d/i);
				// an information item shows its initial before a number
				if (item.kind === 'info') expect(item.label, profile.id).not.toMatch(/^[ad]/i);
				if (item.kind === 'choice' && ['held', 'programme', 'work'].includes(item.setting))
					for (const { label } of item.options) expect(label, profile.id).not.toMatch(/^[a-z]{2}(?![a-z])/i);
			}
			for (const label of labelsOf(profile)) expect(label, profile.id).not.toMatch(/^[ad]\s*\d/i);
		}
	});

	it('has bands of irregular edges; gaps and slots of no function are of the hard level', () => {
		const unused = (name: string) => Object.values(inventNames.chart['band.unused']).includes(name as never);
		for (const [i, profile] of made.entries()) {
			const gaps = bandsIn(profile).some((bands) => bands.some(({ name }) => unused(name)));
			if (i % 3 !== 2) expect(gaps, profile.id).toBe(false);
		}
		const hard = made.filter((_, i) => i % 3 === 2);
		expect(
			hard.filter((profile) =>
				bandsIn(profile)
					.flat()
					.some(({ name }) => unused(name)),
			).length,
		).toBeGreaterThan(hard.length / 2);
		const widths = made
			.flatMap(bandsIn)
			.map((bands) => new Set(bands.map(({ from, to }) => to - from)).size / bands.length);
		// hardly two bands of a slot are as wide
		expect(widths.reduce((sum, each) => sum + each, 0) / widths.length).toBeGreaterThan(0.9);
	});

	it('names ultraviolet where it has it, and never plays it by itself', () => {
		const lit = made.filter(({ emitters }) => emitters.some(({ ultraviolet }) => ultraviolet));
		expect(lit.length).toBeGreaterThan(made.length / 10);
		for (const { emitters, programmes, held } of lit) {
			expect(emitters.filter(({ ultraviolet }) => ultraviolet).map(({ name }) => name)).toEqual(['Ultraviolet']);
			const dark = new Set(held.filter(({ levels }) => (levels['ultraviolet'] ?? 0) > 0).map(({ id }) => id));
			for (const { colours } of programmes) expect(colours.filter((id) => dark.has(id))).toEqual([]);
		}
		for (const { programmes } of made)
			for (const { kind, name } of programmes) if (kind === 'strobe') expect(name).toMatch(/strobe/i);
	});

	it('is carried by a sheet', () => {
		for (const profile of made.slice(0, 40)) {
			const sheet = readSheet({
				version: 1,
				name: 'One',
				fixtures: [
					{
						id: 'wash-1',
						name: 'Wash 1',
						profile: profile.id,
						place: { x: 1, y: 0, throw: 3, overhead: false },
						settings: {},
						on: true,
						plug: 'wall',
						charge: 1,
						hidden: false,
					},
				],
				profiles: [profile],
			});
			expect(sheet.profiles).toEqual([profile]);
		}
	});
});

describe('what is left out', () => {
	it('is in no fixture: laws', () => {
		const random = makeRandom(7);
		for (let seed = 0; seed < runs(150, 3000); seed++) {
			const laws = random.shuffle(LAWS).slice(0, random.int(1, 4));
			const law: Law = lawIn(invent(seed, random.pick(INVENT_LEVELS), { laws }));
			expect(laws).not.toContain(law);
		}
	});

	it('is in no fixture: a third of the words, whichever they are', () => {
		const tables = { ...inventNames.panel, ...inventNames.chart };
		for (let seed = 0; seed < runs(150, 3000); seed++) {
			const random = makeRandom(seed).fork('sealed');
			const sealed = Object.entries(tables).flatMap(([concept, ways]) => {
				const ids = Object.keys(ways);
				return random
					.shuffle(ids)
					.slice(0, Math.floor(ids.length / 3))
					.map((id) => ({ concept, id }));
			});
			const words = sealed.map(({ concept, id }) => `${concept}/${id}`);
			// the words left out say themselves, so that wherever one turns up it is seen
			const loud = <W>(table: Readonly<Record<string, Readonly<Record<string, W>>>>, say: (word: W) => W) =>
				Object.fromEntries(
					Object.entries(table).map(([concept, ways]) => [
						concept,
						Object.fromEntries(
							Object.entries(ways).map(([id, word]) => [id, words.includes(`${concept}/${id}`) ? say(word) : word]),
						),
					]),
				);
			const names = {
				...inventNames,
				panel: loud(inventNames.panel, () => ({ code: '####', text: '####', letter: '#' }) as never),
				chart: loud(inventNames.chart, () => '####' as never),
			} as unknown as InventNames;
			const level = random.pick(INVENT_LEVELS);
			const profile = inventFixture(seed, level, names, { words });
			for (const said of [...labelsOf(profile), ...chartWordsOf(profile), JSON.stringify(profile)])
				expect(said, `seed ${seed}`).not.toContain('#');
			// and they do turn up where they are not left out
			if (seed === 0) expect(JSON.stringify(inventFixture(seed, level, names))).toContain('#');
		}
	});

	it('cannot be all there is', () => {
		expect(thrownBy(() => invent(1, 'easy', { laws: LAWS })).code).toBe('invent.words');
		const words = Object.keys(inventNames.panel.address).map((id) => `address/${id}`);
		expect(thrownBy(() => invent(1, 'easy', { words, laws: ['dip'] })).code).toBe('invent.words');
		expect(thrownBy(() => invent(-1, 'easy')).code).toBe('random.seed');
	});
});

describe('the words', () => {
	it('fit a display as they are, and no two for one thing are the same', () => {
		for (const [concept, ways] of Object.entries(inventNames.panel)) {
			const words: readonly { readonly code: string; readonly text: string; readonly letter?: string }[] =
				Object.values(ways);
			for (const { code, text, letter } of words) {
				expect(code, concept).toMatch(/^[A-Z?]{2,4}$/);
				expect(text.length, concept).toBeLessThanOrEqual(16);
				if (letter) expect(letter, concept).toMatch(/^[BCE-Z]$/);
			}
			for (const key of ['code', 'text'] as const)
				expect(new Set(words.map((word) => word[key])).size, concept).toBe(words.length);
		}
	});
});
