import type { Profile } from '../../profile/index.ts';
import type { Figures } from '../figures.ts';
import type { PanelEntry } from './entry.ts';
import { defaultsWithin, makePanel, type OwnPanel } from './make.ts';
import type { PanelWords } from './types.ts';

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
	if (!entry || !own?.panel) {
		figures.note('panel', 'assumed', {});
		return { profile, own };
	}
	const { panel, held, programmes, asked, idle } = own;
	const items = panel.kind === 'dip' ? panel.slides.length + panel.fields.length : panel.menu.length;
	figures.note('panel-own', 'given', { keys: entry.keys.length, items });
	for (const { id, given, assumed } of asked)
		figures.note('panel-answer', given === null ? 'assumed' : 'given', { question: id, answer: given ?? assumed });
	if (idle.length > 0) figures.note('panel-idle', 'assumed', { items: idle });
	if (panel.kind !== 'dip') figures.note('panel-times', 'assumed', {});
	return {
		profile: {
			...profile,
			panel,
			held: [...held],
			programmes: [...programmes],
			microphone: profile.microphone || programmes.some(({ kind }) => kind === 'sound'),
			defaults: defaultsWithin(panel, profile.defaults),
		},
		own,
	};
}
