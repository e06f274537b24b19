import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { pasteWords, rowTroubles, tableWords } from '#words/plan/index.ts';
import {
	FIELDS,
	type Field as FieldId,
	guessFields,
	type PastedTable,
	PLAN_MOST,
	type Plan,
	parseTable,
	plainText,
	READ_MOST,
	type ReadRow,
	readRows,
	withCell,
} from '../../../shared/plan/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, Dialog, Field, Live, Notice } from '../../ui/index.ts';
import { keepColumns, keptColumns } from './matches.ts';
import { CheckBox } from './Rows.tsx';
import { pasteProfiles, withMore } from './view.ts';

interface Props {
	plan: Plan;
	/** The plan with the list's fixtures in it; those with no start address have one given. */
	onAdd: (plan: Plan) => void;
	onClose: () => void;
}

/** Rows that need a look, shown at once. */
const MOST_SHOWN = 8;

/** A list pasted from a spreadsheet: the person says what its columns are, and puts right what cannot be read. */
export default function Paste({ plan, onAdd, onClose }: Props): JSX.Element {
	const boxId = useId();
	const [table, setTable] = useState<PastedTable | null>(null);
	const [fields, setFields] = useState<readonly (FieldId | null)[]>([]);
	const [isHeader, setHeader] = useState(false);
	/** Whether the columns are as the person matched those of an earlier list. */
	const [isEarly, setEarly] = useState(false);
	const [types, setTypes] = useState<Readonly<Record<string, string>>>({});
	const profiles = pasteProfiles(plan);
	const body = useMemo(() => (table ? bodyOf(table, isHeader) : null), [table, isHeader]);
	const read = useMemo(() => (body ? readRows(body, fields, profiles, tableWords, types) : []), [body, fields, types]);
	const take = (text: string): void => {
		const next = parseTable(text);
		const width = Math.max(0, ...next.rows.map((row) => row.length));
		const guess = guessFields(next.rows[0] ?? [], tableWords);
		const early = keptColumns(
			DEVICE,
			Array.from({ length: width }, (_, i) => next.rows[0]?.[i] ?? ''),
		);
		setTable(next);
		setFields(Array.from({ length: width }, (_, i) => (early ?? guess.fields)[i] ?? null));
		setHeader(early !== null || guess.isHeader);
		setEarly(early !== null);
	};
	/** What stands in one cell, put right in place. */
	const correct = (line: number, column: number, text: string): void => {
		if (table) setTable(withCell(table, line, column, text));
	};
	const bad = read.filter(({ troubles }) => troubles.length > 0);
	const added = read.flatMap(({ rows }) => rows);
	const count = added.length;
	const isFull = plan.rows.length + count > PLAN_MOST;
	const says = table ? pasteWords.good(count) : '';
	const headings = Array.from(fields, (_, i) => table?.rows[0]?.[i] ?? '');
	return (
		<Dialog open onClose={onClose} title={pasteWords.title} closeWords={pasteWords.close}>
			<p>{pasteWords.words}</p>
			<div class="rig-field">
				<label for={boxId}>{pasteWords.box}</label>
				<textarea id={boxId} rows={6} spellcheck={false} onInput={(event) => take(event.currentTarget.value)} />
			</div>
			{table && table.rows.length > 0 && (
				<>
					<Columns table={table} fields={fields} onFields={setFields} />
					{isEarly && <p class="field-hint">{pasteWords.early}</p>}
					<CheckBox label={pasteWords.header} isOn={isHeader} onChange={setHeader} />
					<Types read={read} profiles={profiles} types={types} onTypes={setTypes} />
					{table.openQuote !== null && <Notice kind="wrong">{pasteWords.openQuote(table.openQuote)}</Notice>}
					{table.leftOut > 0 && <Notice kind="wrong">{pasteWords.leftOut(table.leftOut, PLAN_MOST)}</Notice>}
					{!fields.includes('type') && <Notice kind="wrong">{pasteWords.needsType}</Notice>}
					<p>{says}</p>
					<Live text={says} />
					{fields.includes('type') && bad.length > 0 && (
						<Bad bad={bad} table={table} fields={fields} onCell={correct} />
					)}
					{isFull && <Notice kind="wrong">{pasteWords.full(PLAN_MOST)}</Notice>}
					<Button
						look="main"
						disabled={count === 0 || isFull || table.openQuote !== null}
						onClick={() => {
							if (isHeader) keepColumns(DEVICE, headings, fields, Date.now());
							onAdd(withMore(plan, added));
						}}
					>
						{bad.length > 0 ? pasteWords.addGood(count, bad.length) : pasteWords.add(count)}
					</Button>
				</>
			)}
		</Dialog>
	);
}

const bodyOf = ({ rows, lines }: PastedTable, isHeader: boolean): Pick<PastedTable, 'rows' | 'lines'> => ({
	rows: isHeader ? rows.slice(1) : rows,
	lines: isHeader ? lines.slice(1) : lines,
});

interface ColumnsProps {
	table: PastedTable;
	fields: readonly (FieldId | null)[];
	onFields: (fields: readonly (FieldId | null)[]) => void;
}

function Columns({ table, fields, onFields }: ColumnsProps): JSX.Element {
	const id = useId();
	return (
		<fieldset class="rig-columns">
			<legend>{pasteWords.columns}</legend>
			{fields.map((field, i) => (
				<div key={i} class="rig-field">
					<label for={`${id}-${i}`}>
						{pasteWords.column(i + 1)}: {table.rows[0]?.[i] ?? ''}
					</label>
					<select
						id={`${id}-${i}`}
						value={field ?? ''}
						onChange={(event) => {
							const picked = FIELDS.find((each) => each === event.currentTarget.value) ?? null;
							// each field stands in one column
							onFields(fields.map((each, n) => (n === i ? picked : each === picked ? null : each)));
						}}
					>
						<option value="">{pasteWords.skip}</option>
						{FIELDS.map((each) => (
							<option key={each} value={each}>
								{pasteWords.fields[each]}
							</option>
						))}
					</select>
				</div>
			))}
		</fieldset>
	);
}

interface TypesProps {
	read: readonly ReadRow[];
	profiles: readonly Profile[];
	types: Readonly<Record<string, string>>;
	onTypes: (types: Readonly<Record<string, string>>) => void;
}

/** What the list calls fixtures, each matched by the person. */
function Types({ read, profiles, types, onTypes }: TypesProps): JSX.Element | null {
	const id = useId();
	const unknown = read.flatMap(({ troubles }) =>
		troubles.flatMap(({ trouble, found }) => (trouble === 'unknown-type' ? [found] : [])),
	);
	const all = [...new Set([...Object.keys(types), ...unknown.map(plainText)])].slice(0, 20);
	if (all.length === 0) return null;
	return (
		<fieldset class="rig-columns">
			<legend>{pasteWords.types}</legend>
			{all.map((found) => (
				<div key={found} class="rig-field">
					<label for={`${id}-${found}`}>{pasteWords.type(found)}</label>
					<select
						id={`${id}-${found}`}
						value={types[found] ?? ''}
						onChange={(event) => onTypes({ ...types, [found]: event.currentTarget.value })}
					>
						<option value="">{pasteWords.noType}</option>
						{profiles.map(({ id: profile, name }) => (
							<option key={profile} value={profile}>
								{name}
							</option>
						))}
					</select>
				</div>
			))}
		</fieldset>
	);
}

interface BadProps {
	bad: readonly ReadRow[];
	table: PastedTable;
	fields: readonly (FieldId | null)[];
	onCell: (line: number, column: number, text: string) => void;
}

/** Rows that cannot be read, each with a box for what is wrong in it. */
function Bad({ bad, table, fields, onCell }: BadProps): JSX.Element {
	return (
		<div class="rig-bad">
			<p>{pasteWords.bad(bad.length)}</p>
			<ul>
				{bad.slice(0, MOST_SHOWN).map(({ line, troubles }) => {
					const cells = table.rows[table.lines.indexOf(line)] ?? [];
					return (
						<li key={line}>
							<p>
								<strong>{pasteWords.line(line)}</strong>: {cells.join(' | ')}
							</p>
							{troubles.map(({ column, trouble, found }) => {
								const field = fields[column] ?? null;
								const label = pasteWords.cell(line, field ? pasteWords.fields[field] : pasteWords.column(column + 1));
								return (
									<Field
										key={`${column} ${trouble}`}
										label={label}
										value={found}
										error={rowTroubles[trouble](READ_MOST)}
										onChange={(event) => onCell(line, column, event.currentTarget.value)}
									/>
								);
							})}
						</li>
					);
				})}
			</ul>
			{bad.length > MOST_SHOWN && <p>{pasteWords.more(bad.length - MOST_SHOWN)}</p>}
		</div>
	);
}
