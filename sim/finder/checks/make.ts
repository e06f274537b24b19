import type { Witness } from '../witness.ts';
import type { Check, CheckKind } from './types.ts';

/** A wrong answer to a look at something plain (common practice, no source). */
const SLIP = 0.02;

/** A check's kind and place, before it is said what it reads. */
export type Bare = CheckKind & { readonly place: string; readonly at: string; readonly other?: string };

/** See `Check.key`. */
export type KeyOf = Check['key'];

/** One check, with what its kind leaves out filled in. */
export function check(kind: Bare, read: (w: Witness) => string, key: KeyOf): Check {
	const { place, other } = kind;
	return {
		id: `${kind.kind}@${place}${other ? `+${other}` : ''}`,
		kind: kind.kind,
		sort: kind.sort,
		place,
		...(other === undefined ? {} : { other }),
		at: kind.at,
		seconds: kind.seconds,
		needs: kind.needs ?? [],
		disturbs: kind.disturbs ?? false,
		cautions: kind.cautions ?? [],
		error: kind.error ?? SLIP,
		read,
		key,
	};
}
