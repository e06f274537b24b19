import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { scanWords, trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import type { HandedIn } from '../exchange/index.ts';
import { ScanQr } from '../exchange/scan/ScanQr.tsx';
import { ClassTable } from './ClassTable.tsx';
import { Unread } from './Unread.tsx';
import type { KeptHand } from './useKept.ts';
import { leftInBox, type TakenView, takenText } from './views.ts';

/** Results come in by link, file, picture or paste; below, the class. */
export function Gather({ ask, kept }: { ask: AskRoute; kept: KeptHand }): JSX.Element {
	const id = useId();
	const top = useRef<HTMLDivElement>(null);
	const [text, type] = useState('');
	const [busy, setBusy] = useState(false);
	const [pictures, setPictures] = useState<AbortController | null>(null);
	const files = useRef<HTMLInputElement>(null);
	const [over, hover] = useState(false);
	const [taken, tell] = useState<TakenView | null>(null);
	const [trouble, setTrouble] = useState('');
	/** Null where it broke off. */
	const take = async (sort: () => Promise<readonly HandedIn[]>): Promise<TakenView | null> => {
		setBusy(true);
		setTrouble('');
		tell(null);
		let found: TakenView | null = null;
		try {
			found = await ask('papers.takeIn', { handed: await sort() });
			await kept.look(found.paper);
			tell(found);
		} catch (error) {
			setTrouble(troubleText(error));
		}
		setBusy(false);
		return found;
	};
	const takeText = (from: string) => take(() => ask('papers.readText', { text: from }));
	const takeFiles = async (chosen: readonly File[]) => {
		const stop = new AbortController();
		if (chosen.some(({ type: kind }) => kind.startsWith('image/'))) setPictures(stop);
		await take(async () => {
			const { readFiles } = await import('../exchange/readFiles.ts');
			return readFiles(chosen, (text, from) => ask('papers.readText', { text, from }), stop.signal);
		});
		setPictures((now) => (now === stop ? null : now));
	};
	useEffect(() => {
		const hear = () => {
			if (!/^#(result|paper)=/.test(location.hash)) return;
			const from = location.hash;
			// taken in once: loading the page again must not take it in again
			history.replaceState(null, '', location.pathname + location.search);
			void takeText(from).then(() => top.current?.scrollIntoView());
		};
		hear();
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	const said = busy ? trainerWords.taking : taken ? takenText(taken) : '';
	return (
		<div class="gather" ref={top}>
			<p>{trainerWords.gatherLead}</p>
			<div class="gather-ways">
				{/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is beside the button that does the same */}
				<div
					class="gather-drop"
					data-over={over}
					onDragOver={(event) => {
						event.preventDefault();
						hover(true);
					}}
					onDragLeave={() => hover(false)}
					onDrop={(event) => {
						event.preventDefault();
						hover(false);
						void takeFiles([...(event.dataTransfer?.files ?? [])]);
					}}
				>
					<p aria-hidden="true">{trainerWords.drop}</p>
					<label for={`${id}-files`}>{trainerWords.choose}</label>
					<input
						id={`${id}-files`}
						type="file"
						multiple
						accept=".json,.txt,application/json,text/plain,image/*"
						aria-describedby={`${id}-hint`}
						ref={files}
						onChange={(event) => {
							const chosen = [...(event.currentTarget.files ?? [])];
							// the same file may be chosen again
							event.currentTarget.value = '';
							if (chosen.length > 0) void takeFiles(chosen);
						}}
					/>
					<p class="field-hint" id={`${id}-hint`}>
						{trainerWords.chooseHint}
					</p>
					<ScanQr onText={takeText} />
				</div>
				<form
					class="gather-paste"
					onSubmit={(event) => {
						event.preventDefault();
						void takeText(text).then((found) => type((held) => leftInBox(held, text, found)));
					}}
				>
					<label for={`${id}-paste`}>{trainerWords.pasteResults}</label>
					<textarea
						id={`${id}-paste`}
						rows={3}
						spellcheck={false}
						value={text}
						onInput={(event) => type(event.currentTarget.value)}
					/>
					<Button type="submit" disabled={busy || text.trim() === ''}>
						{trainerWords.take}
					</Button>
				</form>
			</div>
			{said !== '' && (
				<p class="gather-said" aria-hidden="true">
					{said}
				</p>
			)}
			<Live text={said} />
			{busy && pictures && (
				<Button
					onClick={() => {
						pictures.abort();
						files.current?.focus();
					}}
				>
					{scanWords.stopReading}
				</Button>
			)}
			{taken && <Unread word={trainerWords.refused} summary={taken.refused} />}
			{(trouble || kept.trouble) !== '' && (
				<Notice kind="wrong">
					<p role="alert">{trouble || kept.trouble}</p>
				</Notice>
			)}
			<PickPaper kept={kept} />
			{kept.shown && kept.shown.rows.length > 0 && <ClassTable ask={ask} shown={kept.shown} onChanged={kept.look} />}
			{kept.hold && <Unread word={trainerWords.unset} summary={kept.hold.unset} />}
		</div>
	);
}

/** Which paper's results are shown. */
function PickPaper({ kept: { hold, picked, look } }: { kept: KeptHand }): JSX.Element | null {
	const id = useId();
	if (!hold) return null;
	const with_ = hold.papers.filter(({ results }) => results > 0);
	if (with_.length === 0) return <p class="build-soft">{trainerWords.noResults}</p>;
	return (
		<p class="gather-pick">
			<label for={id}>{trainerWords.paper}</label>
			<select id={id} value={picked ?? ''} onChange={({ currentTarget }) => void look(currentTarget.value)}>
				{with_.map(({ mark, title, seed, results }) => (
					<option key={mark} value={mark} selected={mark === picked}>
						{trainerWords.paperOf(title, seed, results)}
					</option>
				))}
			</select>
		</p>
	);
}
