import { InputError } from '../../shared/error/index.ts';
import { readSheet } from '../../shared/sheet/index.ts';
import { readLog } from '../../sim/event/index.ts';
import { fromBase64url, inflateText } from '../pack/index.ts';
import { type Kept, LINK_VERSION, MOST } from './kept.ts';

/** Characters of a fragment, and bytes of what it inflates to. A full log of the longest kind stays under both. */
const LONGEST_FRAGMENT = 1_000_000;
const MOST_BYTES = 8_000_000;

/** As `readLink`. */
export async function readFragment(fragment: string): Promise<Kept> {
	const [, version, packed = ''] = /^#?rig=(\d{1,6})\.(.*)$/s.exec(fragment) ?? [];
	if (version === undefined) throw damaged();
	if (Number(version) !== LINK_VERSION)
		throw new InputError(
			'link.version',
			'',
			'This link was made by another version of Prep Bay. Load the page again to get the newest, or ask for a new link.',
		);
	if (packed.length > LONGEST_FRAGMENT)
		throw new InputError('link.long', '', 'This link is longer than any that Prep Bay makes. Ask for a new one.');
	const bytes = fromBase64url(packed);
	const text = bytes && (await inflateText(bytes, MOST_BYTES));
	if (!text) throw damaged();
	return readKept(parsed(text));
}

/**
 * A sheet and its log from outside, as `[sheet, log]`.
 * @throws InputError `link.damaged` or `link.crowded`, and what `readSheet` and `readLog` throw
 */
export function readKept(input: unknown): Kept {
	if (!Array.isArray(input) || input.length !== 2) throw damaged();
	const [sheet, log] = input as [Record<string, unknown> | null, unknown];
	for (const [what, most] of Object.entries(MOST)) {
		const list = sheet?.[what];
		if (Array.isArray(list) && list.length > most)
			throw new InputError(
				'link.crowded',
				what,
				`This rig has ${list.length} ${what}, and a bench holds ${most}. Ask for a part of it.`,
			);
	}
	return { sheet: readSheet(sheet), log: readLog(log) };
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		throw damaged();
	}
}

const damaged = (): InputError =>
	new InputError('link.damaged', '', 'This link is damaged or was cut short on its way. Ask for it again.');
