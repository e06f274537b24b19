import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { CautionBox, CautionLine } from '../../ui/index.ts';

export interface CautionBoxesProps {
	ids: readonly CautionId[];
	/** Of those, which are told in a line that opens; left out, none. */
	said?: readonly CautionId[];
	/** Told once they stand on the screen. */
	onShown?: () => void;
}

/** The cautions, where the hands would be. */
export function CautionBoxes({ ids, said = [], onShown }: CautionBoxesProps): JSX.Element {
	// once: a check's cautions do not change while it stands
	useEffect(() => onShown?.(), []);
	return (
		<div class="check-cautions">
			{[...new Set(ids)].map((id, i, all) => {
				const Told = said.includes(id) ? CautionLine : CautionBox;
				return <Told key={id} caution={cautions[id]} {...(i === all.length - 1 ? { siteFirst } : {})} />;
			})}
		</div>
	);
}
