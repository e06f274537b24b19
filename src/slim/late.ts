import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { checks, mendTried } from '../../content/en/checks/index.ts';
import { faults, unknown } from '../../content/en/faults/index.ts';
import { mends } from '../../content/en/repairs/index.ts';
import { BUNDLED } from '../../shared/profile/index.ts';
import { bundledRig, RIG_IDS } from '../../shared/sheet/index.ts';
import { FAULTS } from '../../sim/fault/index.ts';

/** Workers that ask a finder about one rig, and the one of them that does without most words at first. */
const FOR = /[\\/]src[\\/]features[\\/](finder|hidden-faults|fault-tree)[\\/]worker\.ts/;
const WORDS_FOR = /[\\/]src[\\/]features[\\/]finder[\\/]worker\.ts/;

/** What notes that something is missing, and has it fetched. */
const NOTES = fileURLToPath(new URL('../asking/late.ts', import.meta.url));

const HERE = 'prep-bay-late:';

/** A table of words by id: which stand together in one late file, what is there at once, and what comes with that file. */
interface Words {
	readonly of: Readonly<Record<string, object>>;
	readonly file: (id: string) => string;
	readonly atOnce: string;
	readonly late: readonly string[];
}

const words = <W extends object>(
	of: Readonly<Record<string, W>>,
	file: Words['file'],
	atOnce: keyof W & string,
	late: readonly (keyof W & string)[],
): Words => ({ of, file, atOnce, late });

const familyOf = (fault: string | undefined): string =>
	`fault-${FAULTS.find(({ id, mend }) => id === fault || mend === fault)?.family}`;

type Table = 'faults' | 'mends' | 'checks';
const WORDS: Readonly<Record<Table, Words>> = {
	// with the families that a verdict names: names are in view all along
	faults: words(faults, familyOf, 'name', ['cause', 'tape']),
	// with the same, a mend by the first fault that wants it
	mends: words(mends, familyOf, 'spot', ['title', 'does', 'confirm']),
	// with a check that is asked: all that is looked at, or done, in the same spot
	checks: words(checks, (id) => `check-${checks[id]?.spot}`, 'spot', ['title', 'does', 'outcomes']),
};
const TABLES = Object.keys(WORDS) as Table[];

const filesOf = (table: Table): string[] => [...new Set(Object.keys(WORDS[table].of).map(WORDS[table].file))];

/** By file and id, what is there at once. */
function atOnce(table: Table): Record<string, Record<string, unknown>> {
	const { of, file, atOnce: part } = WORDS[table];
	const rows: Record<string, Record<string, unknown>> = {};
	for (const [id, says] of Object.entries(of))
		rows[file(id)] = { ...rows[file(id)], [id]: says[part as keyof typeof says] };
	return rows;
}

/** What stands in one late file. */
function lateFile(name: string): unknown {
	const rig = RIG_IDS.find((id) => `rig-${id}` === name);
	if (rig) return bundledRig(rig);
	const profile = BUNDLED.find(({ id }) => `profile-${id}` === name);
	if (profile) return profile;
	return Object.fromEntries(
		TABLES.map((table) => {
			const { of, file, late } = WORDS[table];
			const ids = Object.keys(of).filter((id) => file(id) === name);
			return [table, Object.fromEntries(ids.map((id) => [id, late.map((part) => of[id]?.[part as never])]))];
		}),
	);
}

const fetches = (files: readonly string[]): string =>
	`{ ${files.map((file) => `'${file}': () => import('${HERE}${file}').then((had) => { here['${file}'] = had.default; })`).join(', ')} }`;

/** A table whose rows are made from what is there at once; the rest is asked for as it is read. */
function tableCode(table: Table): string {
	const { atOnce: first, late } = WORDS[table];
	const getters = late.map((part, at) => `get ${part}() { return word(file, '${table}', id, ${at}); }`).join(', ');
	return `
import { word } from '${HERE}words';
const row = (file, id, ${first}) => ({ ${first}, ${getters} });
export const ${table} = Object.fromEntries(Object.entries(${JSON.stringify(atOnce(table))})
	.flatMap(([file, rows]) => Object.entries(rows).map(([id, ${first}]) => [id, row(file, id, ${first})])));`;
}

/** Words that are not there yet read as none, so that all that one screen lacks is fetched together. */
const wordCode = (): string => `
import { miss } from '${NOTES}';
const here = {};
const fetches = ${fetches([...new Set(TABLES.flatMap(filesOf))])};
export const word = (file, table, id, part) => {
	if (!here[file]) miss(fetches[file]);
	return here[file]?.[table][id][part] ?? '';
};`;

/** A getter by id of what is fetched one by one. It throws meanwhile: a thing that is not there must not be kept by anyone. */
const getterCode = (getter: string, kind: string, ids: readonly string[]): string => `
import { miss } from '${NOTES}';
const here = {};
const fetches = ${fetches(ids.map((id) => `${kind}-${id}`))};
export const ${getter} = (id) => {
	const file = '${kind}-' + id;
	if (!here[file] && Object.hasOwn(fetches, file)) {
		miss(fetches[file]);
		throw new Error(file + ' is still to be fetched');
	}
	return here[file];
};`;

const profileIds = BUNDLED.map(({ id }) => id);

type Instead = readonly (readonly [file: RegExp, code: () => string])[];

/** What stands in place of modules of words. */
const FOR_WORDS: Instead = [
	[
		/[\\/]content[\\/]en[\\/]faults[\\/]faults\.ts$/,
		() => `${tableCode('faults')}\nexport const unknown = ${JSON.stringify(unknown)};`,
	],
	[/[\\/]content[\\/]en[\\/]repairs[\\/]mends\.ts$/, () => tableCode('mends')],
	[
		/[\\/]content[\\/]en[\\/]checks[\\/]checks\.ts$/,
		() => `${tableCode('checks')}\nexport const mendTried = ${JSON.stringify(mendTried)};`,
	],
];

/** And of modules of data. */
const FOR_DATA: Instead = [
	// nobody asks for all profiles in these workers; whoever did would fail over this list at once
	[
		/[\\/]shared[\\/]profile[\\/]bundled[\\/]index\.ts$/,
		() => `${getterCode('bundledProfile', 'profile', profileIds)}\nexport const BUNDLED = null;`,
	],
	[
		/[\\/]shared[\\/]sheet[\\/]bundled[\\/]index\.ts$/,
		() => `${getterCode('bundledRig', 'rig', RIG_IDS)}\nexport const RIG_IDS = ${JSON.stringify(RIG_IDS)};`,
	],
];

/**
 * For workers that ask a finder about one rig: what they need only in part is fetched when it is asked for. Of the bundled rigs and
 * profiles that is those that were chosen; in the finder's own worker, where a walk comes by few of them, also the words for the
 * spots where checks are made and for the families of faults that a verdict names.
 * @param worker what the entry of a build is called that this is for
 * @param wordsFor the same for words
 */
export function leanLate(worker = FOR, wordsFor = WORDS_FOR): Plugin {
	let instead: Instead = [];
	return {
		name: 'prep-bay-lean-late',
		enforce: 'pre',
		buildStart({ input }) {
			const isFor = (which: RegExp): boolean => Object.values(input).some((entry) => which.test(entry));
			instead = [...(isFor(worker) ? FOR_DATA : []), ...(isFor(wordsFor) ? FOR_WORDS : [])];
		},
		resolveId: (id) => (id.startsWith(HERE) ? id : null),
		load(id) {
			if (id === `${HERE}words`) return wordCode();
			if (id.startsWith(HERE)) return `export default ${JSON.stringify(lateFile(id.slice(HERE.length)))};`;
			return instead.find(([file]) => file.test(id))?.[1]() ?? null;
		},
	};
}
