/** A number that was typed, with a point or a comma, within bounds; null where it is none. */
export function typedNumber(text: string, least: number, most: number, isWhole = false): number | null {
	const value = /^\d{1,6}([.,]\d{1,3})?$/.test(text.trim()) ? Number(text.trim().replace(',', '.')) : Number.NaN;
	return value >= least && value <= most && (!isWhole || Number.isInteger(value)) ? value : null;
}
