import { InputError } from '../error/index.ts';
import { childOf, childrenOf, given, readXml, type XmlNode } from '../gdtf/index.ts';
import { PLAN_MOST } from '../plan/index.ts';
import type { MvrLeft } from './left.ts';
import { AT_ORIGIN, type Matrix, readMatrix, within } from './place.ts';

/** A fixture of the scene, as plain data, so far as this house can use it. What is not given is null. */
export interface SceneFixture {
	/** In the file, by order: `fixtures[3]`. */
	readonly path: string;
	readonly uuid: string;
	readonly name: string | null;
	/** The fixture file it goes by. */
	readonly spec: string | null;
	readonly mode: string | null;
	readonly addresses: readonly { readonly break: number; readonly text: string }[];
	readonly fixtureId: string | null;
	/** In the whole scene; null where none is given, or it cannot be read. */
	readonly matrix: Matrix | null;
	/** What stands for its place and is none. */
	readonly badMatrix: string | null;
	/** The fixture that it goes with, by uuid: both on one start address. */
	readonly multipatch: string | null;
	readonly links: readonly SceneLink[];
}

/** A connection, as the fixture at one end has it. */
export interface SceneLink {
	/** Sockets by the names that the two fixture files give them; the last part of a path. */
	readonly own: string;
	readonly other: string;
	/** The other end, by uuid. */
	readonly to: string;
}

/** What an MVR file says, before any of it is taken. */
export interface Scene {
	readonly fixtures: readonly SceneFixture[];
	readonly left: readonly MvrLeft[];
}

/** What can stand in a scene, beside fixtures, and has nothing to do with a plan. */
const OBJECTS = ['Truss', 'SceneObject', 'VideoScreen', 'Projector', 'Support', 'FocusPoint'];

/** Parts of a fixture that are read. */
const READ = new Set([
	'Matrix',
	'GDTFSpec',
	'GDTFMode',
	'Addresses',
	'FixtureID',
	'MultiPatch',
	'Connections',
	'ChildList',
]);

/**
 * Reads a scene. Layers and groups are followed and their places summed up; order is not relied on, and what is unknown is counted.
 * @throws InputError `mvr.xml` or `mvr.scene`
 */
export function readScene(text: string): Scene {
	const root = readXml(text, 'mvr.xml');
	if (root.name !== 'GeneralSceneDescription')
		throw new InputError('mvr.scene', '', { trouble: 'no-scene', found: root.name.slice(0, 80) });
	const scene = childOf(root, 'Scene');
	const fixtures: SceneFixture[] = [];
	const counts = new Map<string, number>();
	const count = (what: string): void => void counts.set(what, (counts.get(what) ?? 0) + 1);
	for (const part of [...root.children, ...(scene?.children ?? [])])
		if (part.name !== 'Scene' && part.name !== 'Layers') count(`part ${part.name}`);
	const walk = (node: XmlNode, outer: Placed): void => {
		for (const list of childrenOf(node, 'ChildList'))
			for (const child of list.children) {
				const matrix = matrixOf(child);
				const place = placedIn(outer, matrix);
				if (child.name === 'Fixture') {
					if (fixtures.length === PLAN_MOST)
						throw new InputError('mvr.scene', '', {
							trouble: 'too-many-fixtures',
							count: fixtureCount(root),
							limit: PLAN_MOST,
						});
					// without one of its own it is nowhere, wherever its group is
					fixtures.push(fixtureOf(child, fixtures.length, matrix.matrix || place.badMatrix !== null ? place : matrix));
					for (const part of child.children) if (!READ.has(part.name)) count(`part ${part.name}`);
					for (const part of childOf(child, 'Addresses')?.children ?? [])
						if (part.name !== 'Address') count(`part ${part.name}`);
				} else if (child.name === 'GroupObject') count('group');
				else if (OBJECTS.includes(child.name)) count(`object ${child.name}`);
				else count(`part ${child.name}`);
				walk(child, place);
			}
	};
	const layers = childrenOf(childOf(scene, 'Layers'), 'Layer');
	for (const layer of layers) walk(layer, placedIn({ matrix: AT_ORIGIN, badMatrix: null }, matrixOf(layer)));
	if (fixtures.length === 0) throw new InputError('mvr.scene', '', { trouble: 'no-fixtures' });
	return { fixtures, left: [...layersLeft(layers.length), ...countsLeft(counts)] };
}

/** Where a node is within another. What stands in a group whose place can't be read has none either: it may hang. */
function placedIn(outer: Placed, { matrix, badMatrix }: Placed): Placed {
	if (outer.matrix === null || badMatrix !== null) return { matrix: null, badMatrix: badMatrix ?? outer.badMatrix };
	if (matrix === null) return outer;
	const place = within(outer.matrix, matrix);
	const isThere = [place.u, place.v, place.w, place.o].flat().every(Number.isFinite);
	return isThere ? { matrix: place, badMatrix: null } : { matrix: null, badMatrix: JSON.stringify(place.o) };
}

/** One layer says nothing. */
const layersLeft = (count: number): MvrLeft[] => (count > 1 ? [{ path: '', code: 'layers', facts: { count } }] : []);

const countsLeft = (counts: ReadonlyMap<string, number>): MvrLeft[] =>
	[...counts].map(([what, count]): MvrLeft => {
		const [of = '', name = ''] = what.split(' ');
		if (of === 'group') return { path: '', code: 'groups', facts: { count } };
		if (of === 'object') return { path: '', code: 'object-unused', facts: { kind: name, count } };
		return { path: '', code: 'part-unused', facts: { part: name.slice(0, 60), count } };
	});

const fixtureCount = (node: XmlNode): number =>
	(node.name === 'Fixture' ? 1 : 0) + node.children.reduce((sum, child) => sum + fixtureCount(child), 0);

type Placed = Pick<SceneFixture, 'matrix' | 'badMatrix'>;

function matrixOf(node: XmlNode): Placed {
	const text = childOf(node, 'Matrix')?.text ?? '';
	if (text === '') return { matrix: null, badMatrix: null };
	const matrix = readMatrix(text);
	return { matrix, badMatrix: matrix ? null : text };
}

function fixtureOf(node: XmlNode, index: number, placed: Placed): SceneFixture {
	const textOf = (name: string): string | null => childOf(node, name)?.text || null;
	const addresses = childrenOf(childOf(node, 'Addresses'), 'Address');
	return {
		path: `fixtures[${index}]`,
		// files write one id in either case
		uuid: given(node, 'uuid')?.toLowerCase() ?? '',
		name: given(node, 'name'),
		spec: textOf('GDTFSpec'),
		mode: textOf('GDTFMode'),
		// counted from 0, and 0 where it is left out
		addresses: addresses.map((each) => ({ break: Number(given(each, 'break') ?? 0) || 0, text: each.text })),
		fixtureId: textOf('FixtureID'),
		...placed,
		multipatch: textOf('MultiPatch')?.toLowerCase() ?? null,
		links: childrenOf(childOf(node, 'Connections'), 'Connection').map((each) => ({
			own: socketOf(given(each, 'own')),
			other: socketOf(given(each, 'other')),
			to: given(each, 'toObject')?.toLowerCase() ?? '',
		})),
	};
}

/** A socket by its own name: a path to it goes through the parts it sits in, with full stops. */
const socketOf = (path: string | null): string => path?.split('.').at(-1)?.trim() ?? '';
