import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { checks } from '#words/checks/index.ts';
import { COMPLAINT_KINDS } from '../../../sim/finder/index.ts';
import { answerDrawing, ComplaintSign } from '../../../src/ui/index.ts';

describe('signs', () => {
	it('tell one complaint from another', () => {
		const drawn = COMPLAINT_KINDS.map((kind) => renderToString(h(ComplaintSign, { kind })));
		expect(new Set(drawn).size).toBe(drawn.length);
	});

	it('tell the answers to one check from each other, all of them or those that have one', () => {
		let signed = 0;
		for (const { spot, outcomes } of Object.values(checks)) {
			const drawn = Object.keys(outcomes).flatMap((id) => answerDrawing(spot, id) ?? []);
			expect(new Set(drawn).size).toBe(drawn.length);
			signed += drawn.length;
		}
		expect(signed).toBeGreaterThan(20);
	});

	it('of an indicator stand at each of its answers', () => {
		for (const kind of ['power-lamp', 'data-lamp', 'battery-lamp', 'sensor-lamp'])
			for (const id of Object.keys(checks[kind]?.outcomes ?? {}))
				expect(answerDrawing(checks[kind]?.spot ?? 'keys', id), `${kind} ${id}`).not.toBeNull();
	});
});
