import type { JSX } from 'preact';
import { type CautionId, cautions, siteFirst } from '../../content/cautions/index.ts';
import { CautionBox } from '../ui/index.ts';

/** The cautions that apply where this stands. */
export default function Cautions({ ids }: { ids: readonly CautionId[] }): JSX.Element {
	return (
		<div class="cautions">
			{ids.map((id) => (
				<CautionBox key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
		</div>
	);
}
