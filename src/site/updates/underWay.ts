import { useEffect } from 'preact/hooks';

/** The names by which what is under way is known. */
export interface UnderWayNames {
	/** Locks of tabs in which something is under way are called by this and a name of their own. */
	readonly lock: string;
	/** The event on a page when something begins or ends there. */
	readonly told: string;
	/** How many things are under way on a page, in the data of its root. */
	readonly count: string;
}

/** A page hands these to its own small script in its markup: were they fetched, each page of words would bring a script file. */
export const UNDER_WAY: UnderWayNames = Object.freeze({
	lock: 'prep-bay.under-way.',
	told: 'prep-bay-under-way',
	count: 'underWay',
});

let count = 0;

function countHere(by: number): void {
	const { dataset } = document.documentElement;
	dataset[UNDER_WAY.count] = String(Number(dataset[UNDER_WAY.count] ?? 0) + by);
	dispatchEvent(new Event(UNDER_WAY.told));
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
	const name = `${UNDER_WAY.lock}${performance.timeOrigin}.${count++}.${crypto.getRandomValues(new Uint32Array(1))[0]}`;
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
