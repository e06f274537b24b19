import path from 'node:path';

/** What the bundler knows of the modules. */
export interface Modules {
	getModuleInfo(id: string): {
		readonly code: string | null;
		readonly isEntry: boolean;
		/** Modules that import it plainly (not when they come to it). */
		readonly importers: readonly string[];
		/** Modules that come to it later. */
		readonly dynamicImporters: readonly string[];
	} | null;
}

const FROM = /\b(import|export)\s*\{([^}]*)\}\s*from\s*['"]([^'"]+)['"]/g;

/** Names taken from one module in another's text, as the first calls them; null where it takes it whole. */
function namesTaken(text: string, from: string, by: string): Map<string, string> | null {
	const taken = new Map<string, string>();
	let found = false;
	for (const [, , list = '', source = ''] of text.matchAll(FROM)) {
		if (path.resolve(path.dirname(by), source) !== from) continue;
		found = true;
		for (const item of list.split(',')) {
			const [name = '', as = name] = item
				.trim()
				.replace(/^type\s+/, '')
				.split(/\s+as\s+/);
			if (name !== '') taken.set(name, as);
		}
	}
	return found ? taken : null;
}

/** Whether one module imports from another, rather than handing its things on. */
const usesItself = (text: string, from: string, by: string): boolean =>
	[...text.matchAll(FROM)].some(
		([, word, , source = '']) => word === 'import' && path.resolve(path.dirname(by), source) === from,
	);

type About = NonNullable<ReturnType<Modules['getModuleInfo']>>;

/** What an entry is called: an island by its folder; a small script of a page by that too, and apart from the islands there. */
const nameOf = (id: string): string => `${path.basename(path.dirname(id))}${id.includes('.astro?') ? '-words' : ''}`;

/** The islands and scripts that need a module from the start, by name. */
export function neededBy(id: string, modules: Modules): Set<string> {
	const found = new Set<string>();
	goUp(id, modules, (needing, { isEntry }) => {
		if (isEntry) found.add(nameOf(needing));
	});
	return found;
}

/** The modules that come to it later, or to what needs it. */
export function fetchedFrom(id: string, modules: Modules): Set<string> {
	const found = new Set<string>();
	goUp(id, modules, (_, { dynamicImporters }) => {
		for (const importer of dynamicImporters) found.add(importer);
	});
	return found;
}

/**
 * Goes through all that needs a module plainly, the module first. A folder's door (`index.ts`) hands on what it names and needs
 * nothing itself: who comes through it needs only what they take.
 * @param names what is needed of the module; null for all of it
 */
function goUp(
	id: string,
	modules: Modules,
	tell: (id: string, about: About) => void,
	names: ReadonlySet<string> | null = null,
	seen = new Set<string>(),
): void {
	const isDoor = path.basename(id) === 'index.ts';
	const mark = isDoor && names ? `${id} ${[...names].sort().join()}` : id;
	if (seen.has(mark)) return;
	seen.add(mark);
	const about = modules.getModuleInfo(id);
	if (!about) return;
	tell(id, about);
	for (const importer of about.importers) {
		const importerText = modules.getModuleInfo(importer)?.code ?? '';
		const taken = namesTaken(importerText, id, importer);
		// through a door, only those who take something that is asked after
		if (isDoor && names && taken && ![...taken.keys()].some((name) => names.has(name))) continue;
		// a door that takes something to use it, and not to hand it on, needs it as any other does
		const isHanding = path.basename(importer) === 'index.ts' && taken && !usesItself(importerText, id, importer);
		const onward = isHanding ? [...taken] : null;
		const handed = onward?.filter(([name]) => !isDoor || !names || names.has(name)).map(([, as]) => as);
		goUp(importer, modules, tell, handed ? new Set(handed) : null, seen);
	}
}
