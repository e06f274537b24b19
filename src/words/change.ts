import type { Sight } from '../../sim/rig/index.ts';

/** What a person would notice has changed in a fixture's light, as one sentence for a screen reader; null where nothing has. */
export function describeChange(before: Sight, after: Sight, name: string): string | null {
	if (before.light.whole.words === after.light.whole.words) return null;
	return `${name}: ${after.light.whole.words}.`;
}
