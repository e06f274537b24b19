import type { SheetCable } from '../../shared/sheet/index.ts';
import { actingSettings, driveOf, signalOf } from '../fixture/index.ts';
import {
	type DataSource,
	deskSource,
	type Harmless,
	harmless,
	type LineCause,
	leaderSource,
	receptions,
	segments,
	type Wiring,
} from '../line/index.ts';
import type { Gear, Unit } from './gear.ts';
import { type Reason, reason } from './reason.ts';
import { isLit, wiringOf } from './settle.ts';

/** Causes past which no frame comes; the others spoil what does come, and stop nothing by themselves. */
const DEAD: readonly LineCause['cause'][] = [
	'no-cable',
	'splitter-off',
	'bad-socket',
	'pair-open',
	'swapped',
	'receiver-dead',
];

/** Where the frames come from, and how they fare on the way. */
export function whySource(gear: Gear, unit: Unit): Reason[] {
	const reception = gear.receptions.get(unit.placed.id);
	if (!reception) return [];
	const { talker, path, causes, quality } = reception;
	const trail: Reason[] = [];
	const stops = stopsData(unit);
	if (talker?.kind === 'desk') {
		const output = gear.desk?.outputs.find((each) => each.id === talker.output);
		trail.push(reason('source.desk', 'passes', { universe: talker.universe, output: talker.output }));
		if (output && output.startCode !== 0) trail.push(reason('source.start-code', stops, { code: output.startCode }));
		if (gear.desk && gear.desk.master < 255) trail.push(reason('source.master', 'shapes', { level: gear.desk.master }));
	} else if (talker?.kind === 'leader') {
		const leader = gear.units.get(talker.fixture);
		trail.push(
			reason('source.leader', 'passes', {
				fixture: talker.fixture,
				mode: leader ? actingSettings(leader.state).mode : null,
			}),
		);
	} else if (causes.every(({ cause }) => cause !== 'collision')) trail.push(...whyNone(gear, unit, stops));
	for (const cause of causes) {
		const { cause: id, ...facts } = cause;
		if (id === 'no-talker') continue;
		const effect = quality === 'nothing' && DEAD.includes(id) ? stops : 'shapes';
		trail.push(reason(`line.${id}`, effect, { ...plainFacts(facts), rate: Math.round(reception.rate * 100) }));
	}
	for (const { cause, ...facts } of harmless(wiringOf(gear), unit.placed.id))
		trail.push(reason(`line.${cause}-yet`, 'passes', plainFacts(facts)));
	if (quality === 'nothing' && talker === null) trail.push(...looseCables(gear, unit, stops));
	if (causes.length === 0)
		trail.push(
			reason('line.clean', 'passes', {
				devices: path.map((hop) => hop.device),
				cables: path.flatMap((hop) => hop.cable ?? []),
			}),
		);
	return trail;
}

/** What a link does that lets no data past: the light stops with it, unless the fixture goes on by itself. */
function stopsData(unit: Unit): Reason['effect'] {
	const signal = signalOf(unit.state);
	return signal === 'none' || signal === 'dark' ? 'stops' : 'cuts';
}

/** Nobody sends its way: who would, and does not. */
function whyNone(gear: Gear, unit: Unit, effect: Reason['effect']): Reason[] {
	const wiring = wiringOf(gear);
	const would = (talker: DataSource) => isHeard(wiring, talker, unit.placed.id);
	const silent: Reason[] = [];
	const outputs = (gear.desk?.outputs ?? []).filter(({ id, universe }) => would(deskSource({ id, universe })));
	if (!gear.hallPower && outputs.some(({ on }) => on)) silent.push(reason('source.desk-off', effect, {}));
	for (const { id, on } of outputs) if (!on) silent.push(reason('source.output-off', effect, { output: id }));
	const leaders = leadersMissing(gear, unit).filter(({ placed: { id } }) => would(leaderSource(id)));
	for (const lead of ['on', 'off'] as const) {
		const fixtures = leaders.flatMap(({ placed, state }) => (actingSettings(state).lead === lead ? [placed.id] : []));
		if (fixtures.length > 0) silent.push(reason('source.leader-off', effect, { fixtures, set: lead === 'on' }));
	}
	return silent.length > 0 ? silent : [reason('source.none', effect, {})];
}

/** Fixtures that would lead but for their power; for one that follows, those too that make light of their own and keep it to themselves. */
function leadersMissing(gear: Gear, unit: Unit): Unit[] {
	return [...gear.units.values()].filter((each) => {
		const { work, lead } = actingSettings(each.state);
		if (each === unit || work === 'line' || work === 'follow') return false;
		return lead === 'on' ? !isLit(each) : isLit(each) && driveOf(unit.state) === 'following';
	});
}

/** Whether a talker's frames would come a fixture's way, if it talked and nobody else did: broken cables on the way are still a way. */
function isHeard(wiring: Wiring, talker: DataSource, fixture: string): boolean {
	return receptions({ ...wiring, talkers: [talker] }, [fixture]).get(fixture)?.talker?.port === talker.port;
}

/** Cables that hang loose at one end, with the other on this fixture's own line, on one that is fed, or at a source. */
function looseCables(gear: Gear, unit: Unit, effect: Reason['effect']): Reason[] {
	const { id } = unit.placed;
	const plugged = ({ from, to }: SheetCable) => (from === null) !== (to === null);
	if (!gear.cables.some(plugged)) return [];
	const lines = segments(wiringOf(gear)).filter(({ receivers, drives }) => receivers.includes(id) || drives.length > 0);
	const cables = gear.cables.filter((cable) => plugged(cable) && lines.some((line) => line.cables.includes(cable.id)));
	if (cables.length === 0) return [];
	const ports = cables.flatMap(({ from, to }) => from ?? to ?? []);
	return [reason('line.cable-loose', effect, { cables: cables.map((cable) => cable.id), ports })];
}

/** A cause's own facts as JSON: ids, numbers, lists of ids. */
function plainFacts(facts: Omit<LineCause | Harmless, 'cause'>): Reason['facts'] {
	return Object.fromEntries(
		Object.entries(facts).map(([key, value]) => [key, Array.isArray(value) ? value.map(plain) : plain(value)]),
	);
}

const plain = (value: unknown): string | number => {
	if (typeof value === 'number' || typeof value === 'string') return value;
	const talker = value as { kind: string; output?: string; fixture?: string };
	return talker.kind === 'desk' ? `desk:${talker.output}` : `${talker.fixture}`;
};
