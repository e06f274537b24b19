import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { leftGroups } from '#words/gdtf/index.ts';
import { fileWords as words } from '#words/stock/index.ts';
import type { Asked, LeftOut } from '../../../shared/gdtf/index.ts';
import type { FileEntry, FileFixture } from '../../../shared/stock/index.ts';
import { Button } from '../../ui/index.ts';
import { assumedText, leftOutText } from '../../wording/index.ts';
import { Doubts } from './Doubts.tsx';
import { askedBesides, inGroups, type LeftGroup } from './notes.ts';

/** Notes shown at once: a long file has thousands. */
const AT_ONCE = 30;

/** What was lost on the way from a file, and what was assumed: all of it, folded so that a phone can show it. */
export function FileNotes({ entry, figures }: { entry: FileEntry; figures: FileFixture['figures'] }): JSX.Element {
	const left = entry.left.map((note) => ({ ...note, says: saidOf(() => leftOutText(note as LeftOut)) }));
	const asked = askedBesides(entry.asked as Asked[]).map((note) => saidOf(() => assumedText(note)));
	const untold = [...left.map(({ says }) => says), ...asked].filter((says) => says === null).length;
	const told = left.flatMap((note) => (note.says === null ? [] : [{ ...note, says: note.says }]));
	return (
		<>
			<section class="stock-lost" aria-labelledby="stock-lost">
				<h2 id="stock-lost">{words.lost(left.length)}</h2>
				<p>{left.length === 0 ? words.lostNone : words.lostLead}</p>
				{inGroups(told).map(([group, notes]) => (
					<Group key={group} group={group} notes={notes} />
				))}
				{untold > 0 && <p>{words.notWorded(untold)}</p>}
			</section>
			<Doubts figures={figures} lead={words.assumedLead} besides={asked.flatMap((says) => says ?? [])} />
		</>
	);
}

interface NoteProps {
	group: LeftGroup;
	notes: readonly { readonly path: string; readonly says: string }[];
}

function Group({ group, notes }: NoteProps): JSX.Element {
	const [most, show] = useState(AT_ONCE);
	const more = Math.min(AT_ONCE, notes.length - most);
	return (
		<details class="stock-group">
			<summary class="fold-line">{words.group(leftGroups[group], notes.length)}</summary>
			<ul>
				{notes.slice(0, most).map(({ path, says }, i) => (
					<li key={i}>
						{says} {path !== '' && <span class="stock-path">{path}</span>}
					</li>
				))}
			</ul>
			{more > 0 && (
				<Button look="quiet" onClick={() => show(most + AT_ONCE)}>
					{words.more(more)}
				</Button>
			)}
		</details>
	);
}

/** A note's sentence; null where it has facts that none can be made of: a stock file from elsewhere may hold any. */
function saidOf(say: () => string): string | null {
	try {
		return say();
	} catch {
		return null;
	}
}
