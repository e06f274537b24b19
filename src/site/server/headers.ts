import { writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';

/** What is sent with files of one make, beside their type: header fields by name, in small letters. */
interface HeaderRule {
	/** Which files, by address from the top of the site; `*` stands for any run of characters, slashes too. */
	readonly files: string;
	readonly fields: Readonly<Record<string, string>>;
}

/** A policy set by a header alone; a page's own stands in the page (astro.config.mjs). */
const NOBODY_FRAMES = "frame-ancestors 'none'";

/** A worker has no policy from the page that starts it: its own script brings it (CSP Level 3, 4.2.2 and HTML, 10.2.4). */
const WORKER_POLICY = [
	"default-src 'none'",
	"script-src 'self'",
	"connect-src 'self'",
	"require-trusted-types-for 'script'",
	"trusted-types 'none'",
	NOBODY_FRAMES,
].join('; ');

/** Every rule that fits a file is followed; where two set one field, the later counts. */
const RULES: readonly HeaderRule[] = Object.freeze([
	{
		files: '/*',
		fields: {
			// kept, and asked for again each time: a 304 is all that comes where nothing changed (RFC 9111, 5.2.2.4)
			'cache-control': 'no-cache',
			'x-content-type-options': 'nosniff',
			'referrer-policy': 'no-referrer',
			'content-security-policy': NOBODY_FRAMES,
		},
	},
	{ files: '/*.js', fields: { 'content-security-policy': WORKER_POLICY } },
	// each has a hash of what is in it in its name (RFC 8246, and RFC 9111, 5.2.2.1: seconds, a year)
	{ files: '/_astro/*', fields: { 'cache-control': 'public, max-age=31536000, immutable' } },
]);

/** Where the build leaves the rules for whoever puts the site on a host of their own. */
const HEADERS_FILE = 'headers.txt';

const fits = (files: string, file: string): boolean =>
	new RegExp(`^${files.replace(/[.+?^${}()|[\]\\]/g, '\\$&').replaceAll('*', '.*')}$`, 's').test(file);

/**
 * The header fields to be sent with a file, beside its type and coding.
 * @param file its address from the top of the site, with a slash before it and no query
 */
export function headersFor(file: string): Readonly<Record<string, string>> {
	return Object.assign({}, ...RULES.filter(({ files }) => fits(files, file)).map(({ fields }) => fields));
}

/** The rules as plain text, for any host that can be told what to send. */
export function headersText(): string {
	const blocks = RULES.map(({ files, fields }) =>
		[files, ...Object.entries(fields).map(([name, value]) => `\t${name}: ${value}`)].join('\n'),
	);
	return `# What to send with the files of this site, beside their type: set your host up so.
# First which files (* is any run of characters, slashes too), then a line for each header.
# All that fit a file count. Where two set the same header, the later one does.
# The site works with none of them, but then any page may frame it, and a browser asks for more than it needs to.

${blocks.join('\n\n')}
`;
}

/** Leaves what a host is to send with the site's files beside them, for whoever puts the site up. */
export function hostHeaders(): AstroIntegration {
	return {
		name: 'prep-bay-host-headers',
		hooks: {
			'astro:build:done': ({ dir }) => writeFile(new URL(HEADERS_FILE, dir), headersText()),
		},
	};
}
