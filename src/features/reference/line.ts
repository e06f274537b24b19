import { locale } from '#words/locale/index.ts';
import { levelWords, lineWords } from '#words/reference/index.ts';
import {
	breakToBreak,
	E131,
	EIA485,
	e131Lengths,
	hexOf,
	LAST_SLOT,
	LAST_UNIVERSE,
	levelOfPercent,
	levelsShownAs,
	mostReceivers,
	multicastAddress,
	PINS,
	percentOf,
	refreshRate,
	START_CODES,
	TIMING,
	TOP_LEVEL,
} from '../../../shared/dmx/index.ts';
import { LINE_LIMITS } from '../../../sim/line/index.ts';
import { fill, startCodeWords } from '../../wording/index.ts';
import type { ReferenceSection } from './types.ts';

/** Pins of the smaller plug. */
const THREE = 3;
/** Universes with a row: the first, those round where a byte turns over, and the last. */
const UNIVERSES = [...Array.from({ length: 16 }, (_, i) => i + 1), 100, 255, 256, 257, 511, 512, 1000, LAST_UNIVERSE];
const RATES = [24, 64, 128, 256, LAST_SLOT];

const us = (n: number): string => fill(lineWords.timing.microseconds, { n: locale.thousands(n) });
const seconds = (n: number): string => fill(lineWords.timing.seconds, { n });

export function pinSection(): ReferenceSection {
	return {
		id: 'pins',
		heading: lineWords.pins.heading,
		says: lineWords.pins.says,
		tables: [
			{
				caption: lineWords.pins.caption,
				head: lineWords.pins.head,
				rows: PINS.map((wire, i) => [
					`${i + 1}`,
					lineWords.pins.wires[wire],
					i < THREE ? lineWords.pins.yes : lineWords.pins.no,
				]),
			},
		],
	};
}

export function limitSection(): ReferenceSection {
	const metres = (n: number): string => fill(lineWords.limits.metres, { n });
	const figures: Record<keyof typeof lineWords.limits.rows, string> = {
		loads: `${EIA485.mostUnitLoads}`,
		eighths: `${mostReceivers(1 / 8)}`,
		terminator: fill(lineWords.limits.ohms, { n: EIA485.terminatorOhms }),
		terminators: `${LINE_LIMITS.terminators}`,
		metres: metres(LINE_LIMITS.dataMetres),
		open: metres(LINE_LIMITS.openMetres),
		microphone: metres(LINE_LIMITS.microphoneMetres),
		talkers: '1',
	};
	return {
		id: 'limits',
		heading: lineWords.limits.heading,
		says: lineWords.limits.says,
		tables: [
			{
				caption: lineWords.limits.caption,
				head: lineWords.limits.head,
				rows: Object.entries(lineWords.limits.rows).map(([id, [what, source]]) => [
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
	const figures: Record<keyof typeof lineWords.timing.rows, readonly [sent: string, taken: string]> = {
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
		heading: lineWords.timing.heading,
		says: lineWords.timing.says,
		tables: [
			{
				caption: lineWords.timing.caption,
				head: lineWords.timing.head,
				rows: Object.entries(lineWords.timing.rows).map(([id, what]) => [what, ...figures[id as keyof typeof figures]]),
			},
			{
				caption: lineWords.timing.rateCaption,
				head: lineWords.timing.rateHead,
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
		heading: lineWords.codes.heading,
		says: lineWords.codes.says,
		tables: [
			{
				caption: lineWords.codes.caption,
				head: lineWords.codes.head,
				rows: START_CODES.map(({ code }) => [`${code}`, hexOf(code), startCodeWords(code)]),
			},
		],
	};
}

export function networkSection(): ReferenceSection {
	const facts = { port: E131.port, loss: E131.lossSeconds, bytes: e131Lengths(LAST_SLOT).packet };
	return {
		id: 'network',
		heading: lineWords.network.heading,
		says: lineWords.network.says.map((text) => fill(text, facts)),
		tables: [
			{
				caption: lineWords.network.caption,
				head: lineWords.network.head,
				rows: UNIVERSES.map((universe) => [`${universe}`, multicastAddress(universe)]),
				fold: 2,
				look: 'grid',
			},
		],
	};
}

const SIDE = 16;
const EXAMPLE = 200;

/** A level over its percent, which never parts from its sign. */
const cell = (level: number): string => `${level} ${percentOf(level)}\u00a0%`;

/** Percents to levels. */
export function percentSection(): ReferenceSection {
	return {
		id: 'percent-to-level',
		heading: levelWords.percents.heading,
		says: levelWords.percents.says,
		tables: [
			{
				caption: levelWords.percents.caption,
				head: levelWords.percents.head,
				rows: Array.from({ length: 101 }, (_, percent) => {
					const level = levelOfPercent(percent);
					const shown = levelsShownAs(percent);
					const [from, to] = [shown[0], shown.at(-1)];
					return [
						`${percent} %`,
						`${level}`,
						hexOf(level),
						from === to ? `${from}` : fill(levelWords.percents.to, { from, to }),
					];
				}),
				fold: 3,
				look: 'grid',
			},
		],
	};
}

/** Levels to percent and hex: sixteen by sixteen. */
export function levelSection(): ReferenceSection {
	const digits = Array.from({ length: SIDE }, (_, n) => n.toString(SIDE).toUpperCase());
	return {
		id: 'level-to-percent',
		heading: levelWords.levels.heading,
		says: levelWords.levels.says.map((text) => fill(text, { example: EXAMPLE, hex: hexOf(EXAMPLE) })),
		tables: [
			{
				caption: fill(levelWords.levels.caption, { count: TOP_LEVEL + 1 }),
				head: [levelWords.levels.corner, ...digits.map((digit) => `_${digit}`)],
				rows: digits.map((digit, row) => [`${digit}_`, ...digits.map((_, column) => cell(row * SIDE + column))]),
				look: 'grid',
			},
		],
	};
}
