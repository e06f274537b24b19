/**
 * The licences of what others wrote and the site carries: at the end of a build their texts are gathered from the packages whose
 * modules, styles and typefaces went into it, into one text file that the about page links. Build-time code: no page loads it.
 */
export { licences } from './integration.ts';
