import path from 'node:path';
import ts from 'typescript';
import { filesUnder, root } from '../house/tree.ts';
import { type Mutant, withMutant } from './sites.ts';

/** What a hand would leave behind is no slip of meaning: names no longer used, and code no longer reached. */
const LENIENT: ts.CompilerOptions = {
	noEmit: true,
	noUnusedLocals: false,
	noUnusedParameters: false,
	allowUnreachableCode: true,
};

/**
 * Tells of mutants in different files which of them are still right by their types, in themselves and where they are imported. They are
 * tried together, and one by one only where there is something wrong: most of the time goes into the compiler's start on a changed tree.
 */
export function typeChecker(
	importers: (file: string) => Iterable<string>,
): (mutants: readonly Mutant[]) => readonly boolean[] {
	const config = path.join(root, 'tests/tsconfig.pure.json');
	const parsed = ts.getParsedCommandLineOfConfigFile(config, LENIENT, {
		...ts.sys,
		onUnRecoverableConfigFileDiagnostic: (problem) => {
			throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
		},
	});
	if (!parsed) throw new Error(`no settings in ${config}`);
	const files = [...filesUnder('shared', ['.ts']), ...filesUnder('sim', ['.ts'])];
	const changed = new Map<string, { text: string; version: number }>();
	const full = (file: string): string => path.join(root, file).split(path.sep).join('/');
	const textOf = (file: string): string | undefined => {
		const own = changed.get(file);
		return own ? own.text : ts.sys.readFile(file);
	};
	const service = ts.createLanguageService({
		getCompilationSettings: () => parsed.options,
		getScriptFileNames: () => [...files.map(full), full('tests/pure-globals.d.ts')],
		getScriptVersion: (file) => `${changed.get(file)?.version ?? 0}`,
		getScriptSnapshot: (file) => {
			const text = textOf(file);
			return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
		},
		getCurrentDirectory: () => root,
		getDefaultLibFileName: ts.getDefaultLibFilePath,
		fileExists: ts.sys.fileExists,
		readFile: ts.sys.readFile,
		directoryExists: ts.sys.directoryExists,
		getDirectories: ts.sys.getDirectories,
	});
	let version = 0;
	const put = (file: string, text: string): void => {
		version++;
		changed.set(full(file), { text, version });
	};
	const isRight = (file: string): boolean =>
		[file, ...importers(file)]
			.filter((each) => /^(shared|sim)\//.test(each))
			.map(full)
			.every(
				(each) =>
					service.getSyntacticDiagnostics(each).length === 0 && service.getSemanticDiagnostics(each).length === 0,
			);
	function areRight(mutants: readonly Mutant[]): readonly boolean[] {
		for (const mutant of mutants) put(mutant.file, withMutant(mutant));
		const right = mutants.map(({ file }) => isRight(file));
		for (const { file, text } of mutants) put(file, text);
		if (mutants.length <= 1) return right;
		return mutants.map((mutant, at) => right[at] || areRight([mutant])[0] === true);
	}
	return areRight;
}
