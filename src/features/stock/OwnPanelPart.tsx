import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { stockPage, panelEdit as words } from '#words/stock/index.ts';
import { blankPanel, type PanelEntry, type StockEntry, type StockFixture } from '../../../shared/stock/index.ts';
import { Button, Live, laterWith } from '../../ui/index.ts';

const later = laterWith(stockPage, 'coming');
const PanelEditor = later(() => import('./PanelEditor.tsx'));

interface Props {
	entry: StockEntry;
	fixture: Pick<StockFixture, 'profile' | 'own'>;
	onChange: (part: { readonly panel: PanelEntry | null }) => void;
}

/** The way into writing down a panel, and its editor once there is one. */
export function OwnPanelPart({ entry, fixture, onChange }: Props): JSX.Element {
	const { panel } = entry;
	const { profile, own } = fixture;
	const [said, say] = useState('');
	const top = useRef<HTMLHeadingElement>(null);
	return (
		<section class="stock-panel" aria-labelledby="stock-panel">
			<h2 id="stock-panel" ref={top} tabIndex={-1}>
				{words.heading}
			</h2>
			<p>{words.lead}</p>
			{panel !== null && (
				<p>
					<strong>{words.care}</strong>
				</p>
			)}
			{!own?.panel && <p>{words.standIn}</p>}
			{panel === null || !profile || !own ? (
				<div class="stock-ways">
					<Button onClick={() => onChange({ panel: blankPanel('keys') })}>{words.begin}</Button>
				</div>
			) : (
				<PanelEditor
					entry={entry}
					panel={panel}
					profile={profile}
					own={own}
					onChange={(part) => {
						onChange(part);
						// the key that was pressed goes with the editor
						if (part.panel === null) top.current?.focus();
					}}
					onSay={say}
				/>
			)}
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
		</section>
	);
}
