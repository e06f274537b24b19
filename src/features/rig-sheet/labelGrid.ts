/** Paper that labels come on: sheets, or the tape of a strip printer. */
export const LABEL_PAPERS = Object.freeze(['a4', 'letter', 'strip'] as const);
export type LabelPaper = (typeof LABEL_PAPERS)[number];

/** Widths and heights of sheets, mm: ISO 216 and ANSI/ASME Y14.1 (8.5 by 11 in). */
export const SHEET_SIZES = Object.freeze({
	a4: { width: 210, height: 297 },
	letter: { width: 215.9, height: 279.4 },
});

/** Labels as they stand on a sheet, measured by whoever holds it: a free grid. */
export interface LabelGrid {
	readonly paper: LabelPaper;
	/** Across and down, each 1 to 20; one by one on a strip. */
	readonly columns: number;
	readonly rows: number;
	/** Above the first and below the last row, and at both sides, mm, 0 to 60. */
	readonly top: number;
	readonly side: number;
	/** Between columns, and between rows, mm, 0 to 30. */
	readonly gapAcross: number;
	readonly gapDown: number;
	/** Labels of the first sheet that are used up already, from 0. */
	readonly used: number;
	/** Of a strip printer: how wide its tape is, and how long each label, mm. */
	readonly tape: number;
	readonly length: number;
}

/** A grid to begin from (ours): three by eight. */
export const FIRST_GRID: LabelGrid = Object.freeze({
	paper: 'a4',
	columns: 3,
	rows: 8,
	top: 10,
	side: 7,
	gapAcross: 0,
	gapDown: 0,
	used: 0,
	tape: 36,
	length: 70,
});

/** Least width and height of a label on which a start address can be read by torch, mm (ours). */
export const LEAST_LABEL = Object.freeze({ width: 38, height: 22 });

/** Width and height of each label, mm: what the sheet leaves when margins and gaps are off. Not over 0 where they leave nothing. */
export function labelSize(grid: LabelGrid): { readonly width: number; readonly height: number } {
	if (grid.paper === 'strip') return { width: grid.length, height: grid.tape };
	const { width, height } = SHEET_SIZES[grid.paper];
	return {
		width: (width - 2 * grid.side - (grid.columns - 1) * grid.gapAcross) / grid.columns,
		height: (height - 2 * grid.top - (grid.rows - 1) * grid.gapDown) / grid.rows,
	};
}

/** Whether labels of this grid hold what goes on them in letters that are read by torch. */
export function isLargeEnough(grid: LabelGrid): boolean {
	const { width, height } = labelSize(grid);
	// a hair of room: the last bit of a division says nothing of paper
	return width >= LEAST_LABEL.width - 1e-6 && height >= LEAST_LABEL.height - 1e-6;
}

/** Labels sheet by sheet; null for a place that stays empty since its label is used up. */
export function onSheets<T>(grid: LabelGrid, labels: readonly T[]): (T | null)[][] {
	if (labels.length === 0) return [];
	const each = grid.paper === 'strip' ? 1 : grid.columns * grid.rows;
	const skipped = grid.paper === 'strip' ? 0 : Math.min(grid.used, each - 1);
	const all = [...Array.from({ length: skipped }, () => null), ...labels];
	return Array.from({ length: Math.ceil(all.length / each) }, (_, i) => all.slice(i * each, (i + 1) * each));
}
