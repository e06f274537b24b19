import type { MenuItem, Profile } from './schema.ts';

/** Whether an item, or one of its menu, says what profiles could not say at first. */
const isLater = (item: MenuItem): boolean =>
	(item.kind === 'menu' && item.items.some(isLater)) ||
	(item.kind === 'choice' && item.idle !== undefined) ||
	(item.kind === 'info' && item.shows === 'nothing');

/**
 * Whether a profile says what a site from before panels of one's own refuses: what is printed on keys, what a list offers besides, an
 * item that shows nothing. By presence, since such a site refuses an empty one too.
 */
export const needsLaterReader = ({ panel }: Profile): boolean =>
	panel.kind !== 'dip' && (panel.printed !== undefined || panel.menu.some(isLater));
