import type { JSX } from 'preact';
import { nextWords as words } from '#words/site/index.ts';
import { laterWith } from '../../ui/index.ts';
import type { NextProps } from './view.ts';

/** All of it comes once it is seen: a page that waits for nobody must not share scripts with the pages that do the work. */
const Next = laterWith(words, 'coming')(() => import('./Next.tsx'));

/** What to do next, for who comes back. */
export const NextUp = (props: NextProps): JSX.Element => (
	<div class="next-place">
		<Next {...props} />
	</div>
);
