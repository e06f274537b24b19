import type { JSX } from 'preact';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { CautionBox } from '../../ui/index.ts';

/** The cautions that apply where this stands, headed to fit there. */
export default function Cautions({ ids, level = 3 }: { ids: readonly CautionId[]; level?: 2 | 3 }): JSX.Element {
	return (
		<div class="cautions">
			{ids.map((id) => (
				<CautionBox key={id} caution={cautions[id]} siteFirst={siteFirst} level={level} />
			))}
		</div>
	);
}
