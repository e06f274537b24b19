import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { fileWords as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { plainName, saveText } from '../../storage/index.ts';
import { Button, Dialog } from '../../ui/index.ts';
import { fileTrouble, writeFile } from './askFile.ts';

type Written = Awaited<ReturnType<typeof writeFile>>;

/** Says what a GDTF file of this fixture cannot hold, and saves one. */
export function SaveGdtf({ profile, onClose }: { profile: Profile; onClose: () => void }): JSX.Element {
	const [written, set] = useState<Written | null>(null);
	const [wrong, tell] = useState<string | null>(null);
	const [isSaved, saved] = useState(false);
	useEffect(() => {
		writeFile(profile).then(set, (error: unknown) =>
			tell(fileTrouble(error, { slow: words.writeFailed, broke: words.writeFailed })),
		);
	}, []);
	const save = () => {
		if (!written) return;
		const name = words.fileName(plainName(profile.name) || 'fixture');
		saveText(name, new Uint8Array(written.bytes), 'application/octet-stream');
		saved(true);
	};
	return (
		<Dialog open onClose={onClose} title={words.writeTitle} closeWords={words.writeClose}>
			{wrong !== null && <p role="alert">{wrong}</p>}
			{!written && wrong === null && (
				<p class="coming" role="status">
					{words.writing}
				</p>
			)}
			{written && (
				<>
					<p>{words.writeLead}</p>
					<ul class="stock-unwritten">
						{written.left.map(({ path, says }, i) => (
							<li key={i}>
								{says} {path !== '' && <span class="stock-path">{path}</span>}
							</li>
						))}
					</ul>
					<Button look="main" onClick={save}>
						{words.writeDo}
					</Button>
					<p role="status">{isSaved ? words.written : ''}</p>
				</>
			)}
		</Dialog>
	);
}
