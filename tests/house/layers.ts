/**
 * Which way imports run: the one table that dependency-cruiser (for .ts and .tsx) and tests/house/astro-layers.test.ts
 * (for .astro and .mdx, which dependency-cruiser does not read) both hold the tree to. What is not granted here is refused.
 */
export const layers = {
	shared: { mayUse: ['shared'], packages: ['valibot', 'jstat'], node: false },
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

/** Files a page or component may import straight out of another folder: a door that handed them all out would load them all. */
export const openEnds: readonly string[] = ['.astro', '.css', '.svg', '.mdx', '.woff2'];

/**
 * Says what is wrong with one import between two files of the tree, or null where nothing is.
 * Both are paths from the root with forward slashes, such as `sim/rig/index.ts`.
 */
export function judge(from: string, to: string): string | null {
	const [fromLayer = '', fromRoom = ''] = from.split('/');
	const [toLayer = '', toRoom = '', ...rest] = to.split('/');
	const layer: Layer | undefined = (layers as Record<string, Layer>)[fromLayer];
	if (layer === undefined) return null;
	if (!layer.mayUse.includes(toLayer))
		return `${from} imports ${to}: ${fromLayer} may use ${layer.mayUse.join(', ')} only`;
	const sameRoom = fromLayer === toLayer && fromRoom === toRoom;
	const throughDoor = rest.length === 0 || (rest.length === 1 && rest[0] === 'index.ts');
	if (sameRoom || throughDoor || openEnds.some((end) => to.endsWith(end))) return null;
	return `${from} imports ${to}: go through ${toLayer}/${toRoom}/index.ts`;
}
