import { expect, test } from 'vitest';
import { type Holders, takeHold } from '../../../src/storage/index.ts';

/** The browser's locks as far as they are used: one holder a name, `ifAvailable` and `steal`. */
function someLocks(): NonNullable<Holders['locks']> {
	const holders = new Map<string, () => void>();
	const request = (name: string, options: LockOptions, act: (lock: Lock | null) => unknown): Promise<unknown> => {
		if (holders.has(name) && !options.steal) return Promise.resolve(act(null));
		holders.get(name)?.();
		return new Promise((resolve, reject) => {
			holders.set(name, () => reject(new DOMException('stolen', 'AbortError')));
			Promise.resolve(act({ name, mode: 'exclusive' })).then((done) => {
				holders.delete(name);
				resolve(done);
			});
		});
	};
	return { request } as unknown as NonNullable<Holders['locks']>;
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

test('by locks: a second tab is told no; one that takes over tells the first; one let go is free again', async () => {
	const holders: Holders = { locks: someLocks(), channel: undefined };
	const lost: string[] = [];
	const first = await takeHold('paper', false, () => lost.push('first'), holders);
	expect(first).not.toBeNull();
	expect(await takeHold('paper', false, () => lost.push('second'), holders)).toBeNull();
	expect(await takeHold('another', false, () => {}, holders)).not.toBeNull();
	const third = await takeHold('paper', true, () => lost.push('third'), holders);
	await settled();
	expect(third).not.toBeNull();
	expect(lost).toEqual(['first']);
	third?.letGo();
	await settled();
	expect(await takeHold('paper', false, () => {}, holders)).not.toBeNull();
	expect(lost).toEqual(['first']);
});

test('with no locks: whoever comes last writes, and the one before is told', async () => {
	const holders: Holders = { locks: undefined, channel: (name) => new BroadcastChannel(name) };
	const lost: string[] = [];
	const first = await takeHold('paper', false, () => lost.push('first'), holders);
	const second = await takeHold('paper', false, () => lost.push('second'), holders);
	await new Promise((resolve) => setTimeout(resolve, 50));
	expect(lost).toEqual(['first']);
	first?.letGo();
	second?.letGo();
});

test('with neither, the paper can still be sat', async () => {
	const hold = await takeHold('paper', false, () => {}, { locks: undefined, channel: undefined });
	expect(hold).not.toBeNull();
	hold?.letGo();
});
