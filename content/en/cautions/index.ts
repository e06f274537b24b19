/**
 * What can hurt a person at this work, and the usual care against it, keyed by ids that lessons, drills and checks carry.
 * Every one defers: the place's own rules and the competent or licensed person on site come first. They say what a crew does as
 * common practice; they are no substitute for training, for the maker's manual, or for the law where you stand.
 */
export { type Caution, type CautionId, cautionIds, cautions, siteFirst } from './cautions.ts';
