import { expect, test } from 'vitest';
import { runs } from '../../runs.ts';
import { freshRig, itemsOf, profileOf } from './items.ts';

/** Whether a fixture shows one emitter at full in every cell, still, and nothing else. */
function showsAlone(item: ReturnType<typeof itemsOf>[number], change: { slot: number; level: number } | null): boolean {
	const rig = freshRig(item);
	const id = item.bench?.fixtures[0]?.id ?? '';
	if (change) rig.send({ type: 'desk.level', universe: 1, ...change });
	const { light } = rig.look(id);
	const at = profileOf(item).emitters.findIndex(({ name }) => name === item.facts['colour']);
	const isAlone = light.cells.every(({ levels }) =>
		levels.every((level, i) => (i === at ? level > 0.99 : level < 0.01)),
	);
	return isAlone && light.flashes === 0 && !light.moving;
}

test('the colour is kept in as it stands, and the right move alone lets it out: each played on the bench', () => {
	for (const item of itemsOf('gate-slot', runs(60, 10_000))) {
		if (item.ask.form !== 'one' || item.key.form !== 'one') throw new Error('one is right');
		expect(showsAlone(item, null)).toBe(false);
		for (const { id, label } of item.ask.options) {
			const change = { slot: Number(label.facts['n']), level: Number(label.facts['level']) };
			expect(showsAlone(item, change), JSON.stringify(label)).toBe(id === item.key.right);
		}
	}
});
