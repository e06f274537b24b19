import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { fileWords, stockWords as words } from '#words/stock/index.ts';
import { isStandIn } from '../../../shared/profile/index.ts';
import { type FileEntry, printedModes } from '../../../shared/stock/index.ts';
import type { BrowserStore } from '../../storage/index.ts';
import { Notice } from '../../ui/index.ts';
import { EditorTop } from './EditorTop.tsx';
import { FileCautions } from './FileCautions.tsx';
import { FileNotes } from './FileNotes.tsx';
import { Label } from './Label.tsx';
import { fixtureOf } from './maker.ts';
import { OwnPanelPart } from './OwnPanelPart.tsx';
import { ReadTable } from './ReadTable.tsx';
import { Send } from './Send.tsx';
import { useEntry } from './useEntry.ts';

interface Props {
	entry: FileEntry;
	storage: BrowserStore;
	onDone: () => void;
}

/** A fixture that was read from a file: its name, its label, and what was lost and assumed. */
export default function FileEditor({ entry: begun, storage, onDone }: Props): JSX.Element {
	const at = useEntry(storage, begun);
	const { entry, change } = at;
	const fixture = useMemo(() => fixtureOf(entry), [entry]);
	const { profile, figures } = fixture;
	const isOwn = profile !== null && !isStandIn(profile.panel);
	const [wrong, tell] = useState<string | null>(null);
	return (
		<div class="stock stock-editor">
			<EditorTop storage={storage} at={at} onDone={onDone} />
			<p>
				{words.fromFile} {isOwn ? '' : fileWords.standIn}
			</p>
			{profile && <FileCautions entry={entry} profile={profile} />}
			<Label entry={entry} onChange={change} hint={fileWords.labelHint} />
			{profile && <OwnPanelPart entry={entry} fixture={fixture} onChange={change} />}
			<FileNotes entry={entry} figures={figures} />
			{profile && (
				<details class="stock-doubts">
					<summary class="fold-line">
						<strong>{fileWords.chart}</strong>
					</summary>
					<ReadTable modes={printedModes(profile)} profile={profile} />
				</details>
			)}
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			<Send entry={entry} profile={profile} onTrouble={tell} />
		</div>
	);
}
