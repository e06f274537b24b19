import { type CautionId, cautions } from '#words/cautions/index.ts';
import { locale } from '#words/locale/index.ts';
import { answers, rigParts } from '#words/papers/index.ts';
import { sockets } from '#words/rig/index.ts';
import type { PanelKey, SettingKey } from '../../shared/profile/index.ts';
import { colourText } from './colour.ts';
import { type FactWords, fill, type TemplateFacts } from './fill.ts';
import { plainKinds, settingTitle } from './kinds.ts';
import { cableName } from './names.ts';
import { outputName } from './sheetNames.ts';

export { rigQuestions } from '#words/papers/index.ts';

/** A table as a plain fact holds it. */
type FlatTable = readonly (string | number)[];

const rows = (flat: unknown, width: number): FlatTable[] =>
	Array.isArray(flat)
		? Array.from({ length: Math.floor(flat.length / width) }, (_, i) => flat.slice(i * width, (i + 1) * width))
		: [];

const same = (text: string): string => text;

/** A list in full, however long. */
const every = (things: FlatTable): string => locale.list(things.map(String));

const inTurn = (things: FlatTable): string => things.join(`${answers.semicolon} `);

const partKinds: FactWords = { ...plainKinds, every, inTurn };

/** Slots of the desk with their levels; neighbours at one level are told together. */
function frameText(flat: FlatTable): string {
	const runs: { from: number; to: number; level: number }[] = [];
	for (const [slot, level] of rows(flat, 2) as [number, number][]) {
		const run = runs.at(-1);
		if (run && run.level === level && run.to === slot - 1) run.to = slot;
		else runs.push({ from: slot, to: slot, level });
	}
	return every(runs.map((run) => fill(rigParts.frame, { ...run, single: run.from === run.to })));
}

const pressText = ([key, times]: FlatTable): string => fill(rigParts.press, { key: key as PanelKey, times }, partKinds);

/** A display’s one line, or two. */
function linesText([first = '', second = '']: FlatTable): string {
	return second === '' ? fill(rigParts.quoted, { line: first }) : fill(rigParts.below, { first, second });
}

/** A socket of something that goes by its name: `wash 1:out`. */
function socketText(text: string): string {
	const colon = text.lastIndexOf(':');
	const socket = text.slice(colon + 1);
	const known =
		socket === 'in' || socket === 'out' ? sockets[socket] : fill(sockets.output, { id: socket.toUpperCase() });
	return fill(sockets.at, { device: text.slice(0, colon), socket: known });
}

/** How the facts of these questions are worded. They hold names already: whatever goes by one stands as it is. */
export const rigPaperKinds: FactWords = {
	name: same,
	mode: same,
	held: same,
	programme: same,
	names: every,
	counts: every,
	emitters: every,
	port: socketText,
	cable: cableName,
	output: outputName,
	colour: colourText,
	settingTitle: (key: SettingKey) => settingTitle(key),
	frame: frameText,
	reading: (flat: FlatTable) =>
		every(rows(flat, 3).map(([name, level, band]) => fill(rigParts.reading, { name, level, band }))),
	presses: (flat: FlatTable) => rows(flat, 2).map(pressText).join(rigParts.afterThat),
	lines: linesText,
	steps: (flat: FlatTable) =>
		every(
			rows(flat, 4).map(([key = '', times = 0, ...lines]) =>
				fill(rigParts.step, { press: pressText([key, times]), lines: linesText(lines) }),
			),
		),
	fields: (flat: FlatTable) =>
		every(rows(flat, 3).map(([title, switches, at]) => fieldText(String(title), String(switches), at))),
	cautions: (ids: readonly CautionId[]) => inTurn(ids.map((id) => cautions[id].title)),
};

const fieldText = (title: string, switches: string, at: unknown): string =>
	fill(rigParts.field, { title, at, switches: switches.split(' ') }, partKinds);

/** The lines of a chart that only these questions print. */
export function rigChartLines(facts: TemplateFacts): string[] {
	const { top, menu, inside, item, options } = facts as { [key: string]: string | FlatTable | null | undefined };
	const list = (things: unknown): things is FlatTable => Array.isArray(things) && things.length > 0;
	const within = (title: unknown, things: unknown): string[] =>
		list(things) ? [fill(rigParts.insideLine, { title, things }, partKinds)] : [];
	return [
		...rows(facts['bandChart'], 4).map(([slot, from, to, name]) =>
			fill(rigParts.bandLine, { slot, from, to, name, single: from === to }),
		),
		...rows(facts['row'], 6).map(([name, work, lead, mode, held, address]) =>
			fill(rigParts.rowLine, { name, work, lead, mode, held, address }),
		),
		...rows(facts['colours'], 2).map(([name, colour]) => fill(rigParts.colourLine, { name, colour })),
		...(list(top) ? [fill(rigParts.listLine, { things: top }, partKinds)] : []),
		...(menu ? within(menu, inside) : []),
		...(item ? within(item, options) : []),
		...rows(facts['fields'], 3).map(([title, switches]) => {
			const things = rows(facts['choices'], 3).flatMap(([field, at, choice]) =>
				field === title ? [fill(rigParts.choice, { at, title: choice })] : [],
			);
			return fill(rigParts.choicesLine, { title, switches: String(switches).split(' '), things }, partKinds);
		}),
	];
}
