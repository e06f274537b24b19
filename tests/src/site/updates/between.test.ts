import { expect, it } from 'vitest';
import { UNDER_WAY } from '../../../../src/site/updates/underWay.ts';
import { betweenTasks, type Locks } from '../../../../src/site/updates/watch.ts';

/** Locks as a browser keeps them for one site: each held by one, the next in line served when it is let go. */
function locksOf() {
	const held = new Map<string, Promise<void>>();
	const hold = (name: string): (() => void) => {
		let letGo = () => {};
		held.set(
			name,
			new Promise((resolve) => {
				letGo = () => {
					held.delete(name);
					resolve();
				};
			}),
		);
		return letGo;
	};
	const locks = {
		query: async () => ({ held: [...held.keys()].map((name) => ({ name })) }),
		request: async (name: string, act: () => unknown) => {
			await held.get(name);
			return act();
		},
	} as unknown as Locks;
	return { locks, hold };
}

// an update taken in one tab was taken everywhere at once: a drill half done in another was thrown away
it('waits for what is under way in every tab, and for what is begun meanwhile', async () => {
	const { locks, hold } = locksOf();
	const [one, two] = [hold(`${UNDER_WAY.lock}one`), hold(`${UNDER_WAY.lock}two`)];
	hold('something else of the site');
	let waits = 0;
	let isFree = false;
	const done = betweenTasks(locks, UNDER_WAY.lock, () => waits++).then(() => {
		isFree = true;
	});
	const settle = () => new Promise((resolve) => setTimeout(resolve));
	await settle();
	expect([waits, isFree]).toEqual([1, false]);
	one();
	const three = hold(`${UNDER_WAY.lock}three`);
	await settle();
	two();
	await settle();
	expect(isFree).toBe(false);
	three();
	await done;
	expect(waits).toBe(1);
});

it('waits for nothing where nothing is under way', async () => {
	let waits = 0;
	await betweenTasks(locksOf().locks, UNDER_WAY.lock, () => waits++);
	expect(waits).toBe(0);
});
