import { expect, test } from 'vitest';
import { bundledRig } from '../../../shared/sheet/index.ts';
import { openRig } from '../../../sim/rig/index.ts';

// Symptom: a slide that moved nothing left the rig's own tests green. Cause: only the fixture by itself was tried.
test('a hand on a slide or a switch moves it, and what it means, on that fixture alone', () => {
	const rig = openRig(bundledRig('mixed-panels'));
	const backOf = (id: string) => rig.look(id).display;
	const settingsOf = (id: string) => rig.gear.units.get(id)?.state.context.settings;
	const [mine, other] = [backOf('old-1'), backOf('old-2')];
	if (mine.kind !== 'switches') throw new Error('this one was to have switches');
	const [slide] = mine.slides;
	if (!slide) throw new Error('this one was to have slides');
	const to = slide.position === 0 ? 1 : 0;
	rig.send({ type: 'slide.move', fixture: 'old-1', slide: slide.id, to });
	expect(backOf('old-1')).toMatchObject({ slides: [{ id: slide.id, position: to }, ...mine.slides.slice(1)] });
	const address = settingsOf('old-1')?.address;
	rig.send({ type: 'switch.flip', fixture: 'old-1', switch: 1, up: !mine.up[0] });
	expect(backOf('old-1')).toMatchObject({ up: mine.up.with(0, !mine.up[0]) });
	expect(settingsOf('old-1')?.address).not.toBe(address);
	expect(backOf('old-2')).toEqual(other);
});
