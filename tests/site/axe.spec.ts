import { expect, test } from '@playwright/test';
import { axe } from './axe.ts';

// a control: all that is asked of axe elsewhere is that it finds nothing
test('axe finds what is wrong on a page made wrong, and in the part alone that it is asked of', async ({
	page: tab,
}) => {
	await tab.setContent(
		'<!doctype html><html lang="en"><title>Wrong</title><main><h1>Wrong</h1><p style="color:#999">Pale</p><div id="part"><input></div></main>',
	);
	const found = async (part?: string) => (await axe(tab, part)).violations.map(({ id }) => id);
	expect(await found()).toEqual(expect.arrayContaining(['color-contrast', 'label']));
	expect(await found('#part')).toEqual(['label']);
	expect((await axe(tab)).passes.length).toBeGreaterThan(10);
});
