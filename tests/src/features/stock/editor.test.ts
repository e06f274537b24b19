import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { cautions } from '#words/cautions/index.ts';
import type { ChartEntry } from '../../../../shared/stock/index.ts';
import Editor from '../../../../src/features/stock/Editor.tsx';
import { memory } from '../../storage/memory.ts';

const shown = (chart: string): string => {
	const entry: ChartEntry = {
		kind: 'chart',
		id: 'own-a',
		name: 'Row wash',
		chart,
		shape: 'wash',
		beam: null,
		watts: null,
		lumens: null,
		feed: null,
		wattHours: null,
		link: null,
		panel: null,
		changed: 0,
	};
	return renderToString(h(Editor, { entry, storage: memory().store, onDone: () => undefined }));
};
const told = (chart: string): string[] =>
	(['ultraviolet', 'flashing'] as const).filter((id) => shown(chart).includes(cautions[id].title));

// symptom: a fixture's card told of ultraviolet, and the editor it was made in did not. cause: only files had their cautions shown
test('the editor of a chart shows what can hurt with its fixture, before its label', () => {
	expect(told('1 Dimmer\n2 Red')).toEqual([]);
	expect(told('1 Dimmer\n2 UV')).toEqual(['ultraviolet']);
	expect(told('1 Red\n2 Strobe\n 0-9 open\n 10-255 strobe, slow to fast')).toEqual(['flashing']);
	expect(told('1 UV\n2 Macros\n 0-9 none\n 10-255 show')).toEqual(['ultraviolet', 'flashing']);
	// none while there is no fixture yet
	expect(told('1 UV 9-0 off')).toEqual([]);
});
