import type { JSX } from 'preact';
import { type CautionId, cautions, siteFirst } from '../../content/cautions/index.ts';
import { CautionBox } from '../ui/index.ts';

/** The cautions, where the hands would be. */
export function CautionBoxes({ ids }: { ids: readonly CautionId[] }): JSX.Element {
	return (
		<div class="check-cautions">
			{[...new Set(ids)].map((id, i, all) => (
				<CautionBox key={id} caution={cautions[id]} {...(i === all.length - 1 ? { siteFirst } : {})} />
			))}
		</div>
	);
}
