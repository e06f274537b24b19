import { openRecords } from '../../storage/index.ts';

/** How many results a trainer has taken in on this device; 0 where the browser refuses: the trainer's page says what is wrong there. */
export async function resultsKept(): Promise<number> {
	try {
		const records = await openRecords(() => undefined);
		const found = await records.all('results');
		records.close();
		return found.length;
	} catch {
		return 0;
	}
}
