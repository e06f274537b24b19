import { useEffect } from 'preact/hooks';

/**
 * Keeps the screen from going dark while a component is there (W3C Screen Wake Lock): for what is read with both hands on gear. A device
 * that can't, or won't since its battery is low, dims as it always does.
 */
export function useAwake(): void {
	useEffect(() => {
		if (!('wakeLock' in navigator)) return;
		let held: WakeLockSentinel | null = null;
		let isOver = false;
		const hold = (): void => {
			// it is let go by the device itself whenever the page is out of sight
			if (document.visibilityState !== 'visible') return;
			navigator.wakeLock.request('screen').then(
				(lock) => {
					if (isOver) void lock.release();
					else held = lock;
				},
				() => undefined,
			);
		};
		hold();
		document.addEventListener('visibilitychange', hold);
		return () => {
			isOver = true;
			document.removeEventListener('visibilitychange', hold);
			void held?.release();
		};
	}, []);
}
