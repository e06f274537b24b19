import { isInputError } from '../../error/index.ts';
import { type Panel, type Profile, readProfile } from '../../profile/index.ts';
import type { Figures } from '../figures.ts';
import type { PanelEntry } from './entry.ts';
import { defaultsWithin, makePanel, type OwnPanel } from './make.ts';
import type { PanelMark, PanelWords } from './types.ts';

/**
 * A fixture with the panel that its crew wrote down, where there is one that can be used; else it keeps the one that stands in. What of
 * it is given and what assumed is noted.
 */
export function withOwnPanel(
	profile: Profile,
	entry: PanelEntry | null,
	words: PanelWords,
	figures: Figures,
): { readonly profile: Profile; readonly own: OwnPanel | null } {
	const own = entry && makePanel(entry, profile, words);
	const made = own?.panel && wearing(profile, own, own.panel);
	if (!entry || !made) {
		figures.note('panel', 'assumed', {});
		return { profile, own };
	}
	// no words of a menu may keep anybody out of the page that mends them; what was off before is not the panel's doing
	if (!isWhole(made) && isWhole(profile)) {
		figures.note('panel', 'assumed', {});
		const off: PanelMark = { code: 'panel-off', place: { line: 1, column: 1, length: 1 }, facts: {}, pick: null };
		return { profile, own: { ...own, panel: null, marks: [off, ...own.marks] } };
	}
	const { asked, idle } = own;
	const { panel } = made;
	const items = panel.kind === 'dip' ? panel.slides.length + panel.fields.length : panel.menu.length;
	figures.note('panel-own', 'given', { keys: entry.keys.length, items });
	for (const { id, given, assumed } of asked)
		figures.note('panel-answer', given === null ? 'assumed' : 'given', { question: id, answer: given ?? assumed });
	if (idle.length > 0) figures.note('panel-idle', 'assumed', { items: idle });
	if (panel.kind !== 'dip') figures.note('panel-times', 'assumed', {});
	return { profile: made, own };
}

const wearing = (profile: Profile, { held, programmes }: OwnPanel, panel: Panel): Profile => ({
	...profile,
	panel,
	held: [...held],
	programmes: [...programmes],
	microphone: profile.microphone || programmes.some(({ kind }) => kind === 'sound'),
	defaults: defaultsWithin(panel, profile.defaults),
});

/** Whether whoever is handed a fixture would take it. */
function isWhole(profile: Profile): boolean {
	try {
		readProfile(profile);
		return true;
	} catch (error) {
		if (isInputError(error)) return false;
		throw error;
	}
}
