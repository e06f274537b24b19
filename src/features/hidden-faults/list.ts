import type { CheckSort } from '../../../sim/finder/index.ts';
import type { CheckView } from './view.ts';

/** Checks in one place. */
export interface Place {
	readonly place: string;
	readonly checks: readonly CheckView[];
}

/** The checks of a sort (null for all) whose words hold every word searched for, by place, in the order of the list. */
export function listed(checks: readonly CheckView[], sort: CheckSort | null, search: string): readonly Place[] {
	const words = search.toLowerCase().split(/\s+/).filter(Boolean);
	const places = new Map<string, CheckView[]>();
	for (const check of checks) {
		if (sort !== null && check.sort !== sort) continue;
		const text = `${check.title} ${check.place} ${check.does}`.toLowerCase();
		if (!words.every((word) => text.includes(word))) continue;
		const there = places.get(check.place);
		if (there) there.push(check);
		else places.set(check.place, [check]);
	}
	return [...places].map(([place, there]) => ({ place, checks: there }));
}
