/** Moves the focus on from a button that goes with its notice: to where the screen begins, or to the finder as a whole. */
export function toBegin(from: Element): void {
	const finder = from.closest<HTMLElement>('.finder');
	const begin = finder?.querySelector<HTMLElement>('[data-begin]') ?? finder;
	begin?.focus({ preventScroll: true });
}
