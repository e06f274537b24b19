import { type SheetCable, splitPort } from '../../../shared/sheet/index.ts';
import { driveOf, isPowered } from '../../fixture/index.ts';
import type { Rig, Unit } from '../../rig/index.ts';
import { contentOf } from '../witness.ts';

type Plugs = ReadonlyMap<string, readonly SheetCable[]>;

const known = new WeakMap<readonly SheetCable[], Plugs>();

/** Cables by what they are plugged into: a desk's socket, or a device through which they go on. */
function plugsOf(cables: readonly SheetCable[]): Plugs {
	let plugs = known.get(cables) as Map<string, SheetCable[]> | undefined;
	if (!plugs) {
		plugs = new Map();
		for (const cable of cables) {
			for (const port of [cable.from, cable.to]) {
				if (port === null) continue;
				const list = plugs.get(nodeOf(port));
				if (list) list.push(cable);
				else plugs.set(nodeOf(port), [cable]);
			}
		}
		known.set(cables, plugs);
	}
	return plugs;
}

/** A desk's sockets are apart from each other; what is plugged into any other device hangs together. */
const nodeOf = (port: string): string => (port.startsWith('desk:') ? port : splitPort(port).device);

/** A text for what is plugged into a fixture. */
export function pluggedInto({ gear }: Rig, fixture: string): string {
	const cables = plugsOf(gear.cables).get(fixture) ?? [];
	return `${cables.map(contentOf)},${gear.terminators.includes(`${fixture}:out`)}`;
}

/**
 * A text of all that decides what a fixture's data lamp does once the line is ended there: the fixture's own power and drive, and
 * everything that still hangs together with it through its in socket. What was past the cut cannot matter.
 */
export function wiredUpTo({ gear }: Rig, fixture: string): string {
	const plugs = plugsOf(gear.cables);
	const cut = `${fixture}:out`;
	const seen = new Set<string>([fixture]);
	let text = `${contentOf(gear.desk?.outputs)}${gear.hallPower}${contentOf(gear.boxes)}`;
	for (const node of seen) {
		const unit = gear.units.get(node);
		if (unit) text += nodeText(unit);
		for (const cable of plugs.get(node) ?? []) {
			if (cable.from === cut || cable.to === cut) continue;
			text += `,${contentOf(cable)}`;
			for (const port of [cable.from, cable.to]) if (port !== null) seen.add(nodeOf(port));
		}
	}
	for (const port of gear.terminators) if (seen.has(nodeOf(port))) text += `;${port}`;
	return `${text}#${lampOf(gear.units.get(fixture))}`;
}

const nodeTexts = new WeakMap<Unit, string>();

/** What a fixture on the way is to the line, whatever else it does. */
function nodeText(unit: Unit): string {
	let text = nodeTexts.get(unit);
	if (text === undefined) {
		const { receiverDead, badSocket, extraLoads } = unit.condition;
		const leads = driveOf(unit.state) === 'leading';
		text = `|${unit.placed.id}${leads ? 'L' : ''}${unit.plug !== 'none' ? 'e' : ''}${receiverDead ? 'd' : ''}${badSocket ?? ''}${extraLoads || ''}`;
		nodeTexts.set(unit, text);
	}
	return text;
}

/** What a fixture's data lamp hangs on in the fixture itself. */
function lampOf(unit: Unit | undefined): string {
	return unit ? `${isPowered(unit.state)}${driveOf(unit.state)}` : '';
}
