import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type SiteServer, serve } from '../../../../src/site/server/index.ts';
import { runs } from '../../../runs.ts';

const around = mkdtempSync(path.join(tmpdir(), 'prep-bay-hostile-'));
const SECRET = 'not of the site';
let site: SiteServer;

beforeAll(async () => {
	const folder = path.join(around, 'site');
	mkdirSync(path.join(folder, 'about'), { recursive: true });
	mkdirSync(path.join(around, 'site-more'));
	writeFileSync(path.join(folder, 'index.html'), '<p>Home.</p>');
	writeFileSync(path.join(folder, 'about', 'index.html'), '<p>About.</p>');
	writeFileSync(path.join(folder, 'light.png'), 'no picture');
	writeFileSync(path.join(around, 'secret.txt'), SECRET);
	writeFileSync(path.join(around, 'site-more', 'index.html'), SECRET);
	site = await serve(folder, 0, 'quick');
});

afterAll(async () => {
	await site.close();
	rmSync(around, { recursive: true });
});

/** What comes back for these very bytes, until the server closes or has said nothing for `quietMs`. */
function raw(bytes: string | Uint8Array, quietMs = 5000): Promise<string> {
	const { hostname, port } = new URL(site.origin);
	return new Promise((resolve) => {
		let got = '';
		const socket = connect(Number(port), hostname, () => socket.write(bytes));
		const done = () => {
			socket.destroy();
			resolve(got);
		};
		socket.setEncoding('latin1').on('data', (text: string) => {
			got += text;
		});
		socket.on('end', done).on('error', done).setTimeout(quietMs, done);
	});
}

const ask = (target: string, headers = 'Host: x\r\n', method = 'GET'): string =>
	`${method} ${target} HTTP/1.1\r\n${headers}Connection: close\r\n\r\n`;
const statusOf = (answer: string): string | undefined => /^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1];

async function expectAlive(): Promise<void> {
	expect(statusOf(await raw(ask('/')))).toBe('200');
}

// `GET //` ended the server: the target was read as an address whose host is empty, and what `URL` throws was caught by nobody
it.each([
	'//',
	'///',
	'//:',
	'//x:99999/',
	'/\\',
	'\\\\x',
	'http://[',
	'http://',
	'//%',
	'/%',
	'/%zz',
	'/%00',
	'/a%00b',
])('answers 400 to %o, and lives on', async (target) => {
	expect(statusOf(await raw(ask(target)))).toBe('400');
	await expectAlive();
});

it('still gives what is asked for plainly, or by a whole address as a proxy asks', async () => {
	expect(await raw(ask('/about/?x=1#y'))).toContain('About.');
	expect(await raw(ask('http://anyone.invalid/about/'))).toContain('About.');
	expect(statusOf(await raw(ask('/none')))).toBe('404');
	const moved = await raw(ask('/about?x=1'));
	expect(statusOf(moved)).toBe('301');
	expect(moved).toMatch(/^location: \/about\/\?x=1\r$/im);
});

it('takes no other method than GET and HEAD', async () => {
	for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS'])
		expect(statusOf(await raw(ask('/', undefined, method))), method).toBe('405');
	expect(statusOf(await raw(ask('*', undefined, 'OPTIONS')))).toMatch(/^40[05]$/);
});

it('never leaves its folder', async () => {
	for (const target of [
		'/../secret.txt',
		'/..%2fsecret.txt',
		'/%2e%2e/secret.txt',
		'/%2e%2e%2fsecret.txt',
		'/..%5csecret.txt',
		'/about/..%2f..%2fsecret.txt',
		'/..%2fsite-more/',
		'/..%2fsite-more',
		'http://x/..%2fsecret.txt',
	]) {
		const answer = await raw(ask(target));
		expect(answer, target).not.toContain(SECRET);
		expect(statusOf(answer), target).toMatch(/^40[034]$/);
	}
});

it('moves nobody to another host', async () => {
	for (const target of ['//x/about', '/%2fx.invalid/..%2fabout', '/about%2f..%2fabout', '/%5cx/..%5cabout']) {
		const [, location] = /^location: (.*)\r$/im.exec(await raw(ask(target))) ?? [];
		if (location !== undefined) expect(new URL(location, site.origin).origin, target).toBe(site.origin);
	}
});

// RFC 9112, 3.2: a request with no host, two of them, or one that is none, is answered 400. The second of two was passed over.
it.each([
	'',
	'Host: a\r\nHost: b\r\n',
	'Host: a\r\nHost: a\r\n',
	'Host: a b\r\n',
	'Host: a/b\r\n',
	'Host: [\r\n',
	'Host: [::1\r\n',
	'Host: a:b\r\n',
	'Host: a:1:2\r\n',
	'Host: a@b\r\n',
	'Host: a, b\r\n',
	'Host: //\r\n',
	'Host: <a>\r\n',
	'Host: a\x80\r\n',
])('answers 400 where the host is said like %o', async (heads) => {
	expect(statusOf(await raw(ask('/', heads)))).toBe('400');
	await expectAlive();
});

it.each(['x', 'x.invalid', 'x:80', 'x:', '127.0.0.1:4321', '[::1]', '[::1]:4321', 'LOCALHOST', '%41', 'a_b'])(
	'answers whoever calls it %s',
	async (host) => {
		expect(statusOf(await raw(ask('/', `Host: ${host}\r\n`)))).toBe('200');
	},
);

// bounded by runs: each is one connection
const piece = fc.constantFrom(
	'/',
	'//',
	'..',
	'%2e%2e',
	'%2f',
	'%5c',
	'\\',
	'%',
	'%00',
	'about',
	'secret.txt',
	'?',
	'#',
	':',
	'@',
	'[',
	']',
	' ',
	'\t',
	'\0',
	'\x7f',
	'é',
	'http:',
	'x',
	'*',
);
const target = fc.array(piece, { maxLength: 8 }).map((parts) => parts.join(''));
const method = fc.constantFrom('GET', 'HEAD', 'POST', 'CONNECT', 'OPTIONS', 'get', 'X', '', 'PRI');
const version = fc.constantFrom('HTTP/1.1', 'HTTP/1.0', 'HTTP/0.9', 'HTTP/2.0', 'HTTP/1.1 more', '');
const header = fc.oneof(
	fc.constantFrom(
		'Host: ',
		'Host: x',
		'Host: [',
		'Host: //',
		'Host: a\r\nHost: b',
		'Accept-Encoding: ;;q=,br;q=x',
		'Accept-Encoding: br;q=',
		'Upgrade: websocket\r\nConnection: Upgrade',
		'Expect: 100-continue',
		'Expect: more',
		'Content-Length: 9',
		'Content-Length: x',
		'Transfer-Encoding: chunked',
		'Range: bytes=9-1',
		'If-Modified-Since: never',
		': empty',
		'no colon',
	),
	fc.string({ unit: 'binary', maxLength: 40 }),
);

const hostPiece = fc.constantFrom(
	'a',
	'.',
	':',
	'80',
	'[',
	']',
	'::1',
	'/',
	'\\',
	'@',
	'%',
	'%0d',
	' ',
	'\t',
	',',
	'#',
	'?',
	'é',
	'"',
	'<',
);

it('lives on, and tells no host back, whatever it is called', async () => {
	await fc.assert(
		fc.asyncProperty(
			fc.array(
				fc.array(hostPiece, { maxLength: 6 }).map((parts) => parts.join('')),
				{ maxLength: 3 },
			),
			fc.constantFrom('/', '/about?x=1', '/none'),
			async (hosts, target) => {
				const told = hosts.map((host) => `mark${host}`);
				const answer = await raw(ask(target, told.map((host) => `Host: ${host}\r\n`).join('')));
				expect(statusOf(answer)).toMatch(told.length === 1 ? /^(?:200|301|40[04])$/ : /^400$/);
				expect(answer).not.toContain('mark');
			},
		),
		{ numRuns: runs(100) },
	);
	await expectAlive();
});

it('lives on, and stays in its folder, whatever bytes come', async () => {
	await fc.assert(
		fc.asyncProperty(
			fc.oneof(
				fc
					.tuple(method, target, version, fc.array(header, { maxLength: 4 }))
					.map(([how, what, which, heads]) =>
						Buffer.from(`${[`${how} ${what} ${which}`, ...heads].join('\r\n')}\r\n\r\n`),
					),
				fc.uint8Array({ maxLength: 200 }),
			),
			async (bytes) => {
				// what is no whole request is waited for, and then left
				expect(await raw(bytes, 40)).not.toContain(SECRET);
				await expectAlive();
			},
		),
		{ numRuns: runs(150) },
	);
});
