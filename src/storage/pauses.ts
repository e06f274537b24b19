/** Longest a page is worked on at a stretch, ms: a key pressed meanwhile is answered within some tens of milliseconds. */
const STRETCH_MS = 25;

/** Lets the page draw, and take what was pressed. Not by a timer: those come once a second where a tab lies behind others. */
const letGo = (): Promise<void> =>
	new Promise((resolve) => {
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = () => {
			port1.close();
			resolve();
		};
		port2.postMessage(null);
	});

/**
 * Pauses for long work on a page: call it between small steps, each far shorter than a stretch, and wait for what it returns, if
 * anything; it lets the page in once a stretch is over.
 * @param clock milliseconds that never fall
 * @param rest how the page is let in
 */
export function pauses(
	clock: () => number = () => performance.now(),
	rest: () => Promise<void> = letGo,
): () => Promise<void> | null {
	let began = clock();
	return () => {
		if (clock() - began < STRETCH_MS) return null;
		return rest().then(() => {
			began = clock();
		});
	};
}
