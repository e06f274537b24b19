/** Of open fixture files: what `shared/gdtf` refuses. */
export const gdtfErrors = {
	'gdtf.archive': [
		{
			when: { trouble: 'empty' },
			says: 'This file is an archive with nothing in it. Ask for it again, or save it again.',
		},
		{
			when: { trouble: 'no-archive' },
			says: 'This is no GDTF file. Its name ends in .gdtf, and it’s an archive. Choose another file.',
		},
		{
			when: { trouble: 'no-description' },
			says: 'This archive holds no description.xml at its top, so it’s no GDTF file. Choose another file.',
		},
		{
			when: { trouble: 'two-descriptions' },
			says: 'This archive holds two files called description.xml, and only one can be right. Ask for it again.',
		},
		{ when: { trouble: 'locked' }, says: 'This file has a password. Save it without one and choose it again.' },
		{
			when: { trouble: 'damaged' },
			says: 'This file is damaged or was cut short on its way. Ask for it again.',
		},
		{
			when: { trouble: 'size-false' },
			says: 'This file doesn’t hold as much as it says it does, so it’s damaged. Ask for it again.',
		},
		{
			when: { trouble: 'sum-false' },
			says: 'This file’s check sum is wrong, so something in it has changed. Ask for it again.',
		},
		{
			when: { trouble: 'not-utf-8' },
			says: 'The text in this file isn’t UTF-8, which GDTF asks for. Save it again as UTF-8.',
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
			says: 'This file is packed as ZIP64, which can’t be read here. Unpack it, and zip it again the usual way.',
		},
		{
			when: { what: 'archive' },
			says: 'This file is over {megabytes} MB, which is more than a fixture needs. It was left unread.',
		},
		{
			says: 'The description in this file is over {megabytes} MB, which is more than a fixture needs. It was left unread.',
		},
	],
	'gdtf.xml': [
		{
			when: { trouble: 'malformed' },
			says: 'The description in this file is no good XML: it breaks at line {line}, column {column}. Fix it there, or ask for the file again.',
		},
		{
			when: { trouble: 'document-type' },
			says: 'The description in this file has a document type, which GDTF doesn’t use. Take it out, or ask for the file again.',
		},
		{ says: 'The description in this file goes more than {limit} levels deep. It was left unread.' },
	],
	'gdtf.tree': [
		{
			when: { trouble: 'no-fixture-type' },
			says: 'The description in this file tells of no fixture: it begins with {found}. Choose another file.',
		},
		{ when: { trouble: 'no-modes' }, says: 'This file tells of a fixture with no modes. Choose another file.' },
		{
			when: { trouble: 'too-many-modes' },
			says: 'This fixture has {count} modes, and {limit} can be read. Take some out of the file.',
		},
		{
			says: '{attribute} at {path as place} reads {found}, which it can’t be. Fix it in the file, or ask for it again.',
		},
	],
	'gdtf.mode': [
		{
			when: { trouble: 'no-geometry' },
			says: 'The file names a part it doesn’t have (at {path as place}): {name}. Ask its maker for a better file.',
		},
		{
			when: { trouble: 'circle' },
			says: 'The part {name} of this fixture holds itself, so there’s no end to it. Ask for a better file.',
		},
		{
			when: { trouble: 'too-many-channels' },
			says: 'This mode comes to more than {limit} channels or parts. No fixture has that many. Ask for a better file.',
		},
		{
			when: { trouble: 'missing-break' },
			says: '{channel} stands in {name}, which doesn’t say where its channels start. Ask for a better file.',
		},
		{
			when: { trouble: 'slot-outside' },
			says: '{channel} would be channel {slot}, and a mode ends at {limit}. Ask for a better file.',
		},
		{
			when: { trouble: 'slot-twice' },
			says: '{one} and {other} both use channel {slot}. Only one can be right. Ask for a better file.',
		},
		{ when: { trouble: 'no-slots' }, says: 'No channel of this mode is sent on the line, so there’s nothing to set.' },
		{
			when: { trouble: 'several-breaks' },
			says: 'This mode needs {count} start addresses. A fixture here has one, so pick another mode.',
		},
		{
			when: { trouble: 'too-many-cells' },
			says: 'This mode has {count} cells, and {limit} is the most here. Pick another mode.',
		},
		{
			when: { trouble: 'too-many-emitters' },
			says: 'This fixture has {count} emitters, and {limit} is the most here. Pick a mode with fewer.',
		},
		{ says: 'None of its modes was picked. It has: {known as list}.' },
	],
} as const;
