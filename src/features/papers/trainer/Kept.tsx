import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { trainerWords } from '#words/papers/index.ts';
import type { AskRoute } from '../../../engine/index.ts';
import { saveText } from '../../../storage/index.ts';
import { Button, Dialog, Live } from '../../../ui/index.ts';
import { troubleText } from '../asking.ts';
import type { PaperRef } from '../protocol.ts';
import { Unread } from './Unread.tsx';
import type { KeptHand } from './useKept.ts';
import type { FileView, KeptView } from './views.ts';
import type { ClassExport } from './work.ts';

const EXPORTS = Object.entries(trainerWords.exportAs) as [ClassExport, string][];

interface Props {
	ask: AskRoute;
	kept: KeptHand;
	/** Puts a kept paper back into the boxes. */
	onTakeUp: (paper: PaperRef) => void;
}

/** What is on this device: to files, and away. */
export function Kept({ ask, kept: { hold, picked, shown, look }, onTakeUp }: Props): JSX.Element | null {
	const [asks, askFor] = useState<KeptView | 'all' | null>(null);
	const [said, say] = useState({ text: '', turn: 0 });
	const tell = (text: string) => say(({ turn }) => ({ text, turn: turn + 1 }));
	const failed = (error: unknown) => tell(troubleText(error));
	const save = (file: Promise<FileView>) =>
		file.then(({ name, type, content }) => {
			saveText(name, content, type);
			tell(trainerWords.saved);
		}, failed);
	const remove = () => {
		const gone =
			asks === 'all' ? ask('papers.removeAll', null) : asks ? ask('papers.removePaper', { mark: asks.mark }) : null;
		askFor(null);
		gone
			?.then(() => look())
			.then(() => tell(trainerWords.deleted))
			.catch(failed);
	};
	if (!hold) return null;
	return (
		<div class="kept">
			<p>
				{hold.keeps
					? `${trainerWords.keepLead} ${trainerWords.keeps(hold.papers.length, hold.results)}`
					: trainerWords.notKept}
			</p>
			<Unread lead={trainerWords.asideSay(hold.asides.count)} summary={hold.asides} />
			{hold.papers.length > 0 && (
				<ul class="kept-papers" aria-label={trainerWords.papers}>
					{hold.papers.map((paper) => (
						<li key={paper.mark}>
							<span class="kept-title">{trainerWords.paperOf(paper.title, paper.seed, paper.results)}</span>
							<span class="papers-ways">
								<Button
									aria-label={trainerWords.paperAgainOne(paper.title)}
									onClick={() => ask('papers.keptPaper', { mark: paper.mark }).then(onTakeUp, failed)}
								>
									{trainerWords.paperAgain}
								</Button>
								<Button
									look="quiet"
									aria-label={trainerWords.paperDeleteOne(paper.title)}
									onClick={() => askFor(paper)}
								>
									{trainerWords.paperDelete}
								</Button>
							</span>
						</li>
					))}
				</ul>
			)}
			{picked !== null && shown && (
				<div class="kept-exports">
					<h3>{`${trainerWords.exports}: ${shown.title}`}</h3>
					<div class="papers-ways">
						{EXPORTS.map(([as, name]) => (
							<Button key={as} onClick={() => save(ask('papers.exportClass', { mark: picked, as }))}>
								{name}
							</Button>
						))}
					</div>
					<p class="build-soft">{trainerWords.exportHint}</p>
				</div>
			)}
			<div class="papers-ways">
				<Button disabled={hold.papers.length + hold.results === 0} onClick={() => save(ask('papers.exportAll', null))}>
					{trainerWords.exportAll}
				</Button>
				<Button
					look="quiet"
					disabled={hold.papers.length + hold.results + hold.asides.count === 0}
					onClick={() => askFor('all')}
				>
					{trainerWords.clear}
				</Button>
				<span class="papers-said" aria-hidden="true">
					{said.text}
				</span>
			</div>
			<p class="build-soft">{trainerWords.importHow}</p>
			<Live text={said.text} turn={said.turn} />
			{asks !== null && (
				<Dialog
					open
					onClose={() => askFor(null)}
					title={asks === 'all' ? trainerWords.clearAsk : trainerWords.paperDeleteAsk(asks.title)}
					closeWords={trainerWords.removeKeep}
				>
					<p>{asks === 'all' ? trainerWords.clearWords : trainerWords.paperDeleteWords(asks.results)}</p>
					<Button onClick={remove}>{asks === 'all' ? trainerWords.clearDo : trainerWords.removeDo}</Button>
				</Dialog>
			)}
		</div>
	);
}
