import type { APIRoute } from 'astro';
import { locale } from '#words/locale/index.ts';
import { frame } from '#words/site/index.ts';

/** What a device is told of the site when a person keeps it among their applications. */
export const GET: APIRoute = () =>
	new Response(
		JSON.stringify({
			name: frame.name,
			short_name: frame.name,
			description: frame.description,
			lang: locale.tag,
			dir: locale.direction,
			start_url: '/',
			scope: '/',
			display: 'standalone',
			background_color: '#17191c',
			theme_color: '#17191c',
			icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
		}),
		{ headers: { 'Content-Type': 'application/manifest+json' } },
	);
