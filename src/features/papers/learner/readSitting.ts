import * as v from 'valibot';
import { InputError } from '../../../../shared/error/index.ts';
import { readAnswers } from '../../../../shared/paper/index.ts';
import { readShape } from '../../../../shared/profile/index.ts';
import { KEPT, readJson } from '../../../storage/index.ts';
import type { Sitting } from './sitting.ts';

const ids = v.pipe(v.array(v.pipe(v.string(), v.maxLength(80))), v.maxLength(100));
const time = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

const sittingSchema = v.strictObject({
	version: v.literal(1),
	paper: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/)),
	attempt: v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/)),
	started: time,
	ended: v.nullable(time),
	at: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(99)),
	answers: v.unknown(),
	flagged: ids,
	told: ids,
	name: v.pipe(v.string(), v.maxLength(80)),
});

/** A sitting as it was kept, from text. @throws InputError `sitting.damaged`, and what `readAnswers` throws */
export function readSitting(text: string): Sitting {
	const found = readJson(text, KEPT.sitting.bounds);
	if (typeof found === 'string') throw new InputError('sitting.damaged', '', { trouble: 'damaged' });
	const shape = readShape(sittingSchema, found.value, 'sitting.damaged');
	return { ...shape, answers: readAnswers(shape.answers) };
}
