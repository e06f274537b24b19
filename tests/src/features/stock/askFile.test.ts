import { expect, test } from 'vitest';
import { fileWords as words } from '#words/stock/index.ts';
import { CannotRun, Ended } from '../../../../src/engine/index.ts';
import { fileTrouble } from '../../../../src/features/stock/askFile.ts';

// symptom: a file slow to be written said that it took too long to read. cause: the words for reading were used for both
test('what takes too long is told in the words of who asked', () => {
	const writing = { slow: words.writeFailed, broke: words.writeFailed };
	expect(fileTrouble(new Ended('slow'), writing)).toBe(words.writeFailed);
	expect(fileTrouble(new Ended('slow'), words)).toBe(words.slow);
	expect(fileTrouble(new Error('any'), words)).toBe(words.broke);
	expect(fileTrouble(new CannotRun(), writing)).toBe(words.noWorker);
});
