import { counted } from '../locale/index.ts';

/** Verdicts counted on the device. */
export const countWords = {
	says: 'Each confirmed verdict is counted on this device alone. What turned up here before is looked for a little sooner; what the rig shows always counts for more.',
	none: 'None counted yet.',
	total: (count: number) => `${counted(count, 'verdict', 'verdicts')} counted.`,
	save: 'Save them as a file',
	reset: 'Set them to nothing',
	resetSure: 'Really forget them all?',
	resetYes: 'Forget them',
	resetNo: 'Keep them',
	file: 'finder-verdicts.json',
} as const;
