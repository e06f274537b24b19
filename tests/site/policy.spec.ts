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
		await tab.goto('/');
		const barred = await tab.evaluate(
			() =>
				new Promise<string>((resolve) => {
					document.addEventListener('securitypolicyviolation', (event) => resolve(event.violatedDirective));
					const script = document.createElement('script');
					script.textContent = 'document.title = "slipped in"';
					document.body.append(script);
				}),
		);
		expect(barred).toContain('script-src');
		expect(await tab.title()).not.toBe('slipped in');
	});

	test('no other origin can be asked', async ({ page: tab }) => {
		await tab.goto('/');
		const answer = await tab.evaluate(() => fetch('http://127.0.0.1:9/').then(String, (error: Error) => error.name));
		expect(answer).toBe('TypeError');
	});
});
