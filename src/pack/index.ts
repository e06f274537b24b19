/**
 * Text packed for a link and unpacked again: deflated by the browser itself, and written in letters that an address may carry.
 * What comes from outside unpacks to null where it is damaged or stands for more than it may.
 */
export { fromBase64url, toBase64url } from './base64url.ts';
export { deflateText, inflateText } from './deflate.ts';
