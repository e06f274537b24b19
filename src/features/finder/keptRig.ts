import type { RigSheet } from '../../../shared/sheet/index.ts';

/** The sheet of the finder's kept walk, from its text; null where it has none that can be read. */
export async function keptRig(text: string): Promise<RigSheet | null> {
	// fetched only here: most who come through that door bring no walk
	return (await import('./reading.ts')).readKeptRig(text);
}
