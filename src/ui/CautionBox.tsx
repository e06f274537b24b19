import { createContext, type JSX } from 'preact';
import { useContext } from 'preact/hooks';
import { partWords } from '#words/ui/index.ts';

/** A caution's words, from `content/en/cautions`. */
interface CautionWords {
	readonly title: string;
	readonly harm: string;
	readonly care: readonly string[];
	readonly defer: string;
}

export interface CautionBoxProps {
	caution: CautionWords;
	/** Who comes first: said with each that stands alone, left out where a page says it once for all. */
	siteFirst?: string;
	/** Level of its heading, to fit where it stands. */
	level?: 2 | 3 | 4;
	/** For links to it. */
	id?: string;
}

/** Titles of cautions that the reader has met in full already. */
export type CautionsSaid = readonly string[];

/** Given round what shows cautions again, such as a bench under a lesson's words. */
export const SaidAbove = createContext<CautionsSaid>([]);

/**
 * A caution, put where the hands would be. Folded only where the reader has met all of it already, and then into a line that opens:
 * the same screenful again and again is soon read by no one.
 */
export function CautionBox(props: CautionBoxProps): JSX.Element {
	const { caution, level = 3, id } = props;
	const Heading = `h${level}` as const;
	if (useContext(SaidAbove).includes(caution.title)) return <CautionLine {...props} />;
	return (
		<section class="caution" {...(id === undefined ? {} : { id })}>
			<Heading class="caution-title">
				<span class="caution-word">{partWords.caution}</span> {caution.title}
			</Heading>
			<CautionText {...props} />
		</section>
	);
}

/** A caution in one line that opens: its title and the first thing to do, and behind them all of it. */
export function CautionLine(props: CautionBoxProps): JSX.Element {
	const { caution, id } = props;
	return (
		<details class="caution caution-line" {...(id === undefined ? {} : { id })}>
			<summary class="fold-line">
				<span>
					<span class="caution-word">{partWords.caution}</span> <strong>{caution.title}.</strong> {caution.care[0]}
				</span>
			</summary>
			<CautionText {...props} />
		</details>
	);
}

function CautionText({ caution, siteFirst }: CautionBoxProps): JSX.Element {
	return (
		<>
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
		</>
	);
}
