import type { JSX, RefObject } from 'preact';
import { marksFrame, panelMarkWords, panelWords, panelEdit as words } from '#words/stock/index.ts';
import {
	inList,
	type OwnPanel,
	PANEL_NOTES,
	type PanelMark,
	type PanelMarkCode,
	withWords,
} from '../../../shared/stock/index.ts';
import { goTo } from './goTo.ts';

const markText = ({ code, facts }: PanelMark): string =>
	(
		panelMarkWords satisfies Readonly<Record<PanelMarkCode, unknown>> as Readonly<
			Record<PanelMarkCode, (facts: never) => string>
		>
	)[code](facts as never);

/** What a pick is called: an item's words, a value's, or a name of the fixture's own. */
function wordsFor(pick: string): string {
	if (pick.startsWith('name:')) return pick.slice('name:'.length);
	const { items, values } = panelWords;
	const say = { ...items, ...values } as Readonly<Record<string, { readonly say: string }>>;
	return say[pick]?.say ?? pick;
}

interface Props {
	own: OwnPanel;
	box: RefObject<HTMLTextAreaElement>;
	menu: string;
	onMenu: (menu: string, done: string) => void;
}

/** Every mark of the menu in words, with what to pick where it is in doubt: the pick is written into the line itself. */
export function PanelMarks({ own: { marks }, box, menu, onMenu }: Props): JSX.Element {
	if (marks.length === 0) return <p class="stock-good">{words.none}</p>;
	const isNote = ({ code }: PanelMark): boolean => PANEL_NOTES.has(code);
	const notes = marks.filter(isNote).length;
	const inOrder = [...marks].sort((a, b) => Number(isNote(a)) - Number(isNote(b)));
	return (
		<section class="stock-marks" aria-label={words.marks}>
			<h3>{words.marks}</h3>
			<p>{words.summary(marks.length - notes, notes)}</p>
			<ol>
				{inOrder.map((mark, i) => (
					<li key={`${mark.code}-${mark.place.line}-${mark.place.column}-${i}`} class={isNote(mark) ? 'note' : 'wrong'}>
						<button type="button" onClick={() => goTo(box.current, mark.place)}>
							<strong>{marksFrame.at(mark.place.line)}</strong> <span>{markText(mark)}</span>
						</button>
						<PickFor mark={mark} menu={menu} onMenu={onMenu} />
					</li>
				))}
			</ol>
		</section>
	);
}

function PickFor({ mark, menu, onMenu }: Pick<Props, 'menu' | 'onMenu'> & { mark: PanelMark }): JSX.Element | null {
	const { pick, place, facts } = mark;
	if (!pick) return null;
	const text = 'text' in facts ? facts.text : '';
	return (
		<select
			aria-label={words.pickOf(text)}
			value=""
			onChange={({ currentTarget }) => {
				const is = wordsFor(currentTarget.value);
				if (currentTarget.value !== '') onMenu(withWords(menu, place.line, pick, inList(is)), words.picked(text, is));
			}}
		>
			<option value="">{words.pick}</option>
			{pick.of.map((each) => (
				<option key={each} value={each}>
					{wordsFor(each)}
				</option>
			))}
		</select>
	);
}
