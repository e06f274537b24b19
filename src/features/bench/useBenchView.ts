import { useMemo, useRef } from 'preact/hooks';
import type { HandsOn as Touch } from '../../../sim/drill/index.ts';
import type { OnFrame, RigClock, RigStore } from '../rig/index.ts';
import { type InHand, stillHeld } from './hand.ts';
import type { BenchView, Sheet, Tool } from './view.ts';

interface Around {
	/** The fixture selected at first; the first of the row unless told. */
	readonly first: string | null;
	readonly hands: readonly Touch[] | undefined;
	/** Tools that what is to be done here needs: they are open from the start. */
	readonly startsOpen: readonly Tool[];
	/** Opens a fixture's reason trail; null where that is not to be asked. */
	readonly why: ((fixture: string) => void) | null;
	/** Those to be called with each frame, and the clock that calls them. */
	readonly listeners: Set<OnFrame>;
	readonly clock: { readonly current: RigClock | null };
	/** Says words to the screen reader alone. */
	readonly tell: { readonly current: (words: string) => void };
}

/** The bench as its parts see it: one object, whatever happens on the rig. */
export function useBenchView(store: RigStore, around: Around): BenchView {
	const { hands, startsOpen, why, listeners, clock, tell } = around;
	const person = useRef({
		picked: around.first,
		shown: 0,
		sheet: sheetFirst(startsOpen, hands),
		tool: startsOpen.find((tool) => tool !== 'desk') ?? null,
		held: null as InHand | null,
		next: { kind: 'data', length: 5 } as BenchView['next'],
	});
	return useMemo(() => {
		const watching = new Set<() => void>();
		const change = (part: Partial<typeof person.current>) => {
			Object.assign(person.current, part);
			for (const listener of [...watching]) listener();
		};
		return {
			store,
			subscribe(listener) {
				watching.add(listener);
				const stop = store.subscribe(listener);
				return () => {
					watching.delete(listener);
					stop();
				};
			},
			get selected() {
				const { picked } = person.current;
				const { gear, sheet } = store.rig;
				return picked !== null && gear.units.has(picked) ? picked : (sheet.fixtures[0]?.id ?? null);
			},
			get shown() {
				return person.current.shown;
			},
			select(picked) {
				const { shown, sheet } = person.current;
				change({ picked, shown: shown + 1, sheet: sheet === 'desk' ? 'desk' : 'panel' });
			},
			get sheet() {
				return person.current.sheet;
			},
			get tool() {
				return person.current.tool;
			},
			bring(part) {
				// the sheet stays: its button has the focus
				if (part === null) change({ tool: null });
				else if (part === 'panel' || part === 'desk') change({ sheet: part });
				else change({ tool: part, sheet: 'tools' });
			},
			get hand() {
				const { held } = person.current;
				return stillHeld(store.rig, held) ? held : null;
			},
			hold: (held) => change({ held }),
			onFrame(listener) {
				listeners.add(listener);
				// it is to be called once though nothing moves
				clock.current?.wake();
				return () => void listeners.delete(listener);
			},
			why,
			can: (touch) => hands?.includes(touch) ?? true,
			free: hands === undefined,
			tell: (words) => tell.current(words),
			get next() {
				return person.current.next;
			},
			setNext: (next) => change({ next }),
		};
	}, [store, hands, why, listeners, clock, tell]);
}

/** What a task is done with is up at first: a tool of its own, where the panel is out of hand. */
function sheetFirst([tool]: readonly Tool[], hands: readonly Touch[] | undefined): Sheet {
	if (tool === undefined || hands?.includes('panel')) return 'panel';
	return tool === 'desk' ? 'desk' : 'tools';
}
