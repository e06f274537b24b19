/** A list with one item moved by a step up (-1) or down (+1); as it was where there is no room. */
export function moved<T>(list: readonly T[], at: number, by: -1 | 1): readonly T[] {
	const to = at + by;
	const [one, other] = [list[at], list[to]];
	if (one === undefined || other === undefined) return list;
	const next = [...list];
	next[at] = other;
	next[to] = one;
	return next;
}

/** Options in the order answered; those that an answer leaves out, and an answer's own strangers, do no harm. */
export function inOrder<T extends { readonly id: string }>(options: readonly T[], order: readonly string[]): T[] {
	const known = order.flatMap((id) => options.find((option) => option.id === id) ?? []);
	return [...new Set([...known, ...options])];
}

/** A list with something put in or taken out, in the order of `all`. */
export const toggled = (all: readonly string[], chosen: readonly string[], one: string): string[] =>
	all.filter((id) => (id === one ? !chosen.includes(id) : chosen.includes(id)));
