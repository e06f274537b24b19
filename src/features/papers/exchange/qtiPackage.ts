import { exportWords } from '#words/papers/index.ts';
import type { Paper } from '../../../../shared/paper/index.ts';
import { namespaces, QTI, type QtiVersion } from './qtiVersion.ts';
import { type Element, element } from './xml.ts';

/** What says which questions were left out. */
export const README = 'readme.txt';

/** An item's file in the package. */
export interface ItemFile {
	readonly id: string;
	readonly path: string;
}

/** The test that holds the items together, in the names of QTI 2.2: one part, one section, in the paper's order. */
export function qtiTest({ recipe, mark }: Paper, items: readonly ItemFile[]): Element {
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
export function qtiManifest({ mark }: Paper, items: readonly ItemFile[], version: QtiVersion): Element {
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
