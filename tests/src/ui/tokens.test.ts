import { wcagContrast, wcagLuminance } from 'culori';
import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from '../../house/tree.ts';

const tokens = textOf('src/ui/styles/tokens.css');
const looks = ['light', 'dark', 'backstage'] as const;
type Look = (typeof looks)[number];

const read = (text: string): Map<string, string> =>
	new Map([...text.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map((it) => [it[1] ?? '', it[2] ?? '']));
const [common = '', own = ''] = tokens.split(':root[data-theme="backstage"]');
const declared = read(common);
const backstage = read(own);

/** A token as a plain colour in one look. */
function colour(name: string, theme: Look): string {
	const value = (theme === 'backstage' ? backstage.get(name) : undefined) ?? declared.get(name) ?? '';
	const pair = /^light-dark\(\s*var\(([\w-]+)\),\s*var\(([\w-]+)\)\s*\)$/.exec(value);
	if (pair) return colour((theme === 'light' ? pair[1] : pair[2]) ?? '', theme);
	const other = /^var\(([\w-]+)\)$/.exec(value);
	return other ? colour(other[1] ?? '', theme) : value;
}

const grounds = ['--ground', '--surface', '--raised', '--well'];

describe('the tokens', () => {
	// WCAG 2.2, 1.4.3: 4.5 to 1 for text; 1.4.11: 3 to 1 for the edges of controls and what shows focus. Read.
	const asked: [ink: string, ground: string, ratio: number][] = [
		...['--text', '--text-soft', '--link', '--good', '--wrong'].flatMap((ink) =>
			grounds.map((it): [string, string, number] => [ink, it, 4.5]),
		),
		...grounds.map((it): [string, string, number] => ['--line', it, 3]),
		// what shows where one is, what is chosen, what carries data, and the edge of the one thing to do
		...['--here', '--signal', '--act-edge'].flatMap((ink) =>
			grounds.map((it): [string, string, number] => [ink, it, 3]),
		),
		...['--here-night', '--signal-night'].map((ink): [string, string, number] => [ink, '--night', 3]),
		['--on-here', '--here', 4.5],
		['--on-here-night', '--here-night', 4.5],
		['--on-act', '--act', 4.5],
		['--on-hazard', '--hazard', 3],
		['--on-tape', '--tape-top', 4.5],
		['--on-tape', '--tape-bottom', 4.5],
		['--code-dark', '--code-light', 4.5],
	];
	it.each(asked.flatMap(([ink, ground, ratio]) => looks.map((theme) => ({ ink, ground, ratio, theme }))))(
		'$ink on $ground, $theme, stands out by $ratio to 1',
		({ ink, ground, ratio, theme }) => {
			expect(wcagContrast(colour(ink, theme), colour(ground, theme))).toBeGreaterThanOrEqual(ratio);
		},
	);

	// symptom: a code shown in the backstage look could not be read. cause: it was drawn light on dark, which is no code to a reader
	it.each(looks)('draw a QR code dark on light: %s', (theme) => {
		expect(wcagLuminance(colour('--code-dark', theme))).toBeLessThan(wcagLuminance(colour('--code-light', theme)));
	});

	it('are black on white on paper, whatever look they are printed from', () => {
		const paper = read(textOf('src/ui/styles/print.css'));
		const styled = filesUnder('src', ['.css']).filter(
			(file) => /@media print/.test(textOf(file)) || file.endsWith('qr.css'),
		);
		const named = new Set(
			styled.flatMap((file) => [...textOf(file).matchAll(/var\((--[\w-]+)\)/g)].map((it) => it[1] ?? '')),
		);
		const inks = [
			'--text',
			'--text-soft',
			'--link',
			'--line',
			'--here',
			'--on-tape',
			'--code-dark',
			'--signal',
			'--good',
			'--wrong',
		];
		for (const ink of inks) if (named.has(ink)) expect(paper.get(ink), ink).toBe('#000');
		expect(inks.filter((ink) => named.has(ink)).length).toBeGreaterThan(3);
	});

	// nothing on a page may light a face in the wings: half the light of white is already a lamp
	it('hold the backstage look to a warm ink on near black', () => {
		for (const ground of grounds) expect(wcagLuminance(colour(ground, 'backstage')), ground).toBeLessThan(0.012);
		for (const name of backstage.keys()) {
			const shown = colour(name, 'backstage');
			if (shown.startsWith('#')) expect(wcagLuminance(shown), name).toBeLessThan(0.5);
		}
		for (const ground of grounds)
			expect(wcagContrast(colour('--text', 'backstage'), colour(ground, 'backstage')), ground).toBeGreaterThanOrEqual(
				7,
			);
	});

	it('leave no colour of the other looks in the backstage one', () => {
		const raw = (name: string): boolean => /^(light-dark|var\(--raw)/.test(declared.get(name) ?? '');
		expect([...declared.keys()].filter((name) => raw(name) && !backstage.has(name))).toEqual([]);
	});

	it('give amber three jobs, each in its own place: the thing to do, the stripe of a caution, light as it is drawn', () => {
		const styled = filesUnder('src', ['.css', '.astro', '.tsx']).filter((file) => !file.endsWith('tokens.css'));
		const naming = (token: string): string[] => styled.filter((file) => textOf(file).includes(`var(${token})`));
		expect(naming('--act')).toEqual(['src/ui/styles/parts.css']);
		expect(naming('--hazard')).toEqual(['src/ui/styles/parts.css']);
		expect(naming('--lamplight')).toEqual(['src/features/lessons/styles/figures.css', 'src/ui/styles/backstage.css']);
		// the display of a device glows so; nothing else is that amber
		const glow = /^\s*--glow:.*$|^\s*color: #ffb938;$/gm;
		expect(styled.filter((file) => textOf(file).replace(glow, '').includes('#ffb938'))).toEqual([]);
	});

	it('are the only place that names a raw colour', () => {
		const styled = filesUnder('src', ['.css', '.astro', '.tsx']).filter((file) => !file.endsWith('tokens.css'));
		expect(styled.filter((file) => textOf(file).includes('--raw-'))).toEqual([]);
	});

	it('are all there: no style names one that is not', () => {
		// a name of a feature's own stands in one of its styles, or is set by one of its components
		const own = /['"]?(--[\w-]+)['"]?:/g;
		const roomOf = (file: string): string => file.split('/').slice(0, 2).join('/');
		const missing = filesUnder('src', ['.css', '.astro']).flatMap((file) => {
			const text = textOf(file);
			const room = filesUnder(roomOf(file), ['.css', '.astro', '.tsx', '.ts']).map(textOf).join('\n');
			const here = new Set([...room.matchAll(own)].map((it) => it[1]));
			const named = [...text.matchAll(/var\((--[\w-]+)\)/g)].map((it) => it[1] ?? '');
			return named.filter((name) => !declared.has(name) && !here.has(name)).map((name) => `${file}: ${name}`);
		});
		expect(missing).toEqual([]);
	});
});
