import type { JSX } from 'preact';
import type { CautionId } from '../../content/cautions/index.ts';
import { cautionWait } from '../../content/finder/index.ts';
import { laterWith } from '../ui/index.ts';

const later = laterWith(cautionWait, 'hint');

// most checks have none, and their words weigh as much as a dozen checks
const CautionBoxes = later(async () => ({ default: (await import('./CautionBoxes.tsx')).CautionBoxes }));

/** The cautions where the hands would be, fetched with the first check that has any. */
export function Cautions({ ids }: { ids: readonly CautionId[] }): JSX.Element | null {
	return ids.length === 0 ? null : <CautionBoxes ids={ids} />;
}
