import { strToU8, zipSync } from 'fflate';
import { exportWords } from '#words/papers/index.ts';
import { InputError } from '../../../../shared/error/index.ts';
import type { Item, Paper } from '../../../../shared/paper/index.ts';
import { askedLines } from './asked.ts';
import { type Element, element, MATCH_CORRECT, qtiItem, xmlText } from './qtiItem.ts';

/** A paper as files for a learning platform, and the questions that could not be in it. */
export interface QtiFiles {
	/** Text by path within the package. */
	readonly files: Readonly<Record<string, string>>;
	readonly leftOut: readonly Item[];
}

/** No earlier date fits a zip file, and the same paper gives the same file. */
const DATE = '1980-01-01T00:00:00';

/**
 * A paper as a QTI package (1EdTech Question and Test Interoperability), 2.2 or 3.0, its right answers in it: for whoever sets the
 * paper on a platform of their own. Questions done on the bench are left out and named in `readme.txt`.
 * @throws InputError `qti.empty` where every question is one of those
 */
export function qtiFiles(paper: Paper, version: QtiVersion): QtiFiles {
	const made = paper.items.map((item, i) => ({ item, root: qtiItem(item, `${exportWords.question} ${i + 1}`) }));
	const within = made.flatMap(({ item, root }) => (root ? [{ id: item.id, path: `items/${item.id}.xml`, root }] : []));
	const leftOut = made.filter(({ root }) => !root).map(({ item }) => item);
	if (within.length === 0) throw new InputError('qti.empty', 'items', { trouble: 'nothing-to-hand-on' });
	const texts = within.map(({ path, root }) => [path, xmlText(versioned(root, version))] as const);
	return {
		files: {
			'imsmanifest.xml': xmlText(qtiManifest(paper, within, version)),
			'test.xml': xmlText(versioned(qtiTest(paper, within), version)),
			...Object.fromEntries(texts),
			[README]: readme(leftOut),
		},
		leftOut,
	};
}

/** The same as one zip file. */
export function qtiZip(paper: Paper, version: QtiVersion): { zip: Uint8Array<ArrayBuffer>; leftOut: readonly Item[] } {
	const { files, leftOut } = qtiFiles(paper, version);
	const bytes = Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)]));
	return { zip: Uint8Array.from(zipSync(bytes, { level: 9, mtime: DATE })), leftOut };
}

function readme(leftOut: readonly Item[]): string {
	const { readmeTitle, readmeLeftOut, readmeNone } = exportWords;
	const lines = leftOut.map((item) => `- ${askedLines(item).join(' ')}`);
	return `${[readmeTitle, '', ...(lines.length === 0 ? [readmeNone] : [readmeLeftOut, ...lines])].join('\n')}\n`;
}

/** What says which questions were left out. */
const README = 'readme.txt';

/** An item's file in the package. */
export interface ItemFile {
	readonly id: string;
	readonly path: string;
}

/** The test that holds the items together, in the names of QTI 2.2: one part, one section, in the paper's order. */
function qtiTest({ recipe, mark }: Paper, items: readonly ItemFile[]): Element {
	const { title, minutes } = recipe;
	return element(
		'assessmentTest',
		{ identifier: testId(mark), title },
		element(
			'outcomeDeclaration',
			{ identifier: 'SCORE', cardinality: 'single', baseType: 'float' },
			element('defaultValue', {}, element('value', {}, '0')),
		),
		...(minutes === null ? [] : [element('timeLimits', { maxTime: minutes * 60 })]),
		element(
			'testPart',
			{ identifier: 'part-1', navigationMode: 'nonlinear', submissionMode: 'individual' },
			element(
				'assessmentSection',
				{ identifier: 'section-1', title: exportWords.paper, visible: true },
				...items.map(({ id, path }) => element('assessmentItemRef', { identifier: id, href: path })),
			),
		),
		element(
			'outcomeProcessing',
			{},
			element(
				'setOutcomeValue',
				{ identifier: 'SCORE' },
				element('sum', {}, element('testVariables', { variableIdentifier: 'SCORE' })),
			),
		),
	);
}

/** The package's table of contents (IMS Content Packaging). */
function qtiManifest({ mark }: Paper, items: readonly ItemFile[], version: QtiVersion): Element {
	const { packaging, packagingSchema, schemaName, schemaVersion, itemType, testType } = QTI[version];
	return element(
		'manifest',
		{ ...namespaces(packaging, packagingSchema), identifier: `package-${mark}` },
		element('metadata', {}, element('schema', {}, schemaName), element('schemaversion', {}, schemaVersion)),
		element('organizations'),
		element(
			'resources',
			{},
			element(
				'resource',
				{ identifier: testId(mark), type: testType, href: 'test.xml' },
				element('file', { href: 'test.xml' }),
				...items.map(({ id }) => element('dependency', { identifierref: id })),
			),
			...items.map(({ id, path }) =>
				element('resource', { identifier: id, type: itemType, href: path }, element('file', { href: path })),
			),
			element(
				'resource',
				{ identifier: 'readme', type: 'webcontent', href: README },
				element('file', { href: README }),
			),
		),
	);
}

const testId = (mark: string): string => `test-${mark}`;

export type QtiVersion = '2.2' | '3.0';

/** Names and addresses of a version, as its own published packages have them. */
export interface QtiNames {
	readonly namespace: string;
	readonly schema: string;
	readonly packaging: string;
	readonly packagingSchema: string;
	readonly schemaName: string;
	readonly schemaVersion: string;
	readonly itemType: string;
	readonly testType: string;
	readonly matchCorrect: string;
}

const QTI: Readonly<Record<QtiVersion, QtiNames>> = {
	'2.2': {
		namespace: 'http://www.imsglobal.org/xsd/imsqti_v2p2',
		schema: 'http://www.imsglobal.org/xsd/qti/qtiv2p2/imsqti_v2p2.xsd',
		packaging: 'http://www.imsglobal.org/xsd/imscp_v1p1',
		packagingSchema: 'http://www.imsglobal.org/xsd/qti/qtiv2p2/qtiv2p2_imscpv1p2_v1p0.xsd',
		schemaName: 'QTIv2.2 Package',
		schemaVersion: '1.0.0',
		itemType: 'imsqti_item_xmlv2p2',
		testType: 'imsqti_test_xmlv2p2',
		matchCorrect: 'http://www.imsglobal.org/question/qti_v2p2/rptemplates/match_correct',
	},
	'3.0': {
		namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
		schema: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0p1_v1p0.xsd',
		packaging: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
		packagingSchema: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
		schemaName: 'QTI Package',
		// the only one that the packaging schema beside it lists, though public examples say 3.0.1
		schemaVersion: '3.0.0',
		itemType: 'imsqti_item_xmlv3p0',
		testType: 'imsqti_test_xmlv3p0',
		matchCorrect: 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml',
	},
};

const XSI = 'http://www.w3.org/2001/XMLSchema-instance';

/** The attributes that say what a document's names mean. */
const namespaces = (namespace: string, schema: string): Record<string, string> => ({
	xmlns: namespace,
	'xmlns:xsi': XSI,
	'xsi:schemaLocation': `${namespace} ${schema}`,
});

/** A document in the names of QTI 2.2 in those of a version, its root saying which. */
function versioned(root: Element, version: QtiVersion): Element {
	const { namespace, schema } = QTI[version];
	const { name, attributes, inside } = renamed(root, version);
	return { name, attributes: { ...namespaces(namespace, schema), ...attributes }, inside };
}

/** 3.0 has the elements of 2.2 in small letters with hyphens, behind `qti-` where HTML has no such name; so it has the attributes. */
function renamed({ name, attributes, inside }: Element, version: QtiVersion): Element {
	const later = version === '3.0';
	const named = Object.entries(attributes).map(([key, value]) => [
		later ? hyphened(key) : key,
		key === 'template' && value === MATCH_CORRECT ? QTI[version].matchCorrect : value,
	]);
	return {
		name: later && name !== 'p' ? `qti-${hyphened(name)}` : name,
		attributes: Object.fromEntries(named),
		inside: inside.map((each) => (typeof each === 'string' ? each : renamed(each, version))),
	};
}

const hyphened = (name: string): string => name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
