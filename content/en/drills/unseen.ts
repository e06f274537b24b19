import { counted } from '../locale/index.ts';

/** Words of the drill on a panel never seen. */
export const unseenWords = {
	/** {needed}: what a careful stranger needs, who knows how such panels work and reads on until a title fits; {fewest}: what who knows the panel needs. */
	against: (presses: number, needed: number, fewest: number) =>
		`You took ${counted(presses, 'press', 'presses')}. A careful stranger needs about ${needed}. Someone who knows this panel needs ${fewest}.`,
} as const;
