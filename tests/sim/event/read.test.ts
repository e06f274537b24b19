import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { LONGEST_LOG, readEvent, readLog } from '../../../sim/event/index.ts';
import { errorText } from '../../../src/wording/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../../shared/thrown.ts';
import { anyEvent } from '../rig/events.ts';
import { mixed } from '../rig/sheets.ts';

describe('a log from outside', () => {
	test('what a rig logs is read back as it was', () => {
		fc.assert(
			fc.property(fc.array(anyEvent(mixed), { maxLength: 30 }), (log) => {
				expect(readLog(JSON.parse(JSON.stringify(log)))).toEqual(JSON.parse(JSON.stringify(log)));
			}),
			{ numRuns: runs(200) },
		);
	});

	test('anything else is refused with its place and a sentence, and nothing else is thrown', () => {
		fc.assert(
			fc.property(fc.anything(), (junk) => {
				try {
					readLog(junk);
				} catch (error) {
					if (!isInputError(error)) throw error;
					expect(errorText(error)).toMatch(/\.$/);
				}
			}),
			{ numRuns: runs(500) },
		);
	});

	test('one broken event is named by its number', () => {
		const good = { type: 'key.tap', fixture: 'wash-1', key: 'set' };
		const error = thrownBy(() => readLog([good, { ...good, key: 'sideways' }]));
		expect([error.code, error.path]).toEqual(['event.shape', '[1].key']);
		expect(errorText(error)).toMatch(/can be opened without its log\.$/);
	});

	test('a hand-written event: bounds', () => {
		const refused: readonly (readonly [object, string])[] = [
			[{ type: 'clock.wait', ms: -1 }, 'ms'],
			[{ type: 'clock.wait', ms: Number.POSITIVE_INFINITY }, 'ms'],
			[{ type: 'clock.wait', ms: 1e12 }, 'ms'],
			[{ type: 'desk.level', universe: 1, slot: 513, level: 0 }, 'slot'],
			[{ type: 'desk.level', universe: 0, slot: 1, level: 0 }, 'universe'],
			[{ type: 'desk.level', universe: 1, slot: 1, level: 256 }, 'level'],
			[{ type: 'switch.flip', fixture: 'a', switch: 11, up: true }, 'switch'],
			[{ type: 'remote.press', button: 'held:<script>' }, 'button'],
			[{ type: 'settings.become', fixture: 'a', change: { address: 0 } }, 'change.address'],
			[{ type: 'nothing.known' }, 'type'],
		];
		for (const [event, path] of refused) expect(thrownBy(() => readEvent(event)).path).toBe(path);
	});

	test('a log has an end', () => {
		const error = thrownBy(() =>
			readLog(Array.from({ length: LONGEST_LOG + 1 }, () => ({ type: 'clock.wait', ms: 1 }))),
		);
		expect(error.code).toBe('log.length');
		expect(thrownBy(() => readLog({})).code).toBe('log.shape');
	});
});
