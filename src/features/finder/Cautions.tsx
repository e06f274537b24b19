import type { JSX } from 'preact';
import { cautionWait } from '#words/finder/index.ts';
import { laterWith } from '../../ui/index.ts';
import type { CautionBoxesProps } from './CautionBoxes.tsx';

const later = laterWith(cautionWait, 'hint');

// most checks have none, and their words weigh as much as a dozen checks
const CautionBoxes = later(async () => ({ default: (await import('./CautionBoxes.tsx')).CautionBoxes }));

/** The cautions where the hands would be, fetched with the first check that has any. */
export function Cautions(props: CautionBoxesProps): JSX.Element | null {
	return props.ids.length === 0 ? null : <CautionBoxes {...props} />;
}
