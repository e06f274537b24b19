import type { JSX } from 'preact';
import { type CautionId, cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { CautionBox } from '../../ui/index.ts';

/** The cautions of a drill, in full. */
export function DrillCautions({ ids }: { ids: readonly string[] }): JSX.Element {
	const known = ids.filter((id): id is CautionId => (cautionIds as readonly string[]).includes(id));
	return (
		<div class="cautions">
			{known.map((id) => (
				<CautionBox key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
		</div>
	);
}
