/**
 * Words of the glossary, linked where a lesson first uses them. It is done when the site is built, on the lesson's own text, so
 * that lessons carry no links of their own and a page no script for it. What is already a link, a heading, code or a component is
 * left as it is; a term that is an everyday word too is left alone.
 */
export { type Found, finderOf } from './find.ts';
export { termLinks, withLinks } from './link.ts';
