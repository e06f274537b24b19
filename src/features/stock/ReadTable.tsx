import type { JSX } from 'preact';
import { effectWords, stockWords as words } from '#words/stock/index.ts';
import type { Effect, Profile } from '../../../shared/profile/index.ts';
import type { PrintedMode, PrintedSlot } from '../../../shared/stock/index.ts';
import { Button } from '../../ui/index.ts';

interface Props<M> {
	modes: readonly M[];
	/** What it is made into; null where the chart has to be put right first. */
	profile: Profile | null;
	/** Left out where nothing can be copied. */
	onCopy?: (mode: M) => void;
}

/** What was read, as a table a mode: each band with its words and with what the bench will do. */
export function ReadTable<M extends PrintedMode>({ modes, profile, onCopy }: Props<M>): JSX.Element {
	return (
		<section class="stock-read" aria-labelledby="stock-read">
			<h2 id="stock-read">{words.read}</h2>
			{modes.length === 0 && <p>{words.readNone}</p>}
			{modes.map((mode, m) => {
				const name = mode.name === '' ? words.readUnnamed : mode.name;
				return (
					<div key={m} class="stock-mode">
						{/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard */}
						<section class="stock-scroll" tabIndex={0} aria-label={words.readMode(name, mode.slots.length)}>
							<table>
								<caption>{words.readMode(name, mode.slots.length)}</caption>
								<thead>
									<tr>
										<th scope="col">{words.columns.channel}</th>
										<th scope="col">{words.columns.values}</th>
										<th scope="col">{words.columns.does}</th>
									</tr>
								</thead>
								{mode.slots.map((slot, s) => (
									<SlotRows key={`${slot.at}-${s}`} slot={slot} profile={profile} mode={m} />
								))}
							</table>
						</section>
						{onCopy && (
							<Button look="quiet" aria-label={words.copyOne(name)} onClick={() => onCopy(mode)}>
								{words.copyMode}
							</Button>
						)}
					</div>
				);
			})}
		</section>
	);
}

function SlotRows({ slot, profile, mode }: { slot: PrintedSlot; profile: Profile | null; mode: number }): JSX.Element {
	const { at, fine, name, words: said = '', bands } = slot;
	const made = profile?.modes[mode]?.slots.find((each) => each.at === at)?.drives;
	const does = (from: number): string => {
		if (!made) return '';
		if (made.kind !== 'bands') return effectWords.drives[made.kind];
		const effect = made.bands.find((band) => band.from <= from && from <= band.to)?.effect;
		return effect ? effectText(effect) : '';
	};
	const rows = bands.length > 0 ? bands : [{ from: 0, to: 255, words: said }];
	return (
		<tbody>
			{rows.map(({ from, to, words: text }, i) => (
				<tr key={`${from}-${i}`}>
					{i === 0 && (
						<th scope="rowgroup" rowSpan={rows.length}>
							<span class="value">{fine === undefined ? at : `${at}/${fine}`}</span> {name}
						</th>
					)}
					<td class="value">{from === to ? from : `${from}–${to}`}</td>
					<td>
						{text} <span class="stock-does">{does(from)}</span>
					</td>
				</tr>
			))}
		</tbody>
	);
}

const effectText = (effect: Effect): string =>
	effect.do === 'strobe' ? effectWords.strobe(effect.slow, effect.fast) : effectWords.effects[effect.do];
