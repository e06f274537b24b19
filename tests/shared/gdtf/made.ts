/** Small descriptions made by hand. */

export interface MadeChannel {
	readonly geometry?: string;
	readonly offset?: string;
	readonly break?: string;
	/** Attributes of the channel's own element. */
	readonly more?: string;
	/** Each function as the attributes of its element, with the elements in it. */
	readonly functions: readonly (string | readonly [attributes: string, sets: string])[];
}

const attributeIn = (text: string): string => /\bAttribute="([^"]*)"/.exec(text)?.[1] ?? '';

function channelXml({ geometry = 'Body', offset, break: number = '1', more = '', functions }: MadeChannel): string {
	const logical = functions.map((fn) => {
		const [attributes, sets] = typeof fn === 'string' ? [fn, ''] : fn;
		return `<LogicalChannel Attribute="${attributeIn(attributes)}"><ChannelFunction ${attributes}>${sets}</ChannelFunction></LogicalChannel>`;
	});
	const at = offset === undefined ? '' : `Offset="${offset}"`;
	return `<DMXChannel Geometry="${geometry}" DMXBreak="${number}" ${at} ${more}>${logical.join('')}</DMXChannel>`;
}

export interface Made {
	readonly channels?: readonly MadeChannel[];
	/** Text of whole parts, in place of the usual ones. */
	readonly type?: string;
	readonly physical?: string;
	readonly wheels?: string;
	readonly geometries?: string;
	readonly modes?: string;
	readonly protocols?: string;
}

/** A fixture with a body of one beam and one mode, unless told otherwise. */
export function made({
	channels = [{ offset: '1', functions: ['Name="Red" Attribute="ColorAdd_R" DMXFrom="0/1"'] }],
	type = 'Name="Hand made"',
	physical = '',
	wheels = '',
	geometries = '<Geometry Name="Body"><Beam Name="Lens" BeamAngle="20" FieldAngle="40" LuminousFlux="600" PowerConsumption="50"/></Geometry>',
	modes = `<DMXMode Name="One" Geometry="Body"><DMXChannels>${channels.map(channelXml).join('')}</DMXChannels></DMXMode>`,
	protocols = '',
}: Made = {}): string {
	return `<?xml version="1.0" encoding="UTF-8"?>
<GDTF DataVersion="1.2"><FixtureType ${type}>
<Wheels>${wheels}</Wheels><PhysicalDescriptions>${physical}</PhysicalDescriptions>
<Geometries>${geometries}</Geometries><DMXModes>${modes}</DMXModes><Protocols>${protocols}</Protocols>
</FixtureType></GDTF>`;
}
