import type { JSX } from 'preact';
import { useContext, useRef } from 'preact/hooks';
import { panelEdit as words } from '#words/stock/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import {
	type OwnPanel,
	PANEL_NOTES,
	PANEL_WAYS,
	type PanelEntry,
	type StockEntry,
	USUAL_KEYS,
} from '../../../shared/stock/index.ts';
import { Button } from '../../ui/index.ts';
import { ChartBox } from './ChartBox.tsx';
import { PanelKeys } from './PanelKeys.tsx';
import { PanelMarks } from './PanelMarks.tsx';
import { PanelQuestions } from './PanelQuestions.tsx';
import { PanelSettle } from './PanelSettle.tsx';
import { PanelContext } from './panelContext.ts';

interface Props {
	entry: StockEntry;
	panel: PanelEntry;
	profile: Profile;
	own: OwnPanel;
	onChange: (part: { readonly panel: PanelEntry | null }) => void;
	/** Says what was done, where it is heard after this editor is gone too. */
	onSay: (done: string) => void;
}

const DISPLAYS = ['text', 'code'] as const;

/** How a panel works, its keys, its menu and what is answered of it, with the panel itself beside it to press. */
export default function PanelEditor({ entry, panel, profile, own, onChange, onSay }: Props): JSX.Element {
	const box = useRef<HTMLTextAreaElement>(null);
	const LivePanel = useContext(PanelContext);
	const change = (part: Partial<PanelEntry>) => onChange({ panel: { ...panel, ...part } });
	const { way, display } = panel;
	const isKeyed = way !== 'switches';
	const hint = isKeyed && display === 'code' ? `${words.menuHint} ${words.codeHint}` : words.menuHint;
	return (
		<>
			<fieldset class="stock-label">
				<legend>{words.way}</legend>
				<div class="stock-kinds">
					{PANEL_WAYS.map((each) => (
						<label key={each} class="stock-pick">
							<input
								type="radio"
								name="panel-way"
								checked={way === each}
								onChange={() => change({ way: each, keys: keysFor(each, panel) })}
							/>
							<span>
								<strong>{words.ways[each].name}</strong> {words.ways[each].more}
							</span>
						</label>
					))}
				</div>
			</fieldset>
			{isKeyed && (
				<fieldset class="stock-label">
					<legend>{words.display}</legend>
					<div class="stock-ways">
						{DISPLAYS.map((each) => (
							<label key={each} class="stock-pick">
								<input
									type="radio"
									name="panel-display"
									checked={display === each}
									onChange={() => change({ display: each })}
								/>
								<span>{words.displays[each]}</span>
							</label>
						))}
					</div>
				</fieldset>
			)}
			{isKeyed && <PanelKeys panel={panel} onKeys={(keys) => change({ keys })} />}
			<div class="stock-chart">
				<section>
					<ChartBox
						box={box}
						label={words.menu}
						hint={isKeyed ? hint : words.switchesHint}
						example={exampleFor(panel)}
						rows={12}
						underlines={own.marks.map(({ code, place }) => ({ place, isNote: PANEL_NOTES.has(code) }))}
						text={panel.menu}
						onText={(menu) => change({ menu })}
					/>
					{panel.menu.trim() !== '' && (
						<PanelMarks
							own={own}
							box={box}
							menu={panel.menu}
							onMenu={(menu, done) => {
								change({ menu });
								onSay(done);
							}}
						/>
					)}
				</section>
				<section class="stock-live" aria-labelledby="stock-live">
					<h3 id="stock-live">{words.live}</h3>
					{own.panel ? (
						<>
							<p>{words.liveHint}</p>
							{LivePanel && <LivePanel profile={profile} />}
							<p>{words.ready}</p>
						</>
					) : (
						<p>{words.liveNone}</p>
					)}
				</section>
			</div>
			{own.panel && <PanelQuestions panel={panel} own={own} onAnswers={(answers) => change({ answers })} />}
			{own.panel && isKeyed && (
				<PanelSettle
					entry={entry}
					profile={profile}
					onAnswer={(answers) => change({ answers })}
					onSay={onSay}
					panel={panel}
				/>
			)}
			<div class="stock-ways">
				<Button
					look="quiet"
					onClick={() => {
						onChange({ panel: null });
						onSay(words.dropped);
					}}
				>
					{words.drop}
				</Button>
			</div>
		</>
	);
}

/** The keys another way begins with, each with what is printed on it if it had a name before. */
const keysFor = (way: PanelEntry['way'], { keys }: PanelEntry): PanelEntry['keys'] =>
	USUAL_KEYS[way].map((key) => ({ key, name: keys.find((each) => each.key === key)?.name ?? '' }));

function exampleFor({ way, display }: PanelEntry): string {
	if (way === 'switches') return words.exampleSwitches;
	if (display === 'text') return words.example;
	return way === 'flat' ? words.exampleFlat : words.exampleCode;
}
