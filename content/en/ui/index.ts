/** Words of the parts that all pages share. */
export const partWords = { caution: 'Caution', off: 'Off', on: 'On' } as const;
