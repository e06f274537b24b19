/** Both themes and both widths, not each with each: colours hang on the theme, and what stands where on the width. */
export const looks = [
	{ colorScheme: 'dark', width: 390 },
	{ colorScheme: 'light', width: 1280 },
] as const;
