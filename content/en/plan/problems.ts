import { locale } from '../locale/index.ts';

interface ProblemFacts {
	/** Names of the fixtures it is about. */
	readonly names: readonly string[];
	readonly from?: number;
	readonly to?: number;
	readonly last?: number;
	readonly universes?: number;
	readonly outputs?: number;
	readonly unitLoads?: number;
	readonly most?: number;
}

/** What is wrong, by its id. */
const problemWords = {
	clash: ({ names: [a, b], from, to }: ProblemFacts) =>
		`${a} and ${b} share ${from === to ? `channel ${from}` : `channels ${from} to ${to}`}.`,
	'same-address': ({ names: [a, b] }: ProblemFacts) =>
		`${a} and ${b} are on one start address. They move as one. Leave it if you mean that.`,
	'past-512': ({ names: [a], last }: ProblemFacts) => `${a} would end at ${last}. A universe ends at 512.`,
	'panel-mode': ({ names: [a] }: ProblemFacts) => `${a} shows another mode on its panel than the plan has.`,
	'panel-address': ({ names: [a] }: ProblemFacts) => `${a} shows another start address on its panel than the plan has.`,
	'no-such-address': ({ names: [a] }: ProblemFacts) => `The panel of ${a} can’t be set to its start address.`,
	'cannot-lead': ({ names: [a] }: ProblemFacts) => `${a} is first in line and can’t lead. Put another first.`,
	'cannot-follow': ({ names: [a] }: ProblemFacts) => `${a} can’t follow a leader.`,
	'follower-kind': ({ names: [a, b] }: ProblemFacts) =>
		`${b} follows ${a}, which is another kind of fixture. Colours will be wrong.`,
	'follower-mode': ({ names: [a, b] }: ProblemFacts) =>
		`${b} follows ${a} and is in another mode. Colours will be wrong.`,
	'follower-address': ({ names: [a] }: ProblemFacts) =>
		`${a} follows from its own start address. A leader sends from 1, so it must be at 1.`,
	'fed-twice': ({ names: [from, a, b] }: ProblemFacts) =>
		`${a} and ${b} are both fed from ${from} in the plan. Its data out takes one cable.`,
	'fed-in-circle': ({ names: [a] }: ProblemFacts) =>
		`The cables that feed ${a} go round in a circle. No data comes in there.`,
	'leader-fed': ({ names: [a, b] }: ProblemFacts) =>
		`${a} leads, and the plan feeds it from ${b}. A leader’s data in stays empty.`,
	'too-many-loads': ({ unitLoads, most }: ProblemFacts) =>
		`The line behind the leader carries ${locale.number(unitLoads ?? 0)} unit loads, and a line takes ${most}. Take fixtures off it, or use a desk and a splitter.`,
	universes: ({ universes, outputs }: ProblemFacts) =>
		`The plan uses ${universes} universes, and a desk here has ${outputs} outputs. Take modes with fewer channels, or split the rig.`,
} as const;

/** What is wrong, as a sentence. */
export const problemText = (is: keyof typeof problemWords, facts: ProblemFacts): string => problemWords[is](facts);

interface RepairFacts {
	readonly name: string;
	readonly address: string;
	readonly mode: string;
	readonly count: number;
	/** What is to feed it. */
	readonly from: string;
	/** What feeds it, and another too. */
	readonly after: string;
	/** Its label is written, and is wrong after. */
	readonly isLabelled: boolean;
}

const repairs = {
	move: ({ name, address, isLabelled }: RepairFacts) =>
		`Move ${name} to ${address}${isLabelled ? '. Its label will be wrong: write a new one' : ''}`,
	mode: ({ name, mode }: RepairFacts) => `Put ${name} in mode ${mode}`,
	'use-shown': () => 'Plan what the panel shows',
	feed: ({ name, from, after }: RepairFacts) => `Feed ${name} from ${from}, the last that is fed on from ${after}`,
	along: ({ name }: RepairFacts) => `Let the cable to ${name} go along the room`,
	pack: ({ count }: RepairFacts) => `Give out start addresses again (${locale.number(count)} change)`,
} as const;

/** What one tap does, as a button says it. */
export const repairText = (does: keyof typeof repairs, facts: RepairFacts): string => repairs[does](facts);
