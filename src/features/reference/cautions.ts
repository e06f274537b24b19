import { cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { fixtures } from '#words/fixtures/index.ts';
import { cautionWords as words } from '#words/reference/index.ts';
import { BUNDLED } from '../../../shared/profile/index.ts';
import type { ReferenceSection } from './types.ts';

/** Every caution, what can happen, and which bundled fixtures carry it. */
export function cautionSection(): ReferenceSection {
	return {
		id: 'where',
		heading: words.where.heading,
		says: [siteFirst],
		tables: [
			{
				caption: words.where.caption,
				head: words.where.head,
				look: 'cards',
				rows: cautionIds.map((id) => [
					cautions[id].title,
					cautions[id].harm,
					BUNDLED.filter((profile) => fixtures[profile.id]?.cautions.includes(id))
						.map(({ name }) => name)
						.join(', ') || words.where.none,
				]),
			},
		],
	};
}
