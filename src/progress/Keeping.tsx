import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { progressWords } from '../../content/drills/index.ts';
import { Button, Dialog, Tape } from '../ui/index.ts';
import { importProgress } from './carry.ts';
import { changeProgress, type Opened } from './keep.ts';
import { merged, NO_PROGRESS, type Progress } from './result.ts';
import { saveFile } from './saveFile.ts';
import { progressText } from './version.ts';

interface Props {
	progress: Progress;
	onChange: (opened: Opened, said: string) => void;
	/** What came of the last thing done here. */
	said: string;
}

const storage = () => localStorage;

/** Results kept on the device: to a file, from a file, and away. */
export function Keeping({ progress, onChange, said }: Props): JSX.Element {
	const file = useRef<HTMLInputElement>(null);
	const [asks, ask] = useState(false);
	const change = (next: (own: Progress) => Progress, words: string) =>
		changeProgress(storage, next).then((opened) => onChange(opened, words));

	const take = async (chosen: File | undefined) => {
		if (!chosen) return;
		const text = await chosen.text();
		const got = await importProgress(progress, text);
		if (got.is !== 'taken') {
			await change((own) => own, got.is === 'newer' ? progressWords.newerFile : progressWords.badFile);
			return;
		}
		const left = got.damaged > 0 ? ` ${progressWords.importedDamaged(got.damaged)}` : '';
		await change((own) => merged(own, got.progress), progressWords.imported(got.kinds) + left);
	};
	return (
		<section class="drills-keeping" aria-labelledby="drills-kept">
			<Tape level={2} id="drills-kept">
				{progressWords.kept}
			</Tape>
			<p>{progressWords.keptWords}</p>
			<div class="drills-ways">
				<Button
					disabled={progress.size === 0}
					onClick={() => {
						saveFile(progressWords.fileName, progressText(progress));
						change((own) => own, progressWords.exported);
					}}
				>
					{progressWords.export}
				</Button>
				<Button onClick={() => file.current?.click()}>{progressWords.import}</Button>
				<input
					ref={file}
					type="file"
					accept="application/json,.json"
					hidden
					onChange={(event) => {
						take(event.currentTarget.files?.[0]);
						// the same file may be chosen again
						event.currentTarget.value = '';
					}}
				/>
				<Button look="quiet" disabled={progress.size === 0} onClick={() => ask(true)}>
					{progressWords.clear}
				</Button>
			</div>
			<p aria-hidden="true">{said}</p>
			{asks && (
				<Dialog open onClose={() => ask(false)} title={progressWords.clearTitle} closeWords={progressWords.keep}>
					<p>{progressWords.clearWords}</p>
					<Button
						onClick={() => {
							ask(false);
							change(() => NO_PROGRESS, progressWords.cleared);
						}}
					>
						{progressWords.clearDo}
					</Button>
				</Dialog>
			)}
		</section>
	);
}
