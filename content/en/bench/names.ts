/** What the things of the ready-made benches are called; whoever sets one up may call them otherwise. */
export const presetNames = {
	rig: 'Lantern Row Hall',
	desk: 'Prep desk',
	wash: (n: number) => `Wash ${n}`,
	bar: (n: number) => `Bar ${n}`,
	old: 'Old wash',
} as const;
