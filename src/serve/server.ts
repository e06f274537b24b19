import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
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
		else createReadStream(file).pipe(response);
	};
	const server = createServer((request, response) => {
		const { pathname, search } = new URL(request.url ?? '/', 'http://localhost');
		let wanted: string;
		try {
			wanted = path.join(root, path.normalize(decodeURIComponent(pathname)));
		} catch {
			response.writeHead(400).end();
			return;
		}
		const give = (file: string, status: number): void => {
			send(request, response, file, status).catch(() => response.destroy());
		};
		if (wanted !== root && !wanted.startsWith(root + path.sep)) return void response.writeHead(403).end();
		if (existsSync(wanted) && statSync(wanted).isDirectory()) {
			if (!pathname.endsWith('/')) return void response.writeHead(301, { location: `${pathname}/${search}` }).end();
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
