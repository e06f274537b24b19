import { expect, it } from 'vitest';
import { bundledRig, loadRig, loadSheet, RIG_IDS, readSheet } from '../../../shared/sheet/index.ts';

it.each(RIG_IDS)('%s is whole: reading it adds nothing, and changes no order', async (id) => {
	const sheet = bundledRig(id);
	const text = JSON.stringify(sheet);
	expect(JSON.stringify(readSheet(JSON.parse(text)))).toBe(text);
	expect(bundledRig(id)).toBe(sheet);
	// fetched, it is the same object
	expect(await loadRig(id)).toBe(sheet);
	expect(await loadSheet(JSON.parse(text))).toEqual(sheet);
});
