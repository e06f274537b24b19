import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { figureWords, manualWords, cardWords as words } from '#words/stock/index.ts';
import { footprintOf, isStandIn, type KeyedPanel, type Profile, panelFrom } from '../../../shared/profile/index.ts';
import {
	type Figure,
	type FigureCode,
	type OpenRows,
	type PrintedMode,
	printedModes,
	type StockEntry,
	UNCHECKED,
} from '../../../shared/stock/index.ts';
import { Button, Notice } from '../../ui/index.ts';
import { switchNote, switchTables, wayNote, wayTable } from '../reference/index.ts';
import { fixtureOf, openRowsOf } from './maker.ts';
import { cardCautions, cautionsOf, NO_NOTES } from './notes.ts';
import { nameOf, ownFixture } from './own.ts';

type Size = keyof typeof words.sizes;

/** Figures that stand on a card, where the fixture has them. */
const FIGURES: readonly FigureCode[] = ['feed', 'watts', 'watt-hours', 'link', 'lumens', 'beam', 'cells'];
/** What is said under the ways of a panel that was written down. */
const OF_PANEL: readonly FigureCode[] = ['panel-answer', 'panel-idle', 'panel-times'];

interface Props {
	entry: StockEntry;
	onDone: () => void;
}

/** A card for the lid of a case: figures, modes, charts, and the panel that stands in, said to be one. */
export default function Card({ entry, onDone }: Props): JSX.Element {
	const [size, pick] = useState<Size>('a5');
	const [wrong, tell] = useState<string | null>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	const { profile, figures } = useMemo(() => fixtureOf(entry), [entry]);
	useEffect(() => {
		if (!profile)
			void ownFixture(entry)
				.profile()
				.then((made) => tell('wrong' in made ? made.wrong : null));
		heading.current?.focus();
	}, [profile]);
	return (
		<div class="stock stock-card-page">
			<div class="stock-ways no-print">
				<Button look="quiet" onClick={onDone}>
					{words.back}
				</Button>
				<Button look="main" disabled={!profile} onClick={() => print()}>
					{words.print}
				</Button>
			</div>
			<h2 class="no-print" ref={heading} tabIndex={-1}>
				{words.makeOne(nameOf(entry))}
			</h2>
			<fieldset class="stock-label no-print">
				<legend>{words.paper}</legend>
				<p class="field-hint">{words.hint}</p>
				<div class="stock-ways">
					{(Object.keys(words.sizes) as Size[]).map((each) => (
						<label key={each} class="stock-pick">
							<input type="radio" name="card-size" checked={size === each} onChange={() => pick(each)} />
							<span>{words.sizes[each]}</span>
						</label>
					))}
				</div>
			</fieldset>
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			{profile && <Paper entry={entry} profile={profile} figures={figures} size={size} />}
		</div>
	);
}

interface PaperProps {
	entry: StockEntry;
	profile: Profile;
	figures: readonly Figure[];
	size: Size;
}

function Paper({ entry, profile, figures, size }: PaperProps): JSX.Element {
	const { panel } = profile;
	const open = useMemo(() => openRowsOf(entry), [entry]);
	const isFeedAssumed = figures.some(({ code, is }) => code === 'feed' && is === 'assumed');
	const ofLight = cautionsOf(profile, entry.kind === 'file' ? entry : NO_NOTES);
	return (
		<article class="stock-card" data-size={size}>
			<h2>{profile.name}</h2>
			<p>
				{entry.kind === 'file' ? words.fromFile : words.fromChart} {words.check}
			</p>
			{open.lines > 0 && (
				<p>
					<strong>{manualWords.unchecked(open.lines)}</strong> {manualWords.uncheckedShown}
				</p>
			)}
			{cardCautions(profile, isFeedAssumed, ofLight).map((id) => (
				<p key={id}>
					<strong>{cautions[id].title}.</strong> {cautions[id].care[0]}
				</p>
			))}
			<h3>{words.figures}</h3>
			<ul>
				{FIGURES.flatMap((code) => figures.filter((figure) => figure.code === code)).map((figure) => (
					<li key={figure.code}>{figureText(figure)}</li>
				))}
			</ul>
			<table class="stock-card-modes">
				<caption>{words.modes}</caption>
				<thead>
					<tr>
						<th scope="col">{words.modeHead.mode}</th>
						<th scope="col">{words.modeHead.channels}</th>
					</tr>
				</thead>
				<tbody>
					{profile.modes.map((mode) => (
						<tr key={mode.id}>
							<th scope="row">{mode.name}</th>
							<td>{footprintOf(mode)}</td>
						</tr>
					))}
				</tbody>
			</table>
			{printedModes(profile).map((mode, i) => (
				<Chart key={i} mode={mode} index={i} open={open} />
			))}
			{isStandIn(panel) && <p>{words.realHint}</p>}
			{isStandIn(panel) && (
				<table class="stock-card-real">
					<caption>{words.real}</caption>
					<tbody>
						{words.realRows.map((row) => (
							<tr key={row}>
								<th scope="row">{row}</th>
								<td />
							</tr>
						))}
					</tbody>
				</table>
			)}
			{panelFrom(profile) === 'crew' && (
				<p>
					<strong>{panelCardText(figures)}</strong>
				</p>
			)}
			{panel.kind !== 'dip' && <Ways profile={profile} panel={panel} />}
			{panel.kind === 'dip' &&
				switchTables(profile, panel)
					.filter(({ rows }) => rows.length > 0)
					.map((table) => <Table key={table.caption} table={table} />)}
			{panel.kind === 'dip' && <p>{switchNote(panel)}</p>}
			<PanelFigures figures={figures} />
			<p class="stock-card-end">{siteFirst}</p>
		</article>
	);
}

/** How much of a panel that its crew wrote down is assumed. */
const panelCardText = (figures: readonly Figure[]): string =>
	words.crew(figures.filter(({ code, is }) => OF_PANEL.includes(code) && is === 'assumed').length);

const figureText = ({ code, facts, is }: Figure): string => {
	const said = (figureWords[code] as { readonly is: (facts: never) => string }).is(facts as never);
	return is === 'assumed' ? words.assumed(said) : said;
};

interface ChartProps {
	mode: PrintedMode;
	/** Of the mode, from 0. */
	index: number;
	open: OpenRows;
}

function Chart({ mode: { name, slots }, index, open }: ChartProps): JSX.Element {
	return (
		<table>
			<caption>
				{words.chart(name)} {open.heading(index) && UNCHECKED}
			</caption>
			<thead>
				<tr>
					<th scope="col">{words.chartHead.channel}</th>
					<th scope="col">{words.chartHead.values}</th>
					<th scope="col">{words.chartHead.does}</th>
				</tr>
			</thead>
			<tbody>
				{slots.flatMap((slot) => {
					const at = slot.fine === undefined ? `${slot.at}` : `${slot.at}/${slot.fine}`;
					const bands = slot.bands.length > 0 ? slot.bands : [null];
					return bands.map((band, i) => (
						<tr key={`${at} ${i}`} data-first={i === 0}>
							<th scope="row">{at}</th>
							<td>{band ? (band.from === band.to ? band.from : `${band.from}–${band.to}`) : words.whole}</td>
							<td>
								{i === 0 && <b>{slot.name}</b>} {band?.words}{' '}
								{open.row(index, slot.at, band, i === 0) && <b>{UNCHECKED}</b>}
							</td>
						</tr>
					));
				})}
			</tbody>
		</table>
	);
}

/** The menu with the fewest presses to every item, found by pressing the keys of the panel's own machine. */
function Ways({ profile, panel }: { profile: Profile; panel: KeyedPanel }): JSX.Element {
	const { head, rows } = useMemo(() => wayTable(profile, panel), [profile]);
	const is = isStandIn(panel);
	return (
		<>
			<Table table={{ head, rows, caption: is ? words.standIn : words.panel }} />
			<p>
				{is && <strong>{words.standInHint}</strong>} {wayNote(panel)}
			</p>
		</>
	);
}

type TableOf = Pick<ReturnType<typeof wayTable>, 'caption' | 'head' | 'rows'>;

function Table({ table: { caption, head, rows } }: { table: TableOf }): JSX.Element {
	return (
		<table class="stock-card-ways">
			<caption>{caption}</caption>
			<thead>
				<tr>
					{head.map((cell) => (
						<th key={cell} scope="col">
							{cell}
						</th>
					))}
				</tr>
			</thead>
			<tbody>
				{rows.map((row, r) => (
					<tr key={r}>
						{row.map((cell, c) => (
							<td key={c}>{cell}</td>
						))}
					</tr>
				))}
			</tbody>
		</table>
	);
}

/** How a panel acts, as far as somebody said so or it was assumed. */
function PanelFigures({ figures }: { figures: readonly Figure[] }): JSX.Element | null {
	const told = OF_PANEL.flatMap((code) => figures.filter((figure) => figure.code === code));
	if (told.length === 0) return null;
	return (
		<ul>
			{told.map((figure, i) => (
				<li key={i}>{figureText(figure)}</li>
			))}
		</ul>
	);
}
