import { misshapen } from './shapes.ts';

/** Of links, files, what is kept, lessons and the camera: what the site refuses. */
export const siteErrors = {
	'words.fact': "A template asks for the fact '{fact}'. There is {known as list}.",
	'words.kind': "A template words a fact as '{kind}', which is no kind here.",
	'words.check': "There are no words for a check '{kind}'. Add them to the checks.",
	'words.outcome': "The check '{kind}' has no words for '{outcome}'. It has: {known as list}.",

	'lesson.shape': [misshapen('The front matter of a lesson', 'Fix that place in content/en/lessons.')],
	'lesson.id': "content/en/lessons/{file}.mdx calls itself '{id}'. Its id is its file's name.",
	'lesson.bench': [
		{ when: { expected: 'one-rig' }, says: 'A bench stands on one of: rig, preset, quick.' },
		{ says: "There’s no fixture '{id}' on this bench." },
	],
	'lesson.task': 'A task begins with its sheet: put what happened before into `change`.',
	'lesson.goal': [
		{ when: { trouble: 'no-such-fixture' }, says: "There’s no fixture '{id}' on this bench." },
		{ says: 'No brightness of this fixture comes to {goal}.' },
	],
	'lesson.try':
		"The question '{ask}' has too few wrong options: the rig shows the same whatever is done. Add mistakes that show.",
	'lesson.checks': "{lesson}: no question '{kind}' can be asked about its fixtures.",
	'plan.lesson': "The plan '{plan}' names a lesson '{lesson}', and there’s none.",
	'case.lost': "The finder doesn’t get to the end of the case '{id}'. Give it another number.",

	'log.slow': 'This rig has more history than the device can play back. Ask for a fresh one.',
	'log.stopped': 'You stopped this rig from being opened.',
	'log.full': 'The log of this bench is full. Share it, or start again, to go on.',
	'link.version':
		'This link was made by another version of Prep Bay. Load the page again to get the newest, or ask for a new link.',
	'link.long': 'This link is longer than any that Prep Bay makes. Ask for a new one.',
	'link.damaged': 'This link is damaged or was cut short on its way. Ask for it again.',
	'link.slow':
		'The clock of this rig ran for {days} days, and a link or a file may bring {limit}. Ask for a fresh one.',
	'file.newer': 'This file was saved by a newer Prep Bay. Load the page again to get the newest, and open it then.',
	'file.damaged': 'This file holds no bench of Prep Bay, or it’s damaged. Choose a file that was saved here.',
	'link.crowded': [
		{
			when: { trouble: 'too-many' },
			says: 'This rig has {count} {list}, and a bench holds {limit}. Ask for a part of it.',
		},
		{
			says: 'This link holds more than a bench can. It was left unread. Ask for a link to a part of it.',
		},
	],

	'hidden.rig': "No bundled rig is called '{id}'. Choose one of those listed.",
	'casefile.rig': [
		{
			when: { trouble: 'none-kept' },
			says: 'The finder has no rig of yours on this device. Open yours there first: its sheet, a bench link, or the quick way.',
		},
		{ says: "No bundled rig is called '{id}'. Choose one of those listed." },
	],
	'casefile.none': 'No fault known here shows like that on this rig, so there’s no tree. Choose another complaint.',
	'sheet.bundled': "No bundled rig is called '{id}'. Choose one of those shown.",
	'sheet.text': [
		{
			when: { trouble: 'empty' },
			says: 'There’s nothing to open. Paste the text of a rig sheet, or a link that a bench made.',
		},
		{
			when: { trouble: 'damaged' },
			says: 'That is no rig sheet and no link to a bench. A sheet begins with { and is JSON.',
		},
		{ says: 'That is longer than any rig sheet. Choose another file.' },
	],
	'sheet.crowded':
		'This sheet has {count} fixtures and the finder works with {limit} at most. Cut it down to the line in question.',
	'sheet.empty': 'There’s no fixture on this sheet, so there’s nothing to find fault with. Put one on it first.',
	'finder.kept': [
		misshapen('What the finder kept', 'It’s set aside.'),
		{ says: 'The kept walk is about a fixture that its rig doesn’t have.' },
	],

	'stock.newer':
		'These fixtures were saved by a newer Prep Bay. Load the page again to get the newest, and open them then.',
	'stock.damaged':
		'This holds no fixtures of Prep Bay, or it’s damaged. Choose a file that was saved here, or ask for a new link.',
	'progress.newer': 'These results were written by a newer Prep Bay. Load the page again.',
	'progress.damaged': 'These are no results of Prep Bay, or they’re damaged.',
	'review.newer': 'This was written by a newer Prep Bay. Load the page again.',
	'review.damaged': 'This is no review file of Prep Bay, or it’s damaged. Choose the file you saved from here.',
	'sitting.damaged': [
		misshapen('What was kept of this quiz', 'It’s set aside.'),
		{ says: 'What was kept of this quiz is damaged.' },
	],

	'papers.gone': 'This quiz isn’t kept here any more. Pick another one.',
	'papers.no-item': 'This quiz has no such question. Open it again.',
	'papers.not-paper': 'That is a result, not a quiz. Use the link or the file of the quiz itself.',
	'papers.sheet': [
		{ when: { trouble: 'empty' }, says: 'Paste the text of a rig sheet, or a link that a bench made.' },
		{
			when: { trouble: 'damaged' },
			says: 'That is no rig sheet and no link to a bench. A sheet begins with { and is JSON.',
		},
		{
			when: { trouble: 'too-long' },
			says: 'That is longer than any rig sheet. Cut it down to the line in question.',
		},
		{ says: 'There’s no fixture on this sheet. Put one on it first.' },
	],
	'qti.empty':
		'Every question of this quiz is done on the bench, and no platform has one. Choose a quiz with other questions.',

	'handed.shape': [misshapen('What was handed in', 'Ask for it again.'), { says: 'There’s no list of {list} in it.' }],
	'handed.altered':
		'It isn’t as Prep Bay writes it[ (at {where})], so it was changed or damaged on its way. Ask for it again.',
	'handed.unread': 'The device wouldn’t let this file be read. Copy it elsewhere and choose it again.',
	'handed.version':
		'This was made by another version of Prep Bay. Load the page again to get the newest, or ask for it to be made again.',
	'handed.damaged': 'This is damaged or was cut short on its way. Ask for it again.',
	'handed.deep': 'This is nested deeper than anything that Prep Bay writes. It was left unread. Ask for it again.',
	'handed.many': [
		{
			when: { trouble: 'too-much' },
			says: 'This holds more than anything that Prep Bay writes. It was left unread. Ask for it again.',
		},
		{
			says: 'Reading stopped after {read} pieces: too many, or too many of them cut short. Take the rest by itself.',
		},
	],
	'handed.long': [
		{
			when: { trouble: 'link-too-long' },
			says: 'This link is longer than any that Prep Bay makes. Ask for a new one.',
		},
		{
			when: { trouble: 'file-too-large' },
			says: 'This file is larger than any that Prep Bay writes. It was left unread.',
		},
		{
			when: { trouble: 'list-too-long' },
			says: 'It has {count} {list}; the first {limit} were read. Split the file to read the rest.',
		},
		{
			says: 'This is longer than anything that Prep Bay writes. It was left unread. Take it in parts.',
		},
	],
	'handed.unknown':
		'This is no quiz, no result and no store of Prep Bay. Choose a file that Prep Bay wrote, or paste its link.',
	'handed.rig': 'This link is to a bench, not to a quiz or a result. Open it in a browser.',
	'handed.empty': 'There’s nothing in it. Choose another file, or paste a link.',
	'handed.nothing': 'There’s no quiz and no result in it. Choose a file that Prep Bay wrote, or paste its link.',

	'qr.long': 'This is more than one QR code carries. Hand it out as a link or a file.',
	'qr.none': 'No QR code was found in this picture. Take it again: the whole code, sharp, and from straight above.',
	'qr.slow':
		'No QR code was found in this picture in 10 seconds: there’s too much else in it. Take it again from closer, so that the code fills it.',
	'qr.stopped': 'Reading was stopped before a QR code was found. Choose the picture again to go on.',
	'qr.picture':
		'This is no picture that the browser can open, or it’s too large. Take one of under 40 MB, PNG or JPEG.',
	'qr.unfetched': 'The part that reads QR codes couldn’t be fetched. Check the network once, then try again.',
	'camera.insecure':
		'The browser gives a camera only to a page whose address begins with https. Use a picture of the code, the link or the file.',
	'camera.unable': 'This browser gives the page no camera. Use a picture of the code, the link or the file.',
	'camera.refused':
		'The camera was refused. Allow it for this page in the browser’s settings and try again, or use a picture of the code.',
	'camera.missing': 'No camera was found on this device. Use a picture of the code, the link or the file.',
	'camera.busy': 'The camera couldn’t be started: something else may be using it. Close that and try again.',
	'camera.stopped': 'The camera stopped. Start it again, or use a picture of the code.',
} as const;
