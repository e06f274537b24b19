import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInputError } from '../../../shared/error/index.ts';
import { expandMode, LIMITS, readFixtureType } from '../../../shared/gdtf/index.ts';
import { runs } from '../../runs.ts';
import { thrownBy } from '../thrown.ts';
import { layoutOf } from './layout.ts';
import { made } from './made.ts';
import { naiveLayout } from './naive.ts';

/** Geometries at the top, by name; channels may stand in any of them. */
const NAMES = ['Body', 'Head', 'Pod', 'Eye'];
const name = fc.constantFrom(...NAMES);

const breakXml = fc
	.tuple(fc.integer({ min: 1, max: 2 }), fc.integer({ min: 1, max: 40 }))
	.map(([number, offset]) => `<Break DMXBreak="${number}" DMXOffset="${offset}"/>`);
const bothBreaks = fc
	.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), fc.array(breakXml, { maxLength: 1 }))
	.map(([one, two, more]) => `<Break DMXOffset="${one}"/><Break DMXBreak="2" DMXOffset="${two}"/>${more.join('')}`);
/** A reference to a geometry further on in the list, so that few go round; one in eight to any. */
const referenceIn = (at: number) =>
	fc
		.tuple(
			fc.oneof(
				{ weight: 7, arbitrary: fc.constantFrom(...NAMES.slice(at + 1), ...(at === NAMES.length - 1 ? NAMES : [])) },
				{ weight: 1, arbitrary: name },
			),
			fc.integer({ min: 1, max: 99 }),
			fc.oneof(
				{ weight: 5, arbitrary: bothBreaks },
				{ weight: 1, arbitrary: fc.array(breakXml, { maxLength: 2 }).map((all) => all.join('')) },
			),
		)
		.map(([to, n, breaks]) => `<GeometryReference Name="Ref ${n}" Geometry="${to}">${breaks}</GeometryReference>`);
const geometryXml = (own: string, at: number) =>
	fc
		.tuple(fc.array(referenceIn(at), { maxLength: at === 0 ? 3 : 1 }), fc.boolean())
		.map(
			([references, isBeam]) =>
				`<Geometry Name="${own}">${isBeam ? `<Beam Name="${own} lens"/>` : ''}${references.join('')}</Geometry>`,
		);

const channel = fc.record({
	geometry: fc.oneof({ weight: 4, arbitrary: name }, { weight: 1, arbitrary: fc.constant('Body lens') }),
	break: fc.constantFrom('1', '1', '2', 'Overwrite'),
	offset: fc
		.array(
			fc.oneof(
				{ weight: 9, arbitrary: fc.integer({ min: 1, max: 200 }) },
				{ weight: 1, arbitrary: fc.integer({ min: 300, max: 520 }) },
			),
			{ maxLength: 3 },
		)
		.map((all) => all.join(',') || 'None'),
	functions: fc.constantFrom('Dimmer', 'Pan', 'Zoom').map((attribute) => [`Name="F" Attribute="${attribute}"`]),
});

const tree = fc
	.tuple(fc.tuple(...NAMES.map((own, at) => geometryXml(own, at))), fc.array(channel, { minLength: 1, maxLength: 4 }))
	.map(([geometries, channels]) => made({ geometries: geometries.join(''), channels }));

describe('a mode expanded', () => {
	it('is as a second, naive expander has it, or refused by both', () => {
		const met = { laidOut: 0, refused: 0, referred: 0 };
		fc.assert(
			fc.property(tree, (description) => {
				const naive = naiveLayout(description, 'One');
				let layout: string[] | null = null;
				try {
					layout = layoutOf(description, 'One');
				} catch (error) {
					if (!isInputError(error)) throw error;
				}
				expect(layout).toEqual(naive);
				if (layout) met.laidOut++;
				else met.refused++;
				if (layout?.some((line) => line.includes(' > '))) met.referred++;
			}),
			{ numRuns: runs(1500) },
		);
		// or it would hold whatever the reader does
		expect(met.laidOut).toBeGreaterThan(100);
		expect(met.referred).toBeGreaterThan(30);
		expect(met.refused).toBeGreaterThan(100);
	});

	const facts = (description: string) => thrownBy(() => layoutOf(description, 'One')).facts;

	it('that goes round is refused', () => {
		const loop =
			'<Geometry Name="Body"><GeometryReference Name="In" Geometry="Pod"><Break/></GeometryReference></Geometry>' +
			'<Geometry Name="Pod"><GeometryReference Name="Out" Geometry="Body"><Break/></GeometryReference></Geometry>';
		expect(facts(made({ geometries: loop }))).toEqual({ trouble: 'circle', name: 'Pod' });
	});

	it('that doubles with every step is refused', () => {
		const two = (to: string) =>
			['a', 'b'].map((it) => `<GeometryReference Name="${it}" Geometry="${to}"><Break/></GeometryReference>`).join('');
		const steps = Array.from(
			{ length: 30 },
			(_, i) => `<Geometry Name="${i === 0 ? 'Body' : `G${i}`}">${two(`G${i + 1}`)}</Geometry>`,
		);
		const bomb = made({ geometries: `${steps.join('')}<Geometry Name="G30"/>` });
		expect(facts(bomb)).toEqual({ trouble: 'too-many-channels', limit: LIMITS.channels });
	});

	it('that leads nowhere is refused, in the channel and in the mode', () => {
		expect(facts(made({ channels: [{ geometry: 'None', offset: '1', functions: [] }] }))).toEqual({
			trouble: 'no-geometry',
			name: 'None',
		});
		const nowhere =
			'<Geometry Name="Body"><GeometryReference Name="In" Geometry="Pod"><Break/></GeometryReference></Geometry>';
		expect(facts(made({ geometries: nowhere }))).toEqual({ trouble: 'no-geometry', name: 'Pod' });
		expect(facts(made({ geometries: '<Geometry Name="Other"/>' }))).toEqual({ trouble: 'no-geometry', name: 'Body' });
	});

	it('tells the beams of each place', () => {
		const geometries =
			'<Geometry Name="Pod"><Beam Name="Lens"/></Geometry>' +
			'<Geometry Name="Body"><GeometryReference Name="One" Geometry="Pod"><Break/></GeometryReference><GeometryReference Name="Two" Geometry="Pod"><Break DMXOffset="2"/></GeometryReference></Geometry>';
		const type = readFixtureType(
			made({
				geometries,
				channels: [
					{ geometry: 'Pod', offset: '1', functions: [] },
					{ geometry: 'Body', offset: '3', functions: [] },
				],
			}),
		);
		const { channels, beams } = expandMode(type, type.modes[0] as never, 'modes[0]');
		expect(beams).toHaveLength(2);
		expect(channels.map((it) => it.beams)).toEqual([[0], [1], [0, 1]]);
	});
});
