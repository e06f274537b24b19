/** The device's store, asked for late: a browser may refuse it by throwing. */
export type Store = () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;
