import type { JSX } from 'preact';
import { progressWords } from '#words/drills/index.ts';
import { DEVICE, Keeping } from '../../storage/index.ts';
import { changeProgress, importProgress, type OpenedProgress } from './keep.ts';
import { merged, NO_PROGRESS, type Progress, progressText } from './result.ts';

interface Props {
	progress: Progress;
	onChange: (opened: OpenedProgress, said: string) => void;
	/** What came of the last thing done here. */
	said: string;
}

/** Results of drills kept on the device: to a file, from a file, and away. */
export function DrillKeeping({ progress, onChange, said }: Props): JSX.Element {
	const change = (next: (own: Progress) => Progress, words: string) =>
		changeProgress(DEVICE, next).then((opened) => onChange(opened, words));

	const take = async (text: string) => {
		const got = await importProgress(progress, text);
		if (got.is !== 'taken') {
			await change((own) => own, got.is === 'newer' ? progressWords.newerFile : progressWords.badFile);
			return;
		}
		const left = got.damaged > 0 ? ` ${progressWords.importedDamaged(got.damaged)}` : '';
		await change((own) => merged(own, got.progress), progressWords.imported(got.kinds) + left);
	};
	return (
		<Keeping
			words={progressWords}
			text={progress.size === 0 ? null : progressText(progress)}
			onExported={() => change((own) => own, progressWords.exported)}
			onImport={take}
			onClear={() => change(() => NO_PROGRESS, progressWords.cleared)}
			said={said}
		/>
	);
}
