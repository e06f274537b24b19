import { bareWords } from './brackets.ts';

/** Symbols that every language writes alike: of units, and of functions in a sum. */
const SYMBOLS: readonly string[] = ['Wh', 'kg', 'lb', 'lx', 'cd', 'kB', 'MB', 'cos', 'tan'];
/** What the displays of the simulated panels say by themselves, beside what their menus hold. */
const ON_PANELS: readonly string[] = [
	'LOCK',
	'Locked',
	'Panel',
	'locked',
	'Hold',
	'Set',
	'OK',
	'NO',
	'OUT',
	'Good',
	'None',
	'Lost',
];
/** What a drill or a paper that is made from a seed calls its gear: it is stored and handed on, and so the same in any language. */
const MADE_NAMES = /\b(?:[Ww]ash|[Bb]ar|[Ff]loor) \d+\b|\bdesk [ab](?= |$)|^\s*Desk\s*$|\bDesk\b(?=,)/g;

/**
 * Words of a text that the made-up language did not give. Single letters are outputs and units, pairs of A to F are hexadecimal, and
 * circled letters are no letters: with them the fixtures' makers and the crews name things.
 */
export const strays = (text: string): string[] =>
	bareWords(text.replaceAll(MADE_NAMES, ' ')).filter(
		(word) => word.length > 1 && !/^[A-F]{2}$/.test(word) && ![...SYMBOLS, ...ON_PANELS].includes(word),
	);

/** All that a page says: texts between tags, and attributes that are read out or shown. Runs in the page. */
export function saidHere(): string[] {
	const ATTRIBUTES = [
		'aria-label',
		'aria-description',
		'aria-valuetext',
		'aria-roledescription',
		'title',
		'placeholder',
		'alt',
	];
	const said = [document.title, document.querySelector('meta[name="description"]')?.getAttribute('content') ?? ''];
	const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
	for (let node = walker.nextNode(); node; node = walker.nextNode()) {
		if (node instanceof Element) said.push(...ATTRIBUTES.flatMap((name) => node.getAttribute(name) ?? []));
		else if (!node.parentElement?.closest('script, style, noscript')) said.push(node.textContent ?? '');
	}
	return said;
}
