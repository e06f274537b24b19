import type { JSX } from 'preact';
import { hiddenWords } from '#words/hidden-faults/index.ts';
import type { RowPlace } from './view.ts';

interface Props {
	rows: readonly (readonly RowPlace[])[];
	/** The place picked; null for all. */
	at: string | null;
	onPick: (place: string | null) => void;
}

/** The rig as it stands, row by row: a place that is tapped has its checks alone listed, tapped again all of them. */
export function Rows({ rows, at, onPick }: Props): JSX.Element {
	return (
		<fieldset class="hidden-rows">
			<legend>{hiddenWords.rows}</legend>
			{rows.map((row) => (
				<ol key={row[0]?.id} class="hidden-row">
					{row.map(({ id, kind, name }) => (
						<li key={id} data-kind={kind}>
							<button type="button" aria-pressed={id === at} onClick={() => onPick(id === at ? null : id)}>
								{name}
							</button>
						</li>
					))}
				</ol>
			))}
		</fieldset>
	);
}
