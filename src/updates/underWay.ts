import { useEffect } from 'preact/hooks';

/** Locks of tabs in which something is under way are called by this and a name of their own. */
export const UNDER_WAY = 'prep-bay.under-way.';
/** Told on this page when something begins or ends here. */
export const UNDER_WAY_HERE = 'prep-bay-under-way';

let count = 0;

/** Whether something is under way in this tab. The root says it, since a page's parts may each come with a copy of this. */
export const isUnderWayHere = (): boolean => Number(document.documentElement.dataset['underWay'] ?? 0) > 0;

function countHere(by: number): void {
	const { dataset } = document.documentElement;
	dataset['underWay'] = String(Number(dataset['underWay'] ?? 0) + by);
	dispatchEvent(new Event(UNDER_WAY_HERE));
}

/**
 * Says to every tab of the site that something is under way in this one: a new version waits for it. A browser ends it with the
 * tab; one without locks has no offline site either.
 * @returns the way to say that it is over
 */
function beginUnderWay(): () => void {
	countHere(1);
	let letGo = () => {};
	const over = new Promise<void>((done) => {
		letGo = done;
	});
	const name = `${UNDER_WAY}${performance.timeOrigin}.${count++}.${crypto.getRandomValues(new Uint32Array(1))[0]}`;
	navigator.locks?.request(name, () => over).catch(() => undefined);
	return () => {
		countHere(-1);
		letGo();
	};
}

/** Whether the page is in sight. */
const inSight = (): boolean => !document.hidden;

/**
 * Says so for as long as `active`. What is kept as it is done, and loses nothing by being loaded again, is under way only `whileSeen`:
 * a tab that lies behind others then holds no new version back.
 */
export function useUnderWay(active: boolean, whileSeen = false): void {
	useEffect(() => {
		if (!active) return;
		let end: (() => void) | null = null;
		const follow = () => {
			const is = !whileSeen || inSight();
			if (is) end ??= beginUnderWay();
			else {
				end?.();
				end = null;
			}
		};
		follow();
		document.addEventListener('visibilitychange', follow);
		return () => {
			document.removeEventListener('visibilitychange', follow);
			end?.();
		};
	}, [active, whileSeen]);
}
