import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { allowWords, finderWords } from '#words/finder/index.ts';
import { Button, Dialog, Toggle } from '../../ui/index.ts';
import { allowsText } from './log.ts';
import type { FinderStore } from './store.ts';
import type { Allows, Spare } from './walk.ts';

const SPARES = Object.keys(allowWords.have) as Spare[];

/** What the gig allows, and the switches behind it. */
export function Allowed({ store, allows }: { store: FinderStore; allows: Allows }): JSX.Element {
	const [open, set] = useState(false);
	const { without, showRunning, alone } = allows;
	return (
		<>
			<button type="button" class="allowed" aria-haspopup="dialog" onClick={() => set(true)}>
				<span class="allowed-title">{allowWords.title}</span>
				<span>{allowsText(allows)}</span>
			</button>
			{open && (
				<Dialog open onClose={() => set(false)} title={allowWords.title} closeWords={finderWords.close}>
					<p class="hint">{allowWords.hint}</p>
					<div class="allow-list">
						{SPARES.map((spare) => (
							<Toggle
								key={spare}
								label={allowWords.have[spare]}
								words={allowWords.haveWords}
								on={!without.includes(spare)}
								onChange={(has) =>
									store.allow({
										...allows,
										without: SPARES.filter((each) => (each === spare ? !has : without.includes(each))),
									})
								}
							/>
						))}
						<Toggle
							label={allowWords.show}
							words={allowWords.haveWords}
							on={showRunning}
							onChange={(on) => store.allow({ ...allows, showRunning: on })}
						/>
						<Toggle
							label={allowWords.alone}
							words={allowWords.haveWords}
							on={alone}
							onChange={(on) => store.allow({ ...allows, alone: on })}
						/>
					</div>
					<Button look="quiet" onClick={() => store.allow({ without: [], showRunning: false, alone: false })}>
						{allowWords.all}
					</Button>
				</Dialog>
			)}
		</>
	);
}
