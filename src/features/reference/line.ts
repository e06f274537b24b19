import { locale } from '#words/locale/index.ts';
import { lineWords as words } from '#words/reference/index.ts';
import {
	breakToBreak,
	E131,
	EIA485,
	e131Lengths,
	hexOf,
	LAST_SLOT,
	LAST_UNIVERSE,
	mostReceivers,
	multicastAddress,
	PINS,
	refreshRate,
	START_CODES,
	TIMING,
} from '../../../shared/dmx/index.ts';
import { LINE_LIMITS } from '../../../sim/line/index.ts';
import { fill, startCodeWords } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

/** Pins of the smaller plug. */
const THREE = 3;
/** Universes with a row: the first, those round where a byte turns over, and the last. */
const UNIVERSES = [...Array.from({ length: 16 }, (_, i) => i + 1), 100, 255, 256, 257, 511, 512, 1000, LAST_UNIVERSE];
const RATES = [24, 64, 128, 256, LAST_SLOT];

const us = (n: number): string => fill(words.timing.microseconds, { n: locale.thousands(n) });
const seconds = (n: number): string => fill(words.timing.seconds, { n });

export function pinSection(): ReferenceSection {
	return {
		id: 'pins',
		heading: words.pins.heading,
		says: words.pins.says,
		tables: [
			{
				caption: words.pins.caption,
				head: words.pins.head,
				rows: PINS.map((wire, i) => [`${i + 1}`, words.pins.wires[wire], i < THREE ? words.pins.yes : words.pins.no]),
			},
		],
	};
}

export function limitSection(): ReferenceSection {
	const metres = (n: number): string => fill(words.limits.metres, { n });
	const figures: Record<keyof typeof words.limits.rows, string> = {
		loads: `${EIA485.mostUnitLoads}`,
		eighths: `${mostReceivers(1 / 8)}`,
		terminator: fill(words.limits.ohms, { n: EIA485.terminatorOhms }),
		terminators: `${LINE_LIMITS.terminators}`,
		metres: metres(LINE_LIMITS.dataMetres),
		open: metres(LINE_LIMITS.openMetres),
		microphone: metres(LINE_LIMITS.microphoneMetres),
		talkers: '1',
	};
	return {
		id: 'limits',
		heading: words.limits.heading,
		says: words.limits.says,
		tables: [
			{
				caption: words.limits.caption,
				head: words.limits.head,
				rows: Object.entries(words.limits.rows).map(([id, [what, source]]) => [
					what,
					figures[id as keyof typeof figures],
					source,
				]),
			},
		],
	};
}

export function timingSection(): ReferenceSection {
	const { transmitter: sent, receiver: taken } = TIMING;
	const figures: Record<keyof typeof words.timing.rows, readonly [sent: string, taken: string]> = {
		bit: [us(TIMING.bitUs), us(TIMING.bitUs)],
		slot: [us(TIMING.slotUs), us(TIMING.slotUs)],
		break: [us(sent.shortestBreakUs), us(taken.shortestBreakUs)],
		mark: [us(sent.shortestMarkAfterBreakUs), us(taken.shortestMarkAfterBreakUs)],
		shortest: [us(sent.shortestPacketUs), us(taken.shortestPacketUs)],
		longest: [seconds(sent.longestPacketUs / 1e6), seconds(taken.longestPacketUs / 1e6)],
		loss: ['', seconds(TIMING.lossOfDataMs / 1000)],
	};
	return {
		id: 'timing',
		heading: words.timing.heading,
		says: words.timing.says,
		tables: [
			{
				caption: words.timing.caption,
				head: words.timing.head,
				rows: Object.entries(words.timing.rows).map(([id, what]) => [what, ...figures[id as keyof typeof figures]]),
			},
			{
				caption: words.timing.rateCaption,
				head: words.timing.rateHead,
				rows: RATES.map((slots) => [
					locale.number(slots),
					us(breakToBreak(slots)),
					locale.number(refreshRate(slots), 1),
				]),
				look: 'grid',
			},
		],
	};
}

export function codeSection(): ReferenceSection {
	return {
		id: 'start-codes',
		heading: words.codes.heading,
		says: words.codes.says,
		tables: [
			{
				caption: words.codes.caption,
				head: words.codes.head,
				rows: START_CODES.map(({ code }) => [`${code}`, hexOf(code), startCodeWords(code)]),
			},
		],
	};
}

export function networkSection(): ReferenceSection {
	const facts = { port: E131.port, loss: E131.lossSeconds, bytes: e131Lengths(LAST_SLOT).packet };
	return {
		id: 'network',
		heading: words.network.heading,
		says: words.network.says.map((text) => fill(text, facts)),
		tables: [
			{
				caption: words.network.caption,
				head: words.network.head,
				rows: UNIVERSES.map((universe) => [`${universe}`, multicastAddress(universe)]),
				fold: 2,
				look: 'grid',
			},
		],
	};
}
