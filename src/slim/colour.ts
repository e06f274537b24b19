import type { Plugin } from 'vite';

/**
 * Modules of the colour library that this site never reaches, though its colour spaces name them: reading colours from text
 * (colours go in as numbers), strings and averages of colours, and CIE Lab and LCh, from which OKLab and OKLCh take their
 * shape and none of their arithmetic.
 */
const UNUSED =
	/[\\/]culori[\\/]src[\\/](parse|average|colors[\\/]named|interpolate[\\/]linear|fixup[\\/]\w+|\w+[\\/]parse\w+|lab[\\/]convert\w+)\.js$/;

const NAMES = [
	'useParser',
	'removeParser',
	'getParsers',
	'Tok',
	'average',
	'averageAngle',
	'averageNumber',
	'interpolatorLinear',
	'fixupAlpha',
	'fixupHueShorter',
	'fixupHueLonger',
	'fixupHueIncreasing',
	'fixupHueDecreasing',
];

const NOTHING = `const none = () => undefined;
export default none;
export { ${NAMES.map((name) => `none as ${name}`).join(', ')} };`;

/** Puts nothing in the place of what is never reached. A test holds the colours to those of the whole library. */
export function leanColour(): Plugin {
	return {
		name: 'prep-bay-lean-colour',
		enforce: 'pre',
		load: (id) => (UNUSED.test(id) ? NOTHING : null),
	};
}
