import ts from 'typescript';
import { filesUnder, textOf } from '../house/tree.ts';
import { lessonFiles, proseOf } from './lessons.ts';

/** One sentence that a person may read, and the file it stands in. */
export interface Sentence {
	readonly file: string;
	readonly text: string;
}

/** Every text written in a file of code, functions' and templates' too; what a template fills in is read as `…`. */
function textsOf(file: string): string[] {
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
		if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push(node.text);
		else if (ts.isJsxText(node)) found.push(node.text.replace(/\s+/g, ' ').trim());
		else if (ts.isTemplateExpression(node))
			found.push([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…'));
		ts.forEachChild(node, visit);
	};
	visit(ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, false, ts.ScriptKind.TSX));
	return found;
}

/** A text's sentences: it is cut after a stop, a question or an exclamation mark, and at an empty line. */
export const sentencesOf = (text: string): string[] =>
	text
		.split(/(?<=[.!?])\s+|\n\s*\n/)
		.map((each) => each.replace(/\s+/g, ' ').trim())
		.filter((each) => each !== '');

/** Every sentence of the words in `content/`, and of what is written into the lessons' drawings. */
export function allSentences(): Sentence[] {
	const inCode = [...filesUnder('content', ['.ts']), ...filesUnder('src/features/lessons/figures', ['.tsx'])].flatMap(
		(file) => textsOf(file).flatMap((text) => sentencesOf(text).map((each) => ({ file, text: each }))),
	);
	const inLessons = lessonFiles().flatMap((each) =>
		[...sentencesOf(proseOf(each)), ...each.lesson.sources.flatMap(sentencesOf)].map((text) => ({
			file: `content/en/lessons/${each.lesson.id}.mdx`,
			text,
		})),
	);
	const pages = filesUnder('content', ['.mdx'])
		.filter((file) => !file.startsWith('content/en/lessons/'))
		.flatMap((file) => sentencesOf(textOf(file)).map((text) => ({ file, text })));
	return [...inCode, ...inLessons, ...pages];
}
