import { describe, expect, it } from 'vitest';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { checks } from '#words/checks/index.ts';
import { faults } from '#words/faults/index.ts';
import { fixtures } from '#words/fixtures/index.ts';
import { terms } from '#words/glossary/index.ts';
import { calcWords, figureWords } from '#words/lessons/index.ts';
import * as plan from '#words/plan/index.ts';
import { reasons } from '#words/reasons/index.ts';
import { repairs } from '#words/repairs/index.ts';
import { frame } from '#words/site/index.ts';
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

// symptom: the lesson, its card and the load-out had plugs go in and out in any order, and the first into the wall first; cause: the
// order was for a hand in the dark, not for the hand on a live link (the drill, its way and its mark: tests/sim/drill/harm.test.ts)
describe('linking a row of mains', () => {
	it('is taught with its supply off, the wall plug last, and the other way round coming down', () => {
		const { lesson, body } = lessonOf('power-along-the-row');
		const prose = body.replace(/\s+/g, ' ');
		expect(prose).toMatch(/link the row with its supply off/);
		expect(prose).toMatch(/The plug at the wall goes in last/);
		expect(prose).toMatch(/Taking it down is the other way round: that plug comes out first, then the links/);
		expect(lesson.card.join(' ')).toMatch(/Supply off, .*wall plug last\. Taking it down: wall plug first\./);
		const out = lessonOf('cool-coil-charge-log');
		expect(out.body.replace(/\s+/g, ' ')).toMatch(/Pull its plug at the wall, and only then any lead or link/);
		expect(out.lesson.card.join(' ')).toMatch(/Plug out at the wall first, then links/);
	});

	it('is nowhere told to begin at the wall', () => {
		const LIVE =
			/\b(plug|put|feed)\b[^.]*\b(first|one)\b[^.]*\b(in(to)?|at) the wall\b[^.]*\bthen (link|the second|each)/i;
		expect(those(LIVE)).toEqual([]);
	});
});

/** What could hurt somebody and stood nowhere: each must be in the caution, in these lessons, and on the cards of those that print. */
const ADDED: readonly {
	readonly what: string;
	readonly caution: keyof typeof cautions;
	readonly says: RegExp;
	readonly lessons: readonly string[];
	readonly cards: readonly string[];
}[] = [
	{
		what: 'a cable drum is unwound',
		caution: 'mains',
		says: /\b(unwind|unwound)\b/i,
		lessons: ['power-along-the-row'],
		cards: ['power-along-the-row'],
	},
	{
		what: 'no lithium pack is charged below freezing',
		caution: 'batteries',
		says: /\bbelow 0 °C \(32 °F\)/,
		lessons: ['charge-and-hours', 'cool-coil-charge-log'],
		cards: ['charge-and-hours', 'cool-coil-charge-log'],
	},
	{
		what: 'class I needs its earth',
		caution: 'mains',
		says: /\bclass I\b.*\bneeds (its|that) earth\b/,
		lessons: ['power-along-the-row'],
		cards: [],
	},
	{
		what: 'the RCD is tested first',
		caution: 'mains',
		says: /\btest button\b/,
		lessons: ['power-along-the-row'],
		cards: [],
	},
	{
		what: 'what can be lowered is lowered before anyone climbs',
		caution: 'height',
		says: /\blower(s|ed)? (it )?(before|it, and no one climbs)/i,
		lessons: ['floor-bracket-clamp-bond', 'cool-coil-charge-log'],
		cards: ['floor-bracket-clamp-bond', 'cool-coil-charge-log'],
	},
	{
		what: 'exit signs and escape lights are left to be seen',
		caution: 'live-show',
		says: /\bcover(ed)?\b.*\bdim(med)?\b.*\boutsh(one|ine)\b/,
		lessons: ['floor-bracket-clamp-bond', 'uplight-column-facade'],
		cards: ['floor-bracket-clamp-bond', 'uplight-column-facade'],
	},
	{
		what: 'leads stay out of exit routes',
		caution: 'live-show',
		says: /\bexit routes?\b/,
		lessons: ['power-along-the-row', 'uplight-column-facade', 'cool-coil-charge-log'],
		cards: ['power-along-the-row', 'uplight-column-facade', 'daisy-chain'],
	},
];

describe.each(ADDED)('$what', ({ caution, says, lessons, cards }) => {
	it('in its caution, in the lessons where hands do it, and on the cards', () => {
		expect(cautions[caution].care.join(' ')).toMatch(says);
		for (const id of lessons) expect(lessonOf(id).body.replace(/\s+/g, ' '), id).toMatch(says);
		for (const id of cards) expect(lessonOf(id).lesson.card.join(' '), id).toMatch(says);
	});
});

// symptom: two pin-outs of three pins are met and one was taught, so that an old light was called deaf, or its cable bad
describe('three pins', () => {
	it('are said to be the other way round on some old kit, wherever the pins are taught', () => {
		const OLD = /\bold three-pin kit\b/i;
		const { lesson, body } = lessonOf('daisy-chain');
		for (const text of [
			body,
			lesson.card.join(' '),
			termOf('pin').says,
			figureWords.figures.pins.shows,
			textOf('content/en/reference/tables.ts'),
		])
			expect(text).toMatch(OLD);
	});
});

// symptom: 'Two ways of counting are usual', and the lesson had one alone; a third is met
describe('ways of counting switches', () => {
	it('are two that are usual, and not all', () => {
		expect(textOf('content/en/reference/tables.ts')).toMatch(/Two ways of counting are usual, and there are others\./);
		expect(lessonOf('text-and-switches').body.replace(/\s+/g, ' ')).toMatch(
			/is usual, and so is one [^.]*\. There are others/,
		);
		expect(those(/\b(both|the two) ways of counting\b|\bwired the other way\b.*\bswitch/i)).toEqual([]);
	});
});

// symptom: 'Put pools edge to edge, and the joins come out darker than the middles', where the slider beside it said even; cause:
// the edge of a pool is where it is half as bright, so that two of them add up
describe('a row of pools', () => {
	it('may meet at half-bright edges, is judged by least against most, and the limit is called an opinion', () => {
		const { lesson, body } = lessonOf('throw-pool-overlap');
		const prose = body.replace(/\s+/g, ' ');
		expect(prose).toMatch(/where two such edges meet, the halves add up/);
		expect(prose).toMatch(/the least light along the row over the most/);
		expect(prose).toMatch(/From 0\.7 up we call it even\. That’s our opinion/);
		expect(lesson.sources.join(' ')).toMatch(/0\.7[^.]*: our opinion, no source/);
		expect(those(/\bpools?\b.*\b(edge to edge|just touch)\b|\bit looks (even|patchy)\b/i)).toEqual([]);
	});

	it('is lit as the sum says only from some way off: five times the size for a wide beam, more for a narrow one', () => {
		const FIVE = /\bfive times\b/i;
		const told = those(FIVE).filter(({ text }) => /\b(size|lens|source)\b/.test(text));
		expect(told.length).toBeGreaterThanOrEqual(3);
		for (const { file, text } of told) expect(text, file).toMatch(/\bwide\b/);
		expect(lessonOf('throw-pool-overlap').body).toMatch(/A narrow beam needs more/);
	});
});

// symptom: a reader in the US met RCD, earth, PAT, mains and competent person, and a search for GFCI found nothing; rules of one
// country stood as if they held everywhere
describe('words and rules of one country', () => {
	const TWINS = [
		{ here: /\bRCDs?\b/, there: /\bGFCI\b/, term: 'rcd', form: 'GFCI' },
		{ here: /\bearth\b/i, there: /\bground\b/i, term: 'earth', form: 'ground' },
		{ here: /\bPAT\b/, there: /\bUS\b.*\binspection\b|\binspection\b.*\bUS\b/, term: 'pat', form: 'test and tag' },
		{
			here: /\bcompetent (person|electrician)\b/,
			there: /\bqualified person\b/,
			term: 'competent-person',
			form: 'qualified person',
		},
		{ here: /\bdrum\b/, there: /\breel\b/, term: 'cable-drum', form: 'cord reel' },
		{
			here: /\bescape light(s|ing)?\b/i,
			there: /\begress lighting\b/,
			term: 'escape-lighting',
			form: 'egress lighting',
		},
	] as const;

	it.each(TWINS)('$form stands with its twin: at the term, in each caution, and in each lesson’s words', (twin) => {
		const { here, there, term, form } = twin;
		expect(termOf(term).forms).toContain(form);
		expect(termOf(term).says).toMatch(/\bUS\b/);
		const cautionTexts = Object.values(cautions).map(({ harm, care, defer }) =>
			[harm, ...care, defer, siteFirst].join(' '),
		);
		const lessonTexts = lessonFiles().map(({ body }) => body.replace(/\s+/g, ' '));
		// the finder's checks are read under the cautions
		const one = textOf('content/en/faults/faults.ts')
			.split('\n')
			.filter((line) => /\bmains earth\b/.test(line));
		const all = [...cautionTexts, ...lessonTexts, ...one];
		for (const text of all.filter((each) => here.test(each))) expect(text).toMatch(there);
	});

	// symptom: 'a swap at height is for the competent person (in the US, the qualified person)'; cause: one twin for all work, where
	// the US has a competent person for height and lifting, and a qualified person for electrical work (from memory)
	it('has the qualified person for electrical work alone, and the competent person for height and lifting in both countries', () => {
		const ELECTRICAL = /\b(mains|electrical work|electrician|plug|lead|circuit|distribution|supply)\b/i;
		const HIGH = /\b(at height|hang|hung|climb|rigger|rigging|lifting)\b/i;
		const sent = those(/\bcompetent person\b/).filter(({ file }) => !/glossary|\/cautions\//.test(file));
		expect(sent.length).toBeGreaterThanOrEqual(5);
		for (const { file, text } of sent)
			if (HIGH.test(text)) expect(text, file).not.toMatch(/\bin the US, the qualified person\b/);
			else expect(text, file).toMatch(/\bin the US, (for electrical work, )?the qualified person\b/);
		for (const { file, text } of those(/\bin the US, (it’s for |for electrical work, )?the qualified person\b/))
			expect(text, file).toMatch(ELECTRICAL);
		expect(frame.foot).toMatch(/competent person on site \(in the US, for electrical work, the qualified person\)/);
	});

	it('has mains as power or line voltage in its caution and at its term', () => {
		expect(cautions.mains.harm).toMatch(/in the US: power, or line voltage/);
		expect(termOf('mains').says).toMatch(/In the US the words are power, or line voltage/);
	});

	it('names whose rule it is, wherever one is called by its number, its office or its name', () => {
		const RULE = /\bregulator\b|\bPAT\b|\bEN \d{4,}/;
		const WHOSE = /\bUK\b|\bEuropean\b/;
		expect(those(RULE).length).toBeGreaterThanOrEqual(6);
		for (const { file, text } of those(RULE).filter(({ text: each }) => !/^(EN 12464|PAT)$/.test(each)))
			expect(text, file).toMatch(WHOSE);
	});
});

// symptom: 'stop, come down, get clear when they say so', of lightning; cause: the rule that others say when, which holds for going
// back, was put on getting away
describe('getting out of danger', () => {
	const AWAY =
		/\b(get (well )?clear|come down|get out|step away|just leave)\b[^.]*\b(when|as|if|once) (they|the \w+|whoever|someone)\b[^.]*\bsays?\b/i;

	it('waits for nobody’s word', () => {
		for (const { file, text } of those(AWAY)) expect({ file, text }).toEqual({ file, text: 'no such sentence' });
	});

	it('is told so where wind and lightning, and where clearing the house, are taught', () => {
		const weather = lessonOf('weather');
		for (const text of [proseOf(weather), weather.lesson.card.join(' ')])
			expect(text).toMatch(/lightning.*come down.*Don’t wait to be told/is);
		expect(lessonOf('exits-and-emergency-light').lesson.card.join(' ')).toMatch(/In danger, [^.]*: just leave/);
	});
});

// symptom: 'hot by itself: out of use, not carried on', and 'no van with the rest'; cause: a pack that may be about to burn stood in
// one list with one that is cold and damaged, as if both could be put aside
describe('a damaged pack', () => {
	const BURNING = /\b(hot by itself|smok(es?|ing)|hiss(es|ing)?|smells?)\b/i;
	const ASIDE = /\b(tag(ged)?|set apart|out of use|quarantine|put aside|the van)\b/i;

	it('that is hot by itself, smells, hisses or smokes is got away from, and never put aside', () => {
		const both = those(BURNING).filter(({ text }) => ASIDE.test(text));
		for (const { file, text } of both) expect({ file, text }).toEqual({ file, text: 'no such sentence' });
		const told = those(BURNING).filter(({ text }) => /^(smoke, hissing|hot by itself|one that smokes)\b/i.test(text));
		expect(told.length).toBeGreaterThanOrEqual(3);
		for (const { file, text } of told) expect(text, file).toMatch(/\b(people|everyone) (get )?out\b|\bleave it\b/i);
	});

	it('goes in no van, and whoever is in charge says who moves it', () => {
		const { lesson, body } = lessonOf('lithium-in-transit-and-store');
		expect(body.replace(/\s+/g, ' ')).toMatch(/in no van, until the maker or a licensed carrier says how/);
		expect(lesson.card.join(' ')).toMatch(/never put in the van.*in charge says who moves it/);
		expect(those(/\bvan with the rest\b/)).toEqual([]);
	});
});

// symptom: 'You may use 12.8 A: as many as 20 fixtures', and 'a person who leans on it: the rigger allows for it'; cause: a sum was
// worded as if it were the yes of the electrician or of the rigger
describe('a sum of amps or of weights', () => {
	it('is never worded as leave', () => {
		const { circuit, chain, weights } = calcWords;
		for (const words of [circuit, chain, weights])
			for (const text of Object.values(words)
				.flat()
				.filter((each) => typeof each === 'string'))
				expect(text).not.toMatch(/\b(may|safe|allowed|can take|permitted)\b/i);
	});

	it('is followed by whose yes it is', () => {
		expect(lessonOf('circuits-and-distribution').body).toMatch(/id="circuit" \/>\s+That’s a sum, and not a yes\./);
		expect(lessonOf('weights-at-a-point').lesson.card.join(' ')).toMatch(/A sum is no yes\./);
		expect(those(/\ballows for (it|that)\b/).filter(({ text }) => /\bleans?\b/.test(text))).toEqual([]);
	});
});

// symptom: flicker at a few times a second was looked into, cable by cable, and only then taken out
describe('flicker that can be seen', () => {
	it('is stopped first, and looked into after', () => {
		const { lesson, body } = lessonOf('matching-white');
		expect(body.replace(/\s+/g, ' ')).toMatch(/level brought to zero\. Then look at the data/);
		expect(lesson.card.join(' ')).toMatch(/have that light down at once\. Then data/);
	});
});

// symptom: 'torch down' on a card that prints, read in the US as a flame
describe('a torch, a lift and the fire service', () => {
	it.each([
		[/\btorch\b/i, /\bflashlight in the US\b/],
		[/\buse no lift\b/i, /\belevator in the US\b/],
		[/\bfire service\b/i, /\bfire department in the US\b/],
	])('%s stands with its twin in each lesson’s words, and on its card', (here, there) => {
		const told = lessonFiles().flatMap(({ lesson, body }) => [lesson.card.join(' '), body.replace(/\s+/g, ' ')]);
		expect(told.some((text) => here.test(text))).toBe(true);
		for (const text of told.filter((each) => here.test(each))) expect(text).toMatch(there);
	});
});

// symptom: a drawing of eight lights with covers on, and no word that they were out; cause: a cover on a lit lens can start a fire
describe('a covered lens', () => {
	it('is drawn on lights that are out, and never to be done to one that is lit', () => {
		const { half } = figureWords.figures;
		expect(half.shows).toMatch(/faders down and covers/);
		expect(half.caption).toMatch(/Never cover a lens that is lit/);
		expect(figureWords.drawn.half.covers).toMatch(/faders down/);
	});
});

// symptom: 'the lead and both its plugs good and dry', which reads as 'very dry'; cause: good took the place of sound, for a mains lead
describe('a mains lead', () => {
	it('is asked to be dry and undamaged in so many words', () => {
		expect(those(/\bgood and dry\b/i)).toEqual([]);
		expect(textOf('content/en/repairs/repairs.ts').match(/both its plugs (are )?dry and undamaged/g)).toHaveLength(2);
	});
});

// symptom: 'It does no harm here', of an open common that mains earth stands in for; cause: what does no harm to data was said to do none
describe('a fault of the line that shows nothing yet', () => {
	it('is said to leave the data alone, no more, and to be put right all the same', () => {
		const yet = Object.entries(reasons).flatMap(([id, says]) =>
			id.endsWith('-yet')
				? [says].flat().map((each) => ({ id, says: typeof each === 'string' ? each : each.says }))
				: [],
		);
		expect(yet.length).toBeGreaterThanOrEqual(4);
		for (const { id, says } of yet) {
			expect(says.replace(/\{[^}]*\}/g, '…'), id).not.toMatch(/\bharm/);
			expect(says, id).toMatch(/^(?=.*On its own this doesn’t spoil the data here).*all the same\.$/);
		}
	});
});

// symptom: 'Unplug what hangs on those sockets … Ask whoever is responsible', 'plug it into another socket', 'Look only: don’t reset it';
// cause: the hand was named first, and whose yes it needs, or what to look at, after it
describe('the order of hands and of asking, in the finder', () => {
	const says = (words: { readonly does: unknown } | undefined): string => `${words?.does}`;

	it.each([
		[
			'a tripped breaker',
			says(repairs['ask-breaker']),
			/^Hands off\b.*\bTell whoever is responsible\b.*\bnot even once\b/,
		],
		[
			'another socket',
			says(repairs['other-socket']),
			/^Leave the dead socket\b.*\bAsk them which other socket\b.*\bplug it in/,
		],
		[
			'a mains lead',
			says(repairs['replace-lead']),
			/^Scorched, warm, wet or damaged\? Don’t touch it\b.*\bnobody else can put it back\b/,
		],
		['a splitter that is off', says(repairs['box-on']), /^Ask first why it’s off\b.*\bsay aloud\b.*\bswitch it on/],
		[
			'a desk restarted',
			says(repairs['restart-desk']),
			/^Ask the operator first\b.*\bother light up to see by\b.*\bThen restart/,
		],
		['a second source', says(repairs['lift-stray']), /\bAsk the operator\b.*\bbefore you pull it\b/],
		['blind', says(repairs['leave-blind']), /^Ask the operator first\b.*\bSay aloud\b.*\bthen leave blind/],
		['a start code', says(repairs['set-start-code']), /^Ask the operator first\b.*\bsay aloud\b/],
		[
			'a sensor',
			says(repairs['clear-sensor']),
			/^If it hangs, this is for those cleared to go up\. Ask\b.*\btake off\b/,
		],
		[
			'a socket tried',
			says(checks['socket-live']),
			/^Is the socket or the plug wet, scorched, cracked or warm\? Leave it\b.*\bback last\b/,
		],
		['a fader tried', says(checks['desk-live']), /\bask the operator to move a fader\b/],
		['a breaker', says(checks['breakers']), /They look, not you: don’t open the board/],
	] as const)('%s: who is asked or what is looked at comes before the hand', (_, does, order) => {
		expect(does).toMatch(order);
	});

	it('sends nobody to a socket to see if it is live, to a fuse, or to hunt in the supply', () => {
		expect(those(/\b(see that|check that|look if)\b[^.]*\bsocket is live\b/i)).toEqual([]);
		expect(those(/\bfind out why\b/i).filter(({ file }) => /\/faults\//.test(file))).toEqual([]);
		expect(textOf('content/en/finder/verdict.ts')).toMatch(/power: 'the power \([^)]*electrician\)'/);
	});

	it('says no more of a socket or of its breaker than is known', () => {
		const told = ['socket-dead', 'breaker-off', 'fuse-blown'].map((id) => JSON.stringify(faults[id])).join(' ');
		expect(told).not.toMatch(/\b(are fine|is good|tripped its|find out why|switched off the sockets)\b/i);
		expect(JSON.stringify(faults['breaker-off']?.cause)).toMatch(
			/isn’t known here, so take every socket and lead as live/,
		);
	});
});

// symptom: 'bring fixtures on a few at a time, and ask the electrician', of links that somebody then makes live; 'feed part of it from
// another outlet, and ask which'; cause: what to do stood before whom to ask, and a sum before what it leaves out
describe('the sums of a plan', () => {
	const { figureNames, figureWords: sums, loadWords, needWords, ruleWords } = plan;

	it('are no leave: each of amps that are left or charged says so in its name and its note', () => {
		for (const id of ['breaker-left', 'link-left', 'surge-left', 'charge-amperes'] as const) {
			expect(figureNames[id]('A'), id).toContain('(no permission)');
			expect(sums.notes[id](), id).toMatch(/This isn’t permission to (plug in|switch on|link)/);
		}
	});

	it('over, begin with not switching on, and have the electrician before anything is parted, linked or brought on', () => {
		for (const text of [sums.over, sums.overLink, sums.overSurge]) {
			expect(text.search(/Don’t switch on/)).toBeGreaterThan(-1);
			const ask = text.search(/electrician/);
			expect(ask).toBeGreaterThan(text.search(/Don’t switch on/));
			const act = text.search(/\b(part the row|come on|feed part)\b/);
			if (act >= 0) expect(ask).toBeLessThan(act);
		}
		expect(those(/\bfew at a time\b/)).toEqual([]);
	});

	it('ask the electrician for what stands on a breaker, and name whose curves B, C and D are', () => {
		expect(sums.notes['surge-left']()).toMatch(/This isn’t permission to switch on, above zero either/);
		for (const text of [needWords.breaker, needWords.curve, ruleWords.curve])
			expect(text).toMatch(/\b[Aa]sk the electrician\b/);
		for (const text of [needWords.curve, ruleWords.curve, sums.notes['surge-left']()]) expect(text).toMatch(/\bUS\b/);
		expect(those(/\bsurge\b.*\b(thousandths|takes off)\b/)).toEqual([]);
	});

	it('give a time to plug in as a chance, with who stays and where it charges', () => {
		expect(loadWords.plugIn('wash', '18:00', '02:10')).toMatch(/chance of being full by 18:00, plug in before 02:10/);
		expect(loadWords.stay).toMatch(/only while somebody stays/);
		expect(loadWords.where).toMatch(/indoors and dry, out of exit routes.*0 °C \(32 °F\)/);
		expect(those(/\bin the open\b/).filter(({ text }) => /\bcharg/i.test(text))).toEqual([]);
	});
});

// symptom: a button that moves a hung light on the plan, with the caution under it and 'bring it down first' only after
describe('a plan that changes', () => {
	it('says before its button that nobody moves what hangs on that word, and asks the operator before the desk is patched', () => {
		expect(plan.lightWords.planOnly).toMatch(/nobody turns or moves it up there.*nobody below.*second fixing/);
		for (const text of Object.values(plan.tickWords.found.after)) expect(text).toMatch(/Ask the operator first/);
		expect(plan.tickWords.found.asks.light('a', 'b')).toMatch(/from the floor.*Press nothing/);
	});
});

// symptom: 'all after one is the line', of a row whose mains is linked the same way; 'does so even when the bar is switched off', as if
// of every fixture; colours down as the way to stop a flash that no colour fader stops; a slower fade against a snap, which it
// only draws out; one infrared remote told as all remotes; a card that puts swollen packs aside with what is bent
describe('what a second reader found', () => {
	const said = (id: string) => lessonOf(id).body.replace(/\s+/g, ' ');
	const cardOf = (id: string) => lessonOf(id).lesson.card.join(' ');

	it('lets a row that is dark from one light on be dark for want of mains as well as of data', () => {
		expect(said('how-to-think')).toMatch(
			/a data cable, or a mains link\..*Are the power indicators out too\? Then it’s the mains:.* Hands off until the supply is off, the wall plug is out/,
		);
	});

	it('has every mains link taken for live until the plug at the wall is out', () => {
		expect(said('power-along-the-row')).toMatch(/every link for live until the plug at the wall is out/);
	});

	it('stops a flash that no colour fader stops', () => {
		expect(said('a-flash-nobody-asked-for')).toMatch(
			/Still flashing\? Don’t hunt for the chart: pull its function and strobe faders to zero.*Still flashing, or no desk\? Go to its own switch/,
		);
	});

	it('never sends a swollen pack aside with what is bent', () => {
		for (const { file, text } of those(/\bswollen\b.*\bput it aside\b/i)) expect(text, file).toBe('no such sentence');
		expect(cardOf('the-case')).toMatch(
			/swollen: no power, no charge\..*stay clear of a swollen one, and tell whoever is in charge/,
		);
	});

	it('draws no snap out by a slower fade, and has remotes by radio', () => {
		expect(said('dimmer-curves')).not.toMatch(/fade that ends slower/);
		expect(cardOf('dimmer-curves')).not.toMatch(/slower end/);
		expect(said('remote-and-sensor')).toMatch(/works by radio needs no sight/);
	});
});
