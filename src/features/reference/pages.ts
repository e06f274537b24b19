import { pageWords } from '#words/reference/index.ts';
import { fitSection, nextSection } from './addresses.ts';
import { cautionSection } from './cautions.ts';
import { faultSections } from './faults.ts';
import { fixtureSections } from './fixtures.ts';
import { levelSection, percentSection } from './levels.ts';
import { codeSection, limitSection, networkSection, pinSection, timingSection } from './line.ts';
import { switchSection, weightSection } from './switches.ts';
import type { ReferencePage, ReferenceSection } from './types.ts';

/** Every page of the reference, in order, worked out when the site is built. */
export function referencePages(): ReferencePage[] {
	const sections: Record<ReferencePage['id'], readonly ReferenceSection[]> = {
		addresses: [nextSection(), fitSection(), weightSection(), switchSection('sum'), switchSection('sum-plus-one')],
		levels: [percentSection(), levelSection()],
		line: [pinSection(), limitSection(), timingSection(), codeSection(), networkSection()],
		fixtures: fixtureSections(),
		faults: faultSections(),
		cautions: [cautionSection()],
	};
	return (Object.keys(sections) as ReferencePage['id'][]).map((id) => ({
		id,
		...pageWords[id],
		sections: sections[id],
	}));
}
