import { requireLevel } from './level.ts';

/** What the first slot of a packet says about the rest. */
export type StartCode = {
	readonly code: number;
	/** Permanent id; words about it live in `content/`. */
	readonly id: StartCodeId;
};

/** Ids of the start codes with a meaning of their own. */
export type StartCodeId = 'levels' | 'text' | 'test' | 'utf8-text' | 'maker' | 'rdm' | 'system-information';

/**
 * The named start codes. Source: ANSI E1.11 (levels, text, test, UTF-8 text, maker's own, system information) and
 * E1.20 (RDM), read in an open-source driver that restates the standard's annex.
 */
export const START_CODES: readonly StartCode[] = Object.freeze([
	Object.freeze({ code: 0x00, id: 'levels' } as const),
	Object.freeze({ code: 0x17, id: 'text' } as const),
	Object.freeze({ code: 0x55, id: 'test' } as const),
	Object.freeze({ code: 0x90, id: 'utf8-text' } as const),
	Object.freeze({ code: 0x91, id: 'maker' } as const),
	Object.freeze({ code: 0xcc, id: 'rdm' } as const),
	Object.freeze({ code: 0xcf, id: 'system-information' } as const),
]);

/** The null start code: the slots are levels. A fixture takes its levels from no other packet. */
const LEVELS_START_CODE = 0x00;

/** The named start code of a byte (0 to 255), undefined when it has no name. Throws `level.range`. */
export function startCodeOf(code: number): StartCode | undefined {
	requireLevel(code, 'code');
	return START_CODES.find((known) => known.code === code);
}

/** Whether a packet with this start code (0 to 255) carries levels, which 0 alone does. Throws `level.range`. */
export function carriesLevels(code: number): boolean {
	return requireLevel(code, 'code') === LEVELS_START_CODE;
}
