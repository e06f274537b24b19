import type { JSX } from 'preact';
import { type MutableRef, useEffect, useRef, useState } from 'preact/hooks';
import type { Sight } from '../../../sim/rig/index.ts';
import { Live } from '../../ui/index.ts';
import type { RigStore } from '../rig/index.ts';

/** Least time between two tellings, ms: a screen reader is given time to finish. */
const QUIET_MS = 1200;

interface Props {
	store: RigStore;
	/** Set to what says more than the light does. */
	tell: MutableRef<(words: string) => void>;
}

/** A live region: each change of light in words, gathered so that it speaks at most every second or so. */
export function Told({ store, tell }: Props): JSX.Element {
	const [told, set] = useState({ text: '', turn: 0 });
	const before = useRef<ReadonlyMap<string, Sight> | null>(null);
	const asides = useRef<string[]>([]);
	const due = useRef(0);
	const ring = useRef(() => {});

	useEffect(() => {
		const lookAll = () => new Map(store.rig.sheet.fixtures.map(({ id }) => [id, store.look(id)]));
		let spokeAt = -QUIET_MS;
		before.current = lookAll();
		const speak = async () => {
			due.current = 0;
			const was = before.current ?? new Map<string, Sight>();
			const after = lookAll();
			before.current = after;
			const told = asides.current.splice(0);
			if (
				[...after].some(
					([id, { light }]) =>
						light !== was.get(id)?.light && JSON.stringify(light) !== JSON.stringify(was.get(id)?.light),
				)
			) {
				// fetched at the first change: a bench that is only looked at needs none of it
				const { changesBetween } = await import('./changes.ts');
				told.push(changesBetween(was, after, (id) => store.rig.gear.units.get(id)?.placed.name ?? id));
			}
			const text = told.filter(Boolean).join(' ');
			if (text === '') return;
			spokeAt = performance.now();
			set(({ turn }) => ({ text, turn: turn + 1 }));
		};
		ring.current = () => {
			if (due.current) return;
			// a moment for what belongs together, and a pause after what was said last
			due.current = window.setTimeout(speak, Math.max(150, spokeAt + QUIET_MS - performance.now()));
		};
		let version = store.version;
		const stop = store.subscribe(() => {
			if (version === store.version) return;
			version = store.version;
			ring.current();
		});
		return () => {
			stop();
			window.clearTimeout(due.current);
			due.current = 0;
		};
	}, [store]);

	tell.current = (words) => {
		asides.current.push(words);
		ring.current();
	};
	return <Live text={told.text} turn={told.turn} />;
}
