import { otherVersion } from './bounds.ts';

type Old = Readonly<Record<string, unknown>>;
/** One version's record as the next one's; it is unread yet, and may be anything. */
export type Migration = (old: Old) => Old;

/** From one version to the next: the first makes 2 of 1. None yet: nothing but version 1 was ever written. */
const STEPS: readonly Migration[] = Object.freeze([]);

/**
 * A record as this version has it. What says no version of itself, or none that there is, is left for the schema to judge.
 * @param steps for the tests; those of this version unless told
 * @throws InputError `handed.version` where a newer version wrote it
 */
export function migrated(input: unknown, steps: readonly Migration[] = STEPS): unknown {
	const said: unknown = typeof input === 'object' && input !== null ? Reflect.get(input, 'version') : undefined;
	if (typeof said !== 'number') return input;
	if (said > steps.length + 1) throw otherVersion();
	if (!Number.isSafeInteger(said) || said < 1) return input;
	return steps.slice(said - 1).reduce<Old>((old, step, i) => ({ ...step(old), version: said + i + 1 }), input as Old);
}
