import ts from 'typescript';

/** One small change to one file: a slip that a hand could make. */
export interface Mutant {
	/** Path from the root, with forward slashes. */
	readonly file: string;
	/** Where it stands: offsets into the file's text, and the line counted from 1. */
	readonly start: number;
	readonly end: number;
	readonly line: number;
	readonly before: string;
	readonly after: string;
	/** The whole file, without it. */
	readonly text: string;
}

/** The file's text with the mutant in it. */
export const withMutant = ({ text, start, end, after }: Mutant): string =>
	text.slice(0, start) + after + text.slice(end);

const { SyntaxKind: Kind } = ts;

/** Each operator, and what a slip makes of it. */
const OPERATORS: Readonly<Record<string, readonly string[]>> = {
	'<': ['<=', '>='],
	'<=': ['<', '>'],
	'>': ['>=', '<='],
	'>=': ['>', '<'],
	'===': ['!=='],
	'!==': ['==='],
	'+': ['-'],
	'-': ['+'],
	'*': ['/'],
	'/': ['*'],
	'%': ['*'],
	'**': ['*'],
	'&&': ['||'],
	'||': ['&&'],
	'&': ['|'],
	'|': ['&'],
	'<<': ['>>'],
	'>>': ['<<'],
	'+=': ['-='],
	'-=': ['+='],
};

/** Each method, and the one taken for it by mistake. */
const METHODS: Readonly<Record<string, string>> = {
	some: 'every',
	every: 'some',
	min: 'max',
	max: 'min',
	floor: 'ceil',
	ceil: 'floor',
	find: 'findLast',
	startsWith: 'endsWith',
	endsWith: 'startsWith',
};

/** Everything in a file that can be changed so that it still parses, in the order of the text. */
export function mutantsOf(file: string, text: string): Mutant[] {
	const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
	const ids = idsIn(source);
	const mutants: Mutant[] = [];
	const put = (node: ts.Node, after: string): void => {
		const start = node.getStart(source);
		const before = text.slice(start, node.end);
		const line = source.getLineAndCharacterOfPosition(start).line + 1;
		if (before !== after) mutants.push({ file, start, end: node.end, line, before, after, text });
	};
	const visit = (node: ts.Node): void => {
		// types and imports are the compiler's business
		if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
		for (const [at, after] of changesOf(node, ids)) put(at, after);
		ts.forEachChild(node, visit);
	};
	visit(source);
	return mutants;
}

type Change = readonly [node: ts.Node, after: string];

function changesOf(node: ts.Node, ids: readonly string[]): readonly Change[] {
	if (ts.isBinaryExpression(node)) return operatorChanges(node);
	if (ts.isNumericLiteral(node)) return numberChanges(node);
	if (node.kind === Kind.TrueKeyword) return [[node, 'false']];
	if (node.kind === Kind.FalseKeyword) return [[node, 'true']];
	if (ts.isPrefixUnaryExpression(node)) return [[node, node.operand.getText()]];
	if (ts.isIfStatement(node) || ts.isWhileStatement(node)) return [negated(node.expression)];
	if (ts.isConditionalExpression(node)) return [negated(node.condition)];
	if (ts.isExpressionStatement(node)) return [[node, ';']];
	if (ts.isArrayLiteralExpression(node)) return arrayChanges(node);
	if (ts.isReturnStatement(node) && node.expression) return emptied(node.expression);
	if (ts.isArrowFunction(node) && !ts.isBlock(node.body)) return emptied(node.body);
	if (ts.isStringLiteral(node)) return idChanges(node, ids);
	if (ts.isPropertyAccessExpression(node) && ts.isCallExpression(node.parent) && node.parent.expression === node) {
		const other = METHODS[node.name.text];
		return other === undefined ? [] : [[node.name, other]];
	}
	return [];
}

function operatorChanges({ left, operatorToken, right }: ts.BinaryExpression): readonly Change[] {
	const sign = operatorToken.getText();
	// a text is joined, not summed
	if (sign === '+' && [left, right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side)))
		return [];
	const changes = (OPERATORS[sign] ?? []).map((after): Change => [operatorToken, after]);
	return sign === '??' ? [[left, 'undefined']] : changes;
}

function numberChanges(node: ts.NumericLiteral): readonly Change[] {
	const value = Number(node.text);
	const after = value === 0 ? ['1'] : value === 1 ? ['0', '2'] : [`${value + 1}`, `${value - 1}`];
	return Number.isInteger(value) ? after.map((text): Change => [node, text]) : [[node, `${value * 1.5}`]];
}

const negated = (condition: ts.Expression): Change => [condition, `!(${condition.getText()})`];

function arrayChanges(node: ts.ArrayLiteralExpression): readonly Change[] {
	const [one, two] = node.elements;
	if (!one || ts.isArrayBindingPattern(node.parent)) return [];
	const changes: Change[] = [[node, '[]']];
	const rest = node.elements.slice(2).map((element) => element.getText());
	// a list as long as a page is read in one line of the table
	if (two) changes.push([node, `[${[two.getText(), one.getText(), ...rest].join(', ')}]`]);
	return changes;
}

/** What a function hands back, left empty. */
function emptied(value: ts.Expression): readonly Change[] {
	if (ts.isTemplateExpression(value)) return [[value, "''"]];
	if (!ts.isCallExpression(value) || !ts.isPropertyAccessExpression(value.expression)) return [];
	return ['map', 'filter', 'flatMap', 'slice', 'sort', 'toSorted'].includes(value.expression.name.text)
		? [[value, '[]']]
		: [];
}

/** Strings that look like ids: what a sentence says is not the code's. */
const isId = (text: string): boolean => /^[a-z][\w.:@-]*$/i.test(text);

function idsIn(source: ts.SourceFile): string[] {
	const ids = new Set<string>();
	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
		if (ts.isStringLiteral(node) && isId(node.text)) ids.add(node.text);
		ts.forEachChild(node, visit);
	};
	visit(source);
	return [...ids];
}

/** An id taken for the next one in the file; the compiler throws out what cannot stand there. */
function idChanges(node: ts.StringLiteral, ids: readonly string[]): readonly Change[] {
	const at = ids.indexOf(node.text);
	const other = ids[(at + 1) % ids.length];
	return at < 0 || other === undefined || other === node.text ? [] : [[node, `'${other}'`]];
}
