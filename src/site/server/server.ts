import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { pipeline } from 'node:stream';
import { bestEncoding, type Effort, keepEncoded } from './encode.ts';

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
export interface Served {
	/** Its address, with no slash at the end. */
	readonly origin: string;
	/** Serves another folder from now on, as when a new version is put up. */
	use(folder: string): void;
	close(): Promise<void>;
}

/** What a request line asks for: where to look, decoded, and the address as it was written. */
interface Target {
	readonly file: string;
	readonly pathname: string;
	readonly search: string;
}

/**
 * Reads a request target: a path with one slash before it, or a whole address as a proxy asks (RFC 9112, 3.2.1 and 3.2.2).
 * @returns null for any other, for one that is no address, and for one that no file can be called
 */
function targetOf(url: string): Target | null {
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

/**
 * Serves a folder as a plain static host would: `/x/` is `x/index.html`, `/x` moves to `/x/`, what is not there is 404.html
 * with status 404, and text goes out as small as the browser takes it. It sets no policy header of its own, so that what holds
 * here holds on any host.
 * @param folder the built site
 * @param port 0 for any free one
 * @param effort `quick` for who cannot wait some seconds for a whole site pressed small
 */
export async function serve(folder: string, port = 0, effort: Effort = 'best'): Promise<Served> {
	let root = path.resolve(folder);
	const encoded = keepEncoded(effort);
	const send = async (request: IncomingMessage, response: ServerResponse, file: string, status: number) => {
		const type = types[path.extname(file)] ?? 'application/octet-stream';
		response.setHeader('content-type', type).setHeader('cache-control', 'no-cache');
		const packs = PACKS.test(type);
		if (packs) response.setHeader('vary', 'accept-encoding');
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
		if (!target) return void response.writeHead(400).end();
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
