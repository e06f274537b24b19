import type { Plugin } from 'vite';

/** Modules of the colour library that read text; its converters name them and never reach them with numbers. */
const READERS = /[\\/]culori[\\/]src[\\/](parse|colors[\\/]named|\w+[\\/]parse\w+)\.js$/;

const NOTHING = `const none = () => undefined;
export default none;
export { none as useParser, none as removeParser, none as getParsers };
export const Tok = {};`;

/** Puts nothing in the place of the colour library's text readers. */
export function withoutColourText(): Plugin {
	return {
		name: 'prep-bay-without-colour-text',
		enforce: 'pre',
		load: (id) => (READERS.test(id) ? NOTHING : null),
	};
}
