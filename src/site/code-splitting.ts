import type { Rolldown } from 'vite';

export const codeSplitting: Exclude<Rolldown.OutputOptions['codeSplitting'], boolean | undefined> = {
	groups: [{ name: 'part', tags: ['$initial'], entriesAware: true, entriesAwareMergeThreshold: 20_000 }],
};
