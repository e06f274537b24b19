import { describe, expect, it } from 'vitest';
import { bundledProfile, type KeyedPanel, type PanelKey, type Profile } from '../../../../shared/profile/index.ts';
import { quickSheet } from '../../../../shared/sheet/index.ts';
import { itemAt } from '../../../../sim/fixture/index.ts';
import { openRig } from '../../../../sim/rig/index.ts';
import { keysText, waysOf } from '../../../../src/features/reference/panel.ts';

describe.each(['tallow-6', 'picket-8'])('ways through the panel of %s', (id) => {
	const profile = bundledProfile(id) as Profile;
	const panel = profile.panel as KeyedPanel;
	const ways = waysOf(profile, panel);

	it('lead there on the rig, pressed key by key', () => {
		for (const { item, keys } of ways) {
			const rig = openRig(quickSheet({ count: 1, linked: 'desk', profile: id }));
			const fixture = rig.sheet.fixtures[0]?.id ?? '';
			for (const key of keys) rig.send({ type: 'key.tap', fixture, key });
			const unit = rig.gear.units.get(fixture);
			expect(itemAt(panel, unit?.state.context.path ?? []).id).toBe(item.id);
		}
	});

	it('are the shortest: none is longer than going round the shorter way at both steps', () => {
		for (const { item, keys } of ways) {
			const top = panel.menu.findIndex((each) => each === item || (each.kind === 'menu' && each.items.includes(item)));
			const menu = panel.menu[top];
			const inner = menu?.kind === 'menu' ? menu.items.indexOf(item) : -1;
			const round = (at: number, of: number) => Math.min(at, of - at);
			const inside = menu?.kind === 'menu' ? 1 + round(inner, menu.items.length) : 0;
			expect(keys.length, item.id).toBe(round(top, panel.menu.length) + inside);
		}
	});
});

it('keys are told in runs', () => {
	const keys: PanelKey[] = ['down', 'down', 'set', 'up'];
	expect(keysText(keys)).toBe('Down × 2, Set, Up');
	expect(keysText([])).toBe('none: it stands there');
});
