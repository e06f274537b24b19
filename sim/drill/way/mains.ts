import type { RigEvent } from '../../event/index.ts';
import type { Rig } from '../../rig/index.ts';
import { mainsRecord, wallEndOf } from '../harm.ts';
import type { Task } from '../types.ts';

/**
 * The plugs to move, with no link made or broken live: first the row's plug out of the wall, then the links, and into the wall last of
 * all (common practice, no source). One press moves a plug, and the fewest there can be are one for each that is to move, with one
 * more only where there is no way round it:
 * - for a plug that stands in the wall and should, where a link of its row is to be moved: out, and in again;
 * - for a link that stands right but was made live: out, and in again;
 * - for one plug of each ring of rows that stand in the wall and are to hang on each other: out, to be linked later;
 * - for a plug that is to go into the wall and now hangs, at however many removes, on its own row: out, since to link that row would
 *   close a circle.
 */
export function mainsWay(drill: Task, rig: Rig): RigEvent[] {
	const fed = new Map(drill.goal.flatMap((it) => (it.is === 'fed' ? [[it.fixture, it.from] as const] : [])));
	if (fed.size === 0) return [];
	const row = new Row(rig, fed);
	row.isolate();
	row.hangOnTheDead();
	row.unlinkRings();
	row.link();
	return row.events;
}

class Row {
	readonly events: RigEvent[] = [];
	/** Where each plug is now, as the events have moved it. */
	private readonly plugs: Map<string, string>;
	/** Where each should be: what the goal leaves open stays. */
	private readonly wanted: ReadonlyMap<string, string>;
	/** Links that stand right and were made live. */
	private readonly redo: readonly string[];

	constructor({ gear, sheet, log }: Rig, fed: ReadonlyMap<string, string>) {
		this.plugs = new Map([...gear.units].map(([id, { plug }]) => [id, plug]));
		this.wanted = new Map([...this.plugs].map(([id, plug]) => [id, fed.get(id) ?? plug]));
		const { madeLive } = mainsRecord(sheet, log);
		this.redo = [...madeLive.keys()].filter((id) => fed.get(id) === this.plugs.get(id));
	}

	/** Out of the wall: what should stand in nothing, and for a while what should stand in the wall and feeds a link that is to move. */
	isolate(): void {
		const moving = [...this.plugs.keys()].filter((id) => this.isLinkToMove(id));
		const touched = new Set(
			moving.flatMap((id) => [wallEndOf(this.plugs, id), wallEndOf(this.wanted, id)]).filter((end) => end !== null),
		);
		for (const [id, plug] of this.plugs) {
			if (plug !== 'wall') continue;
			const wanted = this.wanted.get(id);
			if (wanted === 'none' || (wanted === 'wall' && touched.has(id))) this.move(id, 'none');
		}
		for (const id of this.redo) this.breaks.add(id);
	}

	private readonly breaks = new Set<string>();

	private isLinkToMove(id: string): boolean {
		const [now, wanted] = [this.plugs.get(id), this.wanted.get(id)];
		if (now === wanted) return this.redo.includes(id);
		return this.isFixture(now) || this.isFixture(wanted);
	}

	/** Rows that stand in the wall and should hang on another: from the wall straight onto one that is dead by then. */
	hangOnTheDead(): void {
		for (;;) {
			const strays = [...this.plugs].flatMap(([id, plug]) =>
				plug === 'wall' && this.isFixture(this.wanted.get(id)) ? [id] : [],
			);
			if (strays.length === 0) return;
			const free = strays.find((id) => this.endOfWanted(id) === null);
			if (free !== undefined) this.move(free, this.wanted.get(free) ?? 'none');
			else this.move(inRing(strays[0] ?? '', (id) => this.endOfWanted(id)) ?? '', 'none');
		}
	}

	/** The wall's end of what a fixture should hang on, as the plugs are now. */
	private endOfWanted(id: string): string | null {
		return wallEndOf(this.plugs, this.wanted.get(id) ?? 'none');
	}

	/** Plugs that should be in the wall and hang on their own row, at however many removes: one of each ring comes out. */
	unlinkRings(): void {
		const next = (id: string): string | null => {
			const plug = this.plugs.get(id);
			return this.isFixture(plug) ? wallEndOf(this.wanted, plug) : null;
		};
		for (const [id, wanted] of this.wanted) {
			const ring = wanted === 'wall' ? inRing(id, next) : null;
			if (ring !== null) this.move(ring, 'none');
		}
	}

	/** All is dead now: links from the wall's end outwards, so that none closes a circle; then into the wall, what hangs on another first. */
	link(): void {
		for (const id of this.breaks) this.move(id, 'none');
		const depths = new Map([...this.plugs.keys()].map((id) => [id, this.depth(id)]));
		const left = [...this.plugs.keys()].filter((id) => this.plugs.get(id) !== this.wanted.get(id));
		const byDepth = (a: string, b: string): number => (depths.get(a) ?? 0) - (depths.get(b) ?? 0);
		const intoWall = left.filter((id) => this.wanted.get(id) === 'wall').sort((a, b) => byDepth(b, a));
		const links = left.filter((id) => this.wanted.get(id) !== 'wall').sort(byDepth);
		for (const id of [...links, ...intoWall]) this.move(id, this.wanted.get(id) ?? 'none');
	}

	/** How far from the end of its row a fixture is to hang, on the way through those that are not in the wall yet. */
	private depth(id: string): number {
		let count = 0;
		for (let at = id; count <= this.plugs.size; count++) {
			const wanted = this.wanted.get(at);
			const on = wanted === 'wall' ? this.plugs.get(at) : wanted;
			if (!this.isFixture(on)) break;
			at = on;
		}
		return count;
	}

	private isFixture(plug: string | undefined): plug is string {
		return plug !== undefined && this.plugs.has(plug);
	}

	private move(fixture: string, into: string): void {
		this.events.push({ type: 'mains.plug', fixture, into });
		this.plugs.set(fixture, into);
	}
}

/** Somebody on the ring that a walk from `start` ends in; null where the walk ends. */
function inRing(start: string, next: (id: string) => string | null): string | null {
	const seen = new Set<string>();
	for (let at: string | null = start; at !== null; at = next(at)) {
		if (seen.has(at)) return at;
		seen.add(at);
	}
	return null;
}
