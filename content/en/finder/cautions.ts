/** While the cautions of a check or a mend come, and where they do not. */
export const cautionWait = {
	coming: 'Getting the cautions for this…',
	failed: 'The cautions for this couldn’t be fetched. Leave it until they’re here.',
	again: 'Try again',
} as const;
