/** What a cable's conductors are when nothing is wrong with them. */
export const SOUND_WIRES = Object.freeze({ common: 'sound', minus: 'sound', plus: 'sound', swapped: false } as const);
