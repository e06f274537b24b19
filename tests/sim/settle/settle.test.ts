import { describe, expect, it } from 'vitest';
import { stockNames } from '#words/stock/index.ts';
import { isIdle, type KeyedPanel, type Profile } from '../../../shared/profile/index.ts';
import {
	ANSWERS,
	blankEntry,
	blankPanel,
	type PanelEntry,
	type Question,
	stockFixture,
} from '../../../shared/stock/index.ts';
import {
	actingSettings,
	displayOf,
	draftOf,
	driveOf,
	type FixtureState,
	inputFrom,
	itemAt,
	nextDeadline,
	panelOf,
	startFixture,
	stepFixture,
} from '../../../sim/fixture/index.ts';
import { type SettlePress, tellApart } from '../../../sim/settle/index.ts';
import { routes } from '../../../src/features/stock/routes.ts';

const CHART = '1 channel mode\n1 Dimmer\n\n3 channel mode\n1 Red\n2 Green\n3 Blue';
const MENU = `Address 1-512
Mode: 1 channel, 3 channel
Light comes from: DMX, Static, Auto
Colour: Red, Green
Setup
	Signal loss: Hold, Blackout
	Lock: off, on`;
const entryOf = (panel: Partial<PanelEntry>) => ({
	...blankEntry('own-1', 'Made up', 0),
	chart: CHART,
	panel: { ...blankPanel('keys'), menu: MENU, ...panel },
});
const profileOf = (panel: Partial<PanelEntry>): Profile => stockFixture(entryOf(panel), stockNames).profile as Profile;

/** A panel after some presses, played here on the machine by itself. */
function stateAfter(profile: Profile, steps: readonly SettlePress[]): FixtureState {
	let at: FixtureState = startFixture(profile, inputFrom(profile, { settings: {}, charge: 1, on: true }, true));
	const wait = (ms: number) => {
		for (const end = at.context.now + ms; at.context.now < end; ) {
			const due = nextDeadline(profile, at) ?? end;
			at = stepFixture(profile, at, { type: 'clock.advance', now: Math.max(at.context.now + 1, Math.min(end, due)) });
		}
	};
	for (const step of steps) {
		if (step.do !== 'wait') at = stepFixture(profile, at, { type: 'key.down', key: step.key });
		if (step.do !== 'tap') wait(step.ms);
		if (step.do !== 'wait') at = stepFixture(profile, at, { type: 'key.up', key: step.key });
		if (step.do !== 'wait') wait(200);
		expect(['confirming', 'locked']).not.toContain(panelOf(at));
	}
	return at;
}

/** What a person sees of a panel after some presses. */
function seenAfter(profile: Profile, steps: readonly SettlePress[]): string {
	const at = stateAfter(profile, steps);
	const display = displayOf(profile, at, at.context.now);
	const lines = display.kind === 'keyed' ? display.lines.map((line) => line.replace(/^> /, '').trim()) : [];
	const { work, held, programme } = actingSettings(at);
	const light = driveOf(at) === 'line' ? 'dark' : work === 'held' ? held : programme;
	return JSON.stringify([lines.filter((line) => line !== ''), light]);
}

describe('presses that tell two readings of a panel apart', () => {
	const cases: readonly (readonly [Question, PanelEntry['way'], number])[] = [
		['rests', 'keys', 1],
		['held', 'keys', 2],
		['ends', 'keys', 2],
		['stores', 'keys', 3],
		['acts', 'keys', 4],
		['acts', 'knob', 4],
		['ends', 'knob', 2],
	];
	it.each(cases)('%s of a panel with %s: played one by one, each reading shows what was said', (id, way, most) => {
		const readings = ANSWERS[id].map((answer) => ({
			answer,
			profile: profileOf({ ...blankPanel(way), menu: MENU, answers: { [id]: answer } }),
		}));
		const tell = tellApart(readings, 8);
		expect(tell?.steps.length).toBe(most);
		const shown = new Map<string, string>(
			readings.map(({ answer, profile }) => [answer, seenAfter(profile, tell?.steps ?? [])]),
		);
		expect(new Set(shown.values()).size).toBe(tell?.seen.length);
		for (const { answers, lines, light } of tell?.seen ?? []) {
			const lit = light === 'dark' ? 'dark' : 'held' in light ? light.held : light.programme;
			for (const answer of answers) expect(shown.get(answer)).toBe(JSON.stringify([lines, lit]));
		}
		// no fewer do: with one step less nothing is found
		expect(tellApart(readings, most - 1)).toBe(null);
	});

	// symptom: on the way to an answer the real one ran a strobe; cause: only locking and setting all back were kept off
	it('never stand at a strobe, nor at a programme that flashes', () => {
		const chart = 'Mode A\n1 Dimmer\n2 Red\n3 Green\n4 Strobe: 0-9 off; 10-255 strobe slow to fast';
		const flat = 'K = Static colour 1-2\nS = Strobe 0-20\nN = Start address 1-512';
		const tree = 'Strobe 0-20\nProgramme: Strobe, Fade\nAddress 1-512\nLight comes from: DMX, Static, Auto';
		let found = 0;
		for (const [way, menu] of [
			['flat', flat],
			['keys', tree],
			['knob', tree],
		] as const)
			for (const id of ['ends', 'acts', 'stores', 'held'] as const) {
				const readings = ANSWERS[id].map((answer) => {
					const panel = { ...blankPanel(way), menu, answers: { [id]: answer } };
					const { profile } = stockFixture({ ...blankEntry('own-1', 'Made up', 0), chart, panel }, stockNames);
					return { answer, profile: profile as Profile };
				});
				const [{ profile } = { profile: null }] = readings;
				const tell = tellApart(readings, 8);
				if (!tell || !profile || profile.panel.kind === 'dip') continue;
				found++;
				for (let n = 1; n <= tell.steps.length; n++)
					for (const each of readings) {
						const at = stateAfter(each.profile, tell.steps.slice(0, n));
						const { work, strobe, programme } = actingSettings(at);
						const kind = profile.programmes.find((one) => one.id === programme)?.kind;
						expect([way, id, strobe, work === 'programme' && kind === 'strobe']).toEqual([way, id, 0, false]);
						const item = itemAt(each.profile.panel as KeyedPanel, at.context.path);
						const isOpen = way === 'flat' || panelOf(at) === 'editing';
						expect([way, id, isOpen && 'setting' in item && item.setting === 'strobe']).toEqual([way, id, false]);
					}
			}
		expect(found).toBeGreaterThan(3);
	});

	// symptom: the walked check passed a value that the real one may act on as it comes by; cause: only what acts here was looked at
	describe('never pass what the real one may act on', () => {
		const FLASHES = 'Mode A\n1 Dimmer\n2 Red\n3 Green\n4 Strobe: 0-9 off; 10-255 strobe slow to fast';
		/** Every draft and item on the way of each check of a panel, as `setting value` or `item label`. */
		const passedOn = (way: PanelEntry['way'], menu: string, ids: readonly Question[], least = 1): string[] => {
			const passed: string[] = [];
			let found = 0;
			for (const id of ids) {
				const readings = ANSWERS[id].map((answer) => {
					const panel = { ...blankPanel(way), menu, answers: { [id]: answer } };
					const entry = { ...blankEntry('own-1', 'Made up', 0), chart: FLASHES, panel };
					return { answer, profile: stockFixture(entry, stockNames).profile as Profile };
				});
				const steps = tellApart(readings, 8)?.steps ?? [];
				if (steps.length > 0) found++;
				for (let n = 1; n <= steps.length; n++)
					for (const { profile } of readings) {
						const at = stateAfter(profile, steps.slice(0, n));
						const item = itemAt(profile.panel as KeyedPanel, at.context.path);
						passed.push(`item ${item.label}`);
						if ('setting' in item && draftOf(at) !== null) passed.push(`${item.setting} ${draftOf(at)}`);
						if (isIdle(draftOf(at) ?? '')) passed.push('idle');
					}
			}
			expect(found).toBeGreaterThanOrEqual(least);
			return passed;
		};
		const ALL = ['acts', 'stores', 'held'] as const;

		it('a programme that may flash, by where the light comes from', () => {
			for (const way of ['keys', 'knob'] as const) {
				const light = 'Light comes from: DMX, Auto, Static\nProgramme: Strobe, Fade';
				expect(passedOn(way, `${light}\nColour: Red, Green`, ALL)).not.toContain('work programme');
				expect(passedOn(way, `Loss: Hold, Programme\n${light}`, ALL)).not.toContain('loss programme');
			}
		});

		it('a static colour that may strobe at a rate nobody sees', () => {
			expect(passedOn('keys', 'Light comes from: DMX, Static\nStrobe 0-20\nColour: Red, Green', ALL)).not.toContain(
				'work held',
			);
		});

		it('the lock', () => {
			expect(passedOn('keys', 'Lock: off, on\nLight comes from: DMX, Static', ALL)).not.toContain('lock on');
		});

		it('a value that nobody knows', () => {
			const menu = 'Light comes from: DMX, Wobble, Static, Wibble\nColour: Red, Green';
			expect(passedOn('keys', menu, ALL)).not.toContain('idle');
		});

		it('a function of a flat panel that nobody knows', () => {
			const [first, unknown, last] = ['L = Signal loss: Hold, Blackout', 'W = Wobble', 'D = Dimmer 0-100'];
			expect(passedOn('flat', [first, last, unknown].join('\n'), ['ends'])).toContain('item D');
			// there is no way but through it
			expect(passedOn('flat', [first, unknown, last].join('\n'), ['ends'], 0)).toEqual([]);
		});
	});

	it('of one reading, of switches, and of two that are alike are none', () => {
		const one = { answer: 'a', profile: profileOf({}) };
		expect(tellApart([one], 8)).toBe(null);
		expect(tellApart([one, { ...one, answer: 'b' }], 2)).toBe(null);
		const switches = { answer: 'a', profile: profileOf({ ...blankPanel('switches'), menu: '' }) };
		expect(tellApart([switches, { ...switches, answer: 'b' }], 2)).toBe(null);
	});

	it('answer one open question after another, the cheapest first, till none is left; the lock is never tried', () => {
		let answers: PanelEntry['answers'] = {};
		const asked: string[] = [];
		let before = 0;
		for (let n = 0; n < 8; n++) {
			const check = routes.settle({ entry: entryOf({ answers }), left: {} });
			if (!check) break;
			expect(check.steps.length).toBeGreaterThanOrEqual(before);
			before = check.steps.length;
			asked.push(check.question);
			const last = check.seen.at(-1);
			expect(last?.answers).toHaveLength(1);
			answers = { ...answers, [check.question]: last?.answers[0] };
		}
		expect(asked).toEqual(['rests', 'held', 'ends', 'stores', 'acts']);
		expect((profileOf({ answers }).panel as KeyedPanel).law).toMatchObject({ acts: 'scrolling', opens: 'set' });
	});

	it('never ask a panel to set all back, though that would tell them sooner', () => {
		const readings = ANSWERS.held.map((answer) => ({
			answer,
			profile: profileOf({ menu: `Start over = Back to defaults\n${MENU}`, answers: { held: answer } }),
		}));
		const tell = tellApart(readings, 8);
		expect(tell?.steps.length).toBeGreaterThan(1);
		// each is played here too, and none may come to where it asks
		for (const { profile } of readings) seenAfter(profile, tell?.steps ?? []);
	});

	it('ask no more than what is still possible', () => {
		const check = routes.settle({ entry: entryOf({}), left: { rests: ['stays', 'mode'] } });
		expect(check?.question).toBe('rests');
		expect(check?.seen.map(({ answers }) => answers)).toEqual([['stays'], ['mode']]);
		expect(routes.settle({ entry: { ...entryOf({}), panel: null }, left: {} })).toBe(null);
	});
});
