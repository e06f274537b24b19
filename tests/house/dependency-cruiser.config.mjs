import { doors, layers, openEnds, wings } from './layers.ts';

const names = Object.keys(layers);
const quoted = (text) => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

// a folder under a layer, or one more in a wing
const room = `(?:${wings.map(quoted).join('|')})/[^/]+|(?:${names.join('|')})/(?!(?:${wings.map((wing) => quoted(wing.split('/')[1])).join('|')})/)[^/]+`;

const forbidden = [
	{
		name: 'no-circles',
		comment: 'Two files that need each other are one file, or want a third between them.',
		severity: 'error',
		from: {},
		to: { circular: true },
	},
	{
		name: 'no-dead-ends',
		comment: 'An import that leads nowhere.',
		severity: 'error',
		from: {},
		to: { couldNotResolve: true, pathNot: '^(astro:|virtual:)' },
	},
	{
		name: 'through-the-door',
		comment: 'Another folder is entered through its doors only (tests/house/layers.ts).',
		severity: 'error',
		from: { path: `^(${room})/` },
		to: {
			path: `^(?:${room})/.`,
			pathNot: [
				'^$1/',
				...Object.entries(doors).map(
					([layer, files]) => `^(?=${layer}/)(?:${room})/(?:${files.map(quoted).join('|')})$`,
				),
				`(${openEnds.map(quoted).join('|')})$`,
			],
		},
	},
	...Object.entries(layers).flatMap(([name, layer]) => {
		const packages = layer.packages;
		const granted = [
			`^(${layer.mayUse.join('|')})/`,
			...(packages === null
				? ['node_modules/', '^astro:', '^virtual:']
				: packages.map((it) => `node_modules/${quoted(it)}/`)),
		];
		return [
			{
				name: `layer-${name}`,
				comment: `${name} may use ${layer.mayUse.join(', ')}${packages === null ? '' : ` and the packages: ${packages.join(', ') || 'none'}`}.`,
				severity: 'error',
				from: { path: `^${name}/` },
				to: { pathNot: granted, dependencyTypesNot: ['core'] },
			},
			...(layer.node
				? []
				: [
						{
							name: `no-node-${name}`,
							comment: `${name} runs in a page too: no node: modules.`,
							severity: 'error',
							from: { path: `^${name}/` },
							to: { dependencyTypes: ['core'] },
						},
					]),
		];
	}),
];

export default {
	forbidden,
	options: {
		tsPreCompilationDeps: true,
		tsConfig: { fileName: 'tsconfig.json' },
		doNotFollow: { path: 'node_modules' },
		enhancedResolveOptions: {
			exportsFields: ['exports'],
			conditionNames: ['import', 'browser', 'node', 'default', 'types'],
		},
	},
};
