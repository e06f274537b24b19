import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { handOnWords, led, logWords } from '#words/finder/index.ts';
import { locale } from '#words/locale/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button, Live } from '../../ui/index.ts';
import { allowsText, logText, seenText, verdictLines } from './log.ts';
import type { FinderScene } from './scene.ts';
import { timeText } from './verdict.ts';
import { later } from './view.ts';

const HandOn = later(async () => ({ default: (await import('./HandOn.tsx')).HandOn }));

/** The walk so far: to read, and to print, copy or keep. On paper it is all there is of the page. */
export function Log({ scene: { view, laid, walk, allows } }: { scene: FinderScene }): JSX.Element | null {
	const [open, set] = useState(false);
	const [handing, hand] = useState(false);
	const [said, say] = useState({ words: '', turn: 0 });
	const isLost = view?.verdict?.because === 'unknown';
	// where the finder has nothing more to say, the walk is all there is
	useEffect(() => {
		if (isLost) set(true);
	}, [isLost]);
	if (!view || !laid || !walk) return null;
	const began = locale.date(walk.began);
	const text = () => logText({ view, rig: laid.name, allows, began });
	const tell = (words: string) => say(({ turn }) => ({ words, turn: turn + 1 }));
	return (
		<section class="walk-log" data-open={open}>
			<button type="button" class="fold-line walk-log-line" aria-expanded={open} onClick={() => set(!open)}>
				{logWords.title} <span class="value">{view.log.length}</span>
			</button>
			<div class="walk-log-in">
				<div class="walk-log-head">
					<h2>{view.complaint}</h2>
					<p>{laid.name}</p>
					<p>{logWords.began(began)}</p>
					<p>{allowsText(allows)}</p>
				</div>
				{view.log.length === 0 && <p>{logWords.none}</p>}
				<ol class="walk-log-list">
					{view.log.map((line, i) => (
						<li key={i} data-did={line.did}>
							{led(line.check, ':')} <strong>{seenText(line)}</strong>
						</li>
					))}
				</ol>
				<div class="walk-log-head">
					{(verdictLines(view) ?? [logWords.open]).map((line) => (
						<p key={line}>
							<strong>{line}</strong>
						</p>
					))}
					<p>{logWords.spent(timeText(view.spent))}</p>
				</div>
				<div class="walk-log-ways no-print">
					<Button onClick={() => window.print()}>{logWords.print}</Button>
					<Button
						onClick={() =>
							navigator.clipboard.writeText(text()).then(
								() => tell(logWords.copied),
								() => tell(logWords.copyFailed),
							)
						}
					>
						{logWords.copy}
					</Button>
					<Button onClick={() => saveText(logWords.file, text(), 'text/plain')}>{logWords.keep}</Button>
					{walk.fixture !== null && walk.complaint !== null && (
						<Button look="quiet" href={logWords.treeHref(walk.fixture, walk.complaint)}>
							{logWords.tree}
						</Button>
					)}
					<p aria-hidden="true">{said.words}</p>
					<Live text={said.words} turn={said.turn} />
				</div>
				<details class="fold no-print" data-hand-on onToggle={(event) => hand(event.currentTarget.open)}>
					<summary class="fold-line">{handOnWords.title}</summary>
					{handing && <HandOn allows={allows} walk={walk} />}
				</details>
			</div>
		</section>
	);
}
