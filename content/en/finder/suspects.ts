import { counted } from '../locale/index.ts';

import { led } from './amounts.ts';

/** Round the suspects. */
export const suspectWords = {
	title: 'Suspects',
	fit: (count: number) => counted(count, 'still fits', 'still fit'),
	noneFits: 'None fits',
	show: 'Show all suspects',
	hide: 'Hide them',
	fitting: 'Still fit: nothing seen so far speaks against them',
	against: 'Something seen speaks against them',
	ruledOut: (check: string, seen: string, predicted: string) =>
		`${led(check, ':')} you saw “${seen}”; it would be “${predicted}”.`,
	pair: ' and ',
	at: (name: string, place: string) => `${name}: ${place}`,
	more: (count: number) => `Show ${count} more`,
	share: (share: string) => `share ${share}`,
} as const;

/** In place of a value that a rig without a sheet only stands in for. */
export const standInWords = {
	asMeant: 'As you meant it',
	note: (words: string) => `stand-in: ${words}`,
} as const;
