import { describe, expect, it } from 'vitest';
import { stockNames } from '#words/stock/index.ts';
import { emptyPlan, type Plan, packed, withRows } from '../../../shared/plan/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { blankEntry, blankPanel, stockFixture } from '../../../shared/stock/index.ts';
import { slipFor } from '../../../sim/slip/index.ts';
import { stepText } from '../../../src/features/rig-sheet/SlipBlock.tsx';

/** A panel of three keys: holding the one that goes in leaves. */
const profile = stockFixture(
	{
		...blankEntry('own-1', 'Row wash', 0),
		chart: '3 channel mode\n1 Red\n2 Green\n3 Blue\n\n4 channel mode\n1 Dimmer\n2 Red\n3 Green\n4 Blue',
		panel: {
			...blankPanel('keys'),
			keys: [
				{ key: 'down', name: '-' },
				{ key: 'up', name: '+' },
				{ key: 'set', name: 'ENTER' },
			],
			menu: 'Data\n\tMode: 3CH, 4CH\n\tSignal loss: Hold, Blackout\nSetup\n\tAddress 1-512\n\tPanel lock: Off, On',
		},
	},
	stockNames,
).profile as Profile;

describe('the slip of a fixture whose panel its crew wrote down', () => {
	it('names keys by what is printed on them, and says how long to hold one that leaves', () => {
		const empty: Plan = { ...emptyPlan('Row'), profiles: [profile] };
		const { plan } = packed(
			withRows(empty, [{ profile: profile.id, mode: profile.modes[1]?.id ?? '' }], ({ name }, n) => `${name} ${n}`),
		);
		const row = { ...plan.rows[0], address: 3 } as Plan['rows'][number];
		const slip = slipFor({ ...plan, rows: [row] }, row);
		const texts = slip?.steps.map((step) => stepText(step, profile.panel)) ?? [];
		expect(texts.some((text) => text.startsWith('ENTER'))).toBe(true);
		expect(texts.some((text) => text.startsWith('Hold ENTER for 1 second'))).toBe(true);
		expect(texts.join('\n')).not.toMatch(/unlock|\bSet\b|\bUp\b|\bDown\b/);
	});
});
