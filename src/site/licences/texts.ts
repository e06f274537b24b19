import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** The folder of the package a module stands in; null for one of our own, or one that a tool made up. */
export function packageFolder(id: string): string | null {
	const [, folder] = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(id.replace(/^\0/, '')) ?? [];
	return folder ?? null;
}

/**
 * The name, version and licence of a package, and the text of that licence.
 * @throws Error where its folder has no such text
 */
function licenceOf(folder: string): { readonly title: string; readonly text: string } {
	const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as {
		name: string;
		version: string;
		license?: string;
	};
	const files = readdirSync(folder).filter((file) => /^(?:licen[cs]e|copying|notice|ofl)/i.test(file));
	if (files.length === 0)
		throw new Error(
			`${name} ${version} is in the build, but ${folder} has no licence text to go along. Look for another package.`,
		);
	const texts = files.sort().map((file) => readFileSync(path.join(folder, file), 'utf8').trim());
	return { title: `${name} ${version} (${license ?? 'see below'})`, text: texts.join('\n\n') };
}

/** The licence texts of these packages, as one page of plain text. */
export function licencesText(folders: Iterable<string>): string {
	const all = [...new Set(folders)].map(licenceOf).sort((a, b) => (a.title < b.title ? -1 : 1));
	const line = '='.repeat(72);
	return `Prep Bay carries work of others, under these licences. A name is followed by its version.

${all.map(({ title }) => `- ${title}`).join('\n')}
${all.map(({ title, text }) => `\n${line}\n${title}\n${line}\n\n${text}\n`).join('')}`;
}
