import { describe, expect, it } from 'vitest';
import { terms } from '#words/glossary/index.ts';
import { elsewhere } from '#words/reference/index.ts';
import { find, indexText, readIndex } from '../../../../src/features/search/find.ts';
import { searchDocs } from '../../../../src/site/indexing/index.ts';
import { lessonFiles } from '../../../content/lessons.ts';

/** The index as the site has it, lessons and all. */
const index = readIndex(
	indexText(
		searchDocs(
			lessonFiles().map(({ lesson: { id, title, outcome }, body }) => ({
				id,
				title,
				outcome,
				body,
				headings: [...body.matchAll(/^## (.*)$/gm)].map(([, text = '']) => ({
					depth: 2,
					slug: text.toLowerCase().replaceAll(/[^a-z]+/g, '-'),
					text,
				})),
			})),
		),
	),
);
const places = (query: string) => find(index, query).found.map(({ href }) => href);

// symptom: a search for xlr, console, blackout, GFCI or inrush found nothing; cause: only our own words were there to be found
/** What people type, and the place that answers it. */
const FIRST = [
	['xlr', 'xlr'],
	['console', 'desk'],
	['lighting console', 'desk'],
	['blackout', 'blackout'],
	['dbo', 'blackout'],
	['GFCI', 'rcd'],
	['rcd', 'rcd'],
	['gfi', 'rcd'],
	['inrush', 'inrush-current'],
	['PAT', 'pat'],
	['ip65', 'ip-rating'],
	['IP rating', 'ip-rating'],
	['iec', 'iec-connector'],
	['psu', 'power-supply'],
	['channel', 'slot'],
	['slot', 'slot'],
	['static colour', 'held-colour'],
	['held colour', 'held-colour'],
	['dimmer curve', 'dim-curve'],
	['signal loss', 'loss-of-data'],
	['loss of data', 'loss-of-data'],
	['sound mode', 'sound-to-light'],
	['mstr', 'leader'],
	['slave', 'follower'],
	['slv', 'follower'],
	['strb', 'strobe'],
	['pgm', 'programme'],
	['wireless', 'wireless-data'],
	['wless', 'wireless-data'],
	['firmware', 'firmware'],
	['rdm', 'rdm'],
	['sacn', 'sacn'],
	['cct', 'colour-temperature'],
	['dflt', 'defaults'],
	['ground', 'earth'],
	['distro', 'distribution'],
	['dip', 'dip-switch'],
	['cord reel', 'cable-drum'],
	['egress lighting', 'escape-lighting'],
	['fault finder', 'finder'],
] as const;

/** The same, where another place may come before it. */
const NEAR = [
	['master', 'leader'],
	['dimmer', 'intensity'],
	['addr', 'start-address'],
	['chan', 'slot'],
	['auto', 'programme'],
	['snd', 'sound-to-light'],
	['ver', 'firmware'],
	['term', 'terminator'],
	['board', 'desk'],
	['strike', 'load-out'],
	['batt', 'battery'],
] as const;

describe('search by what things are called elsewhere', () => {
	it.each(FIRST)('%s leads first to %s', (query, term) => {
		expect(places(query)[0]).toBe(`/glossary/#${term}`);
	});

	it.each(NEAR)('%s leads to %s among the first three', (query, term) => {
		expect(places(query).slice(0, 3)).toContain(`/glossary/#${term}`);
	});

	it('finds the page of them, and each place on it', () => {
		for (const { id, heading } of elsewhere) expect(places(heading)).toContain(`/reference/elsewhere/#${id}`);
		expect(places('what it may say elsewhere')[0]).toMatch(/^\/reference\/elsewhere\//);
	});

	it('has a term of the glossary for each, and no row twice', () => {
		const ids = new Set(terms.map(({ id }) => id));
		for (const { id, rows } of elsewhere) {
			for (const { term, met } of rows) {
				expect(ids, `${id}: ${met.join(', ')}`).toContain(term);
				expect(new Set(met).size).toBe(met.length);
			}
			const all = rows.flatMap(({ met }) => met);
			expect(new Set(all).size, id).toBe(all.length);
		}
	});

	it('finds a term by every short form of three letters and more that only one goes by', () => {
		const met = elsewhere.flatMap(({ rows }) =>
			rows.flatMap((row) => row.met.map((form) => [form, row.term] as const)),
		);
		for (const [form, term] of met.filter(([each]) => /^[A-Za-z]{3,}$/.test(each)))
			expect(places(form), form).toContain(`/glossary/#${term}`);
	});
});
