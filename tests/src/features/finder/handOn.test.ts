import { expect, test } from 'vitest';
import { errors } from '#words/errors/index.ts';
import { handOnWords } from '#words/finder/index.ts';
import { makeRandom } from '../../../../shared/random/index.ts';
import { bundledRig } from '../../../../shared/sheet/index.ts';
import { walkLink } from '../../../../src/features/finder/handOn.ts';
import type { FinderStore } from '../../../../src/features/finder/store.ts';
import { asidesIn, KEPT, LINK_BOUNDS } from '../../../../src/storage/index.ts';
import { memory } from '../../storage/memory.ts';
import { storeOn } from './parts.ts';

const SITE = 'https://example.org/finder/';

async function begun(store: FinderStore, isOwn = false): Promise<void> {
	await store.open();
	if (isOwn) await store.read(JSON.stringify(bundledRig('four-in-line')));
	else await store.choose({ kind: 'bundled', id: 'four-in-line' });
	await store.pickFixture('wash-3');
	await store.pickComplaint('dark');
	await store.allow({ without: ['spare-fixture'], showRunning: false, alone: true });
}

const linkOf = async ({ scene: { allows, walk } }: FinderStore): Promise<string> =>
	`${SITE}${await walkLink({ allows, walk })}`;

test.each([false, true])(
	'a walk handed on stands on the other device where it stood, at each step; own sheet: %s',
	async (isOwn) => {
		const first = storeOn().store;
		await begun(first, isOwn);
		for (let step = 0; step < 3; step++) {
			const other = storeOn().store;
			await other.open();
			await other.read(await linkOf(first));
			expect(other.scene).toMatchObject({ note: 'taken', trouble: null });
			expect(other.scene.view).toEqual(first.scene.view);
			expect(other.scene.allows).toEqual(first.scene.allows);
			const check = first.scene.view?.check;
			if (!check) throw new Error('this walk was to be longer');
			if (step === 1) await first.setAside(check.id, 'unsure');
			else await first.answer(check.id, check.answers[0]?.id ?? '');
		}
	},
);

test('the walk that stood there is set aside whole, and the plan it came from stays behind', async () => {
	const giver = storeOn().store;
	await begun(giver);
	const { allows, walk } = giver.scene;
	const device = memory();
	const { store } = storeOn(device);
	await store.open();
	await store.choose({ kind: 'bundled', id: 'one-wash' });
	await store.read(
		`${SITE}${await walkLink({ allows, walk: walk && { ...walk, plan: 'abc', counted: ['cable-out'] } })}`,
	);
	expect(store.scene.walk).toMatchObject({ rig: { id: 'four-in-line' }, fixture: 'wash-3', counted: [] });
	expect(store.scene.walk).not.toHaveProperty('plan');
	expect(store.scene.note).toBe('aside');
	const [aside, ...rest] = asidesIn(device.store);
	expect(rest).toEqual([]);
	expect(aside).toMatchObject({ why: 'link' });
	expect(aside?.text).toContain('one-wash');
});

test('a link that is cut short, or newer, is told, and the walk that stands here stays', async () => {
	const { store } = storeOn();
	await begun(store);
	const link = await linkOf(store);
	const { walk } = store.scene;
	for (const [text, says] of [
		[link.slice(0, -20), errors['link.damaged']],
		[link.replace('#walk=3.', '#walk=9.'), errors['link.version']],
		[`${SITE}#walk=3.`, errors['link.damaged']],
	] as const) {
		expect(await store.read(text)).toBe(false);
		expect(store.scene.trouble).toBe(says);
		expect(store.scene.walk).toEqual(walk);
	}
});

test('a walk that the other device would not read for its length gives no link', async () => {
	const { store } = storeOn();
	await begun(store, true);
	const { allows, walk } = store.scene;
	const called = (name: string) => {
		if (walk?.rig.kind !== 'sheet') throw new Error('no sheet of its own');
		return { allows, walk: { ...walk, rig: { ...walk.rig, sheet: { ...walk.rig.sheet, name } } } };
	};
	expect(await walkLink(called('four'))).toContain('#walk=');
	// some megabytes that pack well, of one byte a character and of three, and fewer that don't
	expect(await walkLink(called('a'.repeat(LINK_BOUNDS.characters)))).toBeNull();
	expect(await walkLink(called('\u2014'.repeat(LINK_BOUNDS.characters / 2)))).toBeNull();
	const random = makeRandom(1);
	const noise = Array.from({ length: 1_200_000 }, () => String.fromCharCode(33 + random.int(0, 89)));
	expect(await walkLink(called(noise.join('')))).toBeNull();
});

test('what to ask first stays over the next steps until it is dismissed, and goes when this walk is given up', async () => {
	const giver = storeOn().store;
	await begun(giver);
	const { store } = storeOn();
	await store.open();
	expect(await store.read(await linkOf(giver))).toBe(true);
	const check = store.scene.view?.check;
	await store.answer(check?.id ?? '', check?.answers[0]?.id ?? '');
	await store.back();
	expect(store.scene.note).toBe('taken');
	store.noted();
	expect(store.scene.note).toBeNull();
	await store.read(await linkOf(giver));
	expect(store.scene.note).not.toBeNull();
	await store.startAgain();
	expect(store.scene.note).toBeNull();
});

// the walk that came in was written over the old one, and the page said that the old one was set aside
test('where there is no room to set the walk aside, the one handed on is not taken, and all stands as it was', async () => {
	const giver = storeOn().store;
	await begun(giver, true);
	const link = await linkOf(giver);
	const first = memory();
	await begun(storeOn(first).store);
	const old = first.held.get(KEPT.walk.key) ?? '';
	// it can be written again where it stands, and nowhere else
	const device = memory({ [KEPT.walk.key]: old }, KEPT.walk.key.length + old.length);
	const { store } = storeOn(device);
	await store.open();
	const { walk, view, allows } = store.scene;
	expect(await store.read(link)).toBe(false);
	expect(store.scene).toMatchObject({ phase: 'walk', trouble: handOnWords.noRoom, note: null, walk, view, allows });
	expect(store.scene.stage).toBeNull();
	expect([...device.held]).toEqual([[KEPT.walk.key, old]]);
});

test('a walk that the device never kept is not given up for one handed on', async () => {
	const giver = storeOn().store;
	await begun(giver);
	const device = memory({}, 0);
	const { store } = storeOn(device);
	await store.open();
	await store.choose({ kind: 'bundled', id: 'one-wash' });
	const { walk } = store.scene;
	expect(await store.read(await linkOf(giver))).toBe(false);
	expect(store.scene).toMatchObject({ trouble: handOnWords.noRoom, walk });
	const { untaken } = store.scene;
	await store.startAgain();
	// what stood in its way is gone, and the link still waits
	expect(store.scene).toMatchObject({ phase: 'rig', trouble: handOnWords.waits, untaken });
	expect(await store.read(untaken ?? '')).toBe(true);
	expect(store.scene).toMatchObject({ note: 'taken', trouble: null, untaken: null });
});

test.each([false, true])(
	'what to ask first is there after a reload until it was read; a walk stood there: %s',
	async (stood) => {
		const giver = storeOn().store;
		await begun(giver);
		const device = memory();
		const first = storeOn(device).store;
		await first.open();
		if (stood) await first.choose({ kind: 'bundled', id: 'one-wash' });
		await first.read(await linkOf(giver));
		const note = stood ? 'aside' : 'taken';
		const again = storeOn(device).store;
		await again.open();
		expect(again.scene).toMatchObject({ note, trouble: null });
		// steps don't read it
		const check = again.scene.view?.check;
		await again.answer(check?.id ?? '', check?.answers[0]?.id ?? '');
		const third = storeOn(device).store;
		await third.open();
		expect(third.scene.note).toBe(note);
		third.noted();
		const fourth = storeOn(device).store;
		await fourth.open();
		expect(fourth.scene).toMatchObject({ phase: 'walk', note: null });
		expect(device.held.has(KEPT.handed.key)).toBe(false);
	},
);

test('what to ask of one walk is not asked of another, and one that can’t be told apart is asked of', async () => {
	const device = memory();
	await begun(storeOn(device).store);
	const noteWith = async (text: string) => {
		device.held.set(KEPT.handed.key, text);
		const { store } = storeOn(device);
		await store.open();
		return store.scene.note;
	};
	expect(await noteWith('{"version":1,"began":1,"note":"taken"}')).toBeNull();
	expect(await noteWith('{"vers')).toBe('taken');
	expect(await noteWith('{"version":2,"of":1}')).toBe('taken');
});

test('where the device takes the walk and not its note, the page says that it is not kept', async () => {
	const giver = storeOn().store;
	await begun(giver);
	const whole = memory();
	const { store } = storeOn(whole);
	await store.open();
	await store.read(await linkOf(giver));
	const walk = whole.held.get(KEPT.walk.key) ?? '';
	const device = memory({}, KEPT.walk.key.length + walk.length);
	const { store: small } = storeOn(device);
	await small.open();
	await small.read(await linkOf(giver));
	expect([...device.held.keys()]).toEqual([KEPT.walk.key]);
	expect(small.scene).toMatchObject({ kept: false, full: true });
});

test('the same said once more is counted once more, and what stands is not', async () => {
	const giver = storeOn().store;
	await begun(giver);
	const { store } = storeOn();
	await store.open();
	const told = () => [store.scene.troubleTold, store.scene.noteTold];
	await store.read(await linkOf(giver));
	await store.read(await linkOf(giver));
	expect(told()).toEqual([0, 2]);
	for (let time = 0; time < 2; time++) await store.read(`${SITE}#walk=3.`);
	expect(told()).toEqual([2, 2]);
	store.say(null);
	expect(told()).toEqual([2, 2]);
});
