import { feeds, remoteButtons } from '#words/rig/index.ts';
import type { Port } from '../../shared/sheet/index.ts';
import { fill } from './fill.ts';
import { listed, plainKinds } from './kinds.ts';
import { cableName, cableText, deviceName, fixtureName, type NameSource, portText } from './names.ts';

/** Most cables told with where they run; more go by their names alone. */
const TOLD_IN_FULL = 2;

/** Kinds whose ids are a rig's: fixtures, sockets, cables. Those that need nothing but the value are among them. */
export function rigKinds(rig: NameSource) {
	return {
		...plainKinds,
		name: (id: string) => fixtureName(rig, id),
		names: (ids: readonly string[]) => listed(ids.map((id) => fixtureName(rig, id))),
		device: (id: string) => deviceName(rig, id),
		port: (port: Port) => portText(port, rig),
		ports: (ports: readonly Port[]) => listed(ports.map((port) => portText(port, rig))),
		output: (id: string) => portText(`desk:${id}`, rig),
		cable: (id: string) => cableName(id),
		cableNames: (ids: readonly string[]) => listed(ids.map(cableName)),
		cables: (ids: readonly string[]) =>
			listed(ids.map((id) => (ids.length > TOLD_IN_FULL ? cableName(id) : cableText(rig, id)))),
		feed: (plug: string) =>
			plug === 'wall' || plug === 'none' ? feeds[plug] : fill(feeds.fixture, { name: fixtureName(rig, plug) }),
		button: (button: string) => buttonText(rig, button),
	};
}

/** A button of the remote. Colours and programmes go by the name that some fixture of the rig has for them. */
function buttonText(rig: NameSource, button: string): string {
	const [kind = '', id] = button.split(':');
	const words = (remoteButtons as Readonly<Record<string, string>>)[kind] ?? button;
	if (id === undefined) return words;
	for (const { profile } of rig.gear.units.values()) {
		const thing = (kind === 'held' ? profile.held : profile.programmes).find((each) => each.id === id);
		if (thing && profile.sensor) return fill(words, { name: thing.name });
	}
	return fill(words, { name: id });
}
