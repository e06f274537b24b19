import { describe, expect, it } from 'vitest';
import { gdtfNames } from '#words/gdtf/index.ts';
import { type LeftCode, type ProfileFromFile, readFixtureType, toProfile } from '../../../shared/gdtf/index.ts';
import { fitColour, mixOf } from '../../../shared/gdtf/mix.ts';
import { BUNDLED, type Profile } from '../../../shared/profile/index.ts';
import { thrownBy } from '../thrown.ts';
import { type Made, type MadeChannel, made } from './made.ts';

// Each row of the table from a GDTF file to a profile, by a file made for it.

const read = (parts: Made = {}): ProfileFromFile => toProfile(readFixtureType(made(parts)), gdtfNames);
const codes = ({ left }: ProfileFromFile): LeftCode[] => left.map(({ code }) => code);
const askedCodes = ({ asked }: ProfileFromFile): string[] => asked.map(({ code }) => code);
const slots = ({ profile }: ProfileFromFile) => profile.modes[0]?.slots ?? [];
const channels = (...list: MadeChannel[]): ProfileFromFile => read({ channels: list });
/** The bands of a mode's one slot, as `from-to name: effect`. */
const bandsOf = (file: ProfileFromFile): string[] => {
	const drives = slots(file)[0]?.drives;
	return drives?.kind === 'bands'
		? drives.bands.map(({ from, to, name, effect }) => `${from}-${to} ${name}: ${effect.do}`)
		: [];
};

const RED = 'Name="Red" Attribute="ColorAdd_R" DMXFrom="0/1"';
const DIMMER = 'Name="Dim" Attribute="Dimmer" DMXFrom="0/1"';

describe('name, about and id', () => {
	it('are the file’s, cut to what a profile holds, and the cut is told', () => {
		const long = 'Wash with a name that goes on and on and on and on';
		const file = read({ type: `Name="${long}" Description="A wash. It is red."` });
		expect(file.profile).toMatchObject({
			name: 'Wash with a name that goes on and on and',
			about: 'A wash. It is red.',
		});
		expect(file.profile.id).toMatch(/^wash-with-a-name-that-go-[0-9a-z]+$/);
		expect(file.left).toContainEqual({
			path: 'name',
			code: 'name-cut',
			facts: { found: long, name: file.profile.name },
		});
	});

	it('are apart from a bundled fixture’s, and from another of the same name', () => {
		const [bundled] = BUNDLED as [Profile];
		const named = (functions: string) =>
			read({ type: `Name="${bundled.name}"`, channels: [{ offset: '1', functions: [functions] }] }).profile.id;
		const ids = [bundled.id, named(RED), named(DIMMER)];
		expect(new Set(ids).size).toBe(3);
		for (const id of ids) expect(id.startsWith(bundled.id)).toBe(true);
		expect(named(RED)).toBe(ids[1]);
	});

	it('are made up where there are none, and ids are unique', () => {
		const modes = ['', '', '3 ch'].map(
			(name) =>
				`<DMXMode Name="${name}" Geometry="Body"><DMXChannels><DMXChannel Geometry="Body" Offset="1"><LogicalChannel Attribute="Dimmer"><ChannelFunction/></LogicalChannel></DMXChannel></DMXChannels></DMXMode>`,
		);
		const { profile } = read({ type: '', modes: modes.join('') });
		expect(profile.name).toBe('Fixture from a file');
		expect(profile.modes.map(({ id, name }) => [id, name])).toEqual([
			['mode-1', 'Mode 1'],
			['mode-2', 'Mode 2'],
			['ch', '3 ch'],
		]);
	});
});

describe('shape, cells and optics', () => {
	const pods = (n: number, beam = ''): string =>
		`<Geometry Name="Pod"><Beam Name="Lens" ${beam}/></Geometry><Geometry Name="Body">${Array.from({ length: n }, (_, i) => `<GeometryReference Name="P${i + 1}" Geometry="Pod"><Break DMXOffset="${i + 1}"/></GeometryReference>`).join('')}</Geometry>`;

	it('count the beams, with references followed', () => {
		const file = read({
			geometries: pods(3),
			channels: [
				{ geometry: 'Pod', offset: '1', functions: [RED] },
				{ offset: '4', functions: [DIMMER] },
			],
		});
		expect(file.profile).toMatchObject({ shape: 'bar', cells: 3 });
		expect(slots(file).map(({ at, cells, name }) => [at, cells, name])).toEqual([
			[1, [1], 'Red, P1'],
			[2, [2], 'Red, P2'],
			[3, [3], 'Red, P3'],
			[4, undefined, 'Dim'],
		]);
	});

	it('take the most where modes differ, and say so', () => {
		const mode = (name: string, body: string) =>
			`<DMXMode Name="${name}" Geometry="${body}"><DMXChannels><DMXChannel Geometry="${body}" Offset="1"><LogicalChannel Attribute="Dimmer"><ChannelFunction/></LogicalChannel></DMXChannel></DMXChannels></DMXMode>`;
		const file = read({
			geometries: `${pods(4)}<Geometry Name="Small"><Beam Name="One"/></Geometry>`,
			modes: mode('A', 'Small') + mode('B', 'Body'),
		});
		expect(file.profile.cells).toBe(4);
		expect(file.left).toContainEqual({
			path: 'modes[0]',
			code: 'cells-differ',
			facts: { mode: 'A', cells: 1, most: 4 },
		});
	});

	it('refuse more cells than a profile has', () => {
		expect(
			thrownBy(() => read({ geometries: pods(65), channels: [{ offset: '1', functions: [DIMMER] }] })).facts,
		).toEqual({ trouble: 'too-many-cells', count: 65, limit: 64 });
	});

	const angles = (beam: string) => read({ geometries: `<Geometry Name="Body"><Beam Name="L" ${beam}/></Geometry>` });
	it.each<[string, string, object, LeftCode[], string[]]>([
		['given', 'BeamAngle="20" FieldAngle="40"', { beam: 20, field: 40 }, [], []],
		['absent', '', { beam: 25, field: 25 }, [], ['beam', 'field']],
		['the standard’s defaults', 'BeamAngle="25.000" FieldAngle="25"', { beam: 25, field: 25 }, [], ['beam', 'field']],
		['given in part', 'BeamAngle="40"', { beam: 40, field: 40 }, [], ['field']],
		['given in the other part', 'FieldAngle="10"', { beam: 10, field: 10 }, [], ['beam']],
		['the wrong way round', 'BeamAngle="40" FieldAngle="20"', { beam: 20, field: 40 }, ['beams-swapped'], []],
		['too much', 'BeamAngle="0.5" FieldAngle="300"', { beam: 1, field: 175 }, ['beam-clamped', 'beam-clamped'], []],
	])('angles %s', (_, beam, optics, left, asked) => {
		const file = angles(beam);
		expect(file.profile.optics).toEqual(optics);
		expect(codes(file).filter((code) => code.startsWith('beam'))).toEqual(left);
		expect(askedCodes(file).filter((code) => code === 'beam' || code === 'field')).toEqual(asked);
	});
});

describe('emitters', () => {
	const linked = (name: string, attribute: string, offset: string): MadeChannel => ({
		offset,
		functions: [`Name="${name}" Attribute="${attribute}" DMXFrom="0/1" Emitter="${name}"`],
	});
	const two =
		'<Emitters><Emitter Name="Deep red" Color="0.7,0.29,20"/><Emitter Name="Green" Color="0.2,0.7,60"/><Emitter Name="Spare" Color="0.3,0.3,20"/></Emitters>';

	it('have the file’s names and colours, and light by their shares', () => {
		const file = read({
			physical: two,
			channels: [linked('Green', 'ColorAdd_G', '1'), linked('Deep red', 'ColorAdd_R', '2')],
		});
		expect(file.profile.emitters).toEqual([
			{ id: 'deep-red', name: 'Deep red', xy: [0.7, 0.29], lumens: 150, watts: 25, ultraviolet: false },
			{ id: 'green', name: 'Green', xy: [0.2, 0.7], lumens: 450, watts: 25, ultraviolet: false },
		]);
		expect(file.left).toContainEqual({ path: 'emitters', code: 'emitter-unused', facts: { name: 'Spare' } });
		expect(askedCodes(file)).toContain('emitter-watts');
		expect(askedCodes(file)).not.toContain('emitter-colour');
		expect(askedCodes(file)).not.toContain('lumens');
	});

	it('take the standard’s colours where the file has none, and ask', () => {
		const file = channels(
			{ offset: '1', functions: ['Name="A" Attribute="coloradd_ry"'] },
			{ offset: '2', functions: ['Name="B" Attribute="ColorRGB_Blue"'] },
		);
		expect(file.profile.emitters.map(({ name, xy }) => [name, xy])).toEqual([
			['Amber', [0.477, 0.46]],
			['Blue', [0.15, 0.06]],
		]);
		expect(askedCodes(file).filter((code) => code === 'emitter-colour')).toHaveLength(2);
		expect(askedCodes(file)).toContain('emitter-lumens');
	});

	it('without a colour but with a short wavelength are ultraviolet', () => {
		const physical = '<Emitters><Emitter Name="Black light" DominantWaveLength="395"/></Emitters>';
		const { profile } = read({ physical, channels: [linked('Black light', 'ColorAdd_UV', '1')] });
		expect(profile.emitters[0]).toMatchObject({ name: 'Black light', ultraviolet: true });
	});

	it('are ultraviolet by attribute or by wavelength, whatever colour the file gives them', () => {
		const physical =
			'<Emitters><Emitter Name="A" Color="0.2,0.1,5"/><Emitter Name="B" Color="0.2,0.1,5" DominantWaveLength="405"/><Emitter Name="C" Color="0.2,0.1,5" DominantWaveLength="450"/></Emitters>';
		const { profile } = read({
			physical,
			channels: [linked('A', 'ColorAdd_UV', '1'), linked('B', 'ColorAdd_B', '2'), linked('C', 'ColorAdd_B', '3')],
		});
		expect(profile.emitters.map(({ ultraviolet }) => ultraviolet)).toEqual([true, true, false]);
	});

	const hasUltraviolet = ({ profile }: ProfileFromFile): boolean => profile.emitters.some((each) => each.ultraviolet);
	it('have an ultraviolet one wherever the file speaks of it, driven here or not', () => {
		const part = (attributes: string) =>
			read({ physical: `<Emitters><Emitter Name="Spare" Color="0.3,0.3,1" ${attributes}/></Emitters>` });
		const shared = channels({ offset: '1', functions: [RED, 'Name="Deep" Attribute="ColorAdd_UV" DMXFrom="128/1"'] });
		expect(slots(shared)[0]?.drives.kind).toBe('bands');
		expect(hasUltraviolet(shared)).toBe(true);
		const elsewhere = channels(
			{ offset: '1', functions: ['Name="What" Attribute="Control1"'] },
			{
				offset: '2',
				functions: [RED, 'Name="Deep" Attribute="ColorAdd_UV" ModeMaster="Body_Control1" ModeFrom="9/1" ModeTo="9/1"'],
			},
			{ functions: ['Name="Deep" Attribute="ColorAdd_UV"'] },
		);
		expect(hasUltraviolet(elsewhere)).toBe(true);
		expect(hasUltraviolet(part('DominantWaveLength="395"'))).toBe(true);
		const named = read({ physical: '<Emitters><Emitter Name="UV1" Color="0.2,0.1,5"/></Emitters>' });
		expect(named.profile.emitters).toContainEqual(
			expect.objectContaining({ name: 'UV1', ultraviolet: true, lumens: 0, watts: 0 }),
		);
		expect(codes(named)).not.toContain('emitter-unused');
		expect(hasUltraviolet(channels({ offset: '1', functions: ['Name="Black light" Attribute="Control1"'] }))).toBe(
			true,
		);
		expect(hasUltraviolet(read({ type: 'Name="UV bar"' }))).toBe(true);
		expect(hasUltraviolet(part(''))).toBe(false);
		expect(hasUltraviolet(read())).toBe(false);
	});

	it('are ultraviolet by name, whatever drives them', () => {
		const physical = '<Emitters><Emitter Name="Blacklight" Color="0.2,0.1,5"/></Emitters>';
		const { profile } = read({ physical, channels: [linked('Blacklight', 'ColorAdd_BM', '1')] });
		expect(profile.emitters).toMatchObject([{ name: 'Blacklight', ultraviolet: true }]);
	});

	it('stand in as one white where nothing drives any', () => {
		const file = channels({ offset: '1', functions: [DIMMER] });
		expect(file.profile.emitters).toMatchObject([{ name: 'Light', xy: [0.313, 0.329] }]);
		expect(askedCodes(file)).toContain('emitters');
	});

	const figures = (...beams: string[]) =>
		read({
			geometries: `<Geometry Name="Body">${beams.map((beam, i) => `<Beam Name="L${i}" ${beam}/>`).join('')}</Geometry>`,
		});
	it.each<[string, string[], number | null, number | null]>([
		['given', ['LuminousFlux="700" PowerConsumption="30"', 'LuminousFlux="300" PowerConsumption="30"'], 1000, 60],
		['absent', [''], null, null],
		['the standard’s defaults', ['LuminousFlux="10000.000000" PowerConsumption="1000"'], null, null],
		['nothing', ['LuminousFlux="0" PowerConsumption="0"'], null, null],
		['given for some', ['LuminousFlux="700" PowerConsumption="30"', ''], null, null],
	])('figures %s', (_, beams, lumens, watts) => {
		const file = figures(...beams);
		const [emitter] = file.profile.emitters;
		for (const [code, figure, found] of [
			['lumens', lumens, emitter?.lumens],
			['watts', watts, emitter?.watts],
		] as const) {
			expect(askedCodes(file).includes(code), code).toBe(figure === null);
			if (figure !== null) expect(found).toBe(figure);
			else expect([10_000, 1000 * 10]).not.toContain(found);
		}
		expect(codes(file).includes('mixed-figures')).toBe(beams.length > 1 && lumens === null);
	});

	it('past any fixture’s number are refused', () => {
		const names = Array.from({ length: 33 }, (_, i) => `E${i}`);
		const physical = `<Emitters>${names.map((name) => `<Emitter Name="${name}" Color="0.3,0.3,1"/>`).join('')}</Emitters>`;
		const error = thrownBy(() =>
			read({ physical, channels: names.map((name, i) => linked(name, 'ColorAdd_R', `${i + 1}`)) }),
		);
		expect(error.facts).toEqual({ trouble: 'too-many-emitters', count: 33, limit: 32 });
	});
});

describe('power', () => {
	const wired = (parts: string) => read({ geometries: `<Geometry Name="Body"><Beam Name="L"/>${parts}</Geometry>` });
	it('has a link where a socket puts power out, and asks where no wiring is told', () => {
		const out = wired('<WiringObject Name="Out" ComponentType="Output" SignalType="Power"/>');
		expect(out.profile.power).toEqual({ battery: null, link: true, idleWatts: 2 });
		expect(askedCodes(out)).not.toContain('power-link');
		const data = wired('<WiringObject Name="Out" ComponentType="Output" SignalType="DMX512"/>');
		// a data socket tells nothing of mains
		expect(data.profile.power.link).toBe(false);
		expect(askedCodes(data)).toContain('power-link');
		const inOnly = wired('<WiringObject Name="In" ComponentType="Input" SignalType="Power"/>');
		expect(inOnly.profile.power.link).toBe(false);
		expect(askedCodes(inOnly)).not.toContain('power-link');
		expect(askedCodes(wired(''))).toEqual(expect.arrayContaining(['power-link', 'battery', 'idle-watts']));
	});
});

describe('slots', () => {
	it('stand where the offset says, high byte first, in any order', () => {
		const file = channels({ offset: '3,1', functions: [DIMMER] }, { offset: '2', functions: [RED] });
		expect(slots(file).map(({ at, fine, drives }) => [at, fine, drives.kind])).toEqual([
			[2, undefined, 'emitter'],
			[3, 1, 'intensity'],
		]);
	});

	it('stand where a file from before 1.0 says, byte by byte', () => {
		const file = channels(
			{ more: 'Coarse="2" Fine="3"', functions: [DIMMER] },
			{ more: 'Coarse="1" Fine="None"', functions: [RED] },
			{ more: 'Coarse="None"', functions: [RED] },
		);
		expect(slots(file).map(({ at, fine }) => [at, fine])).toEqual([
			[1, undefined],
			[2, 3],
		]);
		expect(codes(file).filter((code) => code === 'virtual-channel')).toHaveLength(1);
	});

	it('of three or four bytes keep two, and the rest does nothing', () => {
		const file = channels({ offset: '1,2,3,4', functions: [DIMMER] });
		expect(slots(file).map(({ at, fine, drives }) => [at, fine, drives.kind])).toEqual([
			[1, 2, 'intensity'],
			[3, undefined, 'bands'],
			[4, undefined, 'bands'],
		]);
		expect(file.left).toContainEqual(
			expect.objectContaining({ code: 'extra-bytes', facts: expect.objectContaining({ bytes: 2 }) }),
		);
	});

	it('of bands have a fine half that does nothing', () => {
		const file = channels({ offset: '1,2', functions: ['Name="Pan" Attribute="Pan"'] });
		expect(slots(file).map(({ at, fine }) => [at, fine])).toEqual([
			[1, undefined],
			[2, undefined],
		]);
		expect(codes(file)).toContain('fine-of-bands');
	});

	it('are filled up where the file leaves a number out', () => {
		const file = channels({ offset: '3', functions: [DIMMER] });
		expect(slots(file).map(({ at, name }) => [at, name])).toEqual([
			[1, 'Unused 1'],
			[2, 'Unused 2'],
			[3, 'Dim'],
		]);
		expect(codes(file).filter((code) => code === 'slot-unused')).toHaveLength(2);
	});

	it('are left out for a virtual channel', () => {
		const file = channels(
			{ functions: [DIMMER] },
			{ offset: 'None', functions: [DIMMER] },
			{ offset: '1', functions: [RED] },
		);
		expect(slots(file)).toHaveLength(1);
		expect(codes(file).filter((code) => code === 'virtual-channel')).toHaveLength(2);
	});

	it('drive intensity, an emitter or the speed where one function has them from end to end', () => {
		const file = channels(
			{ offset: '1', functions: ['Name="Dim" Attribute="DIMMER"'] },
			{ offset: '2', functions: [RED] },
			{ offset: '3', functions: ['Name="Pace" Attribute="Effects1Rate"'] },
		);
		expect(slots(file).map(({ drives }) => drives.kind)).toEqual(['intensity', 'emitter', 'speed']);
	});

	it('that run from high to low are kept by name, and told', () => {
		const file = channels({ offset: '1', functions: [`${DIMMER} PhysicalFrom="1" PhysicalTo="0"`] });
		expect(bandsOf(file)).toEqual(['0-255 Dim: nothing']);
		expect(codes(file)).toContain('reversed');
	});

	it('that share a channel with others are bands, and told', () => {
		const file = channels({
			offset: '1',
			functions: [DIMMER, 'Name="Zap" Attribute="Shutter1" DMXFrom="200/1" PhysicalFrom="1"'],
		});
		expect(bandsOf(file)).toEqual(['0-199 Dim: nothing', '200-255 Zap: open']);
		expect(codes(file)).toContain('part-of-slot');
	});

	it('tell of names within a fade, and of a resting level', () => {
		const file = channels({
			offset: '1',
			functions: [
				[
					`${DIMMER} Default="128/1"`,
					'<ChannelSet Name="Out"/><ChannelSet Name="Full" DMXFrom="255/1"/><ChannelSet DMXFrom="9/1"/>',
				],
			],
		});
		expect(file.left).toContainEqual(
			expect.objectContaining({ code: 'sets-dropped', facts: expect.objectContaining({ count: 2 }) }),
		);
		expect(file.left).toContainEqual(
			expect.objectContaining({ code: 'resting-level', facts: expect.objectContaining({ level: 128 }) }),
		);
		expect(slots(file)[0]?.drives.kind).toBe('intensity');
	});
});

describe('bands', () => {
	const one = (...functions: MadeChannel['functions']) => channels({ offset: '1', functions });
	const wide = (...functions: MadeChannel['functions']) => channels({ offset: '1,2', functions });

	it('are cut by functions and by sets, in whatever order they come', () => {
		const file = one('Name="Late" Attribute="Gobo1" DMXFrom="200/1"', [
			'Name="Early" Attribute="Pan" DMXFrom="0/1"',
			'<ChannelSet Name="Second" DMXFrom="60/1"/><ChannelSet Name="First" DMXFrom="0/1"/><ChannelSet DMXFrom="90/1"/>',
		]);
		expect(bandsOf(file)).toEqual([
			'0-59 First: nothing',
			'60-89 Second: nothing',
			'90-199 Early: nothing',
			'200-255 Late: nothing',
		]);
		expect(codes(file).filter((code) => code === 'not-acted')).toHaveLength(2);
	});

	it('begin with one of no function where the first starts late', () => {
		expect(bandsOf(one('Name="Late" Attribute="Gobo1" DMXFrom="10/1"'))).toEqual([
			'0-9 No function: nothing',
			'10-255 Late: nothing',
		]);
		expect(bandsOf(one())).toEqual(['0-255 No function: nothing']);
	});

	it('of 16 bit go by the high byte; a cut within it is told', () => {
		const file = wide(
			'Name="A" Attribute="Pan"',
			'Name="B" Attribute="Tilt" DMXFrom="32896/2"',
			'Name="C" Attribute="Zoom" DMXFrom="200/1s"',
		);
		expect(bandsOf(file)).toEqual(['0-127 A: nothing', '128-199 B: nothing', '200-255 C: nothing']);
		expect(file.left.filter(({ code }) => code === 'cut-off-byte')).toEqual([
			expect.objectContaining({ facts: expect.objectContaining({ name: 'B', value: 32_896 }) }),
		]);
	});

	it('too narrow for the high byte are told', () => {
		const file = wide(
			'Name="A" Attribute="Pan"',
			'Name="B" Attribute="Tilt" DMXFrom="32768/2"',
			'Name="C" Attribute="Zoom" DMXFrom="32800/2"',
		);
		expect(bandsOf(file)).toEqual(['0-127 A: nothing', '128-255 C: nothing']);
		expect(codes(file)).toContain('too-narrow');
	});

	it('that start alike keep the first; a set outside its function is told', () => {
		const file = one('Name="A" Attribute="Pan"', 'Name="B" Attribute="Tilt"', [
			'Name="C" Attribute="Zoom" DMXFrom="100/1"',
			'<ChannelSet Name="Out" DMXFrom="5/1"/>',
		]);
		expect(bandsOf(file)).toEqual(['0-99 A: nothing', '100-255 C: nothing']);
		expect(codes(file)).toEqual(expect.arrayContaining(['same-start', 'set-outside']));
	});

	it('of another’s condition are left out: what holds at its default stays', () => {
		const file = channels(
			{ offset: '1', functions: ['Name="What" Attribute="Control1" Default="100/1"'] },
			{
				offset: '2',
				functions: [
					'Name="Low" Attribute="Shutter1" PhysicalFrom="1" PhysicalTo="1" ModeMaster="Body_Control1" ModeFrom="0/1" ModeTo="99/1"',
					'Name="High" Attribute="Shutter1" PhysicalFrom="0" PhysicalTo="0" ModeMaster="Body_Control1.Control1.What" ModeFrom="100/1" ModeTo="255/1"',
					'Name="Odd" Attribute="Shutter1" DMXFrom="250/1" PhysicalFrom="1" PhysicalTo="1" ModeMaster="Nobody_Pan"',
				],
			},
		);
		const drives = slots(file)[1]?.drives;
		expect(drives?.kind === 'bands' && drives.bands.map(({ name, effect }) => [name, effect.do])).toEqual([
			['High', 'dark'],
			['Odd', 'open'],
		]);
		expect(file.left.filter(({ code }) => code === 'other-master')).toEqual([
			expect.objectContaining({ facts: expect.objectContaining({ name: 'Low' }) }),
		]);
		expect(codes(file)).toContain('master-unknown');
	});

	it('open and dark by what they are physically; one on the way is told', () => {
		const file = one([
			'Name="Shutter" Attribute="Shutter1" PhysicalFrom="0" PhysicalTo="1"',
			'<ChannelSet Name="Shut" PhysicalFrom="0" PhysicalTo="0"/><ChannelSet Name="Open" DMXFrom="20/1" PhysicalFrom="1" PhysicalTo="1"/><ChannelSet Name="Way" DMXFrom="40/1"/>',
		]);
		expect(bandsOf(file)).toEqual(['0-19 Shut: dark', '20-39 Open: open', '40-255 Way: nothing']);
		expect(codes(file)).toContain('shutter-between');
	});

	const strobe = (more: string, sets = '') => {
		const file = one([`Name="Strobe" Attribute="Shutter1Strobe" ${more}`, sets]);
		const drives = slots(file)[0]?.drives;
		return { file, effects: drives?.kind === 'bands' ? drives.bands.map(({ effect }) => effect) : [] };
	};
	it('strobe as fast as the file says, and each set its part', () => {
		expect(strobe('PhysicalFrom="1" PhysicalTo="20"').effects).toEqual([{ do: 'strobe', slow: 1, fast: 20 }]);
		const parts = strobe(
			'PhysicalFrom="0.5" PhysicalTo="26"',
			'<ChannelSet Name="Slow"/><ChannelSet Name="Fast" DMXFrom="128/1" PhysicalFrom="10" PhysicalTo="30"/>',
		);
		expect(parts.effects).toEqual([
			{ do: 'strobe', slow: 0.5, fast: expect.closeTo(13.2) },
			{ do: 'strobe', slow: 10, fast: 30 },
		]);
	});
	it('strobe at an assumed rate where the file says none, and that is asked', () => {
		for (const more of ['', 'PhysicalFrom="0" PhysicalTo="1"']) {
			const { file, effects } = strobe(more);
			expect(effects).toEqual([{ do: 'strobe', slow: 1, fast: 20 }]);
			expect(askedCodes(file)).toContain('strobe-rate');
		}
	});
	it('that strobe from fast to slow, or past what there is, are told', () => {
		const falls = strobe('PhysicalFrom="20" PhysicalTo="1"');
		expect(falls.effects).toEqual([{ do: 'nothing' }]);
		expect(codes(falls.file)).toContain('reversed');
		const past = strobe('PhysicalFrom="0" PhysicalTo="50"');
		expect(past.effects).toEqual([{ do: 'strobe', slow: 0.1, fast: 30 }]);
		expect(codes(past.file)).toContain('rate-clamped');
	});

	const wheels =
		'<Wheel Name="W"><Slot Name="Open" Color="0.3127,0.329,100"/><Slot Name="Cyan" Color="0.225,0.329,50"/><Slot Name="Deep" Color="0.72,0.27,5"/><Slot Name="Star"/></Wheel>';
	it('of a wheel are static colours, fitted to the emitters', () => {
		const sets = ['Open', 'Cyan', 'Deep', 'Star', 'None'].map(
			(name, i) => `<ChannelSet Name="${name}" DMXFrom="${50 * i}/1" WheelSlotIndex="${i < 4 ? i + 1 : 0}"/>`,
		);
		const rgb = ['R', 'G', 'B'].map((it, i) => ({
			offset: `${i + 2}`,
			functions: [`Name="${it}" Attribute="ColorAdd_${it}"`],
		}));
		const file = read({
			wheels,
			channels: [{ offset: '1', functions: [['Name="Wheel" Attribute="Color1" Wheel="W"', sets.join('')]] }, ...rgb],
		});
		expect(bandsOf(file)).toEqual([
			'0-49 Open: held',
			'50-99 Cyan: held',
			'100-149 Deep: held',
			'150-199 Star: nothing',
			'200-255 None: nothing',
		]);
		const levels = Object.fromEntries(file.profile.held.map(({ name, levels }) => [name, levels]));
		expect(levels['All at full']).toEqual({ red: 255, green: 255, blue: 255 });
		// the emitters’ light is the standard’s own, so its white is all of them at full, to a rounded figure or two
		for (const level of Object.values(levels['Open'] ?? {})) expect(level).toBeGreaterThan(250);
		expect(levels['Cyan']?.['red'] ?? 0).toBeLessThan(5);
		expect(levels['Deep']).toEqual({ red: 255 });
		expect(codes(file)).toEqual(expect.arrayContaining(['colour-fitted', 'colour-out-of-reach', 'colour-not-given']));
	});

	it('of programmes are kept by name', () => {
		const file = one('Name="Rainbow" Attribute="ColorEffects1"', 'Name="None" Attribute="NoFeature" DMXFrom="200/1"');
		expect(bandsOf(file)).toEqual(['0-199 Rainbow: nothing', '200-255 None: nothing']);
		expect(file.left.filter(({ code }) => code === 'not-acted')).toHaveLength(1);
	});
});

describe('personalities, defaults and what is left', () => {
	it('E1.20 numbers belong to their modes', () => {
		const file = read({
			protocols:
				'<FTRDM ManufacturerID="0x7ff0"><SoftwareVersionID Value="0x1"><DMXPersonality DMXMode="One" Value="0x0A"/><DMXPersonality DMXMode="Gone" Value="x"/></SoftwareVersionID></FTRDM>',
		});
		expect(file.personalities).toEqual({ one: 10 });
	});

	it('the first mode is the default, with a static colour and a programme to name', () => {
		const { profile } = read();
		expect(profile.defaults).toMatchObject({ mode: 'one', held: 'full', programme: 'pulse', work: 'line' });
		expect(profile.panel.kind).toBe('text');
	});

	it('a mode that cannot be is left out with its reason, and the others stay', () => {
		const mode = (name: string, slot: number) =>
			`<DMXMode Name="${name}" Geometry="Body"><DMXChannels><DMXChannel Geometry="Body" Offset="${slot}"><LogicalChannel Attribute="Dimmer"><ChannelFunction/></LogicalChannel></DMXChannel></DMXChannels></DMXMode>`;
		const file = read({ modes: `${mode('Bad', 513)}${mode('Good', 1)}<DMXMode Name="Bare" Geometry="Body"/>` });
		expect(file.profile.modes.map(({ name }) => name)).toEqual(['Good']);
		expect(
			file.left.filter(({ code }) => code === 'mode-refused').map(({ because, facts }) => [facts, because?.facts]),
		).toEqual([
			[{ mode: 'Bad' }, expect.objectContaining({ trouble: 'slot-outside', slot: 513 })],
			[{ mode: 'Bare' }, { trouble: 'no-slots' }],
		]);
	});

	it('parts that have no place here are counted', () => {
		const physical =
			'<Properties><Weight Value="8.2"/></Properties><CRIs><CRIGroup/></CRIs><Emitters><Emitter Name="R" Color="?"><Measurement/></Emitter></Emitters>';
		const file = read({ physical });
		expect(file.left).toEqual(
			expect.arrayContaining([
				{ path: 'PhysicalDescriptions.CRIs', code: 'part-unused', facts: { part: 'CRIs', count: 1 } },
				{ path: 'PhysicalDescriptions.Properties.Weight', code: 'weight', facts: { kilograms: 8.2 } },
				{ path: 'emitters[0]', code: 'part-unused', facts: { part: 'Measurement', count: 1 } },
				{ path: 'emitters[0]', code: 'unreadable', facts: { attribute: 'Color', found: '?' } },
			]),
		);
	});
});

describe('a colour fitted', () => {
	const sources = [
		{ xy: [0.64, 0.33], flux: 213 },
		{ xy: [0.3, 0.6], flux: 715 },
		{ xy: [0.15, 0.06], flux: 72 },
		{ xy: [0.477, 0.46], flux: 300 },
	] as const;

	it('mixes to what was asked, to what a level of 8 bit can do', () => {
		for (const xy of [
			[0.3127, 0.329],
			[0.4, 0.4],
			[0.2, 0.2],
			[0.5, 0.36],
		] as const) {
			const fit = fitColour(sources, xy);
			const mixed = mixOf(sources, fit.levels);
			expect(fit.isWithin).toBe(true);
			expect(Math.max(...fit.levels)).toBe(255);
			expect(Math.hypot((mixed?.xy[0] ?? 0) - xy[0], (mixed?.xy[1] ?? 0) - xy[1])).toBeLessThan(0.004);
		}
	});

	it('out of reach takes the nearest emitter', () => {
		expect(fitColour(sources, [0.1, 0.8])).toEqual({ levels: [0, 255, 0, 0], isWithin: false });
		expect(fitColour(sources.slice(0, 1), [0.64, 0.33])).toEqual({ levels: [255], isWithin: true });
	});
});
