import { createHash } from 'node:crypto';
import { expect, test } from '@playwright/test';
import { markupOf, pages } from './pages.ts';

/** A page's content security policy, by directive. */
function policyOf(markup: string): Map<string, string[]> {
	const meta = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(markup);
	const directives = (meta?.[1] ?? '').split(';').map((it) => it.trim().split(/\s+/));
	return new Map(directives.filter(([name]) => name).map(([name = '', ...sources]) => [name, sources]));
}

for (const page of pages) {
	test(`${page} carries a policy that lets in no script but its own`, () => {
		const markup = markupOf(page);
		const policy = policyOf(markup);
		expect(policy.get('default-src')).toEqual(["'none'"]);
		expect(policy.get('connect-src')).toEqual(["'self'"]);
		for (const source of policy.get('script-src') ?? ['nothing']) expect(source).toMatch(/^'(self|sha256-[\w+/]+=*)'$/);
		for (const source of policy.get('style-src') ?? ['nothing']) expect(source).toMatch(/^'(self|sha256-[\w+/]+=*)'$/);
		expect(policy.get('require-trusted-types-for')).toEqual(["'script'"]);
		expect(policy.get('trusted-types')).toEqual(['default']);
		expect(policy.has('script-src-elem') || policy.has('script-src-attr')).toBe(false);

		const inline = [...markup.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)].filter(
			(it) => !/\bsrc=/.test(it[1] ?? ''),
		);
		expect(inline.length).toBeGreaterThan(0);
		for (const [, , text = ''] of inline) {
			expect(policy.get('script-src')).toContain(`'sha256-${createHash('sha256').update(text).digest('base64')}'`);
		}
		const styles = [...markup.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g)];
		for (const [, text = ''] of styles) {
			expect(policy.get('style-src')).toContain(`'sha256-${createHash('sha256').update(text).digest('base64')}'`);
		}
		expect(markup).not.toMatch(/\son\w+=["']/);
	});
}

test.describe('in the browser', () => {
	test.use({ serviceWorkers: 'block' });

	test('a script that slipped into a page does not run', async ({ page: tab }) => {
		await tab.route('/', async (route) => {
			const answer = await route.fetch();
			const slipped = '<script>document.title = "slipped in"</script>';
			await route.fulfill({ response: answer, body: (await answer.text()).replace('</main>', `${slipped}</main>`) });
		});
		await tab.addInitScript(() => {
			document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => {
				document.documentElement.dataset['barred'] = violatedDirective;
			});
		});
		await tab.goto('/');
		expect(await tab.content()).toContain('slipped in');
		expect(await tab.evaluate(() => document.documentElement.dataset['barred'])).toContain('script-src');
		expect(await tab.title()).not.toBe('slipped in');
	});

	test('no other origin can be asked', async ({ page: tab }) => {
		await tab.goto('/');
		const answer = await tab.evaluate(() => fetch('http://127.0.0.1:9/').then(String, (error: Error) => error.name));
		expect(answer).toBe('TypeError');
	});

	// a name from a file that was put in as markup ran what stood in it, had the policy of scripts a hole; now it is refused before
	test('text is never taken for markup, nor for script', async ({ page: tab }) => {
		await tab.goto('/papers/');
		const refused = await tab.evaluate(() => {
			const tries: Readonly<Record<string, () => unknown>> = {
				innerHTML: () => {
					document.body.innerHTML = '<b>in</b>';
				},
				insertAdjacentHTML: () => document.body.insertAdjacentHTML('beforeend', '<b>in</b>'),
				srcdoc: () => {
					document.createElement('iframe').srcdoc = '<b>in</b>';
				},
				parser: () => new DOMParser().parseFromString('<b>in</b>', 'text/html'),
				fragment: () => document.createRange().createContextualFragment('<b>in</b>'),
				'another policy': () =>
					(
						globalThis as unknown as { trustedTypes: { createPolicy(name: string, rules: object): unknown } }
					).trustedTypes.createPolicy('more', {}),
			};
			return Object.entries(tries).map(([what, act]) => {
				try {
					act();
					return `${what}: let in`;
				} catch (error) {
					return `${what}: ${(error as Error).name}`;
				}
			});
		});
		expect(refused).toEqual([
			'innerHTML: TypeError',
			'insertAdjacentHTML: TypeError',
			'srcdoc: TypeError',
			'parser: TypeError',
			'fragment: TypeError',
			'another policy: TypeError',
		]);
	});

	test('a worker is started from the site’s own scripts and from nowhere else', async ({ page: tab }) => {
		await tab.goto('/papers/');
		const started = await tab.evaluate(async () => {
			const [own = ''] = [...document.querySelectorAll('astro-island')].map(
				(it) => it.getAttribute('component-url') ?? '',
			);
			const addresses = [
				own,
				'/search-index.json',
				'/robots.txt',
				'data:text/javascript,1',
				'//x.invalid/_astro/a.js',
				'/a.js',
			];
			return addresses.map((address) => {
				try {
					new Worker(address, { type: 'module' }).terminate();
					return true;
				} catch {
					return false;
				}
			});
		});
		expect(started).toEqual([true, false, false, false, false, false]);
	});
});
