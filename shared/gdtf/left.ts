import type { ErrorCode, InputError } from '../error/index.ts';

/** What each loss of meaning carries for its sentence. Codes are permanent; words are in `content/en/gdtf`. */
export interface LeftFacts {
	// ---- of the file ------------------------------------------------------------------------
	'other-files': { readonly count: number };
	/** A part of the description that nothing here can use. */
	'part-unused': { readonly part: string; readonly count: number };
	unreadable: { readonly attribute: string; readonly found: string };
	weight: { readonly kilograms: number };
	'emitter-unused': { readonly name: string };
	'name-cut': { readonly found: string; readonly name: string };
	// ---- of a mode --------------------------------------------------------------------------
	/** The whole mode is left out; `because` says why. */
	'mode-refused': { readonly mode: string };
	'mode-not-asked': { readonly mode: string };
	'cells-differ': { readonly mode: string; readonly cells: number; readonly most: number };
	// ---- of a channel -----------------------------------------------------------------------
	'virtual-channel': ChannelAt;
	'slot-unused': { readonly mode: string; readonly slot: number };
	'extra-bytes': ChannelAt & { readonly bytes: number };
	'fine-of-bands': ChannelAt;
	'not-acted': FunctionAt;
	'shutter-between': FunctionAt;
	reversed: FunctionAt;
	'other-master': FunctionAt & { readonly master: string };
	'master-unknown': FunctionAt & { readonly master: string };
	'colour-not-given': FunctionAt;
	'colour-fitted': FunctionAt;
	'colour-out-of-reach': FunctionAt;
	'rate-clamped': FunctionAt & { readonly found: number; readonly rate: number };
	'part-of-slot': FunctionAt;
	'sets-dropped': FunctionAt & { readonly count: number };
	'same-start': FunctionAt;
	'set-outside': FunctionAt;
	'cut-off-byte': FunctionAt & { readonly value: number };
	'too-narrow': FunctionAt;
	'resting-level': ChannelAt & { readonly level: number };
	// ---- of light ---------------------------------------------------------------------------
	'beams-swapped': { readonly beam: number; readonly field: number };
	'beam-clamped': { readonly found: number; readonly degrees: number };
	'beams-differ': { readonly count: number };
	'mixed-figures': { readonly of: 'lumens' | 'watts' };
	// ---- of a profile that is written -------------------------------------------------------
	'not-written': { readonly what: NotWritten };
	'name-changed': { readonly found: string; readonly name: string };
	'cells-in-other-order': { readonly mode: string };
	'cells-overlap': { readonly mode: string; readonly slot: string };
}

interface ChannelAt {
	readonly mode: string;
	readonly channel: string;
}
interface FunctionAt extends ChannelAt {
	readonly name: string;
	readonly attribute: string;
}

/** What of a profile a GDTF file has no place for. */
export type NotWritten =
	| 'panel'
	| 'battery'
	| 'idle-watts'
	| 'settings'
	| 'programmes'
	| 'emitter-watts'
	| 'static-levels'
	| 'line';

export type LeftCode = keyof LeftFacts;

/** Every code, for what comes from outside. */
export const LEFT_CODES = Object.freeze([
	'other-files',
	'part-unused',
	'unreadable',
	'weight',
	'emitter-unused',
	'name-cut',
	'mode-refused',
	'mode-not-asked',
	'cells-differ',
	'virtual-channel',
	'slot-unused',
	'extra-bytes',
	'fine-of-bands',
	'not-acted',
	'shutter-between',
	'reversed',
	'other-master',
	'master-unknown',
	'colour-not-given',
	'colour-fitted',
	'colour-out-of-reach',
	'rate-clamped',
	'part-of-slot',
	'sets-dropped',
	'same-start',
	'set-outside',
	'cut-off-byte',
	'too-narrow',
	'resting-level',
	'beams-swapped',
	'beam-clamped',
	'beams-differ',
	'mixed-figures',
	'not-written',
	'name-changed',
	'cells-in-other-order',
	'cells-overlap',
] as const satisfies readonly LeftCode[]);

/** One loss of meaning: where in what was read (or written), what, and the facts for its sentence. */
export type Loss<Facts> = {
	[Code in keyof Facts]: {
		readonly path: string;
		readonly code: Code;
		readonly facts: Facts[Code];
		/** Why something in the file is not used. */
		readonly because?: Pick<InputError<ErrorCode>, 'code' | 'path' | 'facts'>;
	};
}[keyof Facts];
export type LeftOut = Loss<LeftFacts>;

/** What the file does not say and only the person can: the profile stands on a stand-in there. Words are in `content/en/gdtf`. */
export const ASKED_CODES = Object.freeze([
	'panel',
	'battery',
	'idle-watts',
	'power-link',
	'line',
	'follows',
	'settings',
	'static-colour',
	'programme',
	'emitters',
	'emitter-colour',
	'lumens',
	'emitter-lumens',
	'watts',
	'emitter-watts',
	'beam',
	'field',
	'strobe-rate',
] as const);
export type AskedCode = (typeof ASKED_CODES)[number];

/** A place of the profile that is assumed, and what was assumed. */
export interface Asked {
	/** Within the profile, as an error's path. */
	readonly path: string;
	readonly code: AskedCode;
	readonly facts: { readonly assumed: string | number };
}
