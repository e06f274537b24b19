import { expect, test } from 'vitest';
import { REPAIR_IDS } from '../../../sim/fault/index.ts';
import { isRepair, repairTriedBy, triedBy, triesKind } from '../../../sim/finder/index.ts';

test.each(REPAIR_IDS)('%s is read back out of its check, whatever the place is called', (id) => {
	for (const place of ['wash-2', 'wash-4:out', 'a@b', '']) {
		expect(repairTriedBy(triedBy({ id, place }))).toEqual({ id, place });
		expect(isRepair({ kind: triesKind(id) })).toBe(true);
	}
});

test.each(['lit@wash-2', 'mend-@wash-2', 'mend-nothing@wash-2', 'mend-switch-on', ''])(
	'%s tries no repair',
	(check) => {
		expect(repairTriedBy(check)).toBeNull();
	},
);
