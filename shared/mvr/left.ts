import type { Loss } from '../gdtf/index.ts';

interface Named {
	/** What the fixture is called. */
	readonly name: string;
}
interface Linked {
	readonly from: string;
	readonly to: string;
}

/** What each loss of meaning between an MVR file and a plan carries for its sentence. Codes are permanent; words are in `content/en/mvr`. */
export interface MvrFacts {
	// ---- of the file ------------------------------------------------------------------------
	'files-unused': { readonly count: number };
	/** A part of the scene, or of fixtures, that nothing here can use, by the standard's name for it. */
	'part-unused': { readonly part: string; readonly count: number };
	'object-unused': { readonly kind: string; readonly count: number };
	layers: { readonly count: number };
	groups: { readonly count: number };
	// ---- of a kind of fixture ---------------------------------------------------------------
	'file-refused': { readonly spec: string };
	'file-missing': { readonly spec: string };
	'too-many-kinds': { readonly spec: string; readonly limit: number };
	/** A fixture that the plan would have to carry, beyond the most it carries. */
	'too-many-own': { readonly name: string; readonly count: number; readonly limit: number };
	'stand-in': { readonly name: string; readonly lost: number; readonly assumed: number };
	// ---- of a fixture -----------------------------------------------------------------------
	'fixture-left': Named & { readonly spec: string };
	'mode-left': Named & { readonly mode: string };
	'name-cut': Named & { readonly found: string };
	'name-made': Named;
	'uuid-twice': Named;
	turned: Named;
	depth: Named & { readonly metres: number };
	'no-place': Named;
	unreadable: Named & { readonly part: string; readonly found: string };
	moved: { readonly metres: number; readonly to: 'left' | 'right' };
	'place-cut': Named & { readonly of: 'along' | 'height'; readonly found: number; readonly metres: number };
	overhead: { readonly count: number; readonly metres: number };
	'address-bad': Named & { readonly found: string };
	'other-break': Named & { readonly break: number; readonly found: string };
	'not-patched': Named;
	multipatch: Named;
	// ---- of a connection --------------------------------------------------------------------
	'link-power': Linked;
	'link-unknown': Linked & { readonly socket: string };
	'link-nowhere': { readonly from: string };
	'link-branch': Linked;
	'link-across': Linked;
	'link-circle': Linked;
	// ---- of a plan that is written ----------------------------------------------------------
	'not-written': { readonly what: PlanPart };
	'place-changed': Named;
	'mode-doubled': Named & { readonly mode: string };
}

/** What of a plan an MVR file has no place for. */
export type PlanPart =
	| 'panels'
	| 'circuits'
	| 'labels'
	| 'throws'
	| 'tilts'
	| 'supply'
	| 'weights'
	| 'rules'
	| 'leader'
	| 'cables'
	| 'desk';

export type MvrCode = keyof MvrFacts;

/** Every code, for what comes from outside. */
export const MVR_CODES = Object.freeze([
	'files-unused',
	'part-unused',
	'object-unused',
	'layers',
	'groups',
	'file-refused',
	'file-missing',
	'too-many-kinds',
	'too-many-own',
	'stand-in',
	'fixture-left',
	'mode-left',
	'name-cut',
	'name-made',
	'uuid-twice',
	'turned',
	'depth',
	'no-place',
	'unreadable',
	'moved',
	'place-cut',
	'overhead',
	'address-bad',
	'other-break',
	'not-patched',
	'multipatch',
	'link-power',
	'link-unknown',
	'link-nowhere',
	'link-branch',
	'link-across',
	'link-circle',
	'not-written',
	'place-changed',
	'mode-doubled',
] as const satisfies readonly MvrCode[]);

/** One loss of meaning, as of a fixture file. */
export type MvrLeft = Loss<MvrFacts>;
