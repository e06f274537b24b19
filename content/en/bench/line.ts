/** Words for a socket and what is in it. */
export const socketWords = {
	free: 'free',
	terminator: 'terminator',
	name: (port: string, state: string) => `${port}: ${state}`,
	taken: (port: string, what: string) => `${port} has ${what} in it. Press that first to take it out.`,
	unplugged: (cable: string, port: string) => `${cable} unplugged from ${port}.`,
	terminatorOut: (port: string) => `Terminator taken out of ${port}.`,
} as const;
