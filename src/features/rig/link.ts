import type { RigSheet } from '../../../shared/sheet/index.ts';
import { deflateText, toBase64url } from '../../storage/index.ts';
import type { BenchRecord } from './kept.ts';
import { LINK_VERSION } from './linkVersion.ts';

/** The fragment, with its `#`, that opens this rig on any bench: sheet and log as JSON, deflated, in base64url. @param kept with a log fit for keeping */
export async function linkOf({ sheet, log }: BenchRecord): Promise<string> {
	return `#rig=${LINK_VERSION}.${toBase64url(await deflateText(JSON.stringify([sheet, log])))}`;
}

/**
 * Reads a fragment that `holdsRig`. The rig is not opened yet: whether its log can be played is for `playBack` to say. What reads
 * it is fetched only now, since most visits bring no link.
 * @throws InputError `link.version`, `link.long`, `link.damaged` or `link.crowded`, and what `readSheet` and `readLog` throw
 */
export async function readLink(fragment: string): Promise<BenchRecord> {
	return (await import('./reading.ts')).readFragment(fragment);
}

/**
 * Reads a bench that was saved to a file, held to what a link may bring. It is not opened yet.
 * @throws InputError `file.newer`, `file.damaged`, `link.crowded`, `link.slow`, and what `readSheet` and `readLog` throw
 */
export async function readBenchFile(text: string): Promise<BenchRecord> {
	return (await import('./reading.ts')).readFile(text);
}

/**
 * The sheet of what the bench of a fragment has become, with nothing broken in it: for whoever asks about the rig that somebody
 * has built there. @throws InputError as `readLink` and `playBack`
 */
export async function readBenchSheet(fragment: string): Promise<RigSheet> {
	return (await import('./reading.ts')).benchOf(await readLink(fragment));
}
