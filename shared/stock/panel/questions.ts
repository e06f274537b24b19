import type { KeyedPanel, MenuItem, PanelKey, PanelLaw, SettingKey } from '../../profile/index.ts';
import { ANSWERS, type Answers, type PanelEntry, type Question } from './entry.ts';

/** Round figures of ours for what no list tells, ms: common practice, no source. */
const MS = Object.freeze({ storesItself: 5000, rests: 15_000, holds: 1000 });

/** A question on how a panel acts: what may be answered, and what stands until it is. */
export interface Asked {
	readonly id: Question;
	readonly answers: readonly string[];
	/** Null while it is open. */
	readonly given: string | null;
	readonly assumed: string;
}

interface Has {
	readonly keys: readonly PanelKey[];
	readonly settings: ReadonlySet<SettingKey>;
	readonly hasNumbers: boolean;
}

/** What is there to be asked about, of a menu. */
export function hasOf({ keys }: Pick<PanelEntry, 'keys'>, menu: readonly MenuItem[]): Has {
	const items = menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
	return {
		keys: keys.map(({ key }) => key),
		settings: new Set(items.flatMap((item) => ('setting' in item ? [item.setting] : []))),
		hasNumbers: items.some(({ kind }) => kind === 'number'),
	};
}

/** The questions that a panel of this way and menu leaves, in the order they are asked. */
export function questionsFor({ way, answers }: Pick<PanelEntry, 'way' | 'answers'>, has: Has): Asked[] {
	const ask = (id: Question, assumed: string, of: readonly string[] = ANSWERS[id]): Asked => {
		const given = answers[id] ?? null;
		return { id, answers: of, given: given !== null && of.includes(given) ? given : null, assumed };
	};
	if (way === 'switches') return [ask('start', 'sum')];
	const opens = has.settings.has('lock') ? [ask('opens', way === 'flat' ? 'page' : 'set', has.keys)] : [];
	const ends = has.hasNumbers ? [ask('ends', 'stops')] : [];
	if (way === 'flat') return [...ends, ...opens];
	const rests = ['stays', ...(['address', 'mode'] as const).filter((key) => has.settings.has(key))];
	return [
		...(has.settings.size > 0 ? [ask('acts', 'stored'), ask('stores', 'key')] : []),
		// without a key that leaves, a long press does
		...(has.keys.includes('back') ? [ask('held', 'nothing')] : []),
		...(rests.length > 1 ? [ask('rests', 'stays', rests)] : []),
		...ends,
		...opens,
	];
}

/** What was answered, and what is assumed for the rest. */
export const settled = (asked: readonly Asked[]): Answers =>
	Object.fromEntries(asked.map(({ id, given, assumed }) => [id, given ?? assumed])) as Answers;

/** The law of a panel with keys, by the answers. */
export function lawFor(
	{ way, display, keys }: Pick<PanelEntry, 'way' | 'display' | 'keys'>,
	{ acts = 'stored', stores = 'key', held, rests = 'stays', opens }: Answers,
): PanelLaw {
	const has = (key: PanelKey): boolean => keys.some((each) => each.key === key);
	const first = keys[0]?.key ?? 'set';
	if (way === 'flat')
		return {
			shape: 'flat',
			acts: 'scrolling',
			stores: { after: MS.storesItself },
			unstored: 'blink',
			rests: null,
			long: null,
			opens: opens ?? (has('page') ? 'page' : first),
		};
	const leaves = held === 'back' || !has('back');
	return {
		shape: 'tree',
		acts,
		stores: stores === 'itself' ? { after: MS.storesItself } : 'enter',
		unstored: display === 'code' ? 'value' : 'arrow',
		rests: rests === 'stays' ? null : { on: rests, after: MS.rests },
		long: leaves ? { key: 'set', after: MS.holds, does: 'back' } : null,
		opens: opens ?? (has('set') ? 'set' : first),
	};
}

/** How keys repeat and how long they are held: round figures of ours. */
export const TIMES: Pick<KeyedPanel, 'repeat' | 'unlockHold' | 'lockAfter'> = Object.freeze({
	repeat: { after: 500, every: 120, quickAfter: 8, bigStep: 10 },
	unlockHold: 2000,
	lockAfter: 15_000,
});
