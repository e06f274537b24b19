import { describe, expect, test } from 'vitest';
import { receptions, segments, type Wiring } from '../../../sim/line/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { cable, chain, desk, leader, receiver, splitter } from './build.ts';

const line = chain(2);
const cases: [what: string, wiring: Wiring, code: string, path: string, sentence: string][] = [
	[
		'a fixture twice',
		{ ...line, receivers: [...line.receivers, receiver('w1')] },
		'line.device-twice',
		'receivers[2].fixture',
		'Every device needs an id of its own, but "w1" is there twice. Rename or remove one.',
	],
	[
		'a splitter called as a fixture is',
		{ ...line, boxes: [splitter('w2')] },
		'line.device-twice',
		'boxes[0].id',
		'Every device needs an id of its own, but "w2" is there twice. Rename or remove one.',
	],
	[
		'a fixture called desk',
		{ ...line, receivers: [receiver('desk')] },
		'line.device-twice',
		'receivers[0].fixture',
		'Every device needs an id of its own, but "desk" is there twice. Rename or remove one.',
	],
	[
		'a cable twice',
		{ ...line, cables: [...line.cables, cable('c1', null, null)] },
		'line.cable-twice',
		'cables[2].id',
		'Every cable needs an id of its own, but "c1" is there twice. Rename or remove one.',
	],
	[
		'a cable of no length',
		{ ...line, cables: [cable('c9', 'desk:a', 'w1:in', { length: 0 })] },
		'line.length',
		'cables[0].length',
		"A cable's length is a number of metres above 0, but cable c9 has 0. Measure it, or guess.",
	],
	[
		'a length that is no number',
		{ ...line, cables: [cable('c9', 'desk:a', 'w1:in', { length: Number.NaN })] },
		'line.length',
		'cables[0].length',
		"A cable's length is a number of metres above 0, but cable c9 has NaN. Measure it, or guess.",
	],
	[
		'loads below nothing',
		{ ...line, receivers: [receiver('w1', { unitLoads: -1 })] },
		'line.loads',
		'receivers[0].unitLoads',
		'Unit loads are a number from 0 up (1 for most receivers), but w1 has -1. Correct its profile.',
	],
	[
		'a talker twice',
		{ ...line, talkers: [leader('w1', 'in'), leader('w1', 'out')] },
		'line.talker-twice',
		'talkers[1]',
		'One socket has one source, but w1 is listed twice. Remove one of the two.',
	],
	[
		'a leader that is not there',
		{ ...line, talkers: [desk(), leader('w9')] },
		'line.leader-unknown',
		'talkers[1]',
		'A leader sends from a socket of its own and is one of the receivers, but w9 at w9:out isn’t. Add the fixture, or take the source away.',
	],
	[
		'a leader at somebody else’s socket',
		{ ...line, talkers: [{ kind: 'leader', fixture: 'w1', port: 'w2:out' }] },
		'line.leader-unknown',
		'talkers[0]',
		'A leader sends from a socket of its own and is one of the receivers, but w1 at w2:out isn’t. Add the fixture, or take the source away.',
	],
];

describe('wiring that cannot be is refused, by both doors', () => {
	test.each(cases)('%s', (_, wiring, code, path, sentence) => {
		for (const door of [receptions, segments]) {
			const error = thrownBy(() => door(wiring));
			expect({ code: error.code, path: error.path, sentence: errorText(error) }).toEqual({ code, path, sentence });
		}
	});
});
