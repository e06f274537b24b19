import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { countWords } from '#words/finder/index.ts';
import type { Learnt } from '../../../sim/finder/index.ts';
import { saveText } from '../../storage/index.ts';
import { Button } from '../../ui/index.ts';
import { totalOf } from './keep.ts';
import type { FinderStore } from './store.ts';

interface Props {
	store: FinderStore;
	learnt: Learnt;
}

/** How many verdicts were counted on this device, the way out with them, and the way to forget them. */
export function CountsIn({ store, learnt }: Props): JSX.Element {
	const [asking, ask] = useState(false);
	const total = totalOf(learnt);
	return (
		<>
			<p>{countWords.says}</p>
			<p>
				<strong>{total === 0 ? countWords.none : countWords.total(total)}</strong>
			</p>
			{total > 0 && (
				<div class="counted-ways">
					<Button
						onClick={() =>
							saveText(countWords.file, JSON.stringify({ version: 1, counts: learnt }, null, 2), 'application/json')
						}
					>
						{countWords.save}
					</Button>
					{asking ? (
						<fieldset class="sure">
							<legend>{countWords.resetSure}</legend>
							<Button
								onClick={() => {
									store.forgetCounts();
									ask(false);
								}}
							>
								{countWords.resetYes}
							</Button>
							<Button look="quiet" onClick={() => ask(false)}>
								{countWords.resetNo}
							</Button>
						</fieldset>
					) : (
						<Button look="quiet" onClick={() => ask(true)}>
							{countWords.reset}
						</Button>
					)}
				</div>
			)}
		</>
	);
}
