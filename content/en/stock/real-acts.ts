/** Of what does nothing here, and may do much on the real fixture: one sentence wherever that is said. */
export const REAL_ACTS = 'The real one acts, and may flash. Look in the manual, and warn people before you try it.';
