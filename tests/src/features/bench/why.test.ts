import { describe, expect, test } from 'vitest';
import { REASON_IDS, why } from '../../../../sim/rig/index.ts';
import { effectText } from '../../../../src/features/bench/why.ts';
import { scenes } from '../../wording/scenes.ts';

const trailOf = (id: keyof typeof scenes): string[] => {
	const { rig, fixture } = scenes[id]();
	return why(rig, fixture).map((reason) => `${reason.id}: ${effectText(reason)}`);
};

describe('the mark beside each link of a trail', () => {
	test('says of every link there is what it does', () => {
		for (const id of REASON_IDS) for (const line of trailOf(id)) expect(line).toMatch(/: [a-z ]+$/);
	});

	test('says where data stops, and what the fixture does without it', () => {
		// this one keeps its last look
		expect(trailOf('source.output-off')).toEqual(
			expect.arrayContaining(['source.output-off: data stops here', 'signal.holding: changes it']),
		);
		// this one has had no data yet
		expect(trailOf('line.splitter-off').slice(-2)).toEqual([
			'line.splitter-off: stops here',
			'signal.never: stops here',
		]);
		expect(trailOf('line.splitter-off')).not.toContain('light.shows: goes on');
	});

	test('says what a fixture does to others, and where the remote stops', () => {
		expect(trailOf('drive.leading')).toContain('drive.leading: goes on');
		expect(trailOf('drive.leading-not')).toContain('drive.leading-not: sends nothing');
		expect(trailOf('drive.remote-hidden')).toContain('drive.remote-hidden: the remote stops here');
	});
});
