import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { headersFor, headersText } from '../../../../src/site/server/headers.ts';
import { type SiteServer, serve } from '../../../../src/site/server/index.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-caching-'));
let site: SiteServer;

beforeAll(async () => {
	mkdirSync(path.join(folder, '_astro'));
	writeFileSync(path.join(folder, 'index.html'), '<p>Home.</p>');
	writeFileSync(path.join(folder, '404.html'), '<p>Not here.</p>');
	writeFileSync(path.join(folder, 'sw.js'), 'self.skipWaiting();');
	writeFileSync(path.join(folder, 'icon.png'), 'no picture');
	writeFileSync(path.join(folder, '_astro', 'bench.CBl9cg8S.js'), 'export const it = 1;');
	site = await serve(folder, 0, 'quick');
});

afterAll(async () => {
	await site.close();
	rmSync(folder, { recursive: true });
});

async function ask(
	file: string,
	headers: Record<string, string> = {},
	method = 'GET',
): Promise<{ status: number; headers: IncomingMessage['headers']; body: string }> {
	const answer = await new Promise<IncomingMessage>((resolve, reject) => {
		request(`${site.origin}${file}`, { method, headers }, resolve).on('error', reject).end();
	});
	let body = '';
	for await (const chunk of answer.setEncoding('latin1')) body += chunk;
	return { status: answer.statusCode ?? 0, headers: answer.headers, body };
}

it('lets a file with a hash in its name be kept for a year, and all else be asked for again', async () => {
	expect((await ask('/_astro/bench.CBl9cg8S.js')).headers['cache-control']).toBe('public, max-age=31536000, immutable');
	for (const file of ['/', '/sw.js', '/icon.png'])
		expect((await ask(file)).headers['cache-control'], file).toBe('no-cache');
	// a missing script is no script: it must not be kept as one
	const none = await ask('/_astro/none.CBl9cg8S.js');
	expect([none.status, none.headers['cache-control']]).toEqual([404, 'no-cache']);
});

describe('a tag for each file', () => {
	const files = ['/', '/sw.js', '/icon.png', '/_astro/bench.CBl9cg8S.js'];

	it.each(files)('%s is not sent again to who has it, by GET or by HEAD, in any coding', async (file) => {
		const { etag } = (await ask(file, { 'accept-encoding': 'br' })).headers;
		expect(etag).toMatch(/^W\/"[\x21\x23-\x7e]+"$/);
		for (const method of ['GET', 'HEAD'])
			for (const coding of ['br', 'gzip', ''])
				for (const told of [etag ?? '', `"x", ${etag}`, `"x,y" ,${etag?.slice(2)}`, '*']) {
					const again = await ask(file, { 'if-none-match': told, 'accept-encoding': coding }, method);
					expect([again.status, again.body], `${method} ${told}`).toEqual([304, '']);
					// RFC 9110, 15.4.5: what a 200 would have carried of these
					const whole = (await ask(file, { 'accept-encoding': coding })).headers;
					for (const name of ['etag', 'cache-control', 'vary']) expect(again.headers[name], name).toBe(whole[name]);
				}
	});

	it('sends it to who has another, or says what cannot be read', async () => {
		const { etag = '' } = (await ask('/')).headers;
		for (const told of ['"x"', 'W/"x"', etag.slice(2, -1), etag.slice(0, -1), `x${etag}`, '', ',', `"${etag}"`]) {
			const answer = await ask('/', { 'if-none-match': told });
			expect([answer.status, answer.body], told).toEqual([200, '<p>Home.</p>']);
		}
	});

	it('is another once the file is another, though as long', async () => {
		writeFileSync(path.join(folder, 'turn.html'), '<p>One.</p>');
		const before = (await ask('/turn.html')).headers.etag ?? '';
		writeFileSync(path.join(folder, 'turn.html'), '<p>Two.</p>');
		const after = await ask('/turn.html', { 'if-none-match': before });
		expect([after.status, after.body]).toEqual([200, '<p>Two.</p>']);
	});

	it('is not looked at where nothing is found', async () => {
		expect((await ask('/nowhere', { 'if-none-match': '*' })).status).toBe(404);
	});
});

describe('what every file carries, here and on any host', () => {
	it.each(['/', '/nowhere', '/icon.png', '/_astro/bench.CBl9cg8S.js'])('%s', async (file) => {
		const { headers } = await ask(file);
		expect(headers['x-content-type-options']).toBe('nosniff');
		expect(headers['referrer-policy']).toBe('no-referrer');
		expect(headers['content-security-policy']).toMatch(/(?:^|; )frame-ancestors 'none'(?:;|$)/);
	});

	it('gives a script a policy of its own, for a worker has none from its page', async () => {
		for (const file of ['/sw.js', '/_astro/bench.CBl9cg8S.js']) {
			const policy = String((await ask(file)).headers['content-security-policy']).split('; ');
			expect(policy).toEqual(
				expect.arrayContaining([
					"default-src 'none'",
					"script-src 'self'",
					"connect-src 'self'",
					"require-trusted-types-for 'script'",
				]),
			);
		}
		expect((await ask('/')).headers['content-security-policy']).not.toContain('default-src');
	});

	it('is read off the same table by who reads the text for other hosts', () => {
		// read as its first lines say: a path, then what is sent with it; a later one that fits says it again
		const blocks = headersText()
			.replace(/^#.*\n/gm, '')
			.trim()
			.split(/\n\n+/)
			.map((block) => {
				const [pattern = '', ...lines] = block.split('\n');
				return {
					pattern: new RegExp(`^${pattern.replace(/[.]/g, '\\.').replaceAll('*', '.*')}$`),
					fields: lines.map((line) => /^\t([a-z-]+): (.+)$/.exec(line)?.slice(1) ?? []),
				};
			});
		for (const file of ['/', '/about/', '/sw.js', '/icon.png', '/_astro/a.CBl9cg8S.js', '/_astro/b.CBl9cg8S.woff2']) {
			const read = Object.fromEntries(
				blocks.filter(({ pattern }) => pattern.test(file)).flatMap(({ fields }) => fields),
			);
			expect(read, file).toEqual(headersFor(file));
		}
	});
});
