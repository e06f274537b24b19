/**
 * For who comes back: how far tonight's rig has come and what is next of it, and lessons, drills and review in one list by what is
 * due. An island that is hidden, and so is never fetched, until the early script of the page (`src/site/theme/early.js`) finds that
 * something is kept on the device. What is shown is decided in the plain files.
 */
export { NextUp } from './NextUp.tsx';
export { type Course, nextRows } from './view.ts';
