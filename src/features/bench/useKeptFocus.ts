import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

const CONTROLS = 'button, select, input';

/**
 * Keeps the focus in a list whose controls come, go and are switched off by what they do: it passes to what stands in the same
 * place, or to the nearest before it that can be used. Without this it falls to the top of the page.
 */
export function useKeptFocus(within: RefObject<HTMLElement>): void {
	const at = useRef(-1);
	const controls = (): HTMLElement[] => [...(within.current?.querySelectorAll<HTMLElement>(CONTROLS) ?? [])];
	useLayoutEffect(() => {
		const box = within.current;
		const note = (): void => {
			at.current = controls().indexOf(document.activeElement as HTMLElement);
		};
		// left by a person, and not because what had it is gone or switched off
		const leave = ({ target, relatedTarget }: FocusEvent): void =>
			queueMicrotask(() => {
				const control = target as HTMLElement;
				if (control.isConnected && !control.matches(':disabled') && !box?.contains(relatedTarget as Node | null))
					at.current = -1;
			});
		box?.addEventListener('focusin', note);
		box?.addEventListener('focusout', leave);
		return () => {
			box?.removeEventListener('focusin', note);
			box?.removeEventListener('focusout', leave);
		};
	}, []);
	useLayoutEffect(() => {
		const { activeElement } = document;
		const isLost = activeElement === document.body || !!activeElement?.matches(':disabled');
		if (at.current < 0 || !isLost) return;
		controls()
			.slice(0, at.current + 1)
			.findLast((each) => !each.matches(':disabled'))
			?.focus();
	});
}
