import { expect, test } from 'vitest';
import { filesUnder, textOf } from './tree.ts';

/** Where the kinds of device are: one file a floor. */
const OWN = ['shared/sheet/devices.ts', 'sim/line/devices.ts'];

// A splitter was a special case in 36 files; a wireless link would have been one in 45. What walks a rig asks a device for its
// ports, and its kind for the rest.
test('no code outside the kinds’ own files names a kind of box, permanent ids and the model’s page aside', () => {
	const code = ['shared', 'sim', 'src'].flatMap((floor) => filesUnder(floor, ['.ts', '.tsx', '.astro', '.css']));
	const named = code.filter((file) => !OWN.includes(file) && /splitter/i.test(textOf(file)));
	expect(named).toEqual([
		// the questions `splitter-after` and `terminator-place`, which are about splitters
		'shared/paper/ids.ts',
		'shared/paper/kinds/lines.ts',
		'shared/paper/schedule.ts',
		// a plan says where a line needs one, and slips and cables to bring say it again
		'shared/plan/cables.ts',
		'shared/plan/digests.ts',
		'shared/plan/line.ts',
		'shared/plan/sheet.ts',
		// the fault `split-without-splitter`
		'sim/fault/line.ts',
		// what the line's model leaves out
		'sim/line/index.ts',
		// the cause and reason `splitter-off`
		'sim/line/types.ts',
		'sim/rig/reason.ts',
		'sim/rig/whySource.ts',
		'sim/slip/slip.ts',
		// the faults of one are listed
		'src/features/reference/faults.ts',
		'src/features/rig-sheet/Figures.tsx',
		'src/features/rig-sheet/SlipBlock.tsx',
		// and what is printed of it names its ends
	]);
});
