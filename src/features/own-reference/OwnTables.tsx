import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { cautionIds, cautions, siteFirst } from '#words/cautions/index.ts';
import { ownReference, referenceFrame as words } from '#words/reference/index.ts';
import { type Profile, panelFrom } from '../../../shared/profile/index.ts';
import { Notice } from '../../ui/index.ts';
import { foldedTables, profileSection, type ReferenceTable } from '../reference/index.ts';

/** Figures, ways through the panel and charts of one fixture, as the reference has them. */
export default function OwnTables({ profile }: { profile: Profile }): JSX.Element {
	const { heading, says, tables } = useMemo(() => profileSection(profile), [profile]);
	const from = panelFrom(profile);
	const top = useRef<HTMLHeadingElement>(null);
	useEffect(() => top.current?.focus(), []);
	return (
		<section class="reference-section" aria-labelledby="own-tables">
			<h2 class="title title-2" id="own-tables" ref={top} tabIndex={-1}>
				<span>{heading}</span>
			</h2>
			<Notice>
				{from !== 'known' && <p>{ownReference.panelFrom[from]}</p>}
				<p>{ownReference.assumed}</p>
			</Notice>
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

/** A table as `Table.astro` of the reference draws it. */
function Table({ table }: { table: ReferenceTable }): JSX.Element {
	const isCards = table.look === 'cards';
	// rows that stand as cards lose their roles by it: so these are said
	const role = <Role extends string>(name: Role) => (isCards ? { role: name } : {});
	// others may run off a phone's side: they are scrolled by keyboard too
	const scrolls = (label: string) =>
		!isCards && table.head.length > 3 ? { tabIndex: 0, role: 'region' as const, 'aria-label': label } : {};
	return (
		<figure class="reference-table" data-look={table.look ?? 'text'}>
			<figcaption>{table.caption}</figcaption>
			<div class="parts">
				{foldedTables(table).map(({ caption, head, rows }) => (
					<div key={caption} class="scroll" {...scrolls(caption)}>
						<table aria-label={caption} {...role('table')}>
							<thead {...role('rowgroup')}>
								<tr {...role('row')}>
									{head.map((cell) => (
										<th key={cell} scope="col" {...role('columnheader')}>
											{cell}
										</th>
									))}
								</tr>
							</thead>
							<tbody {...role('rowgroup')}>
								{rows.map(([first, ...cells], at) => (
									<tr key={at} {...role('row')}>
										<th scope="row" {...role('rowheader')}>
											{first}
										</th>
										{cells.map((cell, i) => (
											<td
												key={head[i + 1]}
												{...role('cell')}
												{...(isCards
													? { 'data-head': head[i + 1], 'data-none': /\w/.test(cell) ? undefined : '' }
													: {})}
											>
												{cell}
											</td>
										))}
									</tr>
								))}
							</tbody>
						</table>
					</div>
				))}
			</div>
		</figure>
	);
}
