import type { JSX } from 'preact';
import { foldedTables } from './fold.ts';
import type { ReferenceTable } from './types.ts';

/** A table of the reference, as plain markup on its pages and in an island. */
export function Table({ table }: { table: ReferenceTable }): JSX.Element {
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
									<tr key={at} {...role('row')} {...(table.ids ? { id: table.ids[at] } : {})}>
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
												{table.links && i === cells.length - 1 ? (
													<a class="reference-link" href={table.links[at]}>
														{cell}
													</a>
												) : (
													cell
												)}
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
