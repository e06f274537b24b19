import type { JSX } from 'preact';
import { nextWords as words } from '#words/site/index.ts';
import { Button } from '../../ui/index.ts';

/** The way in for who has no rig here yet. */
export const StartRig = (): JSX.Element => (
	<section class="next-rig">
		<Button look="main" href="/rig/">
			{words.start}
		</Button>
		<p>{words.startHint}</p>
	</section>
);
