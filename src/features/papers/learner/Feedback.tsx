import type { JSX } from 'preact';
import { sitWords } from '#words/papers/index.ts';
import { Live } from '../../../ui/index.ts';
import type { MarkedView } from '../view.ts';
import { TryIt } from './TryIt.tsx';
import { verdictOf } from './verdict.ts';

interface Props {
	marked: MarkedView;
	/** Read out when it appears. */
	announce?: boolean;
}

/** How one answer went: right or not, what it looks like, the working, why, and the rig to try it on. */
export function Feedback({ marked, announce = false }: Props): JSX.Element {
	const { right, answered, gave, key, working, looksLike, why, bench } = marked;
	const verdict = verdictOf(marked);
	return (
		<div class="sit-feedback" data-right={right}>
			<p class="sit-verdict">
				<span class="sit-mark" aria-hidden="true" />
				<strong>{verdict}</strong>
			</p>
			<dl>
				{answered && gave !== '' && (
					<>
						<dt>{sitWords.gave}</dt>
						<dd>{gave}</dd>
					</>
				)}
				{!right && key !== '' && (
					<>
						<dt>{sitWords.key}</dt>
						<dd>{key}</dd>
					</>
				)}
				{!right && looksLike !== null && <dd class="sit-looks">{looksLike}</dd>}
				{working !== '' && (
					<>
						<dt>{sitWords.working}</dt>
						<dd>{working}</dd>
					</>
				)}
				{why !== '' && (
					<>
						<dt>{sitWords.why}</dt>
						<dd>{why}</dd>
					</>
				)}
			</dl>
			{bench !== null && <TryIt sheet={bench} />}
			{announce && <Live text={`${verdict}. ${right ? '' : (looksLike ?? '')}`} />}
		</div>
	);
}
