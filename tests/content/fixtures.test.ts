import { describe, expect, it } from 'vitest';
import { cautionIds } from '#words/cautions/index.ts';
import { fixtures } from '#words/fixtures/index.ts';
import { DIP_WEIGHTS } from '../../shared/dmx/index.ts';
import { BUNDLED, footprintOf } from '../../shared/profile/index.ts';
import { modeCalled, partCalled } from '../../src/wording/index.ts';

describe('the words about the bundled fixtures', () => {
	it('are there for each, and for nothing else', () => {
		expect(Object.keys(fixtures).sort()).toEqual(BUNDLED.map(({ id }) => id).sort());
	});

	it('say what the profiles hold: how one comes set, and what switches weigh', () => {
		const tallow = BUNDLED.find(({ id }) => id === 'tallow-6');
		expect(fixtures['tallow-6']?.introduction).toContain('It comes set to its own static white');
		expect(tallow?.defaults).toMatchObject({ work: 'held', held: 'white' });
		expect(fixtures['cobble']?.controls['switches-1-to-9']).toContain(DIP_WEIGHTS.join(', '));
	});

	describe.each(BUNDLED.map((profile) => [profile.name, profile] as const))('%s', (_, profile) => {
		const { introduction, back, controls, cautions } = fixtures[profile.id] as (typeof fixtures)[string];

		it('is introduced in three sentences', () => {
			expect(introduction.match(/[^.]+\.(?= |$)/g)).toHaveLength(3);
		});

		it('has on its back what the profile has, and nothing more', () => {
			expect(Object.keys(back).sort()).toEqual(
				[
					'in',
					'out',
					'power',
					'mains',
					'bond',
					...(profile.panel.kind === 'dip' ? ['switches', 'slides'] : ['display']),
					...(profile.sensor ? ['sensor'] : []),
					...(profile.microphone ? ['microphone'] : []),
					...(profile.power.battery ? ['battery'] : []),
					...(profile.power.link ? ['link'] : []),
				].sort(),
			);
			for (const sentence of Object.values(back)) expect(sentence).toMatch(/^[A-Z].*[.]$/);
		});

		it('tells what each key, or each switch and slide, does', () => {
			const { panel } = profile;
			if (panel.kind === 'dip') {
				for (const { id } of panel.slides) expect(controls).toHaveProperty(id);
				const told = Object.keys(controls).flatMap((id) => {
					const [, from, to = from] = /^switch(?:es)?-(\d+)(?:-to-(\d+))?$/.exec(id) ?? [];
					return from === undefined ? [] : [`${from}-${to}`];
				});
				const spans = panel.fields.map(({ switches }) => `${switches[0]}-${switches.at(-1)}`);
				expect(told.sort()).toEqual(['1-9', '10-10', ...spans].sort());
			} else expect(Object.keys(controls).sort()).toEqual([...panel.keys].sort());
			for (const sentence of Object.values(controls)) expect(sentence).toMatch(/^[A-Z].*[.]$/);
		});

		it('counts what it counts as the profile does', () => {
			const { panel } = profile;
			const cells = profile.cells > 1 ? ['eight cells'] : [];
			expect(profile.cells).toBe(cells.length > 0 ? 8 : 1);
			for (const words of cells) expect(introduction).toContain(words);
			if (panel.kind === 'dip') {
				const choices = panel.fields.find(({ id }) => id === 'what')?.choices ?? [];
				const count = (work: string) => choices.filter(({ sets }) => sets.work === work).length;
				expect([count('held'), count('programme'), count('follow')]).toEqual([8, 7, 1]);
			}
			const footprints = profile.modes.map(footprintOf);
			for (const [number] of introduction.matchAll(/\d+/g)) expect(footprints).toContain(Number(number));
			for (const emitter of profile.emitters) expect(introduction.toLowerCase()).toContain(emitter.name.toLowerCase());
		});

		it('carries its cautions: mains or battery, ultraviolet where it has it, flashing and staring always', () => {
			expect(cautionIds).toEqual(expect.arrayContaining([...cautions]));
			expect(cautions).toContain(profile.power.battery ? 'batteries' : 'mains');
			expect(cautions.includes('ultraviolet')).toBe(profile.emitters.some((emitter) => emitter.ultraviolet));
			expect(cautions).toEqual(expect.arrayContaining(['flashing', 'staring']));
		});
	});
});

// symptom: the drawing of a channel's bands and the faders of a desk spoke of slots and held colours; quizzes are told apart by those names
describe('a name in a bundled chart', () => {
	it('is said in the floor’s words, whatever the profile calls it', () => {
		const names = BUNDLED.flatMap(({ modes }) =>
			modes.flatMap(({ name, slots }) => [
				modeCalled(name),
				...slots.flatMap(({ name: slot, drives }) => [
					partCalled(slot),
					...(drives.kind === 'bands' ? drives.bands.map((band) => partCalled(band.name)) : []),
				]),
			]),
		);
		expect(names.filter((name) => /\bslots?\b|\bheld\b/i.test(name))).toEqual([]);
	});
});
