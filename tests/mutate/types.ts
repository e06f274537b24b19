import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { filesUnder, root } from '../house/tree.ts';

/** What a hand would leave behind is no slip of meaning: names no longer used, and code no longer reached. */
const LENIENT: ts.CompilerOptions = {
	noEmit: true,
	noUnusedLocals: false,
	noUnusedParameters: false,
	allowUnreachableCode: true,
};

/** Tells whether a file with a changed text is still right by its types, in itself and where it is imported. The compiler stays warm from one to the next. */
export function typeChecker(importers: (file: string) => Iterable<string>): (file: string, text: string) => boolean {
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
	return (file, text) => {
		const at = full(file);
		version++;
		changed.set(at, { text, version });
		const asked = [file, ...importers(file)].filter((each) => /^(shared|sim)\//.test(each)).map(full);
		const isRight = asked.every(
			(each) => service.getSyntacticDiagnostics(each).length === 0 && service.getSemanticDiagnostics(each).length === 0,
		);
		version++;
		changed.set(at, { text: readFileSync(path.join(root, file), 'utf8'), version });
		return isRight;
	};
}
