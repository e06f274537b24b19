import { counted, locale } from '../locale/index.ts';

/** Words of the list of drills and of what is kept of them on the device. */
export const progressWords = {
	next: 'What to practise next',
	nextWhy: {
		begun: (row: number, firm: number) => `Begun and not firm yet: ${row} of ${firm} right in a row.`,
		rusty: 'Firm once, and not practised for a month.',
		new: 'The next one you haven’t done yet.',
		oldest: 'All are firm. This one was practised longest ago.',
	},
	go: 'Practise it',
	practiseOne: (title: string) => `Practise: ${title}`,
	notDone: 'Not done yet.',
	best: 'Best',
	row: (streak: number, longest: number) => `${streak} right in a row; longest ${longest}`,
	firm: 'Firm',
	doneTimes: (count: number) => `Done ${count === 1 ? 'once' : `${count} times`}`,
	kept: 'Your results',
	keptWords: 'They’re kept on this device and sent nowhere. Export them to carry them to another.',
	export: 'Export to a file',
	import: 'Import from a file',
	clear: 'Clear',
	fileName: 'prep-bay-drills.json',
	clearTitle: 'Clear your results?',
	clearWords:
		'Best results and rows of every kind are forgotten on this device. Export them first if you may want them back.',
	clearDo: 'Clear them',
	keep: 'Keep them',
	cleared: 'Your results are cleared.',
	exported: 'Your results are in the file.',
	imported: (kinds: number) =>
		`Taken in: results of ${counted(kinds, 'kind', 'kinds')}. Where both had one, the better was kept.`,
	importedDamaged: (count: number) => `${counted(count, 'entry', 'entries')} of the file couldn’t be read.`,
	badFile: 'This file holds no results of Prep Bay, so nothing was taken in. Choose a file that was exported here.',
	newerFile: 'This file was made by a newer Prep Bay. Load the page again to get the newest, and import it then.',
	damaged: (count: number) =>
		count === 0
			? 'What was kept on this device was damaged. It has been set aside, and you start again.'
			: `${counted(count, 'result', 'results')} kept on this device ${locale.plural(count, 'was', 'were')} damaged and set aside. The rest is all there.`,
	saveAside: 'Save what was set aside',
	asideName: 'prep-bay-drills-set-aside.json',
	notKept: 'This device keeps nothing for this page, so results are gone when it closes.',
	dismiss: 'Dismiss',
} as const;
