import type { ComponentChildren, JSX } from 'preact';

interface Props {
	/** What the table is, to the ear. */
	label: string;
	/** What stands over its columns, left to right. */
	heads: Readonly<Record<string, string>>;
	/** What stands over the heads at the top of every printed page. */
	top?: string;
	look?: 'patch' | 'sheet';
	/** Its rows. */
	children: ComponentChildren;
}

/** A table of a sheet: on a phone it scrolls sideways, by keys too. */
export function SheetTable({ label, heads, top, look = 'sheet', children }: Props): JSX.Element {
	const columns = Object.values(heads);
	return (
		// biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, and by keys too
		<section class="patch-scroll" tabIndex={0} aria-label={label}>
			<table class={look === 'sheet' ? 'patch sheet-table' : 'patch'}>
				<thead>
					{top !== undefined && (
						<tr>
							<th colSpan={columns.length} scope="colgroup">
								{top}
							</th>
						</tr>
					)}
					<tr>
						{columns.map((head) => (
							<th key={head} scope="col">
								{head}
							</th>
						))}
					</tr>
				</thead>
				<tbody>{children}</tbody>
			</table>
		</section>
	);
}
