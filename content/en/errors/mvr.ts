/** Of open rig files: what `shared/mvr` refuses. */
export const mvrErrors = {
	'mvr.archive': [
		{
			when: { trouble: 'empty' },
			says: 'This file is an archive with nothing in it. Ask for it again, or save it again.',
		},
		{
			when: { trouble: 'no-archive' },
			says: 'This is no MVR file. An MVR file’s name ends in .mvr, and it’s an archive inside. Choose another file.',
		},
		{
			when: { trouble: 'no-description' },
			says: 'This archive holds no GeneralSceneDescription.xml at its top, so it’s no MVR file. Choose another file.',
		},
		{
			when: { trouble: 'two-descriptions' },
			says: 'This archive holds two files called GeneralSceneDescription.xml, and only one can be right. Ask for it again.',
		},
		{ when: { trouble: 'locked' }, says: 'This file has a password. Save it without one and choose it again.' },
		{
			when: { trouble: 'damaged' },
			says: 'This file is damaged or was cut short on its way. Ask for it again.',
		},
		{
			when: { trouble: 'size-false' },
			says: 'A file in this archive doesn’t hold as much as it says it does, so it’s damaged. Ask for it again.',
		},
		{
			when: { trouble: 'sum-false' },
			says: 'The check sum of a file in this archive is wrong, so something in it has changed. Ask for it again.',
		},
		{
			when: { trouble: 'not-utf-8' },
			says: 'The text in this file isn’t UTF-8, which MVR asks for. Save it again as UTF-8.',
		},
		{
			when: { trouble: 'method' },
			says: 'This file is packed in a way that can’t be read here (zip method {method}). Unpack it, and zip it again the usual way.',
		},
		{
			when: { trouble: 'name-outside' },
			says: 'A file in this archive has a name that leads outside it: {found}. It was left unread. Don’t trust where it came from.',
		},
		{
			when: { trouble: 'wide' },
			says: 'This file is packed as ZIP64, the kind for 4 GB and more or 65,535 files and more, which can’t be read here. Nothing was read. Save it with fewer models, or in parts.',
		},
		{
			when: { what: 'list' },
			says: 'The list of files in this archive comes to over {megabytes} MB. So it’s damaged, or it holds far too many files. Nothing was read. Ask for it again, or save it with fewer models.',
		},
		{
			when: { what: 'archive' },
			says: 'The fixture files that this rig uses come to over {megabytes} MB, which is more than can be read here. Nothing was read. Save the rig in parts, with fewer kinds of fixture in each.',
		},
		{
			says: 'A file in this archive is over {megabytes} MB once unpacked, which is more than can be read here. It was left unread. Save the rig in parts.',
		},
	],
	'mvr.xml': [
		{
			when: { trouble: 'malformed' },
			says: 'The scene in this file is no good XML: it breaks at line {line}, column {column}. Fix it there, or ask for the file again.',
		},
		{
			when: { trouble: 'document-type' },
			says: 'The scene in this file has a document type, which MVR doesn’t use. Take it out, or ask for the file again.',
		},
		{ says: 'The scene in this file goes more than {limit} levels deep. It was left unread.' },
	],
	'mvr.scene': [
		{
			when: { trouble: 'no-scene' },
			says: 'This file tells of no scene: it begins with {found}. Choose another file.',
		},
		{ when: { trouble: 'no-fixtures' }, says: 'There are no fixtures in this file. Choose another file.' },
		{ says: 'This file has {count} fixtures, and a plan takes {limit}. Save it in parts.' },
	],
} as const;
