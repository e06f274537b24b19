import { MATCH_CORRECT } from './qtiItem.ts';
import type { Element } from './xml.ts';

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

export const QTI: Readonly<Record<QtiVersion, QtiNames>> = {
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
export const namespaces = (namespace: string, schema: string): Record<string, string> => ({
	xmlns: namespace,
	'xmlns:xsi': XSI,
	'xsi:schemaLocation': `${namespace} ${schema}`,
});

/** A document in the names of QTI 2.2 in those of a version, its root saying which. */
export function versioned(root: Element, version: QtiVersion): Element {
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
