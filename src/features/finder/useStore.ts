import { useEffect, useState } from 'preact/hooks';
import type { Scene } from './scene.ts';
import type { FinderStore } from './store.ts';

/** The scene, drawn again whenever it changes. */
export function useScene(store: FinderStore): Scene {
	const [, turn] = useState(0);
	useEffect(() => store.subscribe(() => turn((n) => n + 1)), [store]);
	return store.scene;
}
