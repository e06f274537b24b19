import { describe, expect, it } from 'vitest';
import { writeMvr } from '../../../../shared/mvr/index.ts';
import { emptyPlan, withRows } from '../../../../shared/plan/index.ts';
import { routes } from '../../../../src/features/mvr/routes.ts';
import { nameOf } from '../../../shared/plan/plans.ts';

const NONE = { types: {}, modes: {} };
const madeOf = (profile: string): Blob =>
	new Blob([new Uint8Array(writeMvr(withRows(emptyPlan('Test'), [{ profile }], nameOf)).bytes)]);

/** A file of which is counted how often it is read. */
function counted(whole: Blob): { readonly file: Blob; readonly reads: () => number } {
	let reads = 0;
	const file = {
		size: whole.size,
		slice(from: number, to: number) {
			reads++;
			return whole.slice(from, to);
		},
	} as Blob;
	return { file, reads: () => reads };
}

describe('an open rig file in the worker', () => {
	it('is read once for any number of picks, and anew after another, or once it was let go', async () => {
		const { file, reads } = counted(madeOf('tallow-6'));
		const read = (n: number, picks: typeof NONE = NONE) => routes.read({ file, n, own: [], picks });
		const first = await read(1);
		expect(first?.plan.rows).toMatchObject([{ profile: 'tallow-6' }]);
		const once = reads();
		expect(once).toBeGreaterThan(0);
		const spec = first?.kinds[0]?.spec ?? '';
		const other = await read(1, { types: { [spec]: 'picket-8' }, modes: {} });
		expect(other?.kinds[0]).toMatchObject({ by: 'picked', profile: { id: 'picket-8' } });
		expect(await read(1)).toEqual(first);
		expect(reads()).toBe(once);
		await routes.read({ file: madeOf('picket-8'), n: 2, own: [], picks: NONE });
		expect(await read(1)).toEqual(first);
		expect(reads()).toBe(2 * once);
		routes.letGo();
		await read(1);
		expect(reads()).toBe(3 * once);
	});

	it('is null where the device doesn’t hand it over, and what was read before is not taken for it', async () => {
		await routes.read({ file: madeOf('tallow-6'), n: 1, own: [], picks: NONE });
		const gone = {
			size: 100,
			slice: () => ({ arrayBuffer: () => Promise.reject(new DOMException('', 'NotReadableError')) }),
		} as unknown as Blob;
		for (let time = 0; time < 2; time++)
			expect(await routes.read({ file: gone, n: 2, own: [], picks: NONE })).toBeNull();
	});
});
