import type { JSX } from 'preact';

/** A share as a bar; the words beside it say it too. */
export function Bar({ share }: { share: number }): JSX.Element {
	return (
		<svg class="bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
			<rect class="bar-all" width="100" height="6" />
			<rect class="bar-part" width={Math.max(share > 0 ? 0.8 : 0, 100 * share)} height="6" />
		</svg>
	);
}
