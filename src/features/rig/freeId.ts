/** The first id of a kind that is free: `wash-3`. */
export function freeId(taken: readonly { readonly id: string }[], kind: string): string {
	for (let n = 1; ; n++) if (taken.every(({ id }) => id !== `${kind}-${n}`)) return `${kind}-${n}`;
}
