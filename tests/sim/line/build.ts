import { boxesOf, noBoxes } from '../../../shared/sheet/index.ts';
import type { DataSource, LineCause, Receiver, Reception, Wiring } from '../../../sim/line/index.ts';
import { lineBox, receptions } from '../../../sim/line/index.ts';

type Cable = Wiring['cables'][number];
type Box = Wiring['boxes'][number];

/** A sound data cable of 5 m, or as told. */
export function cable(id: string, from: string | null, to: string | null, change: Partial<Cable> = {}): Cable {
	return {
		id,
		kind: 'data',
		length: 5,
		from,
		to,
		common: 'sound',
		minus: 'sound',
		plus: 'sound',
		swapped: false,
		...change,
	};
}

/** A sound receiver of one unit load on its battery, or as told. */
export function receiver(fixture: string, change: Partial<Receiver> = {}): Receiver {
	return { fixture, unitLoads: 1, earthed: false, dead: false, badSocket: null, ...change };
}

export function desk(output = 'a', universe = 1): DataSource {
	return { kind: 'desk', port: `desk:${output}`, output, universe };
}

export function leader(fixture: string, socket = 'out'): DataSource {
	return { kind: 'leader', port: `${fixture}:${socket}`, fixture };
}

export function splitter(id: string, outputs = 4, on = true): Box {
	const [box] = boxesOf({ ...noBoxes(), splitters: [{ id, name: id, outputs, on }] });
	if (!box) throw new Error('no box');
	return lineBox(box, true);
}

export function wiring(parts: Partial<Wiring>): Wiring {
	return { receivers: [], talkers: [desk()], cables: [], boxes: [], terminators: [], ...parts };
}

/** Fixtures `w1` to `wN` in a row: `head` to `w1:in` by cable `c1`, `w1:out` to `w2:in` by `c2`, a terminator in the last. */
export function chain(
	count: number,
	change: { head?: string; cables?: (k: number) => Partial<Cable>; receivers?: (k: number) => Partial<Receiver> } = {},
): Wiring {
	const numbers = Array.from({ length: count }, (_, i) => i + 1);
	return wiring({
		receivers: numbers.map((k) => receiver(`w${k}`, change.receivers?.(k))),
		cables: numbers.map((k) =>
			cable(`c${k}`, k === 1 ? (change.head ?? 'desk:a') : `w${k - 1}:out`, `w${k}:in`, change.cables?.(k)),
		),
		terminators: [`w${count}:out`],
	});
}

/** Changes the cables, by id, that are named. */
export function withCables(base: Wiring, changes: Record<string, Partial<Cable>>): Wiring {
	return { ...base, cables: base.cables.map((one) => ({ ...one, ...changes[one.id] })) };
}

/** What one fixture gets. */
export function at(base: Wiring, fixture: string): Reception {
	const found = receptions(base).get(fixture);
	if (found === undefined) throw new Error(`no reception for ${fixture}`);
	return found;
}

/** Quality of each receiver, in their order: `c`, `m` or `n`. */
export function qualities(base: Wiring): string {
	return [...receptions(base).values()].map((one) => one.quality.charAt(0)).join('');
}

/** A reception's causes by name. */
export function names(reception: Reception): LineCause['cause'][] {
	return reception.causes.map((one) => one.cause);
}

/** A path as one text: `desk c1 w1 c2 w2`. */
export function road(reception: Reception): string {
	return reception.path.map((step) => (step.cable === null ? step.device : `${step.cable} ${step.device}`)).join(' ');
}
