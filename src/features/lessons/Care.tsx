import type { JSX } from 'preact';
import { type CautionId, cautions } from '#words/cautions/index.ts';
import { partWords } from '#words/ui/index.ts';
import { CautionBox, CautionLine } from '../../ui/index.ts';

interface Props {
	id: CautionId;
	/** Said in full, or in a line that opens. */
	isWhole: boolean;
}

/** A caution of a lesson, with the address that its page leads to. Who comes before it all, the page says once. */
export function Care({ id, isWhole }: Props): JSX.Element {
	const Box = isWhole ? CautionBox : CautionLine;
	return <Box id={`care-${id}`} caution={cautions[id]} />;
}

/** What a lesson's words are handed for `<Care id="…" />`. @param whole those that its page says in full */
export const careIn =
	(whole: readonly CautionId[]) =>
	({ id }: { id: CautionId }): JSX.Element => <Care id={id} isWhole={whole.includes(id)} />;

/** A caution that stands further down the page: what can happen, and the way there. */
export function CareBelow({ id }: { id: CautionId }): JSX.Element {
	const { title, harm } = cautions[id];
	return (
		<p class="caution caution-below">
			<span>
				<span class="caution-word">{partWords.caution}</span> <a href={`#care-${id}`}>{title}</a>. {harm}
			</span>
		</p>
	);
}
