/**
 * How somebody is getting on with the drills, by kind, and with the lessons, under names of their own: the best result, the row
 * done right the first time with no hint, each on a seed not begun before, and from both what to practise next. It is kept on the device, written to a file and
 * read back; merging two never loses the better one, and what is damaged is set aside entry by entry. The rules are pure
 * (`result.ts`, `next.ts`, `reading.ts`); `DrillList` shows them. What reads text from outside is fetched when there is some.
 */
export { DrillList, type ListedKind } from './DrillList.tsx';
export { changeProgress, type OpenedProgress, openProgress } from './keep.ts';
export {
	type DrillResult,
	type KindRecord,
	minutesText,
	type Progress,
	rustyFrom,
	suggestNext,
	withAgain,
	withBegun,
	withDone,
	withHint,
	withMiss,
} from './result.ts';
