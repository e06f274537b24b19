import type { JSX } from 'preact';

export interface CautionBoxProps {
	/** A caution's words, from `content/cautions`. */
	caution: { readonly title: string; readonly harm: string; readonly care: readonly string[]; readonly defer: string };
	/** Who comes first: said with each that stands alone, left out where a page says it once for all. */
	siteFirst?: string;
	/** Level of its heading, to fit where it stands. */
	level?: 2 | 3 | 4;
	/** For links to it. */
	id?: string;
}

/** A caution, put where the hands would be. Never folded away: it is short enough to stand. */
export function CautionBox({ caution, siteFirst, level = 3, id }: CautionBoxProps): JSX.Element {
	const Heading = `h${level}` as const;
	return (
		<section class="caution" {...(id === undefined ? {} : { id })}>
			<Heading class="caution-title">
				<span class="caution-word">Caution</span> {caution.title}
			</Heading>
			<p class="caution-harm">{caution.harm}</p>
			<ul>
				{caution.care.map((line) => (
					<li key={line}>{line}</li>
				))}
			</ul>
			<p class="caution-defer">
				{caution.defer}
				{siteFirst === undefined ? null : ` ${siteFirst}`}
			</p>
		</section>
	);
}
