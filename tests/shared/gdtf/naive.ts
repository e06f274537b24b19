import { type Node, nodesOf, parseXml } from '../../published/xml-nodes.ts';

/**
 * A mode's layout worked out a second way, slowly: for each channel the mode's geometry is gone through anew. One line a byte,
 * `break.slot reference > … channel (byte/bytes)`, sorted; null for a layout that cannot be.
 */
export function naiveLayout(description: string, modeName: string): string[] | null {
	const root = parseXml(description);
	const top = nodesOf(root, 'Geometries')[0]?.children ?? [];
	const mode = nodesOf(root, 'DMXMode').find((node) => node.attributes['Name'] === modeName);
	const lines: string[] = [];
	for (const channel of nodesOf(mode as Node, 'DMXChannel')) {
		const { Geometry = '', DMXBreak = '1', Offset = 'None' } = channel.attributes;
		const places = placesOf(
			top,
			top.find((it) => it.attributes['Name'] === mode?.attributes['Geometry']),
			Geometry,
			[],
		);
		if (!places || places.length === 0) return null;
		const name = `${Geometry}_${nodesOf(channel, 'LogicalChannel')[0]?.attributes['Attribute']}`;
		const offsets = Offset === 'None' ? [] : Offset.split(',').map(Number);
		for (const references of places) {
			let number = DMXBreak;
			let shift = 0;
			for (const reference of [...references].reverse()) {
				const breaks = reference.children.filter((it) => it.name === 'Break');
				const at =
					number === 'Overwrite' ? breaks.pop() : breaks.find((it) => (it.attributes['DMXBreak'] ?? '1') === number);
				if (!at) return null;
				number = at.attributes['DMXBreak'] ?? '1';
				shift += Number(at.attributes['DMXOffset'] ?? 1) - 1;
			}
			if (number === 'Overwrite') return null;
			const way = references.map((it) => `${it.attributes['Name']} > `).join('');
			for (const [i, offset] of offsets.entries())
				lines.push(`${number}.${offset + shift} ${way}${name} (${i + 1}/${offsets.length})`);
		}
	}
	const slots = lines.map((line) => line.split(' ')[0] ?? '');
	const outside = slots.some((slot) => Number(slot.split('.')[1]) < 1 || Number(slot.split('.')[1]) > 512);
	return outside || new Set(slots).size < slots.length ? null : lines.sort();
}

/** Each way to a geometry of that name, as the references it goes through; null where a reference leads nowhere or round. */
function placesOf(top: Node[], node: Node | undefined, name: string, references: Node[]): Node[][] | null {
	if (!node) return null;
	if (node.name === 'GeometryReference') {
		if (references.some((it) => it.attributes['Geometry'] === node.attributes['Geometry'])) return null;
		const target = top.find((it) => it.attributes['Name'] === node.attributes['Geometry']);
		return placesOf(top, target, name, [...references, node]);
	}
	const found: Node[][] = node.attributes['Name'] === name ? [references] : [];
	for (const child of node.children) {
		const more = placesOf(top, child, name, references);
		if (!more) return null;
		found.push(...more);
	}
	return found;
}
