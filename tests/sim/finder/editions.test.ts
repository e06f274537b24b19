import { expect, test } from 'vitest';
import { bundledRig, RIG_IDS, type RigSheet } from '../../../shared/sheet/index.ts';
import { complaintsOf, meantWitness, offeredBy, openOutcomes } from '../../../sim/finder/index.ts';
import { boxed } from './boxed.ts';

/** Kinds of check on rigs of every sort, worked out from an edition of the catalogue: without the repairs, which go by the faults. */
function kindsIn(sheets: readonly RigSheet[], edition?: number): Set<string> {
	return new Set(
		sheets.flatMap((sheet) =>
			complaintsOf(meantWitness(sheet), sheet)
				.slice(0, 1)
				.flatMap((complaint) => offeredBy(openOutcomes(sheet, complaint, edition === undefined ? {} : { edition })))
				.flatMap(({ kind }) => (kind.startsWith('mend-') ? [] : kind)),
		),
	);
}

test('what is set from the first edition knows no check that came later', () => {
	const sheets = [...RIG_IDS.map(bundledRig), boxed];
	const first = kindsIn(sheets, 1);
	const later = [...kindsIn(sheets)].filter((kind) => !first.has(kind)).sort();
	expect(later).toEqual([
		'box-lamp',
		'breakers',
		'desk-live',
		'desk-sends',
		'row-right',
		'sensor-window',
		'socket-live',
	]);
});

test('a neighbour’s colour and brightness came with the row, its other looks before', () => {
	const [sheet, complaint] = [bundledRig('four-in-line'), { kind: 'dark', fixture: 'wash-3' }] as const;
	const idsIn = (edition: number) => offeredBy(openOutcomes(sheet, complaint, { edition })).map(({ id }) => id);
	const [before, now] = [idsIn(2), idsIn(3)];
	const came = now.filter((id) => !before.includes(id));
	expect(came).toEqual([
		'colour@wash-2',
		'brightness@wash-2',
		'colour@wash-4',
		'brightness@wash-4',
		'row-right@wash-3',
	]);
	expect(before.filter((id) => !now.includes(id))).toEqual([]);
});
