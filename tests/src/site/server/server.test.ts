import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bestEncoding } from '../../../../src/site/server/encode.ts';
import { type SiteServer, serve } from '../../../../src/site/server/index.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'prep-bay-serve-'));
const script = 'export const said = "light";\n'.repeat(200);
let site: SiteServer;

beforeAll(async () => {
	writeFileSync(path.join(folder, 'a.js'), script);
	writeFileSync(path.join(folder, 'a.png'), 'no picture');
	writeFileSync(path.join(folder, '404.html'), '<p>Not here.</p>');
	site = await serve(folder);
});

afterAll(async () => {
	await site.close();
	rmSync(folder, { recursive: true });
});

async function ask(file: string, accepts: string, method = 'GET'): Promise<IncomingMessage & { body: Buffer }> {
	const answer = await new Promise<IncomingMessage>((resolve, reject) => {
		request(`${site.origin}${file}`, { method, headers: { 'accept-encoding': accepts } }, resolve)
			.on('error', reject)
			.end();
	});
	const chunks: Buffer[] = [];
	for await (const chunk of answer) chunks.push(chunk as Buffer);
	return Object.assign(answer, { body: Buffer.concat(chunks) });
}

it.each([
	['gzip, deflate, br, zstd', 'br'],
	['gzip, deflate', 'gzip'],
	['GZIP;q=0.5', 'gzip'],
	['br;q=0, gzip', 'gzip'],
	['*', 'br'],
	['br; q=0, *', 'gzip'],
	['identity', null],
	['gzip;q=0', null],
	['', null],
])('answers %o with %o', (accepts, best) => {
	expect(bestEncoding(accepts)).toBe(best);
});

it('sends text as small as the browser takes it, and says so', async () => {
	const brotli = await ask('/a.js', 'gzip, br');
	expect(brotli.headers).toMatchObject({ 'content-encoding': 'br', vary: 'accept-encoding' });
	expect(brotliDecompressSync(brotli.body).toString()).toBe(script);
	const gzip = await ask('/a.js', 'gzip');
	expect(gzip.headers).toMatchObject({ 'content-encoding': 'gzip', vary: 'accept-encoding' });
	expect(gunzipSync(gzip.body).toString()).toBe(script);
	const plain = await ask('/a.js', '');
	expect(plain.headers['content-encoding']).toBeUndefined();
	expect(plain.headers.vary).toBe('accept-encoding');
	expect(plain.body.toString()).toBe(script);
});

it('tells with HEAD what GET would send', async () => {
	const { headers } = await ask('/a.js', 'br');
	const head = await ask('/a.js', 'br', 'HEAD');
	expect(head.headers['content-length']).toBe(headers['content-length']);
	expect(head.body.length).toBe(0);
});

it('leaves a picture as it is', async () => {
	const { headers, body } = await ask('/a.png', 'gzip, br');
	expect(headers['content-encoding']).toBeUndefined();
	expect(headers.vary).toBeUndefined();
	expect(body).toEqual(readFileSync(path.join(folder, 'a.png')));
});

it('sends a file anew once it is another', async () => {
	await ask('/404.html', 'br');
	writeFileSync(path.join(folder, '404.html'), '<p>Still not here.</p>');
	const { statusCode, body } = await ask('/nothing', 'br');
	expect(statusCode).toBe(404);
	expect(brotliDecompressSync(body).toString()).toContain('Still');
});
