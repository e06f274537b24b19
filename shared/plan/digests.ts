import { murmur3Text } from '../random/index.ts';
import { cableKey, numberedCables } from './cables.ts';
import { figuresOf, isOfBattery, isOfLoad } from './figures.ts';
import { seenOn } from './found.ts';
import { type DataLink, linesOf, linksOf } from './line.ts';
import { isOnBattery } from './make.ts';
import { rowFootprint } from './pack.ts';
import { askedOf, settingsOf } from './sheet.ts';
import type { Plan, PlanRow } from './types.ts';

/** Signs of a mark: no letter that passes for a digit (Crockford's base 32, from memory). */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Signs of a mark: one sheet in 33 million that say something else has the same. */
export const DIGEST_LENGTH = 5;

/** A short mark of what a sheet says: another mark, another sheet. */
function digestOf(content: unknown): string {
	let bits = murmur3Text(JSON.stringify(content), 0);
	let digest = '';
	for (let n = 0; n < DIGEST_LENGTH; n++) {
		digest += SIGNS[bits & 31];
		bits >>>= 5;
	}
	return digest;
}

/** A mark as a person types it: letters that pass for digits are read as those; null where it is none. */
export function readDigest(text: string): string | null {
	const signs = text.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1');
	return signs.length === DIGEST_LENGTH && [...signs].every((sign) => SIGNS.includes(sign)) ? signs : null;
}

/** What a slip's presses begin from: a fixture at its defaults, what its panel shows, or the plan it was set by before. */
export type SlipFrom = 'defaults' | 'shown' | 'before';

/** A printed sheet that tells something of the plan. */
export interface SheetDigest {
	readonly sheet: 'slip' | 'label' | 'cable' | 'patch' | 'line' | 'load' | 'charge' | 'whole';
	/** Row id; null for a sheet of all. */
	readonly row: string | null;
	/** Of the labels of a cable that goes to a splitter. */
	readonly universe?: number;
	readonly digest: string;
}

/** Marks of the sheets of a plan. */
export interface PlanDigests {
	/** @param before the plan that the lights were set by, for slips that begin from that */
	slip(row: PlanRow, from: SlipFrom, before?: Plan | null): string;
	label(row: PlanRow): string;
	/** Of the labels of the data cable that goes to a row, or to the splitter of a universe. */
	cable(to: string | number): string;
	readonly patch: string;
	readonly line: string;
	/** Of the sums of circuits and of what hangs; of the batteries and their charge. */
	readonly load: string;
	readonly charge: string;
	/** Of all that the slips say together. */
	readonly whole: string;
}

/**
 * The marks of a plan's sheets. They hang on what each sheet tells a crew, so a sheet that is still right keeps its mark. A row's
 * number in the list is told apart (`changesOf`): it changes with any fixture before it.
 */
export function digestsOf(plan: Plan): PlanDigests {
	const links = linksOf(plan);
	const lines = linesOf(plan);
	const cables = new Map(numberedCables(plan).map((cable) => [cableKey(cable), cable]));
	const figures = figuresOf(plan);
	const names = new Map(plan.rows.map(({ id, name }) => [id, name]));
	const own = new Map(plan.profiles.map((profile) => [profile.id, murmur3Text(JSON.stringify(profile), 0)]));
	const end = (id: string | null | undefined): string | null => (id == null ? null : (names.get(id) ?? id));
	const slip = (row: PlanRow): unknown => {
		const link: DataLink | undefined = links.get(row.id);
		const { overhead } = row.place;
		const wires = [end(link?.from), link?.split ?? false, end(link?.to)];
		return [
			row.name,
			row.profile,
			own.get(row.profile) ?? 0,
			askedOf(plan, row),
			// printed large, whether or not its panel is asked for it
			row.address,
			// the hours on its battery hang on tonight's look
			isOnBattery(plan, row) ? plan.show.look : null,
			row.universe,
			row.circuit,
			overhead,
			wires,
		];
	};
	const label = (row: PlanRow): unknown => [row.name, row.profile, row.mode, row.universe, row.address];
	return {
		slip(row, from, before = null) {
			const was = from === 'before' ? before?.rows.find(({ id }) => id === row.id) : undefined;
			const start = from === 'shown' ? seenOn(row) : before && was ? settingsOf(before, was) : null;
			return digestOf(['slip', slip(row), start]);
		},
		label: (row) => digestOf(['label', label(row)]),
		cable(to) {
			const cable = cables.get(to);
			return digestOf([
				'cable',
				typeof to === 'number' ? to : end(to),
				// its first end and number are printed: a splitter that comes in, or a cable before it, changes them
				cable ? [cable.n, cable.from.is, cable.from.is === 'row' ? end(cable.from.row) : null] : null,
				cable ? [cable.length, cable.universe] : null,
			]);
		},
		line: digestOf([
			'line',
			plan.source,
			plan.rows.map(({ name, place }) => [name, place.x, place.overhead]),
			lines.map(({ universe, feed, runs }) => [
				universe,
				feed,
				runs.map(({ cables, rows }) => [rows.map(end), cables.map(({ length }) => length)]),
			]),
		]),
		load: digestOf(['load', figures.filter(({ id }) => isOfLoad(id))]),
		charge: digestOf(['charge', figures.filter(({ id }) => isOfBattery(id))]),
		patch: digestOf(['patch', plan.rows.map((row) => [label(row), rowFootprint(plan, row), row.place.x, row.circuit])]),
		whole: digestOf(['whole', plan.rows.map(slip)]),
	};
}

/** All sheets of a plan with their digests. @param before the plan that the lights were set by */
export function sheetDigests(plan: Plan, before: Plan | null): SheetDigest[] {
	const digests = digestsOf(plan);
	return [
		{ sheet: 'whole', row: null, digest: digests.whole },
		{ sheet: 'patch', row: null, digest: digests.patch },
		{ sheet: 'line', row: null, digest: digests.line },
		{ sheet: 'load', row: null, digest: digests.load },
		{ sheet: 'charge', row: null, digest: digests.charge },
		...plan.rows.flatMap((row): SheetDigest[] => [
			...(['defaults', 'shown', 'before'] as const).map(
				(from): SheetDigest => ({ sheet: 'slip', row: row.id, digest: digests.slip(row, from, before) }),
			),
			{ sheet: 'label', row: row.id, digest: digests.label(row) },
		]),
		...numberedCables(plan).map(({ to }): SheetDigest => {
			const digest = digests.cable(cableKey({ to }));
			return to.is === 'row'
				? { sheet: 'cable', row: to.row, digest }
				: { sheet: 'cable', row: null, universe: to.universe, digest };
		}),
	];
}

/** What a mark on a sheet in the hand says of it: `current` as the plan stands; `old` as it stood before; or neither, which is old too, or of another rig. */
export type DigestVerdict =
	| { readonly is: 'current' | 'old'; readonly of: SheetDigest }
	| { readonly is: 'unknown'; readonly of: null };

/** @param digest as `readDigest` gives it @param before the plan that sheets were printed from */
export function verdictOn(digest: string, plan: Plan, before: Plan | null): DigestVerdict {
	const current = sheetDigests(plan, before).find((each) => each.digest === digest);
	if (current) return { is: 'current', of: current };
	const old = before && sheetDigests(before, null).find((each) => each.digest === digest);
	return old ? { is: 'old', of: old } : { is: 'unknown', of: null };
}
