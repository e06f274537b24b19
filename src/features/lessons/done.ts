/**
 * Which lessons' tasks are done, by the text that `src/features/progress` keeps: only looked at, and whatever does not look like results
 * counts as none. Small, for a page of words that carries no reader.
 * @param text as it stands on the device; null where there is none
 */
export function doneIn(text: string | null, ids: readonly string[]): string[] {
	let kept: unknown;
	try {
		kept = JSON.parse(text ?? 'null');
	} catch {
		return [];
	}
	const kinds = isRecord(kept) && isRecord(kept['kinds']) ? kept['kinds'] : {};
	return ids.filter((id) => {
		const record = Object.hasOwn(kinds, lessonKey(id)) ? kinds[lessonKey(id)] : null;
		return isRecord(record) && typeof record['done'] === 'number' && record['done'] > 0;
	});
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** The names a lesson's results are kept under, beside those of the drills: of its task, and of its checks. */
export const lessonKey = (id: string): string => `lesson-${id}`;
export const checksKey = (id: string): string => `checks-${id}`;
