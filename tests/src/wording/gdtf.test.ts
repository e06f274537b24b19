import { describe, expect, it } from 'vitest';
import { asked, left } from '#words/gdtf/index.ts';
import type { Says } from '#words/rig/index.ts';
import { InputError } from '../../../shared/error/index.ts';
import type { AskedCode, LeftCode, LeftFacts, LeftOut, NotWritten } from '../../../shared/gdtf/index.ts';
import { assumedText, leftOutText } from '../../../src/wording/index.ts';

const at = { mode: 'Long', channel: 'Body_Dimmer' };
const fn = { ...at, name: 'Zoom 1', attribute: 'Zoom' };

/** One of each, as it is told. */
const FACTS: { readonly [Code in LeftCode]: LeftFacts[Code] } = {
	'other-files': { count: 3 },
	'part-unused': { part: 'Models', count: 1 },
	unreadable: { attribute: 'PhysicalFrom', found: 'much' },
	weight: { kilograms: 7.5 },
	'emitter-unused': { name: 'Lime' },
	'name-cut': { found: 'A very long name', name: 'A very' },
	'mode-refused': { mode: 'Long' },
	'mode-not-asked': { mode: 'Long' },
	'cells-differ': { mode: 'Long', cells: 1, most: 8 },
	'virtual-channel': at,
	'slot-unused': { mode: 'Long', slot: 4 },
	'extra-bytes': { ...at, bytes: 1 },
	'fine-of-bands': at,
	'not-acted': fn,
	'shutter-between': fn,
	reversed: fn,
	'other-master': { ...fn, master: 'Body_Control1' },
	'master-unknown': { ...fn, master: 'Body_Control1' },
	'colour-not-given': fn,
	'colour-fitted': fn,
	'colour-out-of-reach': fn,
	'rate-clamped': { ...fn, found: 0, rate: 0.1 },
	'part-of-slot': fn,
	'sets-dropped': { ...fn, count: 2 },
	'same-start': fn,
	'set-outside': fn,
	'cut-off-byte': { ...fn, value: 1000 },
	'too-narrow': fn,
	'resting-level': { ...at, level: 128 },
	'beams-swapped': { beam: 40, field: 20 },
	'beam-clamped': { found: 180, degrees: 170 },
	'beams-differ': { count: 2 },
	'mixed-figures': { of: 'watts' },
	'not-written': { what: 'panel' },
	'name-changed': { found: 'Slow, fast', name: 'Slow fast' },
	'cells-in-other-order': { mode: 'Long' },
	'cells-overlap': { mode: 'Long', slot: 'red' },
};

const refusal = new InputError('gdtf.mode', 'modes[1]', { trouble: 'several-breaks', count: 2 });
const told = (code: LeftCode, facts: object): string =>
	leftOutText({
		path: 'modes[1]',
		code,
		facts,
		...(code === 'mode-refused' ? { because: { code: refusal.code, path: refusal.path, facts: refusal.facts } } : {}),
	} as LeftOut);

/** A sentence or more, with no hole left open and nothing unnamed in it. */
const SENTENCE = /^(?!.*(undefined|\[object|[{}]))[A-Z“0-9]\S* .*\.$/;

describe('what an open fixture file could not carry', () => {
	it.each(Object.entries(FACTS))('%s is worded', (code, facts) => {
		expect(told(code as LeftCode, facts)).toMatch(SENTENCE);
	});

	it('a refused mode says why', () => {
		expect(told('mode-refused', { mode: 'Long' })).toBe(
			'The mode Long is left out. This mode needs 2 start addresses. A fixture here has one, so pick another mode.',
		);
	});

	it('each wording of a code is said of something', () => {
		const parts = ['Models', 'Revisions', 'FTPresets', 'Relations', 'FTMacros', 'DMXProfiles', 'Measurement', 'Gamuts'];
		const whats: readonly NotWritten[] = [
			'panel',
			'battery',
			'idle-watts',
			'emitter-watts',
			'static-levels',
			'programmes',
			'settings',
			'line',
		];
		const said = (code: LeftCode, all: readonly object[]) => new Set(all.map((facts) => told(code, facts)));
		expect(
			said(
				'part-unused',
				parts.map((part) => ({ part, count: 2 })),
			),
		).toHaveProperty('size', left['part-unused'].length);
		expect(
			said(
				'not-written',
				whats.map((what) => ({ what })),
			),
		).toHaveProperty('size', left['not-written'].length);
		expect(said('mixed-figures', [{ of: 'lumens' }, { of: 'watts' }])).toHaveProperty('size', 2);
		const several = Object.entries<Says>(left).filter(([, says]) => typeof says !== 'string');
		expect(several.map(([code]) => code)).toEqual(['part-unused', 'mixed-figures', 'not-written']);
	});
});

it.each(Object.keys(asked))('what was assumed of %s is worded', (code) => {
	expect(assumedText({ path: 'optics', code: code as AskedCode, facts: { assumed: 25 } })).toMatch(SENTENCE);
});
