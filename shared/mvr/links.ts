import type { Kind, Socket } from './kinds.ts';
import type { MvrLeft } from './left.ts';
import type { SceneFixture } from './scene.ts';

/** A fixture that is in the plan. */
export interface Taken {
	readonly fixture: SceneFixture;
	readonly name: string;
	readonly universe: number;
	readonly kind: Kind;
}

interface Link {
	readonly from: Taken;
	readonly to: Taken;
	readonly path: string;
}

const UNKNOWN: Socket = { is: null, way: null };

/**
 * The data cables of a scene: which fixture each is fed from, by `path`. A line here goes from one fixture to one, within a universe;
 * what branches, goes round, or leaves the universe is left out and told.
 * @param taken in the order of the file
 */
export function feedsOf(taken: readonly Taken[], left: MvrLeft[]): Map<string, string> {
	// fixtures may have no uuid, or share one: it only says where a cable goes to
	const byUuid = new Map(taken.map((each) => [each.fixture.uuid, each]));
	const feeds = new Map<string, string>();
	const feeding = new Set<string>();
	for (const { from, to, path } of taken.flatMap((each) => linksOf(each, byUuid, left))) {
		const facts = { from: from.name, to: to.name };
		const [one, other] = [from.fixture.path, to.fixture.path];
		// the other end may say the same
		if (feeds.get(other) === one) continue;
		if (from.universe !== to.universe) left.push({ path, code: 'link-across', facts });
		else if (feeds.has(other) || feeding.has(one)) left.push({ path, code: 'link-branch', facts });
		else if (goesRound(feeds, one, other)) left.push({ path, code: 'link-circle', facts });
		else {
			feeds.set(other, one);
			feeding.add(one);
		}
	}
	return feeds;
}

/** Whether data that leaves one comes back to it over what is linked already, if it goes on to the other. */
function goesRound(feeds: ReadonlyMap<string, string>, one: string, other: string): boolean {
	let at: string | undefined = one;
	while (at !== undefined && at !== other) at = feeds.get(at);
	return at === other;
}

function linksOf(taken: Taken, byUuid: ReadonlyMap<string, Taken>, left: MvrLeft[]): Link[] {
	const { fixture, name, kind } = taken;
	return fixture.links.flatMap(({ own, other, to }, i): Link[] => {
		const path = `${fixture.path}.links[${i}]`;
		const end = to === '' ? undefined : byUuid.get(to);
		if (!end) {
			left.push({ path, code: 'link-nowhere', facts: { from: name } });
			return [];
		}
		const facts = { from: name, to: end.name };
		const mine = kind.sockets.get(own) ?? UNKNOWN;
		const theirs = end.kind.sockets.get(other) ?? UNKNOWN;
		if (mine.is === 'power' || theirs.is === 'power') left.push({ path, code: 'link-power', facts });
		else if (mine.is !== 'data' && theirs.is !== 'data')
			left.push({ path, code: 'link-unknown', facts: { ...facts, socket: own } });
		// a connection goes out of the fixture that has it, unless its socket says otherwise
		else if (mine.way === 'in' || (mine.way === null && theirs.way === 'out')) return [{ from: end, to: taken, path }];
		else return [{ from: taken, to: end, path }];
		return [];
	});
}
