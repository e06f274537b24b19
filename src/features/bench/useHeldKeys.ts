import { useEffect, useRef } from 'preact/hooks';
import type { PanelKey } from '../../../shared/profile/index.ts';
import { useBench } from './view.ts';

/** Keys of one panel as fingers hold them. */
export interface HeldKeys {
	down(key: PanelKey): void;
	up(key: PanelKey): void;
	/** Down and up at once, for what can only click. */
	tap(key: PanelKey): void;
	/** Lets go of whatever is down. */
	release(): void;
}

/** Sends a panel's keys to the rig, each press with its release, also when the fixture leaves the hand in between. */
export function useHeldKeys(fixture: string): HeldKeys {
	const { store } = useBench();
	const held = useRef(new Set<PanelKey>());
	const up = (key: PanelKey) => {
		if (held.current.delete(key)) store.send({ type: 'key.up', fixture, key });
	};
	const release = () => {
		for (const key of [...held.current]) up(key);
	};
	useEffect(() => {
		window.addEventListener('blur', release);
		return () => {
			window.removeEventListener('blur', release);
			release();
		};
	}, [store, fixture]);
	return {
		down(key) {
			if (held.current.has(key)) return;
			if (store.send({ type: 'key.down', fixture, key })) held.current.add(key);
		},
		up,
		tap: (key) => void store.send({ type: 'key.tap', fixture, key }),
		release,
	};
}
