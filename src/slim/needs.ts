import path from 'node:path';

/** What the bundler knows of the modules. */
export interface Modules {
	getModuleInfo(id: string): {
		readonly code: string | null;
		readonly isEntry: boolean;
		/** Modules that import it plainly (not when they come to it). */
		readonly importers: readonly string[];
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

/**
 * The islands and scripts that need a module from the start, by the names of their folders. A folder's door (`index.ts`) hands
 * on what it names and needs nothing itself: who comes through it needs only what they take.
 * @param names what is needed of the module; null for all of it
 */
export function neededBy(
	id: string,
	modules: Modules,
	names: ReadonlySet<string> | null = null,
	seen = new Set<string>(),
	found = new Set<string>(),
): Set<string> {
	const isDoor = path.basename(id) === 'index.ts';
	const mark = isDoor && names ? `${id} ${[...names].sort().join()}` : id;
	if (seen.has(mark)) return found;
	seen.add(mark);
	const about = modules.getModuleInfo(id);
	if (about?.isEntry) found.add(path.basename(path.dirname(id)));
	for (const importer of about?.importers ?? []) {
		const importerText = modules.getModuleInfo(importer)?.code ?? '';
		const taken = namesTaken(importerText, id, importer);
		// through a door, only those who take something that is asked after
		if (isDoor && names && taken && ![...taken.keys()].some((name) => names.has(name))) continue;
		// a door that takes something to use it, and not to hand it on, needs it as any other does
		const isHanding = path.basename(importer) === 'index.ts' && taken && !usesItself(importerText, id, importer);
		const onward = isHanding ? [...taken] : null;
		const handed = onward?.filter(([name]) => !isDoor || !names || names.has(name)).map(([, as]) => as);
		neededBy(importer, modules, handed ? new Set(handed) : null, seen, found);
	}
	return found;
}
