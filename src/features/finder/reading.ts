import * as v from 'valibot';
import { InputError, isInputError } from '../../../shared/error/index.ts';
import { checkProfile, profileSchema, readShape, whole } from '../../../shared/profile/index.ts';
import { loadSheet, QUICK_LINKS, RIG_IDS, type RigSheet } from '../../../shared/sheet/index.ts';
import { COMPLAINT_KINDS, type Learnt } from '../../../sim/finder/index.ts';
import { fromBase64url, inflateText, KEPT, LINK_BOUNDS, MOST_READ, readJson } from '../../storage/index.ts';
import { holdsRig, MOST, readBenchSheet } from '../rig/index.ts';
import type { Asks } from './view.ts';
import { type FinderRecord, type RigChoice, readBundled, readQuick } from './walk.ts';

const id = v.pipe(v.string(), v.maxLength(200));
const counts = v.record(
	v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,39}$/)),
	v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_000_000)),
);

const rigSchema = v.variant('kind', [
	v.strictObject({
		kind: v.literal('quick'),
		count: v.number(),
		linked: v.picklist(QUICK_LINKS),
		profile: id,
		/** Since version 2. */
		own: v.exactOptional(profileSchema),
	}),
	v.strictObject({ kind: v.literal('bundled'), id: v.picklist(RIG_IDS) }),
	v.strictObject({ kind: v.literal('sheet'), sheet: v.unknown() }),
]);

const stepSchema = v.variant('did', [
	v.strictObject({ did: v.literal('answer'), check: id, outcome: id }),
	v.strictObject({ did: v.literal('cannot'), check: id }),
	v.strictObject({ did: v.literal('unsure'), check: id }),
]);

const said = v.pipe(v.string(), v.maxLength(500));
const foundSchema = v.strictObject({
	was: said,
	isSure: v.boolean(),
	repair: v.nullable(said),
	other: v.nullable(
		v.strictObject({
			fixture: id,
			by: v.picklist(['light', 'desk']),
			universe: v.nullable(whole(1, 63999)),
			address: whole(1, 512),
			mode: id,
		}),
	),
	at: v.pipe(v.number(), v.finite()),
});

const walkSchema = v.strictObject({
	rig: rigSchema,
	fixture: v.nullable(id),
	complaint: v.nullable(v.picklist(COMPLAINT_KINDS)),
	steps: v.pipe(v.array(stepSchema), v.maxLength(1000)),
	learnt: counts,
	began: v.pipe(v.number(), v.finite()),
	counted: v.pipe(v.array(id), v.maxLength(10)),
	/** Both since version 3. */
	plan: v.exactOptional(v.pipe(v.string(), v.regex(KEPT.rigs.names))),
	found: v.exactOptional(foundSchema),
});

const keptSchema = v.strictObject({
	version: v.picklist([1, 2, KEPT.walk.version]),
	allows: v.strictObject({
		without: v.array(v.picklist(['ladder', 'spare-cable', 'spare-fixture', 'spare-battery', 'terminator'])),
		showRunning: v.boolean(),
		alone: v.boolean(),
	}),
	walk: v.nullable(walkSchema),
});

const countsSchema = v.strictObject({ version: v.literal(KEPT.verdicts.version), counts });

/** What is kept on the device. What cannot be read is named as damaged, and nothing of it is used. */
export async function readStored({ walk, counts: counted }: Asks['open']['asks']): Promise<Asks['open']['gives']> {
	const damaged: ('walk' | 'counts')[] = [];
	const attempt = async <T>(
		what: 'walk' | 'counts',
		text: string | null,
		read: (text: string) => T | Promise<T>,
	): Promise<T | null> => {
		if (text === null) return null;
		try {
			return await read(text);
		} catch (error) {
			if (!isInputError(error)) throw error;
			damaged.push(what);
			return null;
		}
	};
	const kept = await attempt('walk', walk, readKept);
	const learnt = (await attempt('counts', counted, readCounts)) ?? {};
	return { kept, learnt, damaged };
}

async function readKept(text: string): Promise<FinderRecord> {
	const { allows, walk } = readShape(keptSchema, parsed(text), 'finder.kept');
	if (walk === null) return { allows, walk };
	const { rig } = walk;
	if (rig.kind === 'quick' && rig.own) checkProfile(rig.own);
	const chosen: RigChoice = rig.kind === 'sheet' ? { kind: 'sheet', sheet: await readRigSheet(rig.sheet) } : rig;
	const { fixtures } = await sheetOf(chosen);
	if (walk.fixture !== null && fixtures.every((each) => each.id !== walk.fixture))
		throw new InputError('finder.kept', 'walk.fixture', { trouble: 'no-such-fixture' });
	return { allows, walk: { ...walk, rig: chosen } };
}

const readCounts = (text: string): Learnt => readShape(countsSchema, parsed(text), 'finder.kept').counts;

/** The sheet of the kept walk; null where there is none that can be read. */
export async function readKeptRig(walk: string): Promise<RigSheet | null> {
	const { kept } = await readStored({ walk, counts: null });
	return kept?.walk ? sheetOf(kept.walk.rig) : null;
}

/** The sheet of a rig that was read, with its profiles fetched. */
async function sheetOf(rig: RigChoice): Promise<RigSheet> {
	if (rig.kind === 'sheet') return rig.sheet;
	if (rig.kind === 'bundled') return readBundled(rig.id);
	return readQuick(rig);
}

const WALK_LINK = /#walk=(\d{1,6})\.(.*)$/s;

/**
 * A walk out of the link that hands it on, or else a rig.
 * @throws InputError `link.version`, `link.long`, `link.damaged`, `finder.kept`, and what `readRig` throws
 */
export async function readText(text: string): Promise<Asks['read']['gives']> {
	const [, version, packed = ''] = WALK_LINK.exec(text.trim()) ?? [];
	if (version === undefined) return { rig: await readRig(text) };
	if (Number(version) > KEPT.walk.version) throw new InputError('link.version', '', { trouble: 'other-version' });
	if (packed.length > MOST_READ.link) throw new InputError('link.long', '', { trouble: 'too-long' });
	const bytes = fromBase64url(packed);
	const json = bytes && (await inflateText(bytes, LINK_BOUNDS.characters));
	if (!json) throw new InputError('link.damaged', '', { trouble: 'damaged' });
	const { allows, walk } = await readKept(json);
	if (!walk) throw new InputError('link.damaged', '', { trouble: 'damaged' });
	// whose plan it is, and what it was told, is the other device's own
	const { plan: _, found: __, ...own } = walk;
	return { handed: { allows, walk: { ...own, counted: [] } } };
}

/**
 * A rig out of text: a sheet as JSON, a link to a bench, or the fragment of one. Of a bench what it has become is
 * taken, with nothing broken in it: what is broken is for the finder to find.
 * @throws InputError `sheet.text`, `sheet.crowded`, and what `loadSheet` and `readBenchSheet` throw
 */
async function readRig(text: string): Promise<RigChoice> {
	const trimmed = text.trim();
	if (trimmed === '') throw new InputError('sheet.text', '', { trouble: 'empty' });
	const fragment = trimmed.slice(Math.max(0, trimmed.indexOf('#')));
	if (holdsRig(fragment)) return { kind: 'sheet', sheet: fitting(await readBenchSheet(fragment)) };
	return { kind: 'sheet', sheet: await readRigSheet(parsed(trimmed)) };
}

async function readRigSheet(input: unknown): Promise<RigSheet> {
	const count = (input as { fixtures?: { length?: unknown } } | null)?.fixtures?.length;
	// counted first: thousands would take long only to be refused
	if (typeof count === 'number' && count > MOST.fixtures)
		throw new InputError('sheet.crowded', 'fixtures', { trouble: 'too-many', count, limit: MOST.fixtures });
	return fitting(await loadSheet(input));
}

function fitting(sheet: RigSheet): RigSheet {
	if (sheet.fixtures.length === 0) throw new InputError('sheet.empty', 'fixtures', { trouble: 'no-fixtures' });
	return sheet;
}

function parsed(text: string): unknown {
	const found = readJson(text);
	if (typeof found !== 'string') return found.value;
	throw new InputError('sheet.text', '', { trouble: found === 'damaged' ? 'damaged' : 'too-long' });
}
