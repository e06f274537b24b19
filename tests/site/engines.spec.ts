import { expect, test } from '@playwright/test';
import { serve } from '../../src/site/server/index.ts';
import { type Engine, otherEngines } from '../house/engines/index.ts';
import { built } from './pages.ts';

// The main flows once more where the browser is another. All else is held in Chromium; where an engine is not here, the run says so.

/** In the page before each script: waiting, and finding what a person would press. */
const HELPERS = `
const until = async (what, look) => {
	for (let tries = 0; tries < 600; tries++) {
		const seen = look();
		if (seen) return seen;
		await new Promise((done) => setTimeout(done, 100));
	}
	throw new Error(what + ' never came: ' + document.querySelector('main').innerText.slice(0, 300));
};
const find = (selector, words = '') => [...document.querySelectorAll(selector)].find((it) => it.textContent.includes(words));
const press = async (selector, words) => (await until(selector + ' ' + (words ?? ''), () => find(selector, words))).click();
const fill = (field, text) => {
	field.value = text;
	field.dispatchEvent(new Event('input', { bubbles: true }));
};
`;

const run = (engine: Engine, body: string): Promise<unknown> => engine.run(`${HELPERS}${body}`);

/** Each flow in the page it begins in; it gives back what it saw at the end. */
const FLOWS: readonly { readonly name: string; readonly at: string; readonly body: string; readonly sees: unknown }[] =
	[
		{
			name: 'the bench: a wash is laid out, switched on, and lit',
			at: '/bench/',
			body: `
			await press('button', 'Set up');
			await press('[role="dialog"] button, dialog button', 'One battery wash');
			const power = await until('the switch', () => find('[role="switch"]', 'Power switch'));
			power.click();
			await until('power', () => find('.lamp[data-lamp="power"]', 'lit'));
			return power.getAttribute('aria-checked');`,
			sees: 'true',
		},
		{
			name: 'a drill: begun, hinted at, marked as not done yet',
			at: '/drills/do/#kind=loss-setting&seed=15',
			body: `
			await press('button', 'Begin');
			await until('the stage', () => find('.stage'));
			await press('button', 'Hint');
			await until('where to look', () => find('.drill-hint', 'Look at'));
			await press('button', 'Hint');
			await press('button', 'Hint');
			await until('a hint', () => find('.drill-hint', 'Press'));
			await press('button', 'Mark it');
			await until('a mark', () => find('.drill-mark h3', 'Not yet'));
			return document.querySelector('.drill-mark').dataset.done;`,
			sees: 'false',
		},
		{
			name: 'the finder: three taps to a first check, worked out beside the page',
			at: '/finder/',
			body: `
			await press('[aria-label="4 fixtures"]');
			for (const choice of ['desk', 'tallow-6', 'wash-2', 'dark']) await press('[data-choice="' + choice + '"]');
			const check = await until('a check', () => find('[data-check]'));
			return check.textContent.length > 10;`,
			sees: true,
		},
		{
			name: 'looking up: a word half written finds its term',
			at: '/search/',
			body: `
			fill(await until('the box', () => find('input[type="search"]')), 'terminat');
			const first = await until('a result', () => find('.search-results a'));
			return first.textContent.trim();`,
			sees: 'Terminator',
		},
		{
			name: 'a lesson: its bench comes when it is scrolled to',
			at: '/lessons/daisy-chain/',
			body: `
			(await until('the place', () => find('.practice'))).scrollIntoView();
			await until('the stage', () => find('.stage'));
			return document.querySelectorAll('.stage .card').length > 1;`,
			sees: true,
		},
		{
			name: 'the look: dark is chosen, and kept',
			at: '/about/',
			body: `
			const dark = await until('the choice', () => find('input[name="theme"][value="dark"]'));
			dark.click();
			return [document.documentElement.dataset.theme, localStorage.getItem('prep-bay.theme')];`,
			sees: ['dark', 'dark'],
		},
	];

test('the engines of this run', ({ browser }) => {
	const here = otherEngines.map(
		({ family, open }) => `${family}: ${open ? 'here' : 'not on this machine, so not tried'}`,
	);
	console.log(`engines: Chromium ${browser.version()}; ${here.join('; ')}`);
	expect(otherEngines.map(({ family }) => family)).toEqual(['Firefox', 'WebKit']);
});

for (const { family, open } of otherEngines) {
	if (!open) continue;
	// one browser for all: to start it is most of what it takes
	test(`the main flows in ${family}, and one page with no network`, async () => {
		test.setTimeout(600_000);
		const site = await serve(built, 0, 'quick');
		const engine = await open();
		try {
			console.log(`engines: ${engine.name}`);
			for (const { name, at, body, sees } of FLOWS) {
				const seen = await engine
					.open(`${site.origin}${at}`)
					.then(() => run(engine, body))
					.catch(String);
				expect.soft(seen, `${engine.name}: ${name}`).toEqual(sees);
			}
			await engine.open(`${site.origin}/about/`);
			// two hundred files, each written to a disk that the rest of the run is busy with
			const kept = await run(
				engine,
				`const box = document.querySelector('[data-kept]');
				for (let tries = 0; tries < 1800 && !['whole', 'never', 'stuck'].includes(box.dataset.kept); tries++)
					await new Promise((done) => setTimeout(done, 100));
				return box.dataset.kept;`,
			);
			// with less than the whole, what comes next would show nothing
			expect(kept, `${engine.name}: the site is kept`).toBe('whole');
			await site.close();
			await engine.open(`${site.origin}/glossary/`);
			expect.soft(await run(engine, `return document.querySelector('h1').textContent.trim();`)).toBe('Glossary');
		} finally {
			await engine.close();
			await site.close().catch(() => undefined);
		}
	});
}
