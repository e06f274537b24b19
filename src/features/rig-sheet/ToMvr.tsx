import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { mvrWords as words } from '#words/mvr/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button, Live, Notice } from '../../ui/index.ts';
import { rigFileTrouble, writeRigFile } from './askMvr.ts';
import { LostNotes } from './LostNotes.tsx';

/** The plan as an MVR file: what stays behind is told before it is saved. */
export default function ToMvr({ plan }: { plan: Plan }): JSX.Element {
	const [written, set] = useState<Awaited<ReturnType<typeof writeRigFile>> | null>(null);
	const [trouble, tell] = useState<string | null>(null);
	const [said, say] = useState('');
	useEffect(() => {
		writeRigFile(plan).then(set, (error) => tell(rigFileTrouble(error)));
	}, [plan]);
	if (trouble !== null)
		return (
			<Notice kind="wrong">
				<p role="alert">{trouble}</p>
			</Notice>
		);
	if (!written) return <p class="coming">{words.writing}</p>;
	return (
		<>
			<LostNotes left={written.left} lead={words.saveLead} title={words.stays(written.left.length)} />
			<Button
				look="main"
				onClick={() => {
					saveText(words.fileName, written.bytes, 'application/octet-stream');
					say(words.saved);
				}}
			>
				{words.save}
			</Button>
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
		</>
	);
}
