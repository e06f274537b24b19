import { describe, expect, it } from 'vitest';
import * as rig from '#words/rig/index.ts';
import { START_CODES } from '../../shared/dmx/index.ts';
import { KEYS, PROGRAMME_KINDS, SETTING_KEYS, SOUND_ANSWERS } from '../../shared/profile/index.ts';
import { UNHARMED } from '../../sim/light/index.ts';

/** Dictionaries, and the ids they must hold: those and no others. */
const ids: readonly (readonly [name: string, words: object, ids: readonly string[]])[] = [
	['keyNames', rig.keyNames, KEYS],
	['startCodes', rig.startCodes, START_CODES.map(({ id }) => id)],
	['programmeKinds', rig.programmeKinds, [...PROGRAMME_KINDS, ...SOUND_ANSWERS]],
	['settingTitles', rig.settingTitles, SETTING_KEYS],
	['settingValues', rig.settingValues, SETTING_KEYS],
	['conditions', rig.conditions, Object.keys(UNHARMED)],
	['curves', rig.curves, ['straight', 'square', 'soft']],
	['curveBends', rig.curveBends, ['straight', 'square', 'soft']],
	['wires', rig.wires, ['common', 'minus', 'plus']],
];

/** Every template of a dictionary, wherever it sits. */
function templates(words: unknown): string[] {
	if (typeof words === 'string') return [words];
	return typeof words === 'object' && words !== null ? Object.values(words).flatMap(templates) : [];
}

describe('words for the rig’s parts', () => {
	it.each(ids)('%s: one for each id, and for nothing else', (_, words, known) => {
		expect(Object.keys(words).sort()).toEqual([...known].sort());
	});

	it('are templates whose braces and brackets close', () => {
		const all = templates({ ...rig });
		expect(all.length).toBeGreaterThan(100);
		for (const template of all) {
			const bare = template.replaceAll(/\{\w+(?: as \w+|\?[^|{}]*\|[^{}]*)?\}/g, '').replaceAll(/\[[^[\]]*\]/g, '');
			expect(bare).not.toMatch(/[{}[\]]/);
		}
	});

	it('end every choice of wordings with one that always fits', () => {
		const choices = (words: unknown): unknown[] =>
			Array.isArray(words)
				? [words.at(-1)]
				: typeof words === 'object' && words !== null
					? Object.values(words).flatMap(choices)
					: [];
		const last = choices({ ...rig });
		expect(last.length).toBeGreaterThan(20);
		for (const wording of last) expect(wording).not.toHaveProperty('when');
	});
});
