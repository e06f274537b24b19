import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { ownReference, referenceFrame as words } from '#words/reference/index.ts';
import { manualWords } from '#words/stock/index.ts';
import { type Profile, panelFrom } from '../../../shared/profile/index.ts';
import type { OpenRows } from '../../../shared/stock/index.ts';
import { Notice } from '../../ui/index.ts';
import { profileSection, Table } from '../reference/index.ts';

/** Figures, ways through the panel and charts of one fixture, as the reference has them. */
export default function OwnTables({ profile, open }: { profile: Profile; open: OpenRows }): JSX.Element {
	const { heading, says, tables } = useMemo(() => profileSection(profile, open), [profile, open]);
	const from = panelFrom(profile);
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	return (
		<section class="reference-section" aria-labelledby="own-tables">
			<h2 class="title title-2" id="own-tables" ref={top} tabIndex={-1}>
				<span>{heading}</span>
			</h2>
			<Notice>
				{from !== 'invented' && <p>{ownReference.panelFrom[from]}</p>}
				<p>{ownReference.assumed}</p>
			</Notice>
			{open.lines > 0 && (
				<Notice kind="wrong">
					<p>
						{manualWords.unchecked(open.lines)} {manualWords.uncheckedShown}
					</p>
				</Notice>
			)}
			{says.map((text) => (
				<p key={text}>{text}</p>
			))}
			<div class="reference-cautions">
				<p>{words.cautions}:</p>
				<ul>
					{/* all: how it is fed, what it weighs, how hot it gets and what it flashes is partly assumed */}
					{cautionIds.map((id) => (
						<li key={id}>
							<a class="reference-link" href={`/about/#caution-${id}`}>
								{cautions[id].title}
							</a>
						</li>
					))}
				</ul>
				<p>{siteFirst}</p>
			</div>
			{tables.map((table) => (
				<Table key={table.caption} table={table} />
			))}
		</section>
	);
}
