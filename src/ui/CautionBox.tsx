import { createContext, type JSX } from 'preact';
import { useContext } from 'preact/hooks';
import { partWords } from '#words/ui/index.ts';

export interface CautionBoxProps {
	/** A caution's words, from `content/en/cautions`. */
	caution: { readonly title: string; readonly harm: string; readonly care: readonly string[]; readonly defer: string };
	/** Who comes first: said with each that stands alone, left out where a page says it once for all. */
	siteFirst?: string;
	/** Level of its heading, to fit where it stands. */
	level?: 2 | 3 | 4;
	/** For links to it. */
	id?: string;
}

/** Cautions that the same page says in full already, by title: where, and the words of the way there. */
export type CautionsSaid = Readonly<Record<string, { readonly href: string; readonly words: string }>>;

/** Given round what shows cautions again, such as a bench under a lesson's words. */
export const SaidAbove = createContext<CautionsSaid>({});

/**
 * A caution, put where the hands would be. Never folded away: it is short enough to stand. Only where the same page says all of it
 * already do its title and its harm stand alone, with the way there: the same screenful again and again is soon read by no one.
 */
export function CautionBox({ caution, siteFirst, level = 3, id }: CautionBoxProps): JSX.Element {
	const said = useContext(SaidAbove)[caution.title];
	const Heading = `h${level}` as const;
	return (
		<section class="caution" {...(id === undefined ? {} : { id })}>
			<Heading class="caution-title">
				<span class="caution-word">{partWords.caution}</span> {caution.title}
			</Heading>
			<p class="caution-harm">{caution.harm}</p>
			{said ? (
				<p>
					<a class="caution-said" href={said.href}>
						{said.words}
					</a>
				</p>
			) : (
				<>
					<ul>
						{caution.care.map((line) => (
							<li key={line}>{line}</li>
						))}
					</ul>
					<p class="caution-defer">
						{caution.defer}
						{siteFirst === undefined ? null : ` ${siteFirst}`}
					</p>
				</>
			)}
		</section>
	);
}
