import type { PanelNames } from '../profile/index.ts';
import type { PrimaryId } from './attributes.ts';

/** Names for what a file leaves without one, from `content/`. */
export interface GdtfNames {
	/** A fixture whose file has no name, and what is said about it where the file says nothing. */
	readonly fixture: string;
	readonly about: string;
	/** A mode without a name, by its place from 1. */
	readonly mode: (place: number) => string;
	/** The one emitter of a fixture that drives none. */
	readonly light: string;
	/** The static colour of all emitters at full, and the programme, that a profile must have. */
	readonly full: string;
	readonly pulse: string;
	/** A slot without a function, and one that no channel of the file has. */
	readonly unused: string;
	readonly unusedAt: (slot: number) => string;
	/** A band without a function. */
	readonly noFunction: string;
	/** A finer byte of a slot that does nothing. */
	readonly fine: (slot: string) => string;
	readonly emitters: Readonly<Record<PrimaryId, string>>;
	readonly panel: PanelNames;
}
