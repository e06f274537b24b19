/**
 * The results of drills and lessons as they are kept, for the script of a page of words; null where there are none, or none may be
 * read. It shares nothing with what islands use: a script that did would come as a file.
 */
export function resultsText(): string | null {
	try {
		return localStorage.getItem('prep-bay.progress');
	} catch {
		return null;
	}
}
