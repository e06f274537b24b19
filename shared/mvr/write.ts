import { strToU8 } from 'fflate';
import { DATA_SOCKETS, element, guidOf, nameOf, packedFiles, textElement, writeGdtf } from '../gdtf/index.ts';
import { linksOf, type Plan, type PlanRow, profileOf } from '../plan/index.ts';
import { modeOf, type Profile } from '../profile/index.ts';
import { absoluteOf } from './address.ts';
import { SCENE } from './archive.ts';
import type { MvrLeft, PlanPart } from './left.ts';
import { writeMatrix } from './place.ts';
import { OVERHEAD_FROM } from './plan.ts';

/** An MVR file, and what of the plan it has no place for. */
export interface WrittenScene {
	readonly bytes: Uint8Array;
	/** The scene in it, as text. */
	readonly scene: string;
	readonly left: readonly MvrLeft[];
}

/**
 * Writes a plan as an MVR file (version 1.6): its fixtures in one layer, a fixture file of each kind, and its data cables from
 * fixture to fixture as connections. The same plan gives the same file, byte for byte.
 */
export function writeMvr(plan: Plan): WrittenScene {
	const left: MvrLeft[] = [];
	const profiles = new Map<string, Profile>();
	for (const row of plan.rows) {
		const profile = profileOf(plan, row.profile);
		if (profile) profiles.set(profile.id, profile);
	}
	const links = linksOf(plan);
	const modeAt = new Map(plan.rows.map((row) => [row.id, modeNumber(profiles.get(row.profile), row)]));
	const fixtures = plan.rows.flatMap((row, i) => {
		const profile = profiles.get(row.profile);
		if (!profile) return [];
		const path = `rows[${i}]`;
		const mode = modeOf(profile, row.mode);
		const name = nameOf(mode.name);
		if (profile.modes.filter((each) => nameOf(each.name) === name).length > 1)
			left.push({ path, code: 'mode-doubled', facts: { name: row.name, mode: name } });
		if (row.place.overhead !== row.place.y > OVERHEAD_FROM)
			left.push({ path, code: 'place-changed', facts: { name: row.name } });
		const to = links.get(row.id)?.to ?? null;
		return [
			element('Fixture', { name: row.name, uuid: guidOf(row.id) }, [
				textElement('Matrix', writeMatrix([row.place.x * 1000, 0, row.place.y * 1000])),
				textElement('GDTFSpec', fileName(profile)),
				textElement('GDTFMode', name),
				...(plan.source === 'desk'
					? [element('Addresses', {}, [textElement('Address', absoluteOf(row), { break: 0 })])]
					: []),
				textElement('FixtureID', i + 1),
				...(to === null
					? []
					: [
							element('Connections', {}, [
								element('Connection', {
									own: `${DATA_SOCKETS.out} ${modeAt.get(row.id)}`,
									other: `${DATA_SOCKETS.in} ${modeAt.get(to)}`,
									toObject: guidOf(to),
								}),
							]),
						]),
			]),
		];
	});
	const scene = `<?xml version="1.0" encoding="UTF-8" standalone="no"?>\n${element(
		'GeneralSceneDescription',
		{ verMajor: 1, verMinor: 6, provider: 'Prep Bay', providerVersion: '1' },
		[
			element('Scene', {}, [
				element('Layers', {}, [
					element('Layer', { name: plan.name, uuid: guidOf(`layer ${plan.name}`) }, [
						element('ChildList', {}, fixtures),
					]),
				]),
			]),
		],
	)}\n`;
	const files = [...profiles.values()].map((profile) => [fileName(profile), writeGdtf(profile).bytes] as const);
	for (const what of notWritten(plan, [...profiles.values()]))
		left.push({ path: '', code: 'not-written', facts: { what } });
	return { bytes: packedFiles({ [SCENE]: strToU8(scene), ...Object.fromEntries(files) }), scene, left };
}

/** Ids are plain letters and figures, so they are good file names, and no two are alike in any case. */
const fileName = ({ id }: Profile): string => `${id}.gdtf`;

/** From 1: a written fixture file has sockets for each mode. */
const modeNumber = (profile: Profile | undefined, { mode }: PlanRow): number =>
	(profile?.modes.findIndex(({ id }) => id === mode) ?? 0) + 1;

function notWritten(plan: Plan, profiles: readonly Profile[]): PlanPart[] {
	const { rows, supply, kilograms, surge = {}, source } = plan;
	const all: readonly (readonly [PlanPart, boolean])[] = [
		['panels', profiles.length > 0],
		['circuits', rows.some(({ circuit }) => circuit !== '')],
		['labels', rows.some(({ labelled, shows }) => labelled || shows !== null)],
		['throws', rows.length > 0],
		['tilts', rows.some(({ tilt = 0 }) => tilt !== 0)],
		['supply', supply.breaker !== null || supply.area !== null || supply.metres !== null],
		['weights', Object.keys(kilograms).length + Object.keys(surge).length > 0],
		['rules', true],
		['leader', source === 'leader'],
		['cables', rows.length > 0],
		['desk', source === 'desk' && rows.length > 0],
	];
	return all.filter(([, isLost]) => isLost).map(([what]) => what);
}
