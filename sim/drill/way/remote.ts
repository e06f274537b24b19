import type { SettingKey, Settings } from '../../../shared/profile/index.ts';
import type { RemoteButton, RigEvent } from '../../event/index.ts';
import { remoteChange, sensorOf } from '../../fixture/index.ts';
import type { Rig, Unit } from '../../rig/index.ts';
import { allows, type Wish } from '../wish.ts';

/** Buttons that touch the same settings and no others: the fewest presses are found for each group by itself. */
interface Group {
	readonly keys: readonly SettingKey[];
	readonly buttons: readonly RemoteButton[];
}

/**
 * The fewest presses of the one remote that bring every fixture to its wish at once: it reaches all that listen, each press
 * the same to all of them. Searched breadth first over what those fixtures would come to.
 * @param wishes by fixture; one that does not hear must be right already, for nothing here changes it
 * @returns null where no presses do it
 */
export function remoteWay(rig: Rig, wishes: ReadonlyMap<string, Wish>): RigEvent[] | null {
	const units = [...wishes.keys()].map((id) => rig.gear.units.get(id)).filter((unit) => unit !== undefined);
	const hearers = units.filter((unit) => hears(rig, unit));
	const events: RigEvent[] = [];
	const reached = new Set<SettingKey>();
	for (const { keys, buttons } of groupsFor(hearers)) {
		for (const key of keys) reached.add(key);
		const presses = search(hearers, wishes, keys, buttons);
		if (!presses) return null;
		events.push(...presses.map((button): RigEvent => ({ type: 'remote.press', button })));
	}
	const right = (unit: Unit, isReached: boolean): boolean =>
		[...(wishes.get(unit.placed.id) ?? [])].every(
			([key, allowed]) => (isReached && reached.has(key)) || allows(allowed, unit.state.context.settings[key]),
		);
	return units.every((unit) => right(unit, hearers.includes(unit))) ? events : null;
}

function hears(rig: Rig, unit: Unit): boolean {
	const { remote } = rig.gear;
	return (
		remote?.battery === true &&
		sensorOf(unit.profile, unit.state) === 'listening' &&
		unit.state.context.settings.code === remote.code &&
		!unit.hidden &&
		!unit.condition.sensorDead
	);
}

function groupsFor(hearers: readonly Unit[]): Group[] {
	const held = new Set(hearers.flatMap(({ profile }) => profile.held.map(({ id }) => id)));
	const programmes = new Set(hearers.flatMap(({ profile }) => profile.programmes.map(({ id }) => id)));
	return [
		{
			keys: ['work', 'held', 'programme', 'strobe'],
			buttons: [
				...[...held].map((id): RemoteButton => `held:${id}`),
				...[...programmes].map((id): RemoteButton => `programme:${id}`),
			],
		},
		{ keys: ['level'], buttons: ['light', 'dark', 'brighter', 'dimmer'] },
		{ keys: ['speed'], buttons: ['faster', 'slower'] },
	];
}

interface Node {
	readonly settings: readonly Settings[];
	readonly before: Node | null;
	readonly button: RemoteButton | null;
}

function search(
	hearers: readonly Unit[],
	wishes: ReadonlyMap<string, Wish>,
	keys: readonly SettingKey[],
	buttons: readonly RemoteButton[],
): RemoteButton[] | null {
	const isMet = (node: Node): boolean =>
		hearers.every(({ placed }, i) =>
			keys.every((key) => {
				const allowed = wishes.get(placed.id)?.get(key);
				const settings = node.settings[i];
				return !allowed || !settings || allows(allowed, settings[key]);
			}),
		);
	const mark = (node: Node): string => node.settings.map((each) => keys.map((key) => each[key]).join()).join(' ');
	let edge: Node[] = [{ settings: hearers.map(({ state }) => state.context.settings), before: null, button: null }];
	const seen = new Set(edge.map(mark));
	while (edge.length > 0) {
		const found = edge.find(isMet);
		if (found) return pressesTo(found);
		const next: Node[] = [];
		for (const node of edge) {
			for (const button of buttons) {
				const settings = hearers.map(({ profile }, i) => {
					const before = node.settings[i] as Settings;
					return { ...before, ...remoteChange(profile, before, button) };
				});
				const to = { settings, before: node, button };
				const marked = mark(to);
				if (seen.has(marked)) continue;
				seen.add(marked);
				next.push(to);
			}
		}
		edge = next;
	}
	return null;
}

function pressesTo(end: Node): RemoteButton[] {
	const presses: RemoteButton[] = [];
	for (let node: Node | null = end; node?.button; node = node.before) presses.unshift(node.button);
	return presses;
}
