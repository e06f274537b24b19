import type { Version } from './qti-structure.ts';
import type { Rules } from './xml-rules.ts';

/**
 * The part of IMS Content Packaging 1.2 that our manifests use. 3.0: read in `imsqtiv3p0_imscpv1p2_v1p0.xsd` (IMS CP 1.2 profiled for
 * QTI 3.0, of 14 March 2019, candidate final: types Manifest, ManifestMetadata, Organizations, Resources, Resource, File, Dependency).
 * Its only version is 3.0.0; public examples of 1EdTech say 3.0.1 beside the same address. 2.2: its profile was not to be had, so
 * its structure is taken to be the same, and its names and values are from memory.
 */
export function manifestRulesOf(version: Version): Rules {
	const later = version === '3.0';
	return {
		namespace: later
			? 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1'
			: 'http://www.imsglobal.org/xsd/imscp_v1p1',
		types: {
			schemaName: [later ? 'QTI Package' : 'QTIv2.2 Package'],
			schemaVersion: [later ? '3.0.0' : '1.0.0'],
			resourceType: later
				? ['imsqti_test_xmlv3p0', 'imsqti_item_xmlv3p0', 'webcontent']
				: ['imsqti_test_xmlv2p2', 'imsqti_item_xmlv2p2', 'webcontent'],
		},
		elements: {
			manifest: { inside: [['metadata'], ['organizations'], ['resources']], attributes: { 'identifier!': 'ID' } },
			metadata: { inside: [['schema'], ['schemaversion']] },
			schema: { text: 'schemaName' },
			schemaversion: { text: 'schemaVersion' },
			organizations: {},
			resources: { inside: [['resource', '*']] },
			resource: {
				inside: [
					['file', '+'],
					['dependency', '*'],
				],
				attributes: { 'identifier!': 'ID', 'type!': 'resourceType', href: 'anyURI' },
			},
			file: { attributes: { 'href!': 'anyURI' } },
			dependency: { attributes: { 'identifierref!': 'IDREF' } },
		},
	};
}
