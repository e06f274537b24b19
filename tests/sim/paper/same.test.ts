import { expect, test } from 'vitest';
import { FIRST_KIND_IDS, KIND_IDS, type KindId, type PaperRecipeInput } from '../../../shared/paper/index.ts';
import { setRigPaper } from '../../../sim/paper/index.ts';

// A quiz is named by its recipe and seed alone, and an answer is marked against the quiz set anew. So the same two must set the same
// questions in every version to come: a quiz's own mark says so. Here is that of each kind alone, as set on 29 November 2026. A kind that
// must change is a new kind, or changes from a new version of recipes on, or the crews' links open on another quiz than was sent.

const FIRST: Readonly<Record<string, string>> = {
	'value-function': '9b55915df74c0eb5',
	'function-values': '1bc0efb5b989bc19',
	'band-edge': '4b385012b4e80ffd',
	'band-middle': 'cafaab0a316065c6',
	'percent-of-value': 'a53c784d2c6d144a',
	'value-of-percent': 'ca56162978b12026',
	'hex-of-value': '1a41f9e6d1a936ec',
	'value-of-hex': 'b0dcbbc7ff4608e2',
	'slot-does': 'cecd50610e57f1b2',
	'match-slots': '7439139d28de37a2',
	'bands-in-order': '18a823b775a81781',
	'desk-slot': 'c985555698563ce8',
	footprint: '26ae5fe7c694b14f',
	'last-slot': '4bb2450d3d129bfe',
	'next-free': 'c6a56632d87668a8',
	'nth-address': 'e130106441b6c0cf',
	overlaps: '3e7036d1a39bb5dd',
	'runs-past': 'e89f618535c36963',
	'how-many-fit': '8313818d632e99e9',
	'dip-to-address': 'c8f7182a70b7a9a9',
	'address-to-dip': '5e21c2d2140b8dc2',
	'coarse-fine': '0d464b6918dfcbe2',
	'value-of-pair': '9cf1751a0e020312',
	'frame-look': 'e75b16c1c95c1e4f',
	'follow-setting': '4a82b2211ac38c80',
	'row-roles': '8aec5f9bffdc5153',
	'display-says': 'b96e978d75006547',
	'first-check': 'c84c816413af6d3b',
	'caution-here': 'b40695c9e44e26e2',
	'on-the-bench': 'f096aae1df895293',
};

const ALL = '31c7eefced9a8300';

/** The same as papers of version 2 set it, on 30 November 2026. */
const SET: Readonly<Record<string, string>> = {
	'value-function': 'addcb8fa93f4982f',
	'function-values': '897f7aac5350189a',
	'band-edge': '93e5821d961cf282',
	'band-middle': '4d5053aa56c8c02a',
	'percent-of-value': '5a5e634316aac381',
	'value-of-percent': '20cc487e4892f596',
	'hex-of-value': '8f2e27dd2a353510',
	'value-of-hex': '8cd3088e2b24aaea',
	'slot-does': '6c3e5db59a9a8797',
	'match-slots': 'a51fac159516dbab',
	'bands-in-order': '930eb38c21b8664b',
	'desk-slot': '8050e4663aa4a02e',
	footprint: '9844f58d0d078c1a',
	'last-slot': '229c141ce46e3985',
	'next-free': '7c3b568c9ae78390',
	'nth-address': 'b80e93ff9681fcfa',
	overlaps: '33b479d20b818b3a',
	'runs-past': '748ac3f437e469f9',
	'how-many-fit': '071d894e5f6d9803',
	'dip-to-address': 'a16b0262abe0fa1a',
	'address-to-dip': '9c70b2d7716326e6',
	'coarse-fine': '6c23133c1d49437c',
	'value-of-pair': 'bada38f40549a7a8',
	'band-of-percent': '2ae7d9319fe81c7f',
	'percent-in-band': 'a677d3cd754719f6',
	'park-value': '5f2388e6794d6fe9',
	'fader-passes': '8fdd2b86183a5342',
	'gap-values': '84649b29a51f882f',
	'hours-left': 'ea36c08af9bea993',
	'fit-on-circuit': '3f5b178ec23c1172',
	'row-amps': '7737f05662d33435',
	'splitter-after': '95c059766edfb260',
	'terminator-place': '1c96283317cd891a',
	'lux-at-throw': '11e3ff529f0b7837',
	'pool-at-throw': 'f6f012e06b9997ec',
	'row-spacing': 'acb8d8644ae8cbf5',
	'bond-check': 'da39907bdfc0de87',
	'patch-against-panel': '1c86ee80c09f97cf',
	'frame-look': 'a7a9529803fe7d3d',
	'follow-setting': '0afa475933ff3d7f',
	'row-roles': 'bffc81d95018589f',
	'display-says': '801c2557227d08d3',
	'first-check': '9c305db4c14ab7bd',
	'caution-here': '0031a83b117ddf13',
	'on-the-bench': 'f217a594f2443827',
	'gate-slot': 'ab26a8123a59a77e',
};

test('every kind has its line', () => {
	expect(Object.keys(FIRST).sort()).toEqual([...FIRST_KIND_IDS].sort());
	expect(Object.keys(SET).sort()).toEqual([...KIND_IDS].sort());
});

/** A paper of one kind alone. */
function markOf(version: 1 | 2, kind: KindId): string {
	const { mark } = setRigPaper({ version, title: 'One kind', count: kind === 'first-check' ? 3 : 9, kinds: [kind] }, 7);
	return mark;
}

test.each([...FIRST_KIND_IDS])('%s, of version 1', (kind) => expect(markOf(1, kind)).toBe(FIRST[kind]));
test.each([...KIND_IDS])('%s', (kind) => expect(markOf(2, kind)).toBe(SET[kind]));

// what to check first on a rig with lights overhead, as set before the second edition of the faults and checks (eb25059e26ec)
test.each([
	[1, 7, '309452f4687f4c9d'],
	[1, 8, 'ee4eba9c95ddfd1e'],
	[1, 9, '22f253252c260297'],
	[1, 10, 'a6c50b0b6af27dd8'],
	[2, 7, '94fb06e01a71462f'],
	[2, 8, 'a7c21c0a29265786'],
	[2, 9, 'ebd45b8aed682833'],
	[2, 10, '94fa823b784fbf03'],
] as const)('first-check overhead, of version %i and seed %i', (version, seed, was) => {
	const recipe: PaperRecipeInput = {
		version,
		title: 'One kind',
		count: 3,
		kinds: ['first-check'],
		rig: 'two-universes',
	};
	expect(setRigPaper(recipe, seed).mark).toBe(was);
});

test('all kinds of version 1 are those there were', () => {
	const { mark } = setRigPaper({ version: 1, title: 'All', count: 30 }, 7);
	expect(mark).toBe(ALL);
});
