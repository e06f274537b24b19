import { expect, test } from 'vitest';
import { KIND_IDS } from '../../../shared/paper/index.ts';
import { setRigPaper } from '../../../sim/paper/index.ts';

// A quiz is named by its recipe and seed alone, and an answer is marked against the quiz set anew. So the same two must set the same
// questions in every version to come: a quiz's own mark says so. Here is that of each kind alone, as set on 29 November 2026. A kind that
// must change is a new kind, or the crews' links open on another quiz than was sent.

const SET: Readonly<Record<string, string>> = {
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

test('every kind has its line', () => {
	expect(Object.keys(SET).sort()).toEqual([...KIND_IDS].sort());
});

test.each([...KIND_IDS])('%s', (kind) => {
	const { mark } = setRigPaper(
		{ version: 1, title: 'One kind', count: kind === 'first-check' ? 3 : 9, kinds: [kind] },
		7,
	);
	expect(mark).toBe(SET[kind]);
});
