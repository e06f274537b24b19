import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { fileWords as words } from '#words/stock/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { footprintOf, type Profile } from '../../../shared/profile/index.ts';
import { entryFromFile, type FileEntry, MOST_ENTRY, printedModes } from '../../../shared/stock/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { errorText } from '../../wording/index.ts';
import { fileTrouble, readFile } from './askFile.ts';
import { FileCautions } from './FileCautions.tsx';
import { FileNotes } from './FileNotes.tsx';
import { fixtureOf } from './maker.ts';
import { ReadTable } from './ReadTable.tsx';
import { newId } from './stock.ts';

interface Props {
	bytes: Uint8Array;
	/** Whether one more fixture can be kept; else the sentence that says why not. */
	full: string | null;
	onKeep: (entry: FileEntry) => void;
	onLeave: () => void;
}

interface Found {
	readonly entry: FileEntry;
	readonly profile: Profile;
	readonly figures: ReturnType<typeof fixtureOf>['figures'];
	/** Every mode of the file, by its name there. */
	readonly modes: readonly string[];
	readonly isTooLong: boolean;
	/** The modes that were asked for; null for all. */
	readonly picked: readonly string[] | null;
}

/** What a fixture file comes to, before any of it is used. */
export default function FileRead({ bytes, full, onKeep, onLeave }: Props): JSX.Element {
	const [found, set] = useState<Found | null>(null);
	const [wrong, tell] = useState<string | null>(null);
	/** Modes to take; null for all. */
	const [picked, pick] = useState<readonly string[] | null>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => {
		if (picked?.length === 0) {
			tell(words.noMode);
			return;
		}
		let isOver = false;
		tell(null);
		foundIn(bytes, picked).then(
			(fresh) => {
				if (!isOver) set(fresh);
			},
			(error: unknown) => {
				if (!isOver) tell(isInputError(error) ? errorText(error) : fileTrouble(error, words));
			},
		);
		return () => {
			isOver = true;
		};
	}, [bytes, picked]);
	useEffect(() => heading.current?.focus(), [found === null]);

	const trouble = wrong ?? full ?? (found?.isTooLong ? words.tooLong : null);
	return (
		<div class="stock stock-editor">
			<h2 ref={heading} tabIndex={-1}>
				{found ? found.profile.name : words.heading}
			</h2>
			<Live text={found || wrong !== null ? '' : words.reading} />
			{!found && wrong === null && <p class="coming">{words.reading}</p>}
			{trouble !== null && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
			{found && (
				<>
					<p>
						{words.lead} {words.standIn}
					</p>
					<FileCautions entry={found.entry} profile={found.profile} />
					{found.modes.length > 1 && <Modes found={found} picked={picked} onPick={pick} />}
					<FileNotes entry={found.entry} figures={found.figures} />
					<details class="stock-doubts">
						<summary class="fold-line">
							<strong>{words.chart}</strong>
						</summary>
						<ReadTable modes={printedModes(found.profile)} profile={found.profile} />
					</details>
				</>
			)}
			<div class="stock-ways">
				{found && (
					<Button
						look="main"
						// what was read before a mode was picked is not kept in place of what is asked for now
						disabled={trouble !== null || found.picked !== picked}
						onClick={() => onKeep({ ...found.entry, changed: Date.now() })}
					>
						{words.keep}
					</Button>
				)}
				<Button onClick={onLeave}>{words.leave}</Button>
			</div>
		</div>
	);
}

async function foundIn(bytes: Uint8Array, picked: Found['picked']): Promise<Found> {
	const read = await readFile(bytes, picked ?? undefined);
	const [left, asked] = [read.left.map(({ says: _, ...note }) => note), read.asked.map(({ says: _, ...note }) => note)];
	const entry = entryFromFile(newId(), { profile: read.profile, left, asked }, Date.now());
	const { profile, figures } = fixtureOf(entry);
	if (!profile) throw new Error('a fixture from a file has a profile');
	const isTooLong = JSON.stringify(entry).length > MOST_ENTRY;
	return { entry, profile, figures, modes: read.modes, isTooLong, picked };
}

interface ModesProps {
	found: Found;
	picked: readonly string[] | null;
	onPick: (picked: readonly string[] | null) => void;
}

function Modes({ found: { modes, profile }, picked, onPick }: ModesProps): JSX.Element {
	const isPicked = (mode: string): boolean => picked === null || picked.includes(mode);
	const channels = (name: string): number | null => {
		const mode = profile.modes.find((each) => each.name === name);
		return mode ? footprintOf(mode) : null;
	};
	return (
		<fieldset class="stock-label">
			<legend>{words.modes}</legend>
			<p class="field-hint">{words.modesHint}</p>
			{modes.map((mode, i) => (
				<label key={i} class="stock-pick">
					<input
						type="checkbox"
						checked={isPicked(mode)}
						onChange={(event) => {
							const isOn = event.currentTarget.checked;
							const next = modes.filter((each) => (each === mode ? isOn : isPicked(each)));
							onPick(next.length === modes.length ? null : next);
						}}
					/>
					<span>{words.mode(mode === '' ? words.modeUnnamed(i + 1) : mode, channels(mode))}</span>
				</label>
			))}
		</fieldset>
	);
}
