import type { KeyedPanel, LeafItem, Profile } from '../profile/index.ts';
import { titleOf } from './names.ts';

const COLUMNS = 20;
const LONGEST_LABEL = 16;

/**
 * A stand-in text panel, since no GDTF file says anything of one: start address, mode, and what decides the light. The real panel
 * differs, and whoever shows this one says so.
 */
export function standInPanel({ modes, held }: Pick<Profile, 'modes' | 'held'>): KeyedPanel {
	const menu: LeafItem[] = [
		{
			kind: 'number',
			id: 'address',
			label: 'Address',
			title: 'Start address',
			setting: 'address',
			least: 1,
			most: 512,
			wraps: true,
			unit: '',
		},
	];
	if (modes.length > 1) menu.push(choice('mode', 'Mode', 'Mode', 'mode', modes));
	menu.push(
		choice('work', 'Control', 'What decides the light', 'work', [
			{ id: 'line', name: 'Data' },
			{ id: 'held', name: 'Static' },
		]),
	);
	if (held.length > 1) menu.push(choice('held', 'Colour', 'Static colour', 'held', held));
	return {
		kind: 'text',
		columns: COLUMNS,
		keys: ['back', 'down', 'up', 'set'],
		repeat: { after: 500, every: 120, quickAfter: 8, bigStep: 10 },
		unlockHold: 2000,
		lockAfter: 15_000,
		menu,
	};
}

type Choice = Extract<LeafItem, { kind: 'choice' }>;

const choice = (
	id: string,
	label: string,
	title: string,
	setting: Choice['setting'],
	options: readonly { readonly id: string; readonly name: string }[],
): Choice => ({
	kind: 'choice',
	id,
	label,
	title,
	setting,
	options: options.map((each, i) => ({ value: each.id, label: titleOf(each.name, `${i + 1}`, LONGEST_LABEL) })),
});
