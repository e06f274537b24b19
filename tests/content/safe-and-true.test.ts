import { describe, expect, it } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import { fixtures } from '#words/fixtures/index.ts';
import { terms } from '#words/glossary/index.ts';
import { figureWords } from '#words/lessons/index.ts';
import { TIMING } from '../../shared/dmx/index.ts';
import { bundledProfile } from '../../shared/profile/index.ts';
import { quickSheet } from '../../shared/sheet/index.ts';
import { openRig } from '../../sim/rig/index.ts';
import { referencePages } from '../../src/features/reference/index.ts';
import { textOf } from '../house/tree.ts';
import { lessonFiles, proseOf } from './lessons.ts';
import { allSentences, sentencesOf } from './sentences.ts';

// Each of these opens with what was once said here that could hurt somebody, or was not so, and why.

const sentences = allSentences();
const those = (pattern: RegExp) => sentences.filter(({ text }) => pattern.test(text));
const lessonOf = (id: string) => {
	const found = lessonFiles().find(({ lesson }) => lesson.id === id);
	if (!found) throw new Error(id);
	return found;
};
const termOf = (id: string) => {
	const found = terms.find((term) => term.id === id);
	if (!found) throw new Error(id);
	return found;
};

describe('the sentences of the house', () => {
	it('are read from every lesson, term, caution, check, drill, drawing and table', () => {
		const files = new Set(sentences.map(({ file }) => file));
		for (const file of [
			'content/en/cautions/cautions.ts',
			'content/en/checks/checks.ts',
			'content/en/drills/kinds.ts',
			'content/en/faults/faults.ts',
			'content/en/glossary/site.ts',
			'content/en/lessons/figures.ts',
			'content/en/lessons/reckon.ts',
			'content/en/papers/rig-questions.ts',
			'content/en/reference/tables.ts',
			'content/en/site/about.mdx',
			'src/features/lessons/figures/hang.tsx',
		])
			expect(files).toContain(file);
		for (const { lesson } of lessonFiles()) expect(files).toContain(`content/en/lessons/${lesson.id}.mdx`);
		expect(sentences.length).toBeGreaterThan(3000);
	});
});

// symptom: 'This is why you can look around in the middle of a show with no harm'; cause: what is so on the fixtures of this
// house, where a value waits for Set, was said of every panel, and on many a value acts as it is stepped
describe('looking through a live panel', () => {
	const HARMLESS =
		/\b(looking is free|no harm|harms? no(body| one)|harmless|(look|looked|looking|step|menu|press|keys?)\b.*\bchang(es|ed) nothing|nothing (has |is )?changed|a look changes nothing)\b/i;
	const HERE = /\b(on|of) (this|these|the ones here)\b|\bthis one\b|\bhere\b/i;

	it('is called harmless of the fixtures here alone', () => {
		const panels = those(HARMLESS).filter(({ text }) => /\b(look|panel|menu|step|value|press|key|display)/i.test(text));
		for (const { file, text } of panels) expect(text, file).toMatch(HERE);
	});

	it('is taught with what else a panel may do, and with whom to ask', () => {
		const { lesson, body } = lessonOf('a-panel-you-never-saw');
		const prose = body.replace(/\s+/g, ' ');
		expect(prose).toMatch(/on this one/i);
		expect(prose).toMatch(/yours may act at once/i);
		expect(prose).toMatch(/in a show,? (always )?ask first/i);
		expect(lesson.card.join(' ')).toMatch(/in a show,? ask first/i);
		expect(lesson.card.join(' ')).not.toMatch(/^Back leaves/m);
		expect(lesson.cautions).toContain('live-show');
	});

	it('never stands in a check as if every panel waited for Set', () => {
		for (const { file, text } of those(/\bPress Set to see the value\b/)) {
			const whole = textOf(file);
			expect(whole, text).toMatch(/In a show ask first: some panels act as you step\./);
		}
	});
});

// symptom: 'Bond: round the bar' on a card beside fixtures named Bar, and the word bracket led to the yoke; cause: one word for
// the pipe and for a fixture, so that a hand could take the bond round the very thing that it is to catch, or round its arms
describe('a safety bond', () => {
	const BOND = /\b(safety )?(bonds?|safety cables?|secondary suspension)\b/i;
	const BAR = /\bbars?\b|\bbattens?\b/i;

	it('is never in one sentence with a bar', () => {
		expect(those(BOND).length).toBeGreaterThan(15);
		for (const { file, text } of those(BOND)) expect(text, file).not.toMatch(BAR);
	});

	it('stands with no drawing whose words call the pipe a bar', () => {
		const { bond, ways } = figureWords.figures;
		for (const text of [bond.shows, bond.caption, ways.shows, ways.caption]) expect(text).not.toMatch(BAR);
		expect(bond.shows).toMatch(/pipe|truss chord/);
		expect(textOf('src/features/lessons/figures/hang.tsx')).not.toMatch(/\bbar\b/);
	});

	it('finds no pipe called a bar anywhere: nothing hangs, holds or is clamped to one', () => {
		const PIPE =
			/\b(round|around|to|from|off) (a|the|that|one) bar\b(?! \d)|\bbars?,? (a |an )?(and|or)? ?(truss|clamp|pipe)|\b(clamp|truss|hang|hung|rigg)\w*\b.*\bbars?\b(?! \d)/i;
		for (const { file, text } of those(PIPE)) expect({ file, text }).toEqual({ file, text: 'no such sentence' });
	});

	it('goes round pipe or truss chord that is rated itself, to the maker’s point, short, and never to the yoke alone', () => {
		const { lesson, body } = lessonOf('floor-bracket-clamp-bond');
		const prose = body.replace(/\s+/g, ' ');
		expect(prose).toMatch(/pipe or truss chord/);
		expect(prose).toMatch(/rated (itself|for it)/);
		expect(prose).toMatch(/maker’s (own )?bond point|point (that )?the maker gives/);
		expect(prose).toMatch(/never [^.]*yoke[^.]*unless [^.]*maker/i);
		expect(lesson.card.join(' ')).toMatch(/pipe or truss chord/);
		expect(cautions.hanging.care[0]).toMatch(/pipe or truss chord.*rated.*maker/);
		expect(termOf('safety-bond').says).toMatch(/yoke alone|maker/);
	});

	it('is not led to the yoke by the word bracket', () => {
		expect(termOf('bracket').forms ?? []).not.toContain('yoke');
		expect(termOf('bracket').says).not.toMatch(/\barms\b/);
		expect(termOf('yoke').says).toMatch(/\barms\b/);
		for (const { file, text } of those(/\bbracket/i)) expect(text, file).not.toMatch(/\barms\b|\byoke\b/);
	});
});

// symptom: 'By the plain sum, all down counts as 1', and a table that said so; cause: one of three customs was told of every
// fixture with switches (0 is read as 1, as stand-alone or as nothing: read in tables of the trade)
describe('all switches down', () => {
	const DOWN = /\ball (nine |ten |switches |nine switches |of them )?down\b|\bnone (of them )?up\b/i;
	const TELLS = /\b(counts?|reads?|is|as|means?|address|takes?) (as )?(\{\w+\}|(0|1|one)\b)/i;

	it('is told as a number of the fixture at hand alone', () => {
		for (const { file, text } of those(DOWN).filter((each) => TELLS.test(each.text)))
			expect(text, file).toMatch(/\bthis one\b|\bmaker\b|\b\{name\}\b/);
	});

	it('is said to be up to the maker where switches are taught, and 512 to be out of reach', () => {
		const prose = lessonOf('text-and-switches').body.replace(/\s+/g, ' ');
		expect(prose).toMatch(/all nine down[^.]*\. [^.]*maker/i);
		expect(prose).toMatch(/\b512\b/);
		expect(termOf('dip-switch').says).toMatch(/maker/);
		expect(textOf('content/en/reference/tables.ts')).toMatch(/all nine down[^']*maker/i);
	});

	it('is said of the old wash as its own machine has it', () => {
		const cobble = bundledProfile('cobble');
		if (!cobble) throw new Error('no cobble');
		const sheet = quickSheet({ count: 1, linked: 'desk', profile: 'cobble' });
		const rig = openRig({
			...sheet,
			fixtures: sheet.fixtures.map((each) => ({ ...each, switches: Array.from({ length: 10 }, () => false) })),
		});
		const [unit] = rig.gear.units.values();
		const { work, address } = unit?.state.context.settings ?? {};
		expect(work).toBe('line');
		expect(fixtures['cobble']?.controls['switches-1-to-9']).toContain(`all nine down, this one takes as ${address}`);
	});
});

// symptom: 'Data is lost after a second with no frame'; cause: the most that a sender may take between two packets, a second, was
// taught as what a receiver waits, which must take a gap of up to 1.25 s (ANSI E1.11, from memory)
describe('loss of data', () => {
	const seconds = TIMING.lossOfDataMs / 1000;

	it('is nowhere said to come after a second', () => {
		const LOSS = /\b(lost|loss|gone|dead|stopped)\b/i;
		const ONE = /\b(a|one|1) second\b|\b1 s\b/i;
		const wrong = those(ONE).filter(
			({ text }) => LOSS.test(text) && /\b(data|frames?|packets?|line)\b/i.test(text) && !text.includes(`${seconds}`),
		);
		expect(wrong).toEqual([]);
		expect(textOf('content/en/reasons/reasons.ts')).not.toMatch(/Until a second is up/);
		expect(termOf('loss-of-data').says).not.toMatch(/\ba second\b/);
	});

	it('is taught as no sooner than the time the house names, and later if the maker likes', () => {
		const { lesson, body } = lessonOf('when-data-goes');
		expect(seconds).toBeGreaterThanOrEqual(1.25);
		expect(body.replace(/\s+/g, ' ')).toContain(`${seconds} seconds`);
		expect(body).toMatch(/maker/);
		expect(lesson.card.join(' ')).toContain(`${seconds} seconds`);
		expect(lesson.card.join(' ')).toMatch(/maker/);
		expect(termOf('loss-of-data').says).toContain(`${seconds} seconds`);
	});
});

// symptom: 'Keep to four flashes a second at most' on a card that prints by itself, as if it held everywhere; cause: whose advice
// it is stood in the sources of the lesson alone
describe('a limit for strobes', () => {
	const RATE = /\b(four|4) flashes\b|\b5 Hz\b|\b(four|five|4|5) (times )?a second\b/i;

	it('names whose it is wherever it is given', () => {
		const given = those(RATE).filter(({ text }) => /flash|strobe|Hz/i.test(text));
		expect(given.length).toBeGreaterThanOrEqual(4);
		for (const { file, text } of given) expect(text, file).toMatch(/\bUK\b|\bvenue\b/);
		for (const { file, text } of given.filter(({ text: each }) => /four|\b4\b/.test(each)))
			expect(text, file).toMatch(/\bUK\b/);
	});

	it('stands with its country in the caution, on both cards that are printed, and in both lessons', () => {
		const GIVEN = /UK[^.]*four flashes a second/;
		expect(cautions.flashing.care.join(' ')).toMatch(GIVEN);
		for (const id of ['programmes-speed-sound', 'a-flash-nobody-asked-for']) {
			const file = lessonOf(id);
			expect(file.lesson.card.join(' '), id).toMatch(GIVEN);
			expect(file.lesson.sources.join(' '), id).toMatch(/UK.*second-hand/);
			expect(proseOf(file), id).toMatch(GIVEN);
		}
		expect(lessonOf('programmes-speed-sound').body.replace(/\s+/g, ' ')).toMatch(/UK[^.]*four flashes a second/);
	});
});

// symptom: 'Charge time from empty: 3.3 h', as if it would then be full; cause: the sum has no losses and no slow end in it
describe('a time to charge', () => {
	it('is given as the least wherever one is given', () => {
		expect(termOf('charge-time').says).toMatch(/at least/i);
		// names of the thing, and of the row whose figure says it
		for (const { file, text } of those(/\bcharge time\b|\bfrom (flat|empty) to full\b|\bhours to charge\b/i))
			if (!/^Charge time( from empty)?$/.test(text)) expect(text, file).toMatch(/at least/i);
		const rows = referencePages().flatMap(({ sections }) =>
			sections.flatMap(({ tables }) => tables.flatMap((t) => t.rows)),
		);
		const given = rows.filter(([what]) => what === 'Charge time from empty');
		expect(given.length).toBeGreaterThan(0);
		for (const [, figure] of given) expect(figure).toMatch(/^at least \d/);
		for (const { lesson } of lessonFiles())
			for (const line of lesson.card.flatMap(sentencesOf))
				if (/\bhours?\b.*\bcharg/i.test(line)) expect(line).toMatch(/at least/i);
	});
});
