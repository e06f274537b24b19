import { describe, expect, it } from 'vitest';
import { filesUnder, textOf } from '../../house/tree.ts';

// One scale: sizes of type and spaces between things come from the tokens, so that a page has seven of the one and eight of the other.
const sized =
	/(?<![\w-])(font|font-size|gap|row-gap|column-gap|margin(?:-[a-z-]+)?|padding(?:-[a-z-]+)?)\s*:\s*([^;{}]+);/g;
/** Lengths on a screen; points and millimetres are those of paper, and no concern of this. */
const length = /(?<![\w.-])-?\d*\.?\d+(px|r?em|ch|[sdl]?v[a-z]+|%)(?![\w-])/g;

/** What may stand outside the scale: a declaration as it is written, by file, and why. */
const allowed: Readonly<Record<string, readonly string[]>> = {
	// what only a screen reader is told takes no room at all
	'src/ui/styles/base.css': ['margin: -1px'],
	// its words start a border's width further in than its box
	'src/ui/styles/parts.css': ['margin-inline-start: calc(-1 * var(--inside) - 2px)'],
	// sixteen characters must fit the glass of a narrow phone
	'src/features/bench/styles/back.css': ['font-size: clamp(1.125rem, 5.9vw, 1.6rem)'],
	// in a drawing a px is a unit of its own grid, whatever size it comes out at
	'src/features/bench/styles/tools.css': ['font: 800 56px var(--font-text)', 'font: 700 64px var(--font-text)'],
	'src/features/bench/styles/wall.css': ['font: 800 30px var(--font-text)'],
	'src/features/finder/styles/picture.css': ['font: 600 12px var(--font-text)'],
	'src/features/home/HallWall.astro': ['font: 700 15px var(--font-text)'],
	'src/features/lessons/styles/figures.css': ['font-size: 15px', 'font-size: 13px'],
	'src/features/papers/styles/trainer.css': ['font: 11px var(--font-text)'],
	// that one's grid is in millimetres: 10 pt
	'src/features/rig-sheet/styles/sheets.css': ['font: 700 3.53px var(--font-text)'],
};

/** The styles of a file: all of a style sheet, and what stands in the style tags and attributes of a page or component. */
function stylesOf(file: string): string {
	const text = textOf(file);
	if (file.endsWith('.css')) return text;
	const tags = [...text.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map((it) => it[1] ?? '');
	const attributes = [...text.matchAll(/\sstyle=(?:"([^"]*)"|\{`([^`]*)`\})/g)].map((it) => `${it[1] ?? it[2]};`);
	return [...tags, ...attributes].join('\n');
}

/** Declarations with a length that is no token's. `1em` is the size that is there already, and zero is none. */
const outside = (css: string): string[] =>
	[...css.matchAll(sized)]
		.filter(([, name = '', value = '']) =>
			[...value.matchAll(length)].some(
				([it]) => !(Number.parseFloat(it) === 0 || (name.startsWith('font') && it === '1em')),
			),
		)
		.map(([, name, value]) => `${name}: ${value}`);

describe('the scale', () => {
	const files = filesUnder('src', ['.css', '.astro', '.tsx']).filter((file) => file !== 'src/ui/styles/tokens.css');

	it('gives every style its sizes of type and its spaces', () => {
		const found = files.flatMap((file) =>
			outside(stylesOf(file)).flatMap((it) => (allowed[file]?.includes(it) ? [] : [`${file}: ${it}`])),
		);
		expect(found).toEqual([]);
	});

	it('has no exception that nothing needs', () => {
		const idle = Object.entries(allowed).flatMap(([file, all]) =>
			all.filter((it) => !outside(stylesOf(file)).includes(it)).map((it) => `${file}: ${it}`),
		);
		expect(idle).toEqual([]);
	});

	it('has seven sizes and eight spaces', () => {
		const tokens = textOf('src/ui/styles/tokens.css').split('/* Two densities')[0] ?? '';
		expect(tokens.match(/--t-\d:/g)).toHaveLength(7);
		expect(tokens.match(/--space-\d:/g)).toHaveLength(8);
	});

	it('sees a length in any unit and under any name, and leaves tokens, zero and paper alone', () => {
		const wrong = [
			'font-size: 0.9em',
			'gap: 10px',
			'margin-block: var(--space-1) 0.3rem',
			'padding-inline-start: 2ch',
			'font: 700 1.05rem x',
		];
		expect(outside(wrong.map((it) => `${it};`).join('\n'))).toEqual(wrong);
		expect(
			outside('gap: var(--space-2) 0; font-size: 7pt; margin: 8mm auto 0; font: 700 1em x; line-height: 1.2em;'),
		).toEqual([]);
	});
});
