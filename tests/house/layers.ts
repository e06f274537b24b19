/**
 * Which way imports run: the one table that dependency-cruiser (for .ts and .tsx) and tests/house/astro-layers.test.ts
 * (for .astro and .mdx, which dependency-cruiser does not read) both hold the tree to. What is not granted here is refused.
 */
export const layers = {
	shared: { mayUse: ['shared'], packages: ['valibot', 'jstat', 'fflate', '@rgrove/parse-xml'], node: false },
	sim: { mayUse: ['sim', 'shared'], packages: ['valibot', 'xstate', 'culori'], node: false },
	content: { mayUse: ['content'], packages: [], node: false },
	src: { mayUse: ['src', 'content', 'sim', 'shared'], packages: null, node: true },
} as const satisfies Record<string, Layer>;

interface Layer {
	/** Layers its files may import from, itself included. */
	readonly mayUse: readonly string[];
	/** Packages from the registry it may import; null: any. */
	readonly packages: readonly string[] | null;
	/** Whether `node:` modules may be imported (build-time code only: a page would not load). */
	readonly node: boolean;
}

/** Folders that hold rooms of their own: a way into one of those goes through the room's door. */
export const wings: readonly string[] = ['src/features', 'src/site', 'content/en'];

/**
 * Files through which a room may be entered, by layer. `trusted.ts` is for those who have read what they bring: it needs no schema
 * library. `routes.ts` is what a feature does in the worker, apart from what a page loads.
 */
export const doors = {
	shared: ['index.ts'],
	sim: ['index.ts', 'trusted.ts'],
	content: ['index.ts'],
	src: ['index.ts', 'routes.ts'],
} as const satisfies Record<keyof typeof layers, readonly string[]>;

/** Files a page or component may import straight out of another folder: a door that handed them all out would load them all. */
export const openEnds: readonly string[] = ['.astro', '.css', '.svg', '.mdx', '.woff2'];

/**
 * Says what is wrong with one import between two files of the tree, or null where nothing is.
 * Both are paths from the root with forward slashes, such as `sim/rig/index.ts`.
 */
export function judge(from: string, to: string): string | null {
	const [fromLayer = ''] = from.split('/');
	const [toLayer = ''] = to.split('/');
	const layer: Layer | undefined = (layers as Record<string, Layer>)[fromLayer];
	if (layer === undefined) return null;
	if (!layer.mayUse.includes(toLayer))
		return `${from} imports ${to}: ${fromLayer} may use ${layer.mayUse.join(', ')} only`;
	const room = roomOf(to);
	const within = to.slice(room.length + 1);
	const doorsThere: readonly string[] = (doors as Record<string, readonly string[]>)[toLayer] ?? [];
	if (roomOf(from) === room || within === '' || doorsThere.includes(within)) return null;
	if (openEnds.some((end) => to.endsWith(end))) return null;
	return `${from} imports ${to}: go through ${doorsThere.map((door) => `${room}/${door}`).join(' or ')}`;
}

/** The room a file stands in: its layer and the folder under it, or one folder more in a wing. */
function roomOf(file: string): string {
	const deep = wings.some((wing) => file.startsWith(`${wing}/`)) ? 3 : 2;
	return file.split('/').slice(0, deep).join('/');
}
