/** The version that new links have. Older ones are still read; a newer one is refused with a sentence. */
export const LINK_VERSION = 1;
