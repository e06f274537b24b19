import { referenceFrame } from '#words/reference/index.ts';
import { fill } from '../../wording/index.ts';
import type { ReferenceTable } from './types.ts';

/** A table cut into its parts, of rows as equal as can be, each with a caption of its own. */
export function foldedTables(table: ReferenceTable): ReferenceTable[] {
	const parts = table.fold ?? 1;
	const { rows, caption } = table;
	if (parts === 1) return [table];
	const each = Math.ceil(rows.length / parts);
	return Array.from({ length: parts }, (_, i) => ({
		...table,
		caption: fill(referenceFrame.part, { caption, n: i + 1, parts }),
		rows: rows.slice(i * each, (i + 1) * each),
	}));
}
