import ts from 'typescript';

/** What stands before and after every word of the made-up language. */
const OPEN = '⟦';
const CLOSE = '⟧';

/** Properties whose values are ids, addresses, names of files or what a template is picked by: no words. */
const NO_WORDS: readonly string[] = ['id', 'spot', 'seen', 'fileName', 'asideName'];
/** Properties whose lists are ids or addresses. */
const ID_LISTS: readonly string[] = ['see', 'under', 'lessons', 'cautions'];
/** The same, in one file only. */
const NO_WORDS_IN: Readonly<Record<string, readonly string[]>> = {
	'lessons/plans.ts': ['rows'],
	'lessons/cases.ts': ['rig'],
	'lessons/reckon.ts': ['value'],
	'glossary/crew.ts': ['from'],
	'glossary/light.ts': ['from'],
	'glossary/line.ts': ['from'],
	'glossary/panel.ts': ['from'],
	'glossary/power.ts': ['from'],
	'glossary/site.ts': ['from'],
	'glossary/slots.ts': ['from'],
	'reference/elsewhere.ts': ['term'],
};
/** Constants that are lists of permanent ids. */
const ID_CONSTANTS: readonly string[] = ['SPOTS', 'PART_IDS', 'cautionIds'];

const WORD = /\p{L}[\p{L}\p{M}’'-]*/gu;

/** Every word of a plain text in brackets. */
export const bracketed = (text: string): string => text.replace(WORD, (word) => `${OPEN}${word}${CLOSE}`);

/**
 * Every word of a template in brackets, what it asks for left as it is. The made-up language has one plural, so of the forms for a
 * count only the last stays.
 */
export const bracketedTemplate = (text: string): string =>
	text
		.split(/(\{[^{}]*\})/)
		.map((part, i) => {
			if (i % 2 === 0) return bracketed(part);
			const [, fact, forms] = /^\{(\w+)\?(.*)\}$/s.exec(part) ?? [];
			return forms === undefined ? part : `{${fact}?${bracketed(forms.split('|').at(-1) ?? '')}}`;
		})
		.join('');

/** A source of words with every word in brackets; all else stays as it is. @param file its path from the language's folder */
export function bracketedSource(source: string, file: string): string {
	const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
	const skipped = [...NO_WORDS, ...(NO_WORDS_IN[file] ?? [])];
	const edits: { readonly from: number; readonly to: number; readonly text: string }[] = [];
	const change = (node: ts.Node, text: string) => edits.push({ from: node.getStart(tree), to: node.getEnd(), text });

	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
		if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
		if (ts.isPropertyAssignment(node)) {
			const name = ts.isComputedPropertyName(node.name) ? '' : node.name.text;
			const isIds = ID_LISTS.includes(name) && ts.isArrayLiteralExpression(node.initializer);
			if (!skipped.includes(name) && !isIds && !/href$/i.test(name) && !isCondition(node, name))
				visit(node.initializer);
			return;
		}
		if (ts.isVariableDeclaration(node) && ID_CONSTANTS.includes(node.name.getText(tree))) return;
		// compared, not said
		if (ts.isBinaryExpression(node) && /^[!=]==$/.test(node.operatorToken.getText(tree))) return;
		if (ts.isElementAccessExpression(node)) {
			visit(node.expression);
			return;
		}
		if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
			if (!isAddress(node.text)) change(node, JSON.stringify(bracketedTemplate(node.text)));
			return;
		}
		if (ts.isTemplateExpression(node)) {
			// a hole of our templates may hold a hole of the language's: both are parted before words are looked for
			const pieces = [node.head, ...node.templateSpans.map(({ literal }) => literal)];
			for (const piece of pieces) {
				const raw = piece.getText(tree);
				const [, before = '', text = '', after = ''] = /^([`}])([\s\S]*?)(`|\$\{)$/.exec(raw) ?? [];
				change(piece, `${before}${bracketedTemplate(text)}${after}`);
			}
			for (const { expression } of node.templateSpans) visit(expression);
			return;
		}
		ts.forEachChild(node, visit);
	};
	visit(tree);
	return edits
		.sort((a, b) => b.from - a.from)
		.reduce((text, edit) => text.slice(0, edit.from) + edit.text + text.slice(edit.to), source);
}

/** What a wording is picked by: it stands beside what is said. */
const isCondition = ({ parent }: ts.PropertyAssignment, name: string): boolean =>
	name === 'when' && parent.properties.some((each) => each.name?.getText() === 'says');

/** A way to a page, or the name of a file. */
const isAddress = (text: string): boolean => text.startsWith('/') || /^[\w-]+\.(?:json|txt|csv|zip)$/.test(text);

/** Fields of a lesson's front matter that are words, and those inside others that are. */
const LESSON_WORDS: readonly string[] = ['title', 'outcome', 'try', 'card', 'sources'];
const LESSON_PARTS: readonly string[] = ['words', 'says', 'ask'];

/** A lesson, or another page of markdown, with every word in brackets; tags, code, addresses and ids stay as they are. */
export function bracketedMdx(source: string): string {
	const [front = ''] = /^---\n[\s\S]*?\n---\n/.exec(source) ?? [];
	const body = source.slice(front.length);
	const fields = front.replace(/^(\w+): (.*)$/gm, (line, key: string, json: string) => {
		if (!/^["[{\d]/.test(json)) return line;
		const value: unknown = JSON.parse(json);
		return `${key}: ${JSON.stringify(LESSON_WORDS.includes(key) ? deeply(value, true) : deeply(value, false))}`;
	});
	const text = body
		.split(/(<[^>]+>|`[^`]*`|\]\([^)]*\))/)
		.map((part, i) => (i % 2 === 0 ? bracketed(part) : part))
		.join('');
	return fields + text;
}

function deeply(value: unknown, isWords: boolean): unknown {
	if (typeof value === 'string') return isWords ? bracketed(value) : value;
	if (Array.isArray(value)) return value.map((each) => deeply(each, isWords));
	if (typeof value !== 'object' || value === null) return value;
	return Object.fromEntries(
		Object.entries(value).map(([key, held]) => [key, deeply(held, isWords || LESSON_PARTS.includes(key))]),
	);
}

/** Letters of a text that stand in no brackets, word by word. */
export const bareWords = (text: string): string[] =>
	text.replaceAll(/⟦[^⟦⟧]*⟧/g, ' ').match(/\p{L}[\p{L}\p{M}’'-]*/gu) ?? [];
