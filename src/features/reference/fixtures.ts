import { fixtures } from '#words/fixtures/index.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { chartTable } from './charts.ts';
import { factTable } from './facts.ts';
import { switchNote, switchTables, wayNote, wayTable } from './panel.ts';
import type { ReferenceSection } from './types.ts';

/** One section a bundled fixture: what it is, its figures, its panel, its modes. */
export const fixtureSections = (): ReferenceSection[] => BUNDLED.map(fixtureSection);

function fixtureSection(profile: Profile): ReferenceSection {
	const { id, name, panel, modes } = profile;
	const words = fixtures[id];
	return {
		id,
		heading: name,
		says: [words?.introduction ?? profile.about, panel.kind === 'dip' ? switchNote(panel) : wayNote(panel)],
		tables: [
			factTable(profile),
			...(panel.kind === 'dip' ? switchTables(profile, panel) : [wayTable(profile, panel)]),
			...modes.map((mode) => chartTable(profile, mode)),
		],
		cautions: words?.cautions ?? [],
	};
}
