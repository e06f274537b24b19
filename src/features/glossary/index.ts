/**
 * The glossary as its page shows it: terms under their first letter, each with its source in words and the names of what to read
 * next. Words come from `content/en/glossary`; the page carries no script.
 */
export { byLetter, type ShownTerm } from './view.ts';
