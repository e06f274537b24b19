import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { paperWords, printWords, sitWords } from '#words/papers/index.ts';
import { Button, Live, Notice } from '../../../ui/index.ts';
import { askPapers, troubleText } from '../asking.ts';
import { OpenPaper } from '../learner/OpenPaper.tsx';
import type { OpenedPaper } from '../protocol.ts';
import type { KeyView } from '../view.ts';
import { AnswerSheet } from './AnswerSheet.tsx';
import { KeySheet } from './KeySheet.tsx';
import { QuestionSheet } from './QuestionSheet.tsx';

type SheetId = keyof typeof printWords.sheets;
const SHEETS = Object.entries(printWords.sheets) as [SheetId, string][];

/** Printed unless told: the key only for who asks for it, or it goes out with the questions. */
const FIRST: readonly SheetId[] = ['paper', 'answers'];

interface PrintSource {
	readonly opened: OpenedPaper;
	readonly keys: readonly KeyView[];
}

/** A paper to print: its questions, a sheet for answers, the key; each from a page of its own. */
export default function Print(): JSX.Element {
	const [ask] = useState(askPapers);
	const [shown, show] = useState<PrintSource | null>(null);
	const [trouble, tell] = useState('');
	const [busy, setBusy] = useState(location.hash.length > 1);
	const [sheets, pick] = useState<readonly SheetId[]>(FIRST);
	const take = async (text: string) => {
		setBusy(true);
		tell('');
		try {
			const opened = await ask('papers.open', { text });
			show({ opened, keys: await ask('papers.keys', { recipe: opened.recipe, seed: opened.seed }) });
		} catch (error) {
			tell(troubleText(error));
		}
		setBusy(false);
	};
	useEffect(() => {
		const hear = () => {
			if (location.hash.length > 1) void take(location.hash);
		};
		hear();
		window.addEventListener('hashchange', hear);
		return () => window.removeEventListener('hashchange', hear);
	}, []);
	const paper = shown?.opened.view;
	const has = (id: SheetId) => sheets.includes(id);
	return (
		<div class="printing">
			{trouble !== '' && <Notice kind="wrong">{trouble}</Notice>}
			{busy && <p class="papers-wait">{paperWords.loading}</p>}
			{!busy && !shown && <OpenPaper onText={take} />}
			{shown && paper && (
				<>
					<div class="print-ways no-print">
						<fieldset class="chips">
							<legend>{printWords.what}</legend>
							<div class="chips-row">
								{SHEETS.map(([id, name]) => (
									<label key={id} class="chip">
										<input
											type="checkbox"
											checked={has(id)}
											onChange={() => pick(has(id) ? sheets.filter((each) => each !== id) : [...sheets, id])}
										/>
										<span>{name}</span>
									</label>
								))}
							</div>
						</fieldset>
						<div class="papers-ways">
							<Button look="main" disabled={sheets.length === 0} onClick={() => print()}>
								{printWords.print}
							</Button>
							<Button look="quiet" href="/papers/">
								{printWords.backTo}
							</Button>
						</div>
					</div>
					<div class="print-sheets">
						{has('paper') && <QuestionSheet paper={paper} seed={shown.opened.seed} />}
						{has('answers') && <AnswerSheet paper={paper} seed={shown.opened.seed} />}
						{has('key') && <KeySheet paper={paper} seed={shown.opened.seed} keys={shown.keys} />}
					</div>
				</>
			)}
			<Live text={trouble} urgent />
			<Live text={shown ? sitWords.about(shown.opened.view.questions.length, shown.opened.view.pass) : ''} />
		</div>
	);
}
