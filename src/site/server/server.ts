import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { pipeline } from 'node:stream';
import { bestEncoding, type Effort, hasIt, keepEncoded, keepTags } from './encode.ts';
import { headersFor } from './headers.ts';

const types: Readonly<Record<string, string>> = {
	'.css': 'text/css; charset=utf-8',
	'.html': 'text/html; charset=utf-8',
	'.js': 'text/javascript; charset=utf-8',
	'.json': 'application/json; charset=utf-8',
	'.png': 'image/png',
	'.svg': 'image/svg+xml',
	'.txt': 'text/plain; charset=utf-8',
	'.webmanifest': 'application/manifest+json',
	'.woff2': 'font/woff2',
	'.xml': 'application/xml',
};

/** What is made of text. The rest is packed already. */
const PACKS = /^text\/|json|xml/;

/** A site being served. */
export interface SiteServer {
	/** Its address, with no slash at the end. */
	readonly origin: string;
	/** Serves another folder from now on, as when a new version is put up. */
	use(folder: string): void;
	close(): Promise<void>;
}

/** What a request line asks for: where to look, decoded, and the address as it was written. */
interface RequestTarget {
	readonly file: string;
	readonly pathname: string;
	readonly search: string;
}

/**
 * Reads a request target: a path with one slash before it, or a whole address as a proxy asks (RFC 9112, 3.2.1 and 3.2.2).
 * @returns null for any other, for one that is no address, and for one that no file can be called
 */
function targetOf(url: string): RequestTarget | null {
	// two slashes would be a host, and a browser takes a backslash for a slash
	if (!/^(?:\/(?![/\\])|https?:\/\/)/i.test(url) || !URL.canParse(url, 'http://localhost')) return null;
	const { pathname, search } = new URL(url, 'http://localhost');
	// a whole address may hold such a path too
	if (/^\/[/\\]/.test(pathname)) return null;
	try {
		const file = decodeURIComponent(pathname);
		return file.includes('\0') ? null : { file, pathname, search };
	} catch {
		return null;
	}
}

/** A host and a port as they may stand in an address (RFC 9110, 7.2, and RFC 3986, 3.2.2 and 3.2.3). */
const HOST = /^(?:[\w.~!$&'()*+,;=%-]*|\[[\da-f:.v]+\])(?::\d{0,5})?$/i;

/** Whether a request says once, and in a way that can be read, which host it is for; an older one need not (RFC 9112, 3.2). */
function saysItsHost({ headersDistinct, httpVersion }: IncomingMessage): boolean {
	const said = headersDistinct['host'] ?? [];
	return said.length === 0 ? httpVersion === '1.0' : said.length === 1 && HOST.test(said[0] ?? '');
}

/**
 * Serves a folder as a plain static host would: `/x/` is `x/index.html`, `/x` moves to `/x/`, what is not there is 404.html
 * with status 404, text goes out as small as the browser takes it, and what the browser has already goes out not at all. What else
 * it sends with a file is the same as any host is asked to send (`HEADERS_FILE`).
 * @param folder the built site
 * @param port 0 for any free one
 * @param effort `quick` for who cannot wait some seconds for a whole site pressed small
 */
export async function serve(folder: string, port = 0, effort: Effort = 'best'): Promise<SiteServer> {
	let root = path.resolve(folder);
	const encoded = keepEncoded(effort);
	const tagOf = keepTags();
	const send = async (request: IncomingMessage, response: ServerResponse, file: string, status: number) => {
		const type = types[path.extname(file)] ?? 'application/octet-stream';
		const tag = await tagOf(file, statSync(file));
		response.setHeader('content-type', type).setHeader('etag', tag);
		const address = `/${path.relative(root, file).split(path.sep).join('/')}`;
		for (const [name, value] of Object.entries(headersFor(address))) response.setHeader(name, value);
		const packs = PACKS.test(type);
		if (packs) response.setHeader('vary', 'accept-encoding');
		if (status === 200 && hasIt(String(request.headers['if-none-match'] ?? ''), tag)) {
			response.removeHeader('content-type');
			return void response.writeHead(304).end();
		}
		const encoding = packs ? bestEncoding(String(request.headers['accept-encoding'] ?? '')) : null;
		if (encoding) {
			const bytes = await encoded(file, statSync(file), encoding);
			response.setHeader('content-encoding', encoding).setHeader('content-length', bytes.length);
			response.writeHead(status).end(request.method === 'HEAD' ? undefined : bytes);
			return;
		}
		response.writeHead(status);
		if (request.method === 'HEAD') response.end();
		// a file that has gone meanwhile, or a browser that has, breaks off this answer and no more
		else pipeline(createReadStream(file), response, () => {});
	};
	const server = createServer((request, response) => {
		if (request.method !== 'GET' && request.method !== 'HEAD')
			return void response.writeHead(405, { allow: 'GET, HEAD' }).end();
		const target = targetOf(request.url ?? '');
		if (!target || !saysItsHost(request)) return void response.writeHead(400).end();
		const { pathname, search } = target;
		let wanted = path.join(root, path.normalize(target.file));
		const give = (file: string, status: number): void => {
			send(request, response, file, status).catch(() => response.destroy());
		};
		if (wanted !== root && !wanted.startsWith(root + path.sep)) return void response.writeHead(403).end();
		if (existsSync(wanted) && statSync(wanted).isDirectory()) {
			if (!target.file.endsWith('/')) return void response.writeHead(301, { location: `${pathname}/${search}` }).end();
			wanted = path.join(wanted, 'index.html');
		}
		if (existsSync(wanted)) return give(wanted, 200);
		const lost = path.join(root, '404.html');
		if (existsSync(lost)) return give(lost, 404);
		response.writeHead(404).end();
	});
	await new Promise<void>((resolve, reject) => {
		server.once('error', reject);
		server.listen(port, '127.0.0.1', resolve);
	});
	return {
		origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
		use(other) {
			root = path.resolve(other);
		},
		close: () =>
			new Promise((resolve) => {
				server.close(() => resolve());
				server.closeAllConnections();
			}),
	};
}
