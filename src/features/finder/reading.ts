import * as v from 'valibot';
import { InputError, isInputError } from '../../../shared/error/index.ts';
import { readShape } from '../../../shared/profile/index.ts';
import { asMeant, QUICK_LINKS, quickSheet, RIG_IDS, type RigSheet, readSheet } from '../../../shared/sheet/index.ts';
import { COMPLAINT_KINDS, type Learnt } from '../../../sim/finder/index.ts';
import { toSheet } from '../../../sim/rig/index.ts';
import { KEPT, readJson } from '../../storage/index.ts';
import { holdsRig, MOST, playInStretches, readLink } from '../rig/index.ts';
import { readBundled } from './bundled.ts';
import type { Asks } from './protocol.ts';
import type { Kept, RigChoice } from './walk.ts';

const id = v.pipe(v.string(), v.maxLength(200));
const counts = v.record(
	v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,39}$/)),
	v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_000_000)),
);

const rigSchema = v.variant('kind', [
	v.strictObject({ kind: v.literal('quick'), count: v.number(), linked: v.picklist(QUICK_LINKS), profile: id }),
	v.strictObject({ kind: v.literal('bundled'), id: v.picklist(RIG_IDS) }),
	v.strictObject({ kind: v.literal('sheet'), sheet: v.unknown() }),
]);

const stepSchema = v.variant('did', [
	v.strictObject({ did: v.literal('answer'), check: id, outcome: id }),
	v.strictObject({ did: v.literal('cannot'), check: id }),
	v.strictObject({ did: v.literal('unsure'), check: id }),
]);

const walkSchema = v.strictObject({
	rig: rigSchema,
	fixture: v.nullable(id),
	complaint: v.nullable(v.picklist(COMPLAINT_KINDS)),
	steps: v.pipe(v.array(stepSchema), v.maxLength(1000)),
	learnt: counts,
	began: v.pipe(v.number(), v.finite()),
	counted: v.pipe(v.array(id), v.maxLength(10)),
});

const keptSchema = v.strictObject({
	version: v.literal(KEPT.walk.version),
	allows: v.strictObject({
		without: v.array(v.picklist(['ladder', 'spare-cable', 'spare-fixture', 'spare-battery', 'terminator'])),
		showRunning: v.boolean(),
		alone: v.boolean(),
	}),
	walk: v.nullable(walkSchema),
});

const countsSchema = v.strictObject({ version: v.literal(KEPT.verdicts.version), counts });

/** What is kept on the device. What cannot be read is named as damaged, and nothing of it is used. */
export function readStored({ walk, counts: counted }: Asks['open']['asks']): Asks['open']['gives'] {
	const damaged: ('walk' | 'counts')[] = [];
	const attempt = <T>(what: 'walk' | 'counts', text: string | null, read: (text: string) => T): T | null => {
		if (text === null) return null;
		try {
			return read(text);
		} catch (error) {
			if (!isInputError(error)) throw error;
			damaged.push(what);
			return null;
		}
	};
	const kept = attempt('walk', walk, readKept);
	const learnt = attempt('counts', counted, readCounts) ?? {};
	return { kept, learnt, damaged };
}

function readKept(text: string): Kept {
	const { allows, walk } = readShape(keptSchema, parsed(text), 'finder.kept');
	if (walk === null) return { allows, walk };
	const { rig } = walk;
	const whole: RigChoice = rig.kind === 'sheet' ? { kind: 'sheet', sheet: readRigSheet(rig.sheet) } : rig;
	const { fixtures } =
		whole.kind === 'quick' ? quickSheet(whole) : whole.kind === 'sheet' ? whole.sheet : readBundled(whole.id);
	if (walk.fixture !== null && fixtures.every((each) => each.id !== walk.fixture))
		throw new InputError('finder.kept', 'walk.fixture', { trouble: 'no-such-fixture' });
	return { allows, walk: { ...walk, rig: whole } };
}

const readCounts = (text: string): Learnt => readShape(countsSchema, parsed(text), 'finder.kept').counts;

/** The sheet of the kept walk; null where there is none that can be read. */
export function readKeptRig(walk: string): RigSheet | null {
	const rig = readStored({ walk, counts: null }).kept?.walk?.rig;
	if (!rig) return null;
	if (rig.kind === 'quick') return quickSheet(rig);
	return rig.kind === 'sheet' ? rig.sheet : readBundled(rig.id);
}

/**
 * A rig out of text: a sheet as JSON, a link to a bench, or the fragment of one. Of a bench what it has become is
 * taken, with nothing broken in it: what is broken is for the finder to find.
 * @throws InputError `sheet.text`, `sheet.crowded`, and what `readSheet` and `readLink` throw
 */
export async function readRig(text: string): Promise<RigChoice> {
	const trimmed = text.trim();
	if (trimmed === '') throw new InputError('sheet.text', '', { trouble: 'empty' });
	const fragment = trimmed.slice(Math.max(0, trimmed.indexOf('#')));
	if (holdsRig(fragment)) {
		const { sheet, log } = await readLink(fragment);
		const stands = toSheet(await playInStretches(sheet, log));
		return { kind: 'sheet', sheet: fitting(asMeant(stands, sheet)) };
	}
	return { kind: 'sheet', sheet: readRigSheet(parsed(trimmed)) };
}

function readRigSheet(input: unknown): RigSheet {
	const count = (input as { fixtures?: { length?: unknown } } | null)?.fixtures?.length;
	// counted first: thousands would take long only to be refused
	if (typeof count === 'number' && count > MOST.fixtures)
		throw new InputError('sheet.crowded', 'fixtures', { trouble: 'too-many', count, limit: MOST.fixtures });
	return fitting(readSheet(input));
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
