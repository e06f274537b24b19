import * as v from 'valibot';
import { KEYS } from '../../profile/index.ts';
import { MOST_MENU } from './lines.ts';
import { PANEL_DISPLAYS, PANEL_WAYS } from './types.ts';

/** What a person can say of how a panel acts, by the question. Permanent. */
export const ANSWERS = Object.freeze({
	/** Does the light change while you scroll through a value? */
	acts: ['stored', 'scrolling'],
	/** Is a value kept by the key alone, or by itself too? */
	stores: ['key', 'itself'],
	/** What does holding the key that goes in do? */
	held: ['nothing', 'back'],
	/** What does it show once it is left alone? */
	rests: ['stays', 'address', 'mode'],
	/** Past the highest number: does it stop, or go round to the lowest? */
	ends: ['stops', 'round'],
	/** Which key, held, opens a locked panel? */
	opens: KEYS,
	/** Which address do nine switches have that are all down: none, or the first? */
	start: ['sum', 'sum-plus-one'],
} as const);

export type Question = keyof typeof ANSWERS;
export type Answers = { readonly [Id in Question]?: (typeof ANSWERS)[Id][number] };

const answer = <Id extends Question>(id: Id) => v.exactOptional(v.picklist(ANSWERS[id]));

/** What a person wrote of the panel of their own fixture. */
export const panelSchema = v.strictObject({
	way: v.picklist(PANEL_WAYS),
	display: v.picklist(PANEL_DISPLAYS),
	/** In the order they stand in, with what is printed on them; empty where nobody said. */
	keys: v.pipe(
		v.array(v.strictObject({ key: v.picklist(KEYS), name: v.pipe(v.string(), v.maxLength(12)) })),
		v.maxLength(5),
	),
	/** The menu as an indented list. */
	menu: v.pipe(v.string(), v.maxLength(MOST_MENU)),
	/** What was answered; a question that is not there is open. */
	answers: v.strictObject({
		acts: answer('acts'),
		stores: answer('stores'),
		held: answer('held'),
		rests: answer('rests'),
		ends: answer('ends'),
		opens: answer('opens'),
		start: answer('start'),
	}),
});

export type PanelEntry = v.InferOutput<typeof panelSchema>;

const FOUR = ['back', 'down', 'up', 'set'] as const;

/** Keys that each way has to begin with. */
export const USUAL_KEYS = Object.freeze({
	keys: FOUR,
	knob: ['left', 'right', 'set'],
	flat: ['page', 'down', 'up'],
	switches: [],
} as const);

/** What the keys of a panel may do, by its way. */
export const KEYS_OF = Object.freeze({
	keys: FOUR,
	knob: ['left', 'right', 'set', 'back'],
	flat: ['page', 'down', 'up'],
	switches: [],
} as const);

/** A panel of which nothing is said yet but how it works. */
export const blankPanel = (way: PanelEntry['way']): PanelEntry => ({
	way,
	display: way === 'flat' ? 'code' : 'text',
	keys: USUAL_KEYS[way].map((key) => ({ key, name: '' })),
	menu: '',
	answers: {},
});
