/**
 * Text packed for a link and unpacked again: deflated by the browser itself, and written in letters that an address may carry.
 * What comes from outside unpacks to null where it is damaged or stands for more than it may, and its JSON is held to bounds on the
 * text, before anything is made of it; long work on it pauses for the page. All that reads a link or a file of ours reads it by these.
 */
export { fromBase64url, toBase64url } from './base64url.ts';
export { deflateText, inflateText } from './deflate.ts';
export { endOfJson, type JsonBounds, type JsonTrouble, LINK_BOUNDS, readJson } from './json.ts';
export { pauses } from './pauses.ts';
