/**
 * Where the rig begins along the wall: the place that keeps most fixtures on a wall of that width, so that one drawn far off doesn't
 * move all the others. Where the file starts to measure, if that keeps as many; else the first that does.
 * @param xs metres along, in any order @param wide metres
 * @returns metres; 0 where nothing has to move
 */
export function originOf(xs: readonly number[], wide: number): number {
	const sorted = xs.toSorted((a, b) => a - b);
	const kept = (from: number): number => sorted.filter((x) => x >= from && x - from <= wide).length;
	let best = { from: 0, count: kept(0) };
	let end = 0;
	for (const [i, from] of sorted.entries()) {
		while (end < sorted.length && (sorted[end] as number) - from <= wide) end++;
		if (end - i > best.count) best = { from, count: end - i };
	}
	return best.from;
}
