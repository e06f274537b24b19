/** What a read fixture is called where the file does not say, and what its stand-in panel says. Data, as on the bundled fixtures. */
export const NAMES = Object.freeze({
	fixture: 'Fixture from a file',
	about: 'Read from an open fixture file',
	mode: 'Mode',
	light: 'Light',
	full: 'All at full',
	pulse: 'Pulse',
	unused: 'Unused',
	noFunction: 'No function',
	fine: 'fine',
});

const LONGEST_ID = 40;
const LONGEST_TITLE = 40;

/** A text cut to what a title can hold, with no half of a letter left at the end. */
export const titleOf = (text: string, otherwise: string, longest = LONGEST_TITLE): string =>
	text
		.replaceAll(/\s+/g, ' ')
		.trim()
		.slice(0, longest)
		.replace(/[\uD800-\uDBFF]$/, '')
		.trim() || otherwise;

/** Hands out ids made of names: small letters, digits and hyphens, at most 40, each once. */
export function idMaker(): (name: string, otherwise: string) => string {
	const taken = new Set<string>();
	const next = new Map<string, number>();
	return (name, otherwise) => {
		const plain = name
			.normalize('NFKD')
			.toLowerCase()
			.replaceAll(/[^a-z0-9]+/g, '-')
			.replaceAll(/^[^a-z]+|-+$/g, '');
		const first = (plain || otherwise).slice(0, LONGEST_ID).replace(/-+$/, '');
		let id = first;
		// goes on where the last one alike left off: a file may have thousands
		let n = next.get(first) ?? 2;
		for (; taken.has(id); n++) id = `${first.slice(0, LONGEST_ID - `-${n}`.length)}-${n}`;
		next.set(first, n);
		taken.add(id);
		return id;
	};
}
