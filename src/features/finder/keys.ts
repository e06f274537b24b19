/** Where the finder keeps things on the device. What is damaged goes to the same name with `.damaged` behind it. */
export const KEPT_KEY = 'prep-bay.finder';
export const COUNTS_KEY = 'prep-bay.finder.verdicts';
export const KEPT_VERSION = 1;
export const COUNTS_VERSION = 1;
